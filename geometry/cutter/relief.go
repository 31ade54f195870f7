package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// The fields that make a bit's relief.
const (
	Clearance      geometry.Quantity = "cutter.clearance"
	StockThickness geometry.Quantity = "cutter.stock_thickness"
	Swing          geometry.Quantity = "cutter.swing"
)

// The range of clearance a bit can be ground with and still hold its edge
// (common practice, no source).
var (
	leastClearance = geometry.Degrees(1)
	mostClearance  = geometry.Degrees(30)
)

// Relieve works out the relief of a bit whose every edge is ground as a facet at
// the clearance, 1° to 30°, measured square to the edge: at depth z behind the
// rake face the section is the form inset by z·tan c from every ground edge. The
// thickness is the stock's. The swing is the radius from spindle axis to cutting
// end, 0 when the bit is not swung; it must be more than the infeed.
func (c Cut) Relieve(clearance geometry.Angle, thickness, swing float64) (Relief, error) {
	if err := c.checkRelief(clearance, thickness, swing); err != nil {
		return Relief{}, err
	}
	r := Relief{Clearance: clearance, Thickness: thickness, Swing: swing, LeastClearance: clearance}
	r.SmallestConcave = c.Form.SmallestConcave()
	c.measureSections(&r)
	heel, err := c.heel(r.UsableThickness * math.Tan(float64(clearance)))
	r.Heel = heel
	return r, err
}

// RelieveFormed is Relieve for a bit whose relief is ground by a formed wheel or
// on a profile grinder: every section is the form moved z·tan c up the infeed.
// The heel then fouls first at the shoulder, and its limit is
// z = (ρ − D)·tan 2c (the same test as for facets, where y_edge = D − z·tan c).
func (c Cut) RelieveFormed(clearance geometry.Angle, thickness, swing float64) (Relief, error) {
	if err := c.checkRelief(clearance, thickness, swing); err != nil {
		return Relief{}, err
	}
	slope := math.Tan(float64(clearance))
	r := Relief{Clearance: clearance, Thickness: thickness, Swing: swing}
	r.SmallestConcave = c.Form.SmallestConcave()
	r.LeastClearance, r.LeastAt = c.leastFormed(clearance)
	r.UsableThickness = math.Min(thickness, c.Infeed/slope)
	z := r.UsableThickness
	r.LeastSwing = c.Infeed - z*slope/2 + z/(2*slope)
	if limit := c.formedLimit(clearance, swing); swing > 0 && limit < c.Infeed/slope {
		r.HeelLimit = limit
		_, _, last := c.edge().spread(c.SetOver, c.Height(), c.TipRadius)
		r.HeelAt = geometry.Point{X: c.SetOver + c.TipRadius*math.Sin(last), Y: c.TipRadius*math.Cos(last) - c.Height()}
	}
	outline, err := c.Form.Outline()
	if err != nil {
		return Relief{}, err
	}
	r.Heel = []geometry.Outline{outline.Move(geometry.Point{Y: z * slope})}
	return r, nil
}

// formedLimit is the depth at which the heel of a bit ground by a formed wheel
// fouls first.
func (c Cut) formedLimit(clearance geometry.Angle, swing float64) float64 {
	return (swing - c.Infeed) * math.Tan(2*float64(clearance))
}

func (c Cut) checkRelief(clearance geometry.Angle, thickness, swing float64) error {
	for _, v := range []bounds{
		{Clearance, float64(clearance), float64(leastClearance), float64(mostClearance), "cutter.clearance"},
		{StockThickness, thickness, geometry.LeastLength, geometry.MostLength, "cutter.stock-thickness"},
		{Swing, swing, 0, geometry.MostLength, "cutter.swing"},
	} {
		if !(v.value >= v.least && v.value <= v.most) {
			return geometry.Between(v.field, v.value, v.least, v.most, v.code)
		}
	}
	if swing > 0 && swing <= c.Infeed {
		return geometry.AtLeast(Swing, swing, c.Infeed, "cutter.swing-within-infeed")
	}
	return nil
}

// sectionSteps is how many sections are looked at on the way from the rake face
// to where nothing is left below the infeed, before the depth is closed in on.
const sectionSteps = 20

// depthShare is how near, as a share of the depth looked at, the section that needs
// the largest swing is told.
const depthShare = 1e-9

// measureSections finds the usable thickness, the heel limit and the least swing
// by going from section to section.
func (c Cut) measureSections(r *Relief) {
	b := c.bit(r.Clearance)
	// No point below the infeed is further than the infeed from the edge.
	end := b.asFarAs(c.Infeed/b.slope, func(pieces int) bool { return pieces > 0 })
	r.UsableThickness = math.Min(r.Thickness, end)
	if b.hollow() {
		r.UsableThickness = b.asFarAs(r.UsableThickness, func(pieces int) bool { return pieces == 1 })
	}
	needs := b.needs(end)
	r.LeastSwing = math.Max(b.leastSwing(needs, r.UsableThickness), c.Infeed)
	if r.Swing > 0 {
		limit, at, fouls := b.heelLimit(needs, r.Swing)
		if fouls {
			r.HeelLimit = limit
			r.HeelAt = geometry.Point{X: at, Y: b.edge.lowest(at)}
		}
	}
}

// hollow reports whether any of the edge turns into the form: only then can a
// section fall in two.
func (b *bit) hollow() bool {
	for i, g := range b.under {
		if g.Bulge < 0 || i > 0 && leaving(b.under[i-1].Reverse()).Times(-1).Cross(leaving(g)) < -coincide {
			return true
		}
	}
	return false
}

// asFarAs returns the depth, at most end, as far as which every section has a
// number of pieces below the infeed that will do.
func (b *bit) asFarAs(end float64, will func(pieces int) bool) float64 {
	holds := func(z float64) bool { return will(b.sectionAt(z).pieces()) }
	from := 0.0
	for i := 1; i <= sectionSteps; i++ {
		z := end * float64(i) / sectionSteps
		if !holds(z) {
			return seek.Last(from, z, coincide, holds)
		}
		from = z
	}
	return end
}

// need is a depth and the least swing at which the section there clears.
type need struct{ z, swing float64 }

// needs returns what sections evenly on the way to end need, and, towards its end
// a section shrinks and a deeper one may need less, each peak between them.
func (b *bit) needs(end float64) []need {
	step := end / sectionSteps
	even := make([]need, sectionSteps+1)
	for i := range even {
		even[i] = need{float64(i) * step, math.Inf(-1)}
		if i > 0 {
			even[i].swing = b.needed(even[i].z)
		}
	}
	var all []need
	for i := 1; i <= sectionSteps; i++ {
		all = append(all, even[i])
		last := i == sectionSteps
		if even[i].swing < even[i-1].swing || !last && even[i].swing < even[i+1].swing ||
			last && b.needed(end-step/1024) <= even[i].swing {
			continue
		}
		z := seek.Top(math.Max(even[i-1].z, step/2), even[min(i+1, sectionSteps)].z, depthShare*end, b.needed)
		peak := need{z, b.needed(z)}
		if z < even[i].z {
			all[len(all)-1], peak = peak, even[i]
		}
		all = append(all, peak)
	}
	return all
}

// leastSwing returns the swing at which every section as far as z clears.
func (b *bit) leastSwing(needs []need, z float64) float64 {
	most := b.needed(z)
	for _, n := range needs {
		if n.z <= z {
			most = math.Max(most, n.swing)
		}
	}
	return most
}

// heelLimit finds the first section that needs more than the swing and the x of
// the place that does; fouls is false where none does.
func (b *bit) heelLimit(needs []need, swing float64) (limit, at float64, fouls bool) {
	over := func(z float64) float64 { return b.needed(z) - swing }
	before := need{0, math.Inf(-1)}
	for _, n := range needs {
		if n.swing > swing {
			limit = falsePosition(before.z, n.z, before.swing-swing, n.swing-swing, over)
			_, at = b.sectionAt(limit).look()
			return limit, at, true
		}
		before = n
	}
	return 0, 0, false
}

// needed is the least swing at which the section at depth z clears.
func (b *bit) needed(z float64) float64 {
	swing, _ := b.sectionAt(z).look()
	return swing
}

// falsePosition returns the place between a and b where f, which is fa < 0 at a
// and fb > 0 at b, passes zero, or one within coincide before it (the Illinois
// variant of false position; halving where a value is not finite).
func falsePosition(a, b, fa, fb float64, f func(float64) float64) float64 {
	side := 0
	for range 100 {
		if b-a <= coincide {
			break
		}
		mid := (a + b) / 2
		if !math.IsInf(fa, 0) && !math.IsInf(fb, 0) {
			mid = math.Min(math.Max((a*fb-b*fa)/(fb-fa), a+coincide/4), b-coincide/4)
		}
		if v := f(mid); v > 0 {
			b, fb = mid, v
			if side > 0 {
				fa /= 2
			}
			side = 1
		} else {
			a, fa = mid, math.Min(v, -math.SmallestNonzeroFloat64)
			if side < 0 {
				fb /= 2
			}
			side = -1
		}
	}
	return a
}
