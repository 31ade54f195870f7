package dividing

import (
	"tipline/assets/tables"
	"tipline/geometry"
)

// The most that is asked of a head; far beyond any that is made.
const (
	mostDivisions = 100_000
	mostRatio     = 1000
	mostHoles     = 10_000
)

// Divide works out how n divisions are indexed on a wheel of the given tip
// radius in mm. Where whole turns do, no circle is used; else the smallest hole
// circle that is exact; and where none is, the one circle on which the nearest
// hole to each tooth is least in error at the worst tooth, the smallest of equal
// ones, with the Compound that two moves make of it. n is 1 to 100,000 and the ratio 1 to 1000; circles and direct plates have
// 1 to 10,000 holes.
func (h Head) Divide(n int, tipRadius float64) (Answer, error) {
	if len(h.Circles) == 0 {
		h.Circles = tables.PlateSet()
	}
	if err := h.check(n, tipRadius); err != nil {
		return Answer{}, err
	}
	a := Answer{Divisions: n, Ratio: h.Ratio, TipRadius: tipRadius, Exact: true, Direct: h.direct(n)}
	if h.Ratio%n != 0 {
		a.Circle = h.circle(n)
		a.Exact = h.Ratio*a.Circle%n == 0
	}
	if !a.Exact {
		holes := float64(worst(n, h.Ratio*a.Circle)) / float64(n)
		a.Error = 1000 * tipRadius * float64(a.hole()) * holes
		a.Compound = h.compound(n, tipRadius)
	}
	a.Turns, a.Holes = a.Advance(1)
	return a, nil
}

func (h Head) check(n int, tipRadius float64) error {
	if n < 1 || n > mostDivisions {
		return geometry.Between("teeth.count", float64(n), 1, mostDivisions, "dividing.count")
	}
	if h.Ratio < 1 || h.Ratio > mostRatio {
		return geometry.Between("dividing.ratio", float64(h.Ratio), 1, mostRatio, "dividing.ratio")
	}
	if !(tipRadius > 0 && 2*tipRadius <= geometry.MostLength) {
		return geometry.Between("teeth.tip_diameter", 2*tipRadius, geometry.LeastLength, geometry.MostLength, "dividing.tip-radius")
	}
	for _, c := range h.Circles {
		if c < 1 || c > mostHoles {
			return geometry.Between("dividing.circles", float64(c), 1, mostHoles, "dividing.circle")
		}
	}
	for _, p := range h.Direct {
		if p < 1 || p > mostHoles {
			return geometry.Between("dividing.direct", float64(p), 1, mostHoles, "dividing.direct")
		}
	}
	return nil
}

// circle returns the circle to index n divisions on.
func (h Head) circle(n int) int {
	best := h.Circles[0]
	for _, c := range h.Circles[1:] {
		// worst/c is the greatest error, in units all circles share.
		e, kept := worst(n, h.Ratio*c)*best, worst(n, h.Ratio*best)*c
		if e < kept || e == kept && c < best {
			best = c
		}
	}
	return best
}

// worst returns the greatest distance, in nths of a hole, from any tooth's exact
// place to the nearest hole, when a tooth is step/n holes. The places' remainders
// are the multiples of gcd(step, n) below n, so it is the largest of them that is
// no more than n/2.
func worst(n, step int) int {
	g := gcd(step, n)
	return n / g / 2 * g
}

func gcd(a, b int) int {
	for b != 0 {
		a, b = b, a%b
	}
	return a
}

// direct returns the direct plates that divide n.
func (h Head) direct(n int) []int {
	var plates []int
	for _, p := range h.Direct {
		if p%n == 0 {
			plates = append(plates, p)
		}
	}
	return plates
}
