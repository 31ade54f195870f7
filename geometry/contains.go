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

// rayCrossings counts the chord's crossing of the ray to the right of p.
func rayCrossings(from, to, p Point) int {
	side := sideOf(from, to, p)
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
	out, radius := circleOf(s)
	way := p.Sub(s.From).Add(out)
	if way.Dot(way) >= radius*radius {
		return 0
	}
	side := sideOf(s.From, s.To, p)
	if s.Bulge > 0 && side < 0 {
		return 1
	}
	if s.Bulge < 0 && side > 0 {
		return -1
	}
	return 0
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
