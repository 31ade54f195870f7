package cutter

import (
	"errors"
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// ErrSpace says that what was given as the edge of a space is none.
var ErrSpace = errors.New("cutter: a space's edge runs from one tooth tip down to the root and up to the next")

// Space works out the form that cuts a space known in advance, such as a
// cycloidal wheel's, fed in without set-over. The chain is the edge of one space
// in the wheel's coordinates, wheel's centre at the origin, from the tip of one
// tooth to the tip of the next, either way and at any place round the wheel;
// it must be alike on both sides of its middle. Above the tips the form goes on
// along the flanks' tangents. In the tool frame the form's middle is at x = 0.
// A stock width of 0 is no stock; a stock narrower than the space is a
// *geometry.Limit.
func Space(space geometry.Chain, count int, tipRadius, stockWidth float64) (Cut, error) {
	if count < fewestTeeth || count > mostTeeth {
		return Cut{}, geometry.Between(Count, float64(count), fewestTeeth, mostTeeth, "cutter.count")
	}
	if space.Len() < 1 || !(tipRadius > 0) || !(stockWidth >= 0) {
		return Cut{}, ErrSpace
	}
	edge := upright(space)
	height := edge.lowest()
	if height <= 0 || height >= tipRadius {
		return Cut{}, ErrSpace
	}
	edge = edge.moved(geometry.Point{Y: -height})
	width := edge[len(edge)-1].To.X - edge[0].From.X
	if stockWidth > 0 && width > stockWidth {
		return Cut{}, geometry.AtLeast(StockWidth, stockWidth, width, "cutter.form-wider-than-stock")
	}
	c := Cut{Count: count, TipRadius: tipRadius, swept: edge.produced(8 * tipRadius)}
	c.TouchHeight = c.swept.touch(0, tipRadius)
	c.Infeed = c.TouchHeight - height
	c.RootRadius = c.swept.nearest(0, height, tipRadius)
	if c.Land = c.LandAt(c.Infeed); c.Land < noLand {
		c.Land = 0
	}
	form, err := c.swept.formBetween(stockWidth, showAbove*(tipRadius-height))
	c.Form = form
	return c, err
}

// upright turns a space's edge so that its middle stands at 12 o'clock and it
// runs from left to right.
func upright(space geometry.Chain) sweep {
	first := space.Vertex(0).Direction()
	last := space.Vertex(space.Len()).Direction()
	if (last - first).Normal() > 0 {
		space = space.Reverse()
		first, last = last, first
	}
	middle := first + (last-first).Normal()/2
	space = space.Rotate(math.Pi/2 - middle)
	s := make(sweep, space.Len())
	for i := range s {
		s[i] = space.Segment(i)
	}
	return s
}

// lowest returns the least y of the edge.
func (s sweep) lowest() float64 {
	least := math.Inf(1)
	for _, g := range s {
		least = math.Min(least, math.Min(g.From.Y, g.To.Y))
		if a, ok := g.Arc(); ok && within(a, -math.Pi/2, 0) {
			least = math.Min(least, a.Centre.Y-a.Radius)
		}
	}
	return least
}

// nearest returns the edge's least distance from the wheel's centre (e, −h):
// the radius of the circle there that just touches it. The circle of radius most
// must reach it.
func (s sweep) nearest(e, h, most float64) float64 {
	return seek.Last(most, 0, 0, func(r float64) bool { return s.touch(e, r) >= h })
}

func (s sweep) moved(d geometry.Point) sweep {
	out := make(sweep, len(s))
	for i, g := range s {
		out[i] = g.Move(d)
	}
	return out
}

// mirrored swaps front and back.
func (s sweep) mirrored() sweep {
	out := make(sweep, len(s))
	for i, g := range s {
		out[len(s)-1-i] = g.Mirror().Reverse()
	}
	return out
}

// produced adds the tangents at both ends, each as long as reach; where an end
// does not rise, the line straight up.
func (s sweep) produced(reach float64) sweep {
	return s.producedBack(reach).mirrored().producedBack(reach).mirrored()
}

func (s sweep) producedBack(reach float64) sweep {
	g := s[len(s)-1]
	way := g.To.Sub(g.From)
	if a, ok := g.Arc(); ok {
		way = g.To.Sub(a.Centre).Left().Times(math.Copysign(1, float64(a.Sweep)))
	}
	way = way.Times(1 / way.Norm())
	if way.Y <= 0 {
		way = geometry.Point{Y: 1}
	}
	line := geometry.Segment{From: g.To, To: g.To.Add(way.Times(reach)), Quantity: g.Quantity}
	return append(s[:len(s):len(s)], line)
}

// formBetween cuts the edge off at both sides of a stock laid about x = 0, and
// at the top.
func (s sweep) formBetween(width, top float64) (Form, error) {
	s = s.narrowed(width / 2).lowered(top).mirrored()
	chain, err := s.narrowed(width / 2).lowered(top).mirrored().chain()
	return Form{Edge: chain, StockWidth: width, StockFront: -width / 2, Top: top}, err
}
