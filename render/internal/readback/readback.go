// Package readback makes the outlines that the writers' fuzz tests put into a file,
// and says which of them must come back.
package readback

import (
	"tipline/geometry"
	"tipline/render"
)

// mostOnPaper is farther than any sheet reaches and larger than any arc on it, in
// millimetres.
const mostOnPaper = 1e4

// Triangle returns the outline of three segments, lines or arcs, and false for
// numbers that form none.
func Triangle(ax, ay, ab, bx, by, bb, cx, cy, cb float64) (geometry.Outline, bool) {
	o, err := geometry.NewOutline([]geometry.Vertex{
		{Point: geometry.Point{X: ax, Y: ay}, Bulge: ab},
		{Point: geometry.Point{X: bx, Y: by}, Bulge: bb},
		{Point: geometry.Point{X: cx, Y: cy}, Bulge: cb},
	})
	return o, err == nil
}

// OnPaper reports whether a sheet could hold the outline: then a file keeps it to
// 1 µm, and what is larger may be refused or coarse.
func OnPaper(o geometry.Outline) bool {
	for i := range o.Len() {
		s := o.Segment(i)
		a, curved := s.Arc()
		if s.From.Norm() > mostOnPaper || curved && !render.Flat(s) && !(a.Radius < mostOnPaper) {
			return false
		}
	}
	return o.Len() > 0
}
