package geometry

import (
	"cmp"
	"math"
	"slices"
)

// Meeting is a point that two segments share, with its share along each.
type Meeting struct {
	At   Point
	S, T float64
}

// onSegment is how far past its end, in millimetres, a meeting point may lie and
// still count as on a segment: rounding in coordinates up to 2,000 mm moves an
// intersection by some 1e-12 mm, times up to a thousand for curves that meet at
// a shallow angle.
const onSegment = 1e-9

// touching is how far, in millimetres, a line or circle may reach past another
// and still be taken to touch it in one point: rounding in distances between
// coordinates up to 2,000 mm, each to 2.3e-13 mm, adds up to some 1e-12 mm.
const touching = 1e-11

// LineCircle returns where the endless line through p in direction dir meets the
// circle about c: 0, 1 (it touches) or 2 points, in order along dir.
func LineCircle(p, dir, c Point, r float64) (pts [2]Point, n int) {
	length := dir.Norm()
	if length == 0 {
		return pts, 0
	}
	u := dir.Times(1 / length)
	foot := p.Add(u.Times(c.Sub(p).Dot(u)))
	d := math.Abs(u.Cross(c.Sub(p)))
	switch {
	case d > r+onSegment:
		return pts, 0
	case d >= r-touching:
		return [2]Point{foot}, 1
	}
	half := u.Times(math.Sqrt((r - d) * (r + d)))
	return [2]Point{foot.Sub(half), foot.Add(half)}, 2
}

// CircleCircle returns where two circles meet: 0, 1 (they touch) or 2 points, the
// first to the right of the way from c1 to c2. Circles that coincide within
// 1e-9 mm meet in none.
func CircleCircle(c1 Point, r1 float64, c2 Point, r2 float64) (pts [2]Point, n int) {
	way := c2.Sub(c1)
	d := way.Norm()
	apart, within := d-(r1+r2), math.Abs(r1-r2)-d
	if d+math.Abs(r1-r2) <= onSegment || apart > onSegment || within > onSegment {
		return pts, 0
	}
	if r1 > r2 { // the small circle's half chord keeps its digits
		pts, n = CircleCircle(c2, r2, c1, r1)
		if n == 2 {
			pts[0], pts[1] = pts[1], pts[0]
		}
		return pts, n
	}
	u := way.Times(1 / d)
	along := ((d-r2)*(d+r2) + r1*r1) / (2 * d)
	if apart >= -touching || within >= -touching {
		return [2]Point{c1.Add(u.Times(math.Copysign(r1, along)))}, 1
	}
	foot := c1.Add(u.Times(along))
	half := u.Left().Times(math.Sqrt(math.Max(0, (r1-along)*(r1+along))))
	return [2]Point{foot.Sub(half), foot.Add(half)}, 2
}

// Meet returns the points two segments share, ends included, in order along a.
// Segments that lie along each other share the ends of the stretch they have in
// common.
func Meet(a, b Segment) []Meeting {
	ca, cb := newCurve(a), newCurve(b)
	pts, n := meet(&ca, &cb)
	var ms []Meeting
	for _, p := range pts[:n] {
		ms = append(ms, Meeting{p, ca.share(p), cb.share(p)})
	}
	slices.SortFunc(ms, func(m, k Meeting) int { return cmp.Compare(m.S, k.S) })
	return ms
}

// meet returns the points two curves share, as Meet.
func meet(a, b *curve) (pts [4]Point, n int) {
	if !a.box.Touches(b.box) {
		return pts, 0
	}
	found, k := a.crossings(b)
	if k == 0 {
		return along(a, b)
	}
	for _, p := range found[:k] {
		if a.holds(p) && b.holds(p) {
			pts[n] = p
			n++
		}
	}
	return pts, n
}

// crossings returns where the endless lines or circles of two curves cross.
func (c *curve) crossings(r *curve) (pts [2]Point, n int) {
	switch {
	case !c.round && !r.round:
		pts[0], n = lineLine(c, r)
		return pts, n
	case !c.round:
		return r.line(c.From, c.To.Sub(c.From))
	case !r.round:
		return c.line(r.From, r.To.Sub(r.From))
	}
	return c.circles(r)
}

// lineLine returns where the endless lines of two straight segments cross; none
// for parallel ones and for ones that lie along each other.
func lineLine(a, b *curve) (Point, int) {
	u, v := a.To.Sub(a.From), b.To.Sub(b.From)
	way := b.From.Sub(a.From)
	cross, length := u.Cross(v), root(u)
	off := math.Max(math.Abs(u.Cross(way)), math.Abs(u.Cross(b.To.Sub(a.From)))) / length
	if off <= onSegment || math.Abs(cross) <= 1e-14*length*root(v) {
		return Point{}, 0
	}
	return a.From.Add(u.Times(way.Cross(v) / cross)), 1
}

// along returns the ends of the stretch that two segments lie along each other,
// one where they share an end alone.
func along(a, b *curve) (pts [4]Point, n int) {
	add := func(p Point, on *curve) {
		for _, q := range pts[:n] {
			if p.near(q) {
				return
			}
		}
		if on.dist(p) <= onSegment {
			pts[n] = p
			n++
		}
	}
	add(a.From, b)
	add(a.To, b)
	add(b.From, a)
	add(b.To, a)
	return pts, n
}
