package geometry

import "math"

// shallow is how many times one arc's radius must be another's for their meeting to
// be worked out from the larger one's start instead of from its centre: that centre
// then lies so far off that its rounding would show where the two touch.
const shallow = 100

// distant is the radius in millimetres from which an arc's meetings are worked out
// from its start: up to it, 1.1e-16 of the radius rounds no more than coordinates of
// MostLength do.
const distant = 5 * MostLength

// line returns the points that the arc's circle shares with the endless line through
// p in direction dir, as LineCircle.
func (c *curve) line(p, dir Point) (pts [2]Point, n int) {
	if c.radius <= distant {
		return LineCircle(p, dir, c.centre, c.radius)
	}
	return c.distantLine(p, dir)
}

// distantLine is LineCircle from the arc's start: with w the way from there to p and
// o that from the centre to the start, a point p + t·u lies on the circle where
// t² + 2t·u·(w + o) + w² + 2w·o = 0. How far the line stays off the circle, or
// reaches past it, is half of what is left under the root over the radius.
func (c *curve) distantLine(p, dir Point) (pts [2]Point, n int) {
	length := root(dir)
	if length == 0 {
		return pts, 0
	}
	u, w := dir.Times(1/length), p.Sub(c.From)
	half, power := u.Dot(w.Add(c.out)), w.Dot(w)+2*w.Dot(c.out)
	under := half*half - power
	switch past := under / (2 * c.radius); {
	case past < -onSegment:
		return pts, 0
	case past <= touching:
		return [2]Point{p.Add(u.Times(-half))}, 1
	}
	far := -half - math.Copysign(math.Sqrt(under), half) // the root that adds up
	t := [2]float64{far, power / far}
	if t[0] > t[1] {
		t[0], t[1] = t[1], t[0]
	}
	return [2]Point{p.Add(u.Times(t[0])), p.Add(u.Times(t[1]))}, 2
}

// distantMeet returns the points that two circles share, both worked out from their
// arcs' starts: they lie on the line that is left of one circle's equation when the
// other's is taken from it. That line crosses the smaller circle the more steeply, and
// is all but tangent to one that is far larger.
func (c *curve) distantMeet(r *curve) (pts [2]Point, n int) {
	if c.radius > r.radius {
		return r.distantMeet(c)
	}
	between := r.From.Sub(c.From)
	normal := between.Add(c.out).Sub(r.out)
	if normal == (Point{}) {
		return pts, 0
	}
	off := between.Dot(between)/2 - between.Dot(r.out)
	foot := c.From.Add(normal.Times(off / normal.Dot(normal)))
	return c.distantLine(foot, normal.Left())
}

// circles returns the points that the circles of two arcs share, as CircleCircle.
func (c *curve) circles(r *curve) (pts [2]Point, n int) {
	switch {
	case min(c.radius, r.radius) > distant:
		return c.distantMeet(r)
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
