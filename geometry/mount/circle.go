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
// lacking can be skipped over. Where that would be a crawl a stride is taken
// instead, and narrowed down again at its end: only room narrower than a stride
// could be missed.
func nearest(edges []edge, needed need, from, to float64) (float64, bool) {
	stride := max(1e-6, math.Abs(to-from)/5000)
	for at, skipped := from, from; ; {
		spare := room(edges, needed, at)
		if spare >= -same {
			return narrowed(edges, needed, at, skipped), true
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

// narrowed halves the span between a radius with room and one up to which there is
// none, to a tenth of a nanometre.
func narrowed(edges []edge, needed need, good, bad float64) float64 {
	for math.Abs(good-bad) > same/10 {
		mid := good + (bad-good)/2
		if room(edges, needed, mid) >= -same {
			good = mid
		} else {
			bad = mid
		}
	}
	return good
}
