package geometry

import "math"

// Area returns the area inside, positive when the outline runs anticlockwise.
//
// Green's theorem over each segment: the triangle from the origin to its chord,
// and for an arc the circular segment between chord and arc.
func (o Outline) Area() float64 {
	sum := 0.0
	for i := range o.Len() {
		s := o.Segment(i)
		sum += s.From.Cross(s.To) / 2
		if a, ok := s.Arc(); ok {
			sum += a.segmentArea()
		}
	}
	return sum
}

// segmentArea returns the signed area between chord and arc, r²(θ − sin θ)/2.
func (a Arc) segmentArea() float64 {
	return a.Radius * a.Radius * float64(overSine(a.Sweep)) / 2
}

// overSine returns θ − sin θ without loss for a small θ.
func overSine(theta Angle) Angle {
	t := float64(theta)
	if math.Abs(t) < 0.02 {
		return Angle(t * t * t / 6 * (1 - t*t/20*(1-t*t/42)))
	}
	return Angle(t - math.Sin(t))
}

// Centroid returns the centre of the area inside; the zero point for an outline
// that encloses none.
func (o Outline) Centroid() Point {
	area := o.Area()
	if area == 0 {
		return Point{}
	}
	var sum Point
	for i := range o.Len() {
		s := o.Segment(i)
		sum = sum.Add(s.From.Add(s.To).Times(s.From.Cross(s.To) / 6))
		if a, ok := s.Arc(); ok {
			sum = sum.Add(a.segmentCentroid().Times(a.segmentArea()))
		}
	}
	return sum.Times(1 / area)
}

// segmentCentroid returns the centroid of the circular segment: it lies
// 4r sin³(θ/2) / 3(θ − sin θ) from the centre, towards the middle of the arc.
func (a Arc) segmentCentroid() Point {
	t := float64(a.Sweep)
	half := math.Sin(t / 2)
	d := 4 * a.Radius * half * half * half / (3 * float64(overSine(a.Sweep)))
	return a.Centre.Add(Polar(d, a.Start+a.Sweep/2))
}

// PolarMoment returns ∫ r² dA about the origin in mm⁴, signed as Area.
//
// A triangle with one corner at the origin has (p×q)(p² + p·q + q²)/12. A circular
// segment has r⁴/4·(θ − sin θ·(2 + cos θ)/3) about its circle's centre (the sector's
// r⁴θ/4 less its triangle's), carried to the origin by the parallel axis theorem.
func (o Outline) PolarMoment() float64 {
	sum := 0.0
	for i := range o.Len() {
		s := o.Segment(i)
		p, q := s.From, s.To
		sum += p.Cross(q) * (p.Dot(p) + p.Dot(q) + q.Dot(q)) / 12
		if a, ok := s.Arc(); ok {
			sum += a.segmentMoment()
		}
	}
	return sum
}

// segmentMoment returns the polar moment of the circular segment about the
// origin.
func (a Arc) segmentMoment() float64 {
	sin, cos := math.Sincos(float64(a.Sweep))
	r2 := a.Radius * a.Radius
	centre := r2 * r2 / 4 * (float64(overSine(a.Sweep)) + sin*(1-cos)/3)
	area := a.segmentArea()
	g := a.segmentCentroid()
	own := centre - area*g.Sub(a.Centre).Dot(g.Sub(a.Centre))
	return own + area*g.Dot(g)
}
