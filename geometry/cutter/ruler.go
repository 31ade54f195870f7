package cutter

import (
	"math"

	"tipline/geometry"
)

// ruler measures how far points lie from an edge, and on which side of it.
type ruler struct {
	pieces []measured
	over   graph // the edge as heights
}

// measured is a piece of an edge made ready for many questions.
type measured struct {
	from, to, centre geometry.Point
	radius, bulge    float64
	flank            bool // it is not part of a floor
	box              geometry.Box
}

// ruler returns the swept edge as a ruler; flank says which pieces are flanks.
func (s sweep) ruler(flank func(geometry.Segment) bool) ruler {
	r := ruler{make([]measured, len(s)), s.inset(nil, 0)}
	for i, g := range s {
		a, _ := g.Arc()
		r.pieces[i] = measured{g.From, g.To, a.Centre, a.Radius, g.Bulge, flank(g), g.Bounds()}
	}
	return r
}

// dist returns the distance of p from the edge and whether a flank is nearest; at
// the corner where it meets the floor it is as near as that, and is not.
func (r ruler) dist(p geometry.Point) (d float64, flank bool) {
	flanks, floors := math.Inf(1), math.Inf(1)
	for i := range r.pieces {
		m := &r.pieces[i]
		least := &floors
		if m.flank {
			least = &flanks
		}
		if !m.beyond(p, *least) {
			*least = min(*least, m.dist(p))
		}
	}
	return min(flanks, floors), flanks < floors-coincide
}

// cutAway reports whether p lies above the edge, where the form has been.
func (r ruler) cutAway(p geometry.Point) bool { return p.Y > r.over.lowest(p.X) }

// beyond reports whether the piece's box is at least d from p.
func (m *measured) beyond(p geometry.Point, d float64) bool {
	x := max(m.box.Min.X-p.X, p.X-m.box.Max.X, 0)
	y := max(m.box.Min.Y-p.Y, p.Y-m.box.Max.Y, 0)
	return x*x+y*y >= d*d
}

func (m *measured) dist(p geometry.Point) float64 {
	chord, way := m.to.Sub(m.from), p.Sub(m.from)
	if m.bulge == 0 {
		t := way.Dot(chord) / chord.Dot(chord)
		off := way.Sub(chord.Times(min(1, max(0, t))))
		return math.Sqrt(off.Dot(off))
	}
	out := p.Sub(m.centre)
	length := math.Sqrt(out.Dot(out))
	// The arc lies on one side of its chord, and so does its point nearest to p.
	foot := m.centre.Add(out.Times(m.radius / length))
	if length > 0 && chord.Cross(foot.Sub(m.from))*m.bulge <= 0 {
		return math.Abs(length - m.radius)
	}
	back := p.Sub(m.to)
	return math.Sqrt(min(way.Dot(way), back.Dot(back)))
}
