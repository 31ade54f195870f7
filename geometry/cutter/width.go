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

// Depth is a line of the depth card.
type Depth struct {
	Infeed float64 // from first touch
	Left   float64 // still to go
	Land   float64 // arc length on the tip
	Change float64 // how much of the land the next 0.01 mm takes, or took at depth
}

// depthStep is the turn of the dial that the depth card gives the change for.
const depthStep = 0.01

// depthShares are the lines of the depth card, as what is still to go of the
// infeed: closer together near the end.
var depthShares = [...]float64{1, 0.5, 0.25, 0.1, 0.05, 0.025, 0.01, 0}

// Depths returns the depth card: land against infeed from first touch to depth,
// finer near the end.
func (c Cut) Depths() []Depth {
	var card []Depth
	for _, share := range depthShares {
		left := share * c.Infeed
		at := c.Infeed - left
		from := math.Max(math.Min(at, c.Infeed-depthStep), 0)
		change := c.LandAt(from) - c.LandAt(from+depthStep)
		card = append(card, Depth{at, left, math.Max(c.LandAt(at), 0), change})
	}
	return card
}

// Mirrored reports whether the form as it is drawn, looking at its rake face, is
// the mirror image of the tool frame. The tool frame is the view from the
// template's side of a wheel whose faces point clockwise. A rake face that enters
// from the template's side moves away from there, so that it is looked at from
// the other side of the wheel.
func Mirrored(hand string, entersFromBack bool) bool {
	return (hand != "anticlockwise") != entersFromBack
}
