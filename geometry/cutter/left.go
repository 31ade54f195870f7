package cutter

import (
	"errors"
	"math"

	"tipline/geometry"
)

// space returns what the edge cuts out of the blank: from the outermost crossing
// of the tip circle at the front, down to the root, and up to the outermost one
// at the back, with the wheel's centre at the origin and the infeed downwards.
// It is nil where edge and circle do not cross twice.
func (s sweep) space(e, h, r float64) sweep {
	centre := geometry.Point{X: e, Y: -h}
	_, first, last := s.spread(e, h, r)
	if last <= first {
		return nil
	}
	from := s.crossing(centre, r, first)
	to := s.crossing(centre, r, last)
	var out sweep
	for i := from.piece; i <= to.piece; i++ {
		g := s[i]
		if i == to.piece {
			g = endingAt(g, to.at)
		}
		if i == from.piece {
			g = endingAt(g.Reverse(), from.at).Reverse()
		}
		if g.From.Dist(g.To) > coincide {
			out = append(out, g.Move(geometry.Point{X: -e, Y: h}))
		}
	}
	for i := 1; i < len(out); i++ {
		out[i].From = out[i-1].To
	}
	return out
}

// place is a point of an edge and the piece it lies on.
type place struct {
	piece int
	at    geometry.Point
}

// crossing finds the place where the edge crosses the circle in the direction
// that spread found.
func (s sweep) crossing(centre geometry.Point, r, angle float64) place {
	best, off := place{}, math.Inf(1)
	for i, g := range s {
		pts, n := crossings(g, centre, r)
		for _, p := range pts[:n] {
			if d := math.Abs(math.Atan2(p.X-centre.X, p.Y-centre.Y) - angle); d < off {
				best, off = place{i, p}, d
			}
		}
	}
	return best
}

// LandAt returns the arc left on the tip at an infeed, R(2π/N − ψ), where ψ
// spans the outermost crossings of the form and the tip circle: the whole pitch
// at first touch, less the further the bit is fed, and negative where the teeth
// have grown shorter.
func (c Cut) LandAt(infeed float64) float64 {
	psi, _, _ := c.edge().spread(c.SetOver, c.TouchHeight-infeed, c.TipRadius)
	return c.TipRadius * (2*math.Pi/float64(c.Count) - psi)
}

// edge returns the swept edge, from the form itself where the cut was not made
// here.
func (c Cut) edge() sweep {
	if c.swept != nil {
		return c.swept
	}
	s := make(sweep, c.Form.Edge.Len())
	for i := range s {
		s[i] = c.Form.Edge.Segment(i)
	}
	return s
}

// ErrNoSpace says that a form at its depth cuts nothing out of the blank.
var ErrNoSpace = errors.New("cutter: at this depth the form does not cross the tip circle twice")

// Space returns the edge of what the form leaves at depth, between neighbouring
// teeth: from the front tip F at 12 o'clock, which belongs to the acting face of
// the tooth before it, clockwise to the back tip B of the next. Its coordinates
// are the wheel's, the wheel's centre at the origin.
func (c Cut) Space() (geometry.Chain, error) {
	s := c.edge().space(c.SetOver, c.Height(), c.TipRadius)
	if s == nil {
		return geometry.Chain{}, ErrNoSpace
	}
	chain, err := s.chain()
	if err != nil {
		return geometry.Chain{}, err
	}
	tip := chain.Vertex(0).Direction() - math.Pi/2
	return chain.Rotate(-tip), nil
}
