package geometry

import "math"

// Contains reports whether p lies inside the outline, by how often the outline
// turns round it; a point on the outline may be told either way.
func (o Outline) Contains(p Point) bool { return o.Winding(p) != 0 }

// Winding returns how many times the outline turns anticlockwise round p. It is
// counted exactly: the crossings of a ray to the right of p with each line and
// arc, an upward one +1, a downward one −1.
func (o Outline) Winding(p Point) int {
	n := 0
	for i := range o.Len() {
		s := o.Segment(i)
		n += rayCrossings(s.From, s.To, p)
		if s.Bulge != 0 {
			n += bulgeTurns(s, p)
		}
	}
	return n
}

// rayCrossings counts the chord's crossing of the ray to the right of p.
func rayCrossings(from, to, p Point) int {
	side := to.Sub(from).Cross(p.Sub(from))
	switch {
	case from.Y <= p.Y && to.Y > p.Y && side > 0:
		return 1
	case from.Y > p.Y && to.Y <= p.Y && side < 0:
		return -1
	}
	return 0
}

// bulgeTurns counts the turns round p of the circular segment between an arc and
// its chord: one where p lies inside it.
func bulgeTurns(s Segment, p Point) int {
	a, _ := s.Arc()
	if p.Dist(a.Centre) >= a.Radius {
		return 0
	}
	side := s.To.Sub(s.From).Cross(p.Sub(s.From))
	if s.Bulge > 0 && side < 0 {
		return 1
	}
	if s.Bulge < 0 && side > 0 {
		return -1
	}
	return 0
}

// Distance returns the least distance between two outlines and the points of
// each where it is found; 0 where they meet.
func (o Outline) Distance(q Outline) (d float64, a, b Point) {
	d = math.Inf(1)
	for i := range o.Len() {
		s := o.Segment(i)
		for j := range q.Len() {
			if dd, p, r := s.Distance(q.Segment(j)); dd < d {
				d, a, b = dd, p, r
			}
		}
	}
	return d, a, b
}

// Distance returns the least distance between two segments and the points of
// each where it is found.
func (s Segment) Distance(r Segment) (d float64, a, b Point) {
	if ms := Meet(s, r); len(ms) > 0 {
		return 0, ms[0].At, ms[0].At
	}
	d = math.Inf(1)
	try := func(p Point, on Segment, swap bool) {
		q, _ := on.Nearest(p)
		if dd := p.Dist(q); dd < d {
			d, a, b = dd, p, q
			if swap {
				a, b = q, p
			}
		}
	}
	try(s.From, r, false)
	try(s.To, r, false)
	try(r.From, s, true)
	try(r.To, s, true)
	for _, p := range facing(s, r) {
		try(p, r, false)
	}
	return d, a, b
}

// facing returns the points of s that may be nearest to r otherwise than at an
// end: where the common normal of the two curves meets s.
func facing(s, r Segment) []Point {
	as, roundS := s.Arc()
	ar, roundR := r.Arc()
	var dir Point
	switch {
	case roundS && roundR:
		dir = ar.Centre.Sub(as.Centre)
	case roundS:
		dir = r.To.Sub(r.From).Left()
	case roundR:
		q, _ := s.Nearest(ar.Centre)
		return []Point{q}
	}
	if !roundS || dir.Norm() == 0 {
		return nil
	}
	pts, n := LineCircle(as.Centre, dir, as.Centre, as.Radius)
	var on []Point
	for _, p := range pts[:n] {
		if q, _ := s.Nearest(p); q.Dist(p) <= onSegment {
			on = append(on, q)
		}
	}
	return on
}
