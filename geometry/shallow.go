package geometry

import "math"

// shallow is how many times one arc's radius must be another's for their meeting to
// be worked out from the larger one's start instead of from its centre: that centre
// then lies so far off that its rounding would show where the two touch.
const shallow = 100

// circles returns the points that the circles of two arcs share, as CircleCircle.
func (c *curve) circles(r *curve) (pts [2]Point, n int) {
	switch {
	case c.radius > shallow*r.radius:
		return c.shallowMeet(r)
	case r.radius > shallow*c.radius:
		return r.shallowMeet(c)
	}
	return CircleCircle(c.centre, c.radius, r.centre, r.radius)
}

// shallowMeet returns the points that the circle of a much larger arc shares with
// that of a smaller one. With h the height of the small centre over the large circle
// of radius R, its distance from the large centre is R + h; what CircleCircle takes
// from differences of distances is here taken from h.
func (c *curve) shallowMeet(small *curve) (pts [2]Point, n int) {
	h, r := c.height(small.centre), small.radius
	if math.Abs(h) > r+onSegment {
		return pts, 0
	}
	way := small.centre.Sub(c.From).Add(c.out)
	u := way.Times(-1 / root(way))
	if math.Abs(h) >= r-touching {
		return [2]Point{small.centre.Add(u.Times(math.Copysign(r, h)))}, 1
	}
	along := (h*(2*c.radius+h) + r*r) / (2 * (c.radius + h))
	foot := small.centre.Add(u.Times(along))
	half := u.Left().Times(math.Sqrt(math.Max(0, (r-along)*(r+along))))
	return [2]Point{foot.Sub(half), foot.Add(half)}, 2
}
