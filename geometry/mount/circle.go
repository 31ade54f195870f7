package mount

import "math"

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

// nearest returns the radius nearest to from, on the way to to, that has room;
// false where none has. As room changes by no more than the radius, what is
// lacking can be skipped, so that nothing with room is passed over but a gap
// narrower than a stride; the end is narrowed down to a picometre.
func nearest(edges []edge, needed need, from, to float64) (float64, bool) {
	stride := max(1e-6, math.Abs(to-from)/5000)
	for at, bad := from, from; ; {
		spare := room(edges, needed, at)
		if spare >= -same {
			return narrowed(edges, needed, at, bad), true
		}
		if at == to {
			return 0, false
		}
		bad = at
		if step := max(-spare, stride); math.Abs(to-at) <= step {
			at = to
		} else {
			at += math.Copysign(step, to-at)
		}
	}
}

// narrowed halves the span between a radius with room and one without until they
// are a picometre apart.
func narrowed(edges []edge, needed need, good, bad float64) float64 {
	for math.Abs(good-bad) > 1e-12 {
		mid := good + (bad-good)/2
		if mid == good || mid == bad {
			break
		}
		if room(edges, needed, mid) >= -same {
			good = mid
		} else {
			bad = mid
		}
	}
	return good
}
