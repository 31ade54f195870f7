package cutter

import (
	"math"

	"tipline/geometry"
)

// profile is a pointed form's shape before it is cut off: its front edge and
// corner, and what it leaves when fed, the swept edge.
type profile struct {
	foot   geometry.Point   // where the front edge meets the corner
	front  geometry.Point   // unit direction up the front edge
	corner geometry.Segment // the rounding; nothing for a sharp corner
	swept  sweep
}

// floorLength is the floor from sharp corner to back, along the floor.
func (p Pointed) floorLength() float64 { return p.Floor / math.Cos(float64(p.FloorSlope)) }

// cornerShare is what the corner's rounding takes of the floor for each
// millimetre of its radius: a fillet in an angle w takes r/tan(w/2).
func (p Pointed) cornerShare() float64 {
	return 1 / math.Tan(float64(math.Pi/2-p.FrontRelief-p.FloorSlope)/2)
}

// cornerRoom is the largest corner radius the floor has room for.
func (p Pointed) cornerRoom() float64 { return p.floorLength() / p.cornerShare() }

// floorLeft is what the corner leaves of the floor.
func (p Pointed) floorLeft() float64 {
	return math.Max(p.floorLength()-p.CornerRadius*p.cornerShare(), 0)
}

// filletRoom is the largest back fillet the floor has room for at a back angle.
func (p Pointed) filletRoom(back geometry.Angle) float64 {
	return p.floorLeft() / math.Tan(float64(math.Pi/2-back-p.FloorSlope)/2)
}

// slit is the lean under which a back without a floor before it leaves a cut of no width,
// which no bit is ground to: common practice, no source.
const slit = geometry.Angle(0.1 * math.Pi / 180)

// leastLean is the least that a straight back leans: enough to make a space wide.
func (p Pointed) leastLean() geometry.Angle {
	if p.Floor < geometry.LeastLength {
		return slit
	}
	return 0
}

// leastBackAngle is the least back angle whose fillet the floor has room for.
func (p Pointed) leastBackAngle() geometry.Angle {
	if p.BackFillet == 0 {
		return p.leastLean()
	}
	turn := geometry.Angle(2 * math.Atan(p.floorLeft()/p.BackFillet))
	return max(math.Pi/2-p.FloorSlope-turn, p.leastLean())
}

// profile builds the form in the tool frame. The values must have passed check.
func (p Pointed) profile() profile {
	lean := direction(math.Pi/2 - p.FrontRelief)
	floor := direction(p.FloorSlope)
	r := p.CornerRadius
	o := profile{front: lean}
	// The corner's arc is foremost at 9 o'clock and lowest at 6 o'clock, so
	// that its centre stands at (r, r); the sharp corner lies outside it.
	centre := geometry.Point{X: r, Y: r}
	o.foot = centre.Add(lean.Left().Times(r))
	toe := centre.Sub(floor.Left().Times(r))
	foremost := geometry.Point{Y: r}
	end := toe.Add(floor.Times(p.floorLeft()))

	reach := 8 * p.TipRadius
	o.swept = append(o.swept, geometry.Segment{From: geometry.Point{Y: reach}, To: foremost, Quantity: Undercut})
	if r > 0 {
		o.corner = turned(centre, r, math.Pi-p.FrontRelief, 1.5*math.Pi+p.FloorSlope, CornerRadius)
		o.swept = append(o.swept, turned(centre, r, math.Pi, 1.5*math.Pi+p.FloorSlope, CornerRadius))
	}
	if p.Straight {
		o.swept = append(o.swept, p.straightBack(toe, end, reach)...)
	} else {
		o.swept = append(o.swept, p.arcBack(toe, end, reach)...)
	}
	o.join()
	return o
}

// arcBack returns the floor from toe to end, the arc tangent to it and, past its
// quarter, the line straight up.
func (p Pointed) arcBack(toe, end geometry.Point, reach float64) []geometry.Segment {
	centre := end.Add(direction(p.FloorSlope).Left().Times(p.BackRadius))
	shoulder := centre.Add(geometry.Point{X: p.BackRadius})
	return []geometry.Segment{
		{From: toe, To: end, Quantity: Floor},
		turned(centre, p.BackRadius, p.FloorSlope-math.Pi/2, 0, BackRadius),
		{From: shoulder, To: shoulder.Add(geometry.Point{Y: reach}), Quantity: BackRadius},
	}
}

// straightBack returns the floor from toe, the fillet in its corner at end, and
// the straight back.
func (p Pointed) straightBack(toe, end geometry.Point, reach float64) []geometry.Segment {
	floor, back := direction(p.FloorSlope), direction(math.Pi/2-p.BackAngle)
	turn := float64(math.Pi/2 - p.BackAngle - p.FloorSlope)
	taken := p.BackFillet * math.Tan(turn/2)
	from, to := end.Sub(floor.Times(taken)), end.Add(back.Times(taken))
	centre := from.Add(floor.Left().Times(p.BackFillet))
	list := []geometry.Segment{{From: toe, To: from, Quantity: Floor}}
	if p.BackFillet > 0 {
		list = append(list, turned(centre, p.BackFillet, p.FloorSlope-math.Pi/2, -p.BackAngle, BackFillet))
	}
	return append(list, geometry.Segment{From: to, To: to.Add(back.Times(reach)), Quantity: BackAngle})
}

// join drops pieces shorter than coincide and makes each piece start exactly
// where the one before it ends.
func (o *profile) join() {
	kept := o.swept[:0]
	for _, s := range o.swept {
		if s.From.Dist(s.To) <= coincide {
			continue
		}
		if n := len(kept); n > 0 {
			s.From = kept[n-1].To
		}
		kept = append(kept, s)
	}
	o.swept = kept
}

// direction returns the unit vector in direction a; it keeps a quarter turn exact.
func direction(a geometry.Angle) geometry.Point {
	if a == math.Pi/2 {
		return geometry.Point{Y: 1}
	}
	return geometry.Polar(1, a)
}

// turned returns the arc about centre from direction a anticlockwise to b.
func turned(centre geometry.Point, r float64, a, b geometry.Angle, q geometry.Quantity) geometry.Segment {
	s := geometry.Arc{Centre: centre, Radius: r, Start: a, Sweep: b - a}.Segment()
	s.Quantity = q
	return s
}
