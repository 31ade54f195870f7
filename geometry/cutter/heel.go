package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// heel returns the form inset by a distance from its ground edges, but not from
// its stock sides and shank. The facets are carried on beyond the stock and the
// top by as much as all of it is then inset.
func (c Cut) heel(inset float64) ([]geometry.Outline, error) {
	edge := c.grownBy(inset)
	chain, err := edge.chain()
	if err != nil {
		return nil, err
	}
	grown, err := Form{Edge: chain}.Outline()
	if err != nil {
		return nil, err
	}
	return grown.Inset(inset)
}

// grownBy returns the form's edge as it would be on a stock that much wider, on
// each side that is not ground, and that much taller.
func (c Cut) grownBy(more float64) sweep {
	f := c.Form
	top := f.Top + more
	front := f.Edge.Segment(0)
	if front.Quantity != FrontRelief {
		before, behind := math.Inf(1), math.Inf(1)
		if f.StockWidth > 0 {
			before, behind = more-f.StockFront, more+f.StockFront+f.StockWidth
		}
		back := c.edge().narrowed(behind).lowered(top).mirrored()
		return back.narrowed(before).lowered(top).mirrored()
	}
	width := 0.0
	if f.StockWidth > 0 {
		width = f.StockFront + f.StockWidth + more
	}
	under := c.edge().narrowed(width)
	way := front.From.Sub(front.To)
	lean := way.X / way.Y
	apart := func(y float64) bool { return front.To.X+(y-front.To.Y)*lean < under.backAt(y)-leastShank }
	if !apart(top) {
		top = seek.Last(f.Top, top, 0, apart)
	}
	front.From = front.To.Add(geometry.Point{X: (top - front.To.Y) * lean, Y: top - front.To.Y})
	edge := append(sweep{front}, under[1:].lowered(top)...)
	if corner := f.Edge.Segment(1); corner.Quantity == CornerRadius {
		edge[1] = corner
	}
	return edge
}

// SmallestConcave returns the least radius of the concave arcs of the ground
// edge, which the grinding wheel's edge must get into; 0 when there are none.
func (f Form) SmallestConcave() float64 {
	least := math.Inf(1)
	for i := range f.Edge.Len() {
		if a, ok := f.Edge.Segment(i).Arc(); ok && a.Sweep < 0 {
			least = math.Min(least, a.Radius)
		}
	}
	if math.IsInf(least, 1) {
		return 0
	}
	return least
}

// Hollow is a concave arc of a form's edge.
type Hollow struct {
	Radius   float64
	At       geometry.Point    // its middle
	Quantity geometry.Quantity // the field that made it; empty where none did
}

// TooHollow returns the concave arcs of the edge whose radius is less than that
// of the grinding wheel's edge, which cannot get into them. A convex arc has no
// such bound: any wheel's edge goes round the outside of it.
func (f Form) TooHollow(wheelEdge float64) []Hollow {
	var list []Hollow
	for i := range f.Edge.Len() {
		g := f.Edge.Segment(i)
		if a, ok := g.Arc(); ok && a.Sweep < 0 && a.Radius < wheelEdge {
			list = append(list, Hollow{a.Radius, a.At(0.5), g.Quantity})
		}
	}
	return list
}
