package mount

import (
	"math"

	"tipline/geometry/internal/seek"
)

// need is how far an edge must be from a screw's centre.
type need func(edge) float64

// hole asks that the hole stays whole.
func hole(e edge) float64 { return e.hole }

// room returns how much a circle of that radius has to spare over what is needed
// of every edge; negative where an edge is too near. It changes by no more than
// the radius does.
func room(edges []edge, needed need, radius float64) float64 {
	spare := math.Inf(1)
	for _, e := range edges {
		spare = min(spare, e.slack(radius, needed(e)))
	}
	return spare
}

// mostStrides is into how many strides the way to another radius is cut at most, and
// leastStride, in mm, how short they get: far under what is drilled to.
const (
	mostStrides = 5000
	leastStride = 1e-6
)

// nearest returns the radius nearest to from, on the way to to, that has room;
// false where none has. As room changes by no more than the radius, what is
// lacking can be skipped over. Where that would be a crawl a stride is taken
// instead, and narrowed down again at its end: only room narrower than a stride
// could be missed.
func nearest(edges []edge, needed need, from, to float64) (float64, bool) {
	fits := func(radius float64) bool { return room(edges, needed, radius) >= -same }
	stride := max(leastStride, math.Abs(to-from)/mostStrides)
	for at, skipped := from, from; ; {
		spare := room(edges, needed, at)
		if spare >= -same {
			return seek.Last(at, skipped, same/10, fits), true
		}
		if at == to {
			return 0, false
		}
		skipped = towards(at, to, -spare)
		at = towards(at, to, max(-spare, stride))
	}
}

// towards returns what lies a step from at, no farther than to.
func towards(at, to, step float64) float64 {
	if math.Abs(to-at) <= step {
		return to
	}
	return at + math.Copysign(step, to-at)
}
