package cutter

import "tipline/geometry"

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
