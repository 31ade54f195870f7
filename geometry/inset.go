package geometry

import (
	"errors"
	"math"
)

// Inset returns the outlines of the points inside the outline that lie at least d
// from it, in lines and arcs: none, one or several. A negative d gives the
// outlines of the points within −d of the outline's inside; where that closes a
// gap, outlines that run the other way bound the holes. A corner that turns away
// from the offset is rolled round by an arc of radius |d|. The outline must be
// simple, and neither it nor d may reach beyond 10 m. Every point of the result
// lies at |d| from the outline within 1e-9 mm.
func (o Outline) Inset(d float64) ([]Outline, error) {
	if d == 0 {
		return []Outline{o}, nil
	}
	area := o.Area()
	switch {
	case !finite(d):
		return nil, errors.New("inset: the distance is no number")
	case math.Abs(d) > distant || !(Box{Point{-distant, -distant}, Point{distant, distant}}).holds(o.Bounds()):
		return nil, errors.New("inset: beyond 10 m coordinates are not to be relied on")
	case area == 0:
		return nil, errors.New("inset: the outline encloses nothing")
	case (area > 0) == (d > 0):
		return o.insetLeft(math.Abs(d), d > 0)
	}
	loops, err := o.Reverse().insetLeft(math.Abs(d), d > 0)
	for i := range loops {
		loops[i] = loops[i].Reverse()
	}
	return loops, err
}

// nudge is by how much the distance is changed where an offset does not close
// because three or more of its pieces meet in one point, in millimetres: above
// the rounding of 1e-12 mm that makes them miss each other, and under 1e-9 mm.
const nudge = 2e-10

// insetLeft returns the loops of the offset to the left of an outline.
func (o Outline) insetLeft(d float64, inward bool) ([]Outline, error) {
	source := newTree(o.curves())
	var err error
	for _, change := range [...]float64{0, nudge, -nudge, 2 * nudge, -2 * nudge} {
		f := newOffset(source, math.Max(0, d+change), inward)
		var loops []Outline
		if loops, err = f.loops(); err == nil {
			return loops, nil
		}
	}
	return nil, err
}
