package cutter

import (
	"math"

	"tipline/geometry"
)

// Width returns the x of the form's front and back edge at a height over its
// lowest point, and false above its top or where it has no width.
func (f Form) Width(height float64) (front, back float64, ok bool) {
	front, back = math.Inf(1), math.Inf(-1)
	for i := range f.Edge.Len() {
		g := f.Edge.Segment(i)
		pts, n := atHeight(g, height)
		for _, x := range pts[:n] {
			front, back = math.Min(front, x), math.Max(back, x)
		}
	}
	return front, back, front < back && height <= f.Top
}

// atHeight returns the x, at most two, where a segment is at a height.
func atHeight(g geometry.Segment, y float64) (xs [2]float64, n int) {
	a, ok := g.Arc()
	if !ok {
		if y < math.Min(g.From.Y, g.To.Y) || y > math.Max(g.From.Y, g.To.Y) {
			return xs, 0
		}
		if g.From.Y == g.To.Y {
			return [2]float64{g.From.X, g.To.X}, 2
		}
		return [2]float64{g.From.Toward(g.To, (y-g.From.Y)/(g.To.Y-g.From.Y)).X}, 1
	}
	h := (y - a.Centre.Y) / a.Radius
	if math.Abs(h) > 1 {
		return xs, 0
	}
	w := geometry.Angle(math.Asin(h))
	for _, way := range [2]geometry.Angle{w, math.Pi - w} {
		if within(a, way, edgeSlack) {
			xs[n] = a.Centre.X + a.Radius*math.Cos(float64(way))
			n++
		}
	}
	return xs, n
}
