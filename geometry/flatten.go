package geometry

import "math"

// Flatten appends to dst points along the segment after its start, its end last,
// such that the straight pieces between them lie within tolerance of it.
func (s Segment) Flatten(dst []Point, tolerance float64) []Point {
	if a, ok := s.Arc(); ok {
		n := pieces(a, tolerance)
		for i := 1; i < n; i++ {
			dst = append(dst, a.At(float64(i)/float64(n)))
		}
	}
	return append(dst, s.To)
}

// pieces returns into how many chords an arc is cut so that none is further than
// tolerance from it: the sagitta of a chord of angle 2δ is r(1 − cos δ).
func pieces(a Arc, tolerance float64) int {
	if tolerance >= a.Radius {
		return max(1, int(math.Ceil(math.Abs(float64(a.Sweep))/(math.Pi/2))))
	}
	step := 2 * math.Acos(1-tolerance/a.Radius)
	return max(1, int(math.Ceil(math.Abs(float64(a.Sweep))/step)))
}

// Flatten returns the corners of a polygon within tolerance of the outline.
func (o Outline) Flatten(tolerance float64) []Point {
	var ps []Point
	for i := range o.Len() {
		ps = o.Segment(i).Flatten(ps, tolerance)
	}
	return ps
}

// Flatten returns the corners of a polyline within tolerance of the chain.
func (c Chain) Flatten(tolerance float64) []Point {
	if c.Len() == 0 {
		return nil
	}
	ps := []Point{c.vertices[0].Point}
	for i := range c.Len() {
		ps = c.Segment(i).Flatten(ps, tolerance)
	}
	return ps
}
