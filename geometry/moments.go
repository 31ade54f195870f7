package geometry

import "math"

// Area returns the area inside, positive when the outline runs anticlockwise.
//
// Green's theorem over each segment: the triangle from the origin to its chord,
// and for an arc the circular segment between chord and arc.
func (o Outline) Area() float64 {
	sum := 0.0
	o.each(func(from, to Point, bulge float64) {
		sum += from.Cross(to) / 2
		if bulge != 0 {
			r2, half, halfCos := turnOf(to.Sub(from), bulge)
			sum += r2 * overSine(4*math.Atan(bulge), 2*half*halfCos) / 2
		}
	})
	return sum
}

// each calls visit with every segment's ends and bulge.
func (o Outline) each(visit func(from, to Point, bulge float64)) {
	n := len(o.vertices)
	if n == 0 {
		return
	}
	last := o.vertices[n-1]
	for _, v := range o.vertices {
		visit(last.Point, v.Point, last.Bulge)
		last = v
	}
}

// slice is a circular segment: what lies between an arc and its chord.
type slice struct {
	area   float64 // signed as the arc's sweep
	centre Point   // its centroid
	polar  float64 // ∫ r² dA about its centroid, signed as its area
}

// sliceOf returns the circular segment of an arc of angle θ = 4·atan(bulge).
//
// Its area is r²(θ − sin θ)/2. Its centroid lies 4r sin³(θ/2) / 3(θ − sin θ) from
// the circle's centre, towards the arc's middle. About the circle's centre its
// polar moment is r⁴/4·(θ − sin θ·(2 + cos θ)/3): the sector's r⁴θ/4 less its
// triangle's; the parallel axis theorem carries that to the centroid. All three
// by integration; the first two are in any handbook of areas (from memory).
func sliceOf(from, to Point, bulge float64) slice {
	chord := to.Sub(from)
	r2, half, halfCos := turnOf(chord, bulge)
	sin := 2 * half * halfCos
	r := math.Sqrt(r2)
	over := overSine(4*math.Atan(bulge), sin)
	area := r2 * over / 2
	g := 4 * r * half * half * half / (3 * over)
	// From the chord's middle to the circle's centre it is r·cos(θ/2), to the left
	// of an anticlockwise arc's chord.
	left := chord.Left().Times(math.Copysign(1/root(chord), bulge))
	centre := from.Toward(to, 0.5).Add(left.Times(r*halfCos - math.Abs(g)))
	about := r2 * r2 / 4 * (over + sin*2*half*half/3)
	return slice{area, centre, about - area*g*g}
}

// turnOf returns the square of an arc's radius and the sine and cosine of half its
// sweep.
func turnOf(chord Point, bulge float64) (r2, half, halfCos float64) {
	b2 := bulge * bulge
	half, halfCos = 2*bulge/(1+b2), (1-b2)/(1+b2)
	return chord.Dot(chord) / (4 * half * half), half, halfCos
}

// overSine returns θ − sin θ, by its series where the difference would lose
// digits: the first term left out is θ⁹/9!, below 1e-16 of the whole at 0.05.
func overSine(theta, sin float64) float64 {
	if math.Abs(theta) >= 0.05 {
		return theta - sin
	}
	t2 := theta * theta
	return theta * t2 / 6 * (1 - t2/20*(1-t2/42*(1-t2/72)))
}

// Centroid returns the centre of the area inside; the zero point for an outline
// that encloses none.
func (o Outline) Centroid() Point {
	var sum Point
	area := 0.0
	o.each(func(from, to Point, bulge float64) {
		triangle := from.Cross(to) / 2
		area += triangle
		sum = sum.Add(from.Add(to).Times(triangle / 3))
		if bulge != 0 {
			c := sliceOf(from, to, bulge)
			area += c.area
			sum = sum.Add(c.centre.Times(c.area))
		}
	})
	if area == 0 {
		return Point{}
	}
	return sum.Times(1 / area)
}

// PolarMoment returns ∫ r² dA about the origin in mm⁴, signed as Area. A triangle
// with one corner at the origin has (p×q)(p² + p·q + q²)/12.
func (o Outline) PolarMoment() float64 {
	sum := 0.0
	o.each(func(p, q Point, bulge float64) {
		sum += p.Cross(q) * (p.Dot(p) + p.Dot(q) + q.Dot(q)) / 12
		if bulge != 0 {
			c := sliceOf(p, q, bulge)
			sum += c.polar + c.area*c.centre.Dot(c.centre)
		}
	})
	return sum
}
