package cutter

import (
	"math"

	"tipline/geometry"
)

// heel returns the form inset by a distance from its ground edges, but not from
// its stock sides and shank.
func (f Form) heel(inset float64) ([]geometry.Outline, error) {
	return nil, nil
}

// ground reports whether a segment of a form's edge is ground, and not the side
// of the stock.
func ground(g geometry.Segment) bool { return g.Quantity != StockWidth }

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

// sharpCorner is the turn below which neighbouring pieces of an edge count as
// tangent: an error of 1 µm over a piece 1 mm long.
const sharpCorner = 1e-3

// ConcaveCorners returns the corners of the edge that turn into the form, which
// no grinding wheel gets right into.
func (f Form) ConcaveCorners() []geometry.Point {
	var corners []geometry.Point
	for i := 1; i < f.Edge.Len(); i++ {
		in := leaving(f.Edge.Segment(i - 1).Reverse()).Times(-1)
		if out := leaving(f.Edge.Segment(i)); in.Cross(out) < -sharpCorner {
			corners = append(corners, f.Edge.Segment(i).From)
		}
	}
	return corners
}
