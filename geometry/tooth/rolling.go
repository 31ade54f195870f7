package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// rolling is a lantern pinion's pitch circle rolling on its wheel's, as seen from
// the wheel. The wheel's centre is the origin; the pinion rolls to the left from
// 12 o'clock, where one trundle stands on the pitch point. Its centre then traces
// an epicycloid, and its edge makes the flank of the tooth to the left of it.
// Lengths in mm.
//
// A place is named by how far the pinion has turned against the line of centres,
// 0 to π.
type rolling struct {
	wheel, pinion float64 // pitch radii
	trundle       float64 // radius
}

// turn is how far the flank has turned from the radius through 12 o'clock for
// each radian of the pinion: the wheel's share and half the pinion's own, for the
// flank's normal runs through the pitch point.
func (r rolling) turn() float64 { return r.pinion/r.wheel + 0.5 }

// at returns the point where the trundle touches the curve it makes: the parallel
// curve to the epicycloid, the trundle's radius nearer to the pitch point. (The
// tooth of a wheel for a lantern pinion, Encyclopaedia Britannica, 11th ed.,
// Mechanics (Applied), s. 51.) Beyond the cusp its distance from the wheel's
// centre grows all the way to π.
func (r rolling) at(rolled float64) geometry.Point {
	sin, cos := math.Sincos(rolled / 2)
	along, aside := r.wheel*cos, (r.wheel+2*r.pinion)*sin-r.trundle
	return geometry.Point{X: aside, Y: along}.Rotate(geometry.Angle(r.turn() * rolled))
}

// way returns the unit direction of the curve at that point, outwards beyond the
// cusp.
func (r rolling) way(rolled float64) geometry.Point {
	return geometry.Polar(1, geometry.Angle(math.Pi/2+r.turn()*rolled))
}

// aside returns how far left of 12 o'clock that point stands, seen from the
// wheel's centre, past a half turn where the pinion is the larger. It grows from
// the flank's beginning on.
func (r rolling) aside(rolled float64) geometry.Angle {
	sin, cos := math.Sincos(rolled / 2)
	back := math.Atan2((r.wheel+2*r.pinion)*sin-r.trundle, r.wheel*cos)
	return geometry.Angle(r.turn()*rolled - back)
}

// cusp returns where the curve turns back: before it, the trundle's edge moves
// towards the wheel's centre and makes nothing. There the curve's radius of
// curvature, 4b·sin(rolled/2)·(a+b)/(a+2b) less the trundle's, is 0 (the
// epicycloid's by the same source, s. 52).
func (r rolling) cusp() float64 {
	return 2 * math.Asin(r.trundle*r.turn()/(2*(r.pinion+r.pinion*r.pinion/r.wheel)))
}

// begins returns where the flank begins: where the curve, on its way out, leaves
// the circle of the trundle that stands on the line of centres. What it makes
// before lies in that circle.
func (r rolling) begins() float64 {
	outside := func(rolled float64) bool {
		p := r.at(rolled)
		return math.Hypot(p.X, p.Y-r.wheel) > r.trundle
	}
	return seek.Last(math.Pi, r.cusp(), 0, outside)
}

// reaches returns where the flank is that far aside; π if it never is.
func (r rolling) reaches(aside geometry.Angle, from float64) float64 {
	return seek.Last(math.Pi, from, 0, func(rolled float64) bool { return r.aside(rolled) >= aside })
}
