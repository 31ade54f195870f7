package crossing

import (
	"math"

	"tipline/geometry"
)

// side is one side of an arm on its endless line or circle, run outwards. In the
// window's own frame the wheel's centre is the origin and the window's axis leaves
// it along x at the rim; the upper side has the window on its right, the lower on
// its left. The side itself lies between its hub and rim points; a window may use a
// little more of it at either end, or less.
type side struct {
	hub, rim geometry.Point // its ends
	along    geometry.Point // unit, the way it leaves its hub point
	bend     float64        // 1/radius, positive to the left; 0 for a straight side
	window   float64        // 1 where the window lies to its left, −1 to its right
}

// flatRise is the rise above its chord, in mm, below which a side is taken as straight:
// a hundredth of what a file keeps, while the circle of a side 1 mm to 1 m long that
// rises so far is small enough, 1e10 mm, for its middle to be told to 2e-6 mm and
// places on it, by their rise from the side's end, to 1e-9 mm.
const flatRise = 1e-5

// arched returns the side between two points as the arc of that bulge.
func arched(hub, rim geometry.Point, bulge, window float64) side {
	chord := rim.Sub(hub)
	length := chord.Norm()
	s := side{hub: hub, rim: rim, along: chord.Times(1 / length), window: window}
	if math.Abs(bulge)*length/2 < flatRise {
		return s
	}
	s.along = s.along.Rotate(geometry.Angle(-2 * math.Atan(bulge)))
	s.bend = 4 * bulge / ((1 + bulge*bulge) * length)
	return s
}

// turned returns the side turned anticlockwise about the wheel's centre.
func (s side) turned(a geometry.Angle) side {
	s.hub, s.rim, s.along = s.hub.Rotate(a), s.rim.Rotate(a), s.along.Rotate(a)
	return s
}

// out returns the way from the middle of the side's circle to p.
func (s side) out(p geometry.Point) geometry.Point {
	return p.Sub(s.hub).Sub(s.along.Left().Times(1 / s.bend))
}

// travel returns the unit direction in which the side, or its parallel through p,
// runs there.
func (s side) travel(p geometry.Point) geometry.Point {
	if s.bend == 0 {
		return s.along
	}
	out := s.out(p)
	return out.Left().Times(math.Copysign(1/out.Norm(), s.bend))
}

// toward returns the unit direction square to the side, to the window's side.
func (s side) toward(p geometry.Point) geometry.Point { return s.travel(p).Left().Times(s.window) }

// foot returns the point of the side nearest to p, which lies away from it.
func (s side) foot(p geometry.Point, away float64) geometry.Point {
	return p.Sub(s.toward(p).Times(away))
}

// share returns how far along the side p, a point of it, lies from its hub point.
func (s side) share(p geometry.Point) float64 {
	way := p.Sub(s.hub)
	if s.bend == 0 {
		return way.Dot(s.along)
	}
	from, to := s.along.Left().Times(-1/s.bend), s.out(p)
	return math.Atan2(from.Cross(way), from.Dot(to)) / s.bend
}

// away returns how far from the side p lies, positive on the window's side. On a
// round side it is p's power over its distance plus the radius, which costs no
// digits where the radius is large.
func (s side) away(p geometry.Point) float64 {
	way := p.Sub(s.hub)
	left := way.Dot(s.along.Left())
	if s.bend != 0 {
		left -= way.Dot(way) * s.bend / 2
		left *= 2 / (s.out(p).Norm()*math.Abs(s.bend) + 1)
	}
	return s.window * left
}

// reach returns the point that lies away from the side, to the window's side, and r
// from c, where the side runs outwards as seen from c; false when there is none.
func (s side) reach(c geometry.Point, r, away float64) (geometry.Point, bool) {
	off := s.away(c) - away // how far c lies from the parallel
	if r < math.Abs(off) {
		return c, false
	}
	if s.bend == 0 {
		n := s.along.Left().Times(s.window)
		return c.Sub(n.Times(off)).Add(s.along.Times(math.Sqrt((r - off) * (r + off)))), true
	}
	radius := s.radius(away)
	way := s.out(c).Times(-1) // from c to the circle's middle
	d := way.Norm()
	if radius <= 0 || d == 0 {
		return c, false
	}
	gap := -off * s.window * math.Copysign(1, s.bend) // how far c lies outside the parallel's circle
	in := (gap*(d+radius) + r*r) / (2 * d)
	if math.Abs(in) > r {
		return c, false
	}
	u := way.Times(1 / d)
	across := math.Copysign(math.Sqrt((r-in)*(r+in)), -s.bend)
	return c.Add(u.Times(in)).Add(u.Left().Times(across)), true
}

// corner returns the point that lies away from both sides of a window, where it
// opens outwards from there: the middle of the one arc in which it ends. False where
// there is none.
func corner(upper, lower side, away float64) (geometry.Point, bool) {
	var found [2]geometry.Point
	n := 0
	switch {
	case upper.bend == 0 && lower.bend == 0:
		cross := lower.along.Cross(upper.along)
		if cross <= 0 {
			return geometry.Point{}, false
		}
		from, to := upper.beside(away), lower.beside(away)
		return from.Add(upper.along.Times(to.Sub(from).Cross(lower.along) / upper.along.Cross(lower.along))), true
	case upper.bend == 0:
		found, n = geometry.LineCircle(upper.beside(away), upper.along, lower.middle(), lower.radius(away))
	case lower.bend == 0:
		found, n = geometry.LineCircle(lower.beside(away), lower.along, upper.middle(), upper.radius(away))
	default:
		found, n = geometry.CircleCircle(upper.middle(), upper.radius(away), lower.middle(), lower.radius(away))
	}
	for _, p := range found[:n] {
		if lower.travel(p).Cross(upper.travel(p)) > 0 {
			return p, true
		}
	}
	return geometry.Point{}, false
}

// beside returns the point away from the side's hub point.
func (s side) beside(away float64) geometry.Point {
	return s.hub.Add(s.along.Left().Times(s.window * away))
}

// middle returns the middle of a round side's circle.
func (s side) middle() geometry.Point { return s.hub.Add(s.along.Left().Times(1 / s.bend)) }

// radius returns the radius of a round side's parallel; 0 or less where there is
// none.
func (s side) radius(away float64) float64 {
	return 1/math.Abs(s.bend) - s.window*math.Copysign(away, s.bend)
}
