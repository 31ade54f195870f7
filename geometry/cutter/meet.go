package cutter

import "tipline/geometry"

// meet returns the points where two segments cross.
func meet(a, b geometry.Segment) (pts [2]geometry.Point, n int) {
	if arc, ok := b.Arc(); ok {
		all, k := crossings(a, arc.Centre, arc.Radius)
		for _, p := range all[:k] {
			if within(arc, p.Sub(arc.Centre).Direction(), edgeSlack) {
				pts[n] = p
				n++
			}
		}
		return pts, n
	}
	if _, ok := a.Arc(); ok {
		return meet(b, a)
	}
	u, v := a.To.Sub(a.From), b.To.Sub(b.From)
	d := u.Cross(v)
	if d == 0 {
		return pts, 0
	}
	w := b.From.Sub(a.From)
	s, t := w.Cross(v)/d, w.Cross(u)/d
	if s < 0 || s > 1 || t < 0 || t > 1 {
		return pts, 0
	}
	pts[0] = a.From.Toward(a.To, s)
	return pts, 1
}
