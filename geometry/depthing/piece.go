package depthing

import (
	"math"

	"tipline/geometry"
)

// piece is a line or an arc of at most a quarter turn of a tooth's outline, metal
// to its left, made ready to be met.
type piece struct {
	from, to geometry.Point
	round    bool
	convex   bool           // an arc with the metal inside
	centre   geometry.Point // of an arc
	radius   float64        // of an arc
	out, in  geometry.Point // of an arc: from its centre to its ends, anticlockwise
	normal   geometry.Point // of a line: unit, out of the metal
	offset   float64        // of a line: of the gear's centre, along the normal
	near     float64        // least distance from the gear's centre
	far      float64        // greatest distance from the gear's centre
	middle   geometry.Point // of the chord
	half     float64        // from the middle, what reaches every point
}

// onPiece is how far past its end, in mm, a contact may lie and still count as on
// a piece: rounding in coordinates up to 4,000 mm, a thousand times over for
// curves that touch at a shallow angle.
const onPiece = 1e-9

// piecesOf returns the pieces of a tooth that stand above the floor, in order.
func piecesOf(g Gear) []piece {
	var ps []piece
	for i := range g.Tooth.Len() {
		s := g.Tooth.Segment(i)
		if _, far := radii(s); far <= g.Floor+onPiece {
			continue
		}
		n := int(math.Ceil(4 * math.Atan(math.Abs(s.Bulge)) / (math.Pi / 2) * (1 - 1e-12)))
		for k := range max(n, 1) {
			m := float64(max(n, 1))
			ps = append(ps, newPiece(s.Part(float64(k)/m, float64(k+1)/m)))
		}
	}
	return ps
}

func newPiece(s geometry.Segment) piece {
	p := piece{from: s.From, to: s.To}
	p.near, p.far = radii(s)
	p.middle, p.half = s.From.Toward(s.To, 0.5), s.From.Dist(s.To)/2
	a, ok := s.Arc()
	if !ok {
		p.normal = s.To.Sub(s.From).Left().Times(-1 / s.From.Dist(s.To))
		p.offset = p.normal.Dot(s.From)
		return p
	}
	p.round, p.convex = true, s.Bulge > 0
	p.centre, p.radius = a.Centre, a.Radius
	p.out, p.in = s.From.Sub(a.Centre), s.To.Sub(a.Centre)
	if !p.convex {
		p.out, p.in = p.in, p.out
	}
	p.half += p.half * math.Abs(s.Bulge) // the chord's half and the arc's height
	return p
}

// spans reports whether q, on the endless circle or line of the piece, lies on
// the piece.
func (p *piece) spans(q geometry.Point) bool {
	if p.round {
		way, slack := q.Sub(p.centre), onPiece*p.radius
		return p.out.Cross(way) >= -slack && way.Cross(p.in) >= -slack && way.Dot(p.out.Add(p.in)) > 0
	}
	along := p.to.Sub(p.from)
	t, slack := q.Sub(p.from).Dot(along), onPiece*2*p.half
	return t >= -slack && t <= along.Dot(along)+slack
}

// atRadius returns the piece's points at that distance from o.
func (p *piece) atRadius(o geometry.Point, r float64) (pts [2]geometry.Point, n int) {
	var found [2]geometry.Point
	k := 0
	if p.round {
		found, k = geometry.CircleCircle(o, r, p.centre, p.radius)
	} else {
		found, k = geometry.LineCircle(p.from, p.to.Sub(p.from), o, r)
	}
	for _, q := range found[:k] {
		if p.spans(q) {
			pts[n] = q
			n++
		}
	}
	return pts, n
}

// outward returns the unit normal out of the metal at q on the piece.
func (p *piece) outward(q geometry.Point) geometry.Point {
	if !p.round {
		return p.normal
	}
	way := q.Sub(p.centre)
	if p.convex {
		return way.Times(1 / way.Norm())
	}
	return way.Times(-1 / way.Norm())
}

// turned returns p turned by the turn whose cosine and sine are u.
func turned(p, u geometry.Point) geometry.Point {
	return geometry.Point{X: p.X*u.X - p.Y*u.Y, Y: p.X*u.Y + p.Y*u.X}
}

// back returns p turned back by u.
func back(p, u geometry.Point) geometry.Point {
	return geometry.Point{X: p.X*u.X + p.Y*u.Y, Y: p.Y*u.X - p.X*u.Y}
}
