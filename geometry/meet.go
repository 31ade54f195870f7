package geometry

import "math"

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

// LineCircle returns where the endless line through p in direction dir meets the
// circle about c: 0, 1 (it touches) or 2 points, in order along dir.
func LineCircle(p, dir, c Point, r float64) (pts [2]Point, n int) {
	length := dir.Norm()
	if length == 0 {
		return pts, 0
	}
	u := dir.Times(1 / length)
	foot := p.Add(u.Times(c.Sub(p).Dot(u)))
	d := foot.Dist(c)
	switch {
	case d > r+onSegment:
		return pts, 0
	case d >= r:
		return [2]Point{foot}, 1
	}
	half := u.Times(math.Sqrt((r - d) * (r + d)))
	return [2]Point{foot.Sub(half), foot.Add(half)}, 2
}

// CircleCircle returns where two circles meet: 0, 1 (they touch) or 2 points.
// Equal circles meet in none.
func CircleCircle(c1 Point, r1 float64, c2 Point, r2 float64) (pts [2]Point, n int) {
	way := c2.Sub(c1)
	d := way.Norm()
	if d == 0 || d > r1+r2+onSegment || d < math.Abs(r1-r2)-onSegment {
		return pts, 0
	}
	u := way.Times(1 / d)
	along := (d + (r1-r2)*(r1+r2)/d) / 2
	foot := c1.Add(u.Times(along))
	h2 := (r1 - along) * (r1 + along)
	if h2 <= 0 {
		return [2]Point{foot}, 1
	}
	half := u.Left().Times(math.Sqrt(h2))
	return [2]Point{foot.Sub(half), foot.Add(half)}, 2
}

// Meet returns the points two segments share, ends included, in order along a.
// Segments that lie along each other share the ends of the stretch they have in
// common.
func Meet(a, b Segment) []Meeting {
	var pts [2]Point
	n := 0
	arcA, roundA := a.Arc()
	arcB, roundB := b.Arc()
	switch {
	case !roundA && !roundB:
		pts[0], n = lineLine(a, b)
	case !roundA:
		pts, n = LineCircle(a.From, a.To.Sub(a.From), arcB.Centre, arcB.Radius)
	case !roundB:
		pts, n = LineCircle(b.From, b.To.Sub(b.From), arcA.Centre, arcA.Radius)
	default:
		pts, n = CircleCircle(arcA.Centre, arcA.Radius, arcB.Centre, arcB.Radius)
	}
	if n == 0 {
		return along(a, b)
	}
	return onBoth(a, b, pts[:n])
}

// lineLine returns where the endless lines of two straight segments cross; none
// for parallel ones.
func lineLine(a, b Segment) (Point, int) {
	u, v := a.To.Sub(a.From), b.To.Sub(b.From)
	cross := u.Cross(v)
	if math.Abs(cross) <= 1e-14*u.Norm()*v.Norm() {
		return Point{}, 0
	}
	t := b.From.Sub(a.From).Cross(v) / cross
	return a.From.Add(u.Times(t)), 1
}

// onBoth keeps the points that lie on both segments.
func onBoth(a, b Segment, pts []Point) []Meeting {
	var ms []Meeting
	for _, p := range pts {
		onA, s := a.Nearest(p)
		onB, t := b.Nearest(p)
		if p.Dist(onA) <= onSegment && p.Dist(onB) <= onSegment {
			ms = append(ms, Meeting{p, s, t})
		}
	}
	if len(ms) == 2 && ms[0].S > ms[1].S {
		ms[0], ms[1] = ms[1], ms[0]
	}
	return ms
}

// along returns the ends of the stretch that two segments lie along each other,
// one where they share an end alone.
func along(a, b Segment) []Meeting {
	var ms []Meeting
	for _, p := range []Point{a.From, a.To, b.From, b.To} {
		fresh := onBoth(a, b, []Point{p})
		for _, m := range ms {
			if m.At.Dist(p) <= onSegment {
				fresh = nil
			}
		}
		ms = append(ms, fresh...)
	}
	return ms
}
