package geometry

import (
	"errors"
	"fmt"
	"math"
)

// Inset returns the outlines of the points inside the outline that lie at least d
// from it, in lines and arcs: none, one or several. A negative d gives the
// outlines of the points within −d of the outline's inside; where that closes a
// gap, outlines that run the other way bound the holes. A corner that turns away
// from the offset is rolled round by an arc of radius |d|. The outline must be
// simple. Every point of the result lies at |d| from the outline within 1e-9 mm.
func (o Outline) Inset(d float64) ([]Outline, error) {
	if d == 0 {
		return []Outline{o}, nil
	}
	each := make([]float64, o.Len())
	for i := range each {
		each[i] = math.Abs(d)
	}
	return o.inset(each, d > 0)
}

// InsetEach returns the outlines of the points inside the outline that lie at
// least d[i] from segment i, for each i. The distances must not be negative; a
// segment whose distance is 0 stays where it is. Where neighbours differ, the
// larger distance is kept round the corner too.
func (o Outline) InsetEach(d []float64) ([]Outline, error) {
	if len(d) != o.Len() {
		return nil, fmt.Errorf("inset: %d distances for %d segments", len(d), o.Len())
	}
	for i, v := range d {
		if v < 0 {
			return nil, AtLeast(o.vertices[i].Quantity, v, 0, "geometry.inset-negative")
		}
	}
	return o.inset(d, true)
}

// nudge is by how much the distances are changed where an offset does not close
// because three or more of its pieces meet in one point, in millimetres: above
// the rounding of 1e-12 mm that makes them miss each other, and under 1e-9 mm.
const nudge = 2e-10

// inset returns the offset to the inside or to the outside by the distances.
func (o Outline) inset(d []float64, inward bool) ([]Outline, error) {
	for _, v := range d {
		if !finite(v) {
			return nil, errors.New("inset: the distance is no number")
		}
	}
	area := o.Area()
	if area == 0 {
		return nil, errors.New("inset: the outline encloses nothing")
	}
	if (area > 0) != inward {
		loops, err := o.Reverse().insetLeft(turned(d), inward)
		for i := range loops {
			loops[i] = loops[i].Reverse()
		}
		return loops, err
	}
	return o.insetLeft(d, inward)
}

// turned returns the distances for the outline run the other way.
func turned(d []float64) []float64 {
	n := len(d)
	out := make([]float64, n)
	for i := range d {
		out[i] = d[(2*n-2-i)%n]
	}
	return out
}

// insetLeft returns the loops of the offset to the left of an outline.
func (o Outline) insetLeft(d []float64, inward bool) ([]Outline, error) {
	var err error
	for _, change := range [...]float64{0, nudge, -nudge, 2 * nudge, -2 * nudge} {
		f := newOffset(o, d, change, inward)
		var loops []Outline
		if loops, err = f.loops(); err == nil {
			return loops, nil
		}
	}
	return nil, err
}
