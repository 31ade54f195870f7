package geometry

import "math"

// Fillet returns the arc of the given radius that is tangent to a and to b near
// the corner where a ends and b starts, and the shares along each where it
// touches. Any two of line and arc will do. A radius too large to touch both is
// a Limit whose Max is the largest that does, to 1 µm; so is a corner that does
// not turn.
func Fillet(a, b Segment, radius float64) (arc Segment, s, t float64, err error) {
	if !finite(radius) || radius <= 0 {
		return Segment{}, 0, 0, AtLeast("", radius, 0, "fillet.radius")
	}
	if arc, s, t, ok := fillet(a, b, radius); ok {
		return arc, s, t, nil
	}
	return Segment{}, 0, 0, AtMost("", radius, largestFillet(a, b, radius), "fillet.too-large")
}

// filletStep is how finely the largest fillet is found, in millimetres.
const filletStep = 1e-6

// largestFillet closes in on the largest radius below one that does not fit.
func largestFillet(a, b Segment, high float64) float64 {
	low := 0.0
	for high-low > filletStep {
		mid := (low + high) / 2
		if _, _, _, ok := fillet(a, b, mid); ok {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

func fillet(a, b Segment, radius float64) (arc Segment, s, t float64, ok bool) {
	u, v := a.Tangent(1), b.Tangent(0)
	if u.Cross(v) < 0 {
		arc, t, s, ok = filletLeft(b.Reverse(), a.Reverse(), radius)
		return arc.Reverse(), 1 - s, 1 - t, ok
	}
	return filletLeft(a, b, radius)
}

// filletLeft is fillet for a corner that turns left: the centre lies where both
// segments moved left by the radius meet.
func filletLeft(a, b Segment, radius float64) (arc Segment, s, t float64, ok bool) {
	centres, n := carriersMeet(a, b, radius)
	least := math.Inf(1)
	for _, c := range centres[:n] {
		p, onA, okA := touch(a, c)
		q, onB, okB := touch(b, c)
		if !okA || !okB || c.Dist(a.To) >= least {
			continue
		}
		from, to := a.Tangent(onA), b.Tangent(onB)
		sweep := math.Atan2(from.Cross(to), from.Dot(to))
		if sweep <= 0 {
			continue
		}
		least, s, t, ok = c.Dist(a.To), onA, onB, true
		arc = Segment{From: p, To: q, Bulge: math.Tan(sweep / 4)}
	}
	return arc, s, t, ok
}

// touch returns the point of a segment at which a circle about c is tangent to
// it; false when that lies beyond its ends.
func touch(s Segment, c Point) (Point, float64, bool) {
	var p Point
	if a, round := s.Arc(); round {
		way := c.Sub(a.Centre)
		if way.Norm() == 0 {
			return p, 0, false
		}
		p = a.Centre.Add(way.Times(a.Radius / way.Norm()))
	} else {
		d := s.To.Sub(s.From)
		p = s.From.Add(d.Times(c.Sub(s.From).Dot(d) / d.Dot(d)))
	}
	q, t := s.Nearest(p)
	return q, t, p.Dist(q) <= onSegment
}

// carriersMeet returns where the endless lines and whole circles that carry two
// segments meet once both are moved left by d.
func carriersMeet(a, b Segment, d float64) (pts [2]Point, n int) {
	arcA, roundA := a.Arc()
	arcB, roundB := b.Arc()
	rA, rB := arcA.movedRadius(d), arcB.movedRadius(d)
	if (roundA && rA <= 0) || (roundB && rB <= 0) {
		return pts, 0
	}
	switch {
	case roundA && roundB:
		return CircleCircle(arcA.Centre, rA, arcB.Centre, rB)
	case roundA:
		return LineCircle(b.From.Add(b.Tangent(0).Left().Times(d)), b.To.Sub(b.From), arcA.Centre, rA)
	case roundB:
		return LineCircle(a.From.Add(a.Tangent(0).Left().Times(d)), a.To.Sub(a.From), arcB.Centre, rB)
	}
	moved := a.Tangent(0).Left().Times(d)
	pts[0], n = lineLine(a.Move(moved), b.Move(b.Tangent(0).Left().Times(d)))
	return pts, n
}

// movedRadius returns the arc's radius once it is moved left by d; not positive
// when nothing is left.
func (a Arc) movedRadius(d float64) float64 {
	if a.Sweep > 0 {
		return a.Radius - d
	}
	return a.Radius + d
}

// Round returns the outline with the corner at a vertex rounded by an arc of the
// radius tangent to both its neighbours, made by q. A radius that does not fit is
// a Limit of q.
func (o Outline) Round(corner int, radius float64, q Quantity) (Outline, error) {
	n := o.Len()
	i := (corner%n + n) % n
	before, after := o.Segment(i-1), o.Segment(i)
	arc, s, t, err := Fillet(before, after, radius)
	if err != nil {
		limit := *err.(*Limit)
		limit.Quantity = q
		return Outline{}, &limit
	}
	var vs []Vertex
	for k := range n {
		vs = append(vs, o.vertices[k])
	}
	vs[(i+n-1)%n].Bulge = before.Part(0, s).Bulge
	rest := after.Part(t, 1)
	vs[i] = Vertex{arc.From, arc.Bulge, q}
	vs = append(vs[:i+1], append([]Vertex{{arc.To, rest.Bulge, rest.Quantity}}, vs[i+1:]...)...)
	return NewOutline(tidied(vs))
}

// tidied drops vertices that coincide with the next, where a fillet has used up a
// whole segment.
func tidied(vs []Vertex) []Vertex {
	var out []Vertex
	for i, v := range vs {
		if v.Point.Dist(vs[(i+1)%len(vs)].Point) > onSegment {
			out = append(out, v)
		}
	}
	return out
}
