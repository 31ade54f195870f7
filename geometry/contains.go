package geometry

// Contains reports whether p lies inside the outline, by how often the outline
// turns round it; a point on the outline may be told either way.
func (o Outline) Contains(p Point) bool { return o.Winding(p) != 0 }

// Winding returns how many times the outline turns anticlockwise round p. It is
// counted exactly: the crossings of a ray to the right of p with each line and
// arc, an upward one +1, a downward one −1.
func (o Outline) Winding(p Point) int {
	n := 0
	o.each(func(from, to Point, bulge float64) {
		n += rayCrossings(from, to, p)
		if s := (Segment{From: from, To: to, Bulge: bulge}); !s.IsLine() {
			n += bulgeTurns(s, p)
		}
	})
	return n
}

// winding is Winding for a closed chain of curves. Of a box that the ray passes
// whole, only where the run begins and ends counts: a run that begins below the ray
// and ends above it crosses it upward once more than downward.
func (t *tree) winding(p Point) int {
	if len(t.nodes) == 0 {
		return 0
	}
	return t.windingNode(0, p)
}

func (t *tree) windingNode(k int, p Point) (turns int) {
	n := &t.nodes[k]
	switch {
	case p.X > n.box.Max.X || p.Y > n.box.Max.Y || p.Y < n.box.Min.Y:
		return 0
	case p.X < n.box.Min.X:
		return climbs(t.curves[n.first].From, t.curves[n.last-1].To, p)
	case n.right != 0:
		return t.windingNode(k+1, p) + t.windingNode(n.right, p)
	}
	for i := n.first; i < n.last; i++ {
		c := &t.curves[i]
		turns += rayCrossings(c.From, c.To, p)
		if c.round {
			turns += bulgeTurns(c.Segment, p)
		}
	}
	return turns
}

// climbs returns 1 for a way from below p's level to above it, −1 for one down.
func climbs(from, to, p Point) int {
	switch {
	case from.Y <= p.Y && to.Y > p.Y:
		return 1
	case from.Y > p.Y && to.Y <= p.Y:
		return -1
	}
	return 0
}

// rayCrossings counts the chord's crossing of the ray to the right of p.
func rayCrossings(from, to, p Point) int {
	n := climbs(from, to, p)
	if n != 0 && float64(n)*sideOf(from, to, p) <= 0 {
		return 0
	}
	return n
}

// bulgeTurns counts the turns round p of the circular segment between an arc and
// its chord: one where p lies inside it. With w and v the ways to p from the chord's
// ends, p lies inside the circle where its power, w·v − (chord×w)(1 − b²)/2b, is
// negative; unlike p's distance from the centre, that needs no large numbers.
func bulgeTurns(s Segment, p Point) int {
	side, b := sideOf(s.From, s.To, p), s.Bulge
	if b*side > 0 || p.Sub(s.From).Dot(p.Sub(s.To)) >= s.To.Sub(s.From).Cross(p.Sub(s.From))*(1-b*b)/(2*b) {
		return 0
	}
	if b > 0 {
		return 1
	}
	return -1
}

// sideOf returns more than 0 where p lies left of the chord and less where it
// lies right; a point on the chord counts as lying to its right on the page, above
// a level one, so that chord and circular segment agree.
func sideOf(from, to, p Point) float64 {
	chord := to.Sub(from)
	side := chord.Cross(p.Sub(from))
	switch {
	case side != 0:
		return side
	case chord.Y != 0:
		return -chord.Y
	}
	return chord.X
}
