package geometry

import (
	"errors"
	"math"
)

// Fillet returns the arc of the given radius tangent to a, which ends at the
// corner, and to b, which begins there; it leaves a at the share s and joins b at
// the share t. It lies on the inner side of the corner, whichever way that turns.
//
// Its centre lies at the radius from both: a line's locus is its parallel, an
// arc's a circle about the same centre. A radius that does not fit between the
// far ends gives a Limit with the largest that does, to 1 µm.
func Fillet(a, b Segment, radius float64) (arc Segment, s, t float64, err error) {
	ca, cb := newCurve(a), newCurve(b)
	turn := ca.arriving().Cross(cb.leaving())
	switch {
	case !finite(radius) || radius <= 0:
		return arc, 0, 0, AtLeast("", radius, 0, "geometry.fillet-not-positive")
	case !a.To.near(b.From):
		return arc, 0, 0, errors.New("fillet: the segments do not meet at a corner")
	case math.Abs(turn) <= smoothTurn:
		return arc, 0, 0, errors.New("fillet: the corner is smooth already")
	}
	side := math.Copysign(1, turn)
	if arc, s, t, ok := fit(&ca, &cb, radius, side); ok {
		return arc, s, t, nil
	}
	return arc, 0, 0, AtMost("", radius, largestFit(&ca, &cb, radius, side), "geometry.fillet-too-large")
}

// smoothTurn is the sine of the least turn taken for a corner: below it the ends
// of the fillet are not told apart from the corner, 1e-9 mm at a radius of 1 m.
const smoothTurn = 1e-9

// fit returns the fillet nearest the corner that touches both segments.
func fit(a, b *curve, radius, side float64) (arc Segment, s, t float64, ok bool) {
	centres, n := centresAt(a, b, radius, side)
	for _, c := range centres[:n] {
		from, to := a.foot(c, radius, side), b.foot(c, radius, side)
		if a.kisses(radius, side) || b.kisses(radius, side) || !a.holds(from) || !b.holds(to) {
			continue
		}
		if u, v := a.share(from), b.share(to); !ok || u > s {
			turn := a.travel(from).Angle(b.travel(to))
			if turn*Angle(side) < 0 {
				turn += FullTurn * Angle(side)
			}
			arc = Segment{from, to, math.Tan(float64(turn) / 4), b.Quantity}
			s, t, ok = u, v, from != to
		}
	}
	return arc, s, t, ok
}

// kissing is the least share of an arc's radius by which a fillet's must differ
// from it: where both are nearly one circle the place of their contact is drawn
// out by the inverse of that, from rounding of 1e-14 of the radius to 1e-9.
const kissing = 1e-5

// kisses reports whether an arc's circle is too nearly that of the fillet.
func (c *curve) kisses(r, side float64) bool {
	return c.round && math.Abs(c.locus(r, side)) < kissing*c.radius
}

// Angle returns the turn from p's direction to q's, in (−π, π].
func (p Point) Angle(q Point) Angle { return Angle(math.Atan2(p.Cross(q), p.Dot(q))) }

// centresAt returns the points at distance r from the endless lines or circles of
// a and b, to their left for side +1, to their right for −1.
func centresAt(a, b *curve, r, side float64) (pts [2]Point, n int) {
	if max(a.radius, b.radius) > distant {
		la, lb := a.beside(r, side), b.beside(r, side)
		return la.crossings(&lb)
	}
	da, db := a.travel(a.From), b.travel(b.From)
	pa, pb := a.From.Add(da.Left().Times(r*side)), b.From.Add(db.Left().Times(r*side))
	switch {
	case !a.round && !b.round:
		cross := da.Cross(db)
		return [2]Point{pa.Add(da.Times(pb.Sub(pa).Cross(db) / cross))}, 1
	case !a.round:
		return LineCircle(pa, da, b.centre, math.Abs(b.locus(r, side)))
	case !b.round:
		return LineCircle(pb, db, a.centre, math.Abs(a.locus(r, side)))
	}
	return CircleCircle(a.centre, math.Abs(a.locus(r, side)), b.centre, math.Abs(b.locus(r, side)))
}

// beside returns the endless line or circle on which the points lie that are r to the
// left (side +1) or right (−1) of a curve: all but the ends of the segment hold.
func (c *curve) beside(r, side float64) curve {
	if c.round && c.radius <= distant {
		return curve{round: true, centre: c.centre, radius: math.Abs(c.locus(r, side))}
	}
	s, _ := c.parallel(r * side)
	return boxless(s)
}

// locus returns the radius of the circle on which the points lie that are r to
// the left (side +1) or right (−1) of an arc; negative where they lie beyond its
// centre.
func (c *curve) locus(r, side float64) float64 {
	if side*c.Bulge > 0 {
		return c.radius - r
	}
	return c.radius + r
}

// foot returns the point of the endless line or circle from which the point at
// distance r to its left or right is p.
func (c *curve) foot(p Point, r, side float64) Point {
	if !c.round {
		return p.Sub(c.travel(c.From).Left().Times(r * side))
	}
	if c.radius > distant {
		return c.facing(p)
	}
	return c.centre.Add(p.Sub(c.centre).Times(c.radius / c.locus(r, side)))
}

// largestFit returns the largest radius below the given one that fits, to 1 µm.
func largestFit(a, b *curve, radius, side float64) float64 {
	low, high := 0.0, radius
	for high-low > 1e-6*math.Min(1, high) {
		middle := (low + high) / 2
		if _, _, _, ok := fit(a, b, middle, side); ok {
			low = middle
		} else {
			high = middle
		}
	}
	return low
}

// Round returns the outline with the given corner rounded by an arc of the radius
// that the quantity made. Where the arc takes up the whole of a neighbour, that
// neighbour is gone. A radius that does not fit gives a Limit of the quantity
// with the largest that does.
func (o Outline) Round(corner int, radius float64, q Quantity) (Outline, error) {
	if o.Len() < 2 {
		return Outline{}, errors.New("round: the outline is empty")
	}
	n := o.Len()
	corner = (corner%n + n) % n
	before, after := o.Segment(corner-1), o.Segment(corner)
	arc, s, t, err := Fillet(before, after, radius)
	if err != nil {
		var limit *Limit
		if errors.As(err, &limit) {
			limit.Quantity = q
		}
		return Outline{}, err
	}
	var vs []Vertex
	for i := range n {
		switch i {
		case corner:
			vs = append(vs, Vertex{arc.From, arc.Bulge, q})
			if t < 1 {
				vs = append(vs, Vertex{arc.To, after.Part(t, 1).Bulge, after.Quantity})
			}
		case (corner - 1 + n) % n:
			if s > 0 {
				vs = append(vs, Vertex{before.From, before.Part(0, s).Bulge, before.Quantity})
			}
		default:
			vs = append(vs, o.vertices[i])
		}
	}
	return NewOutline(vs)
}
