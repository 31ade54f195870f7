package crossing

import (
	"math"

	"tipline/geometry"
)

// side is the straight side of an arm as the window sees it. In the window's own
// frame the wheel's centre is the origin, the window's axis runs along x and the
// side lies above it; the other side of the window is its mirror image. Places are
// given by how far along the side they lie, outwards from the foot of the centre's
// perpendicular, and how far away from it, towards the window.
type side struct {
	along  geometry.Point // unit, from hub to rim
	away   geometry.Point // unit, square to it, towards the window
	centre float64        // how far away from the side the wheel's centre lies; negative behind it
}

// sideOf returns the side of an arm that stands at half from the window's axis. In
// the arm's own frame the side runs through (hub, −ArmAtHub/2) and (rim,
// −ArmAtRim/2), hub and rim being radii.
func sideOf(half geometry.Angle, hub, rim float64, s Spec) side {
	lean := math.Atan2(s.ArmAtHub/2-s.ArmAtRim/2, rim-hub)
	d := geometry.Polar(1, half+geometry.Angle(lean))
	n := geometry.Point{X: d.Y, Y: -d.X}
	foot := geometry.Point{X: hub, Y: -s.ArmAtHub / 2}.Rotate(half)
	return side{along: d, away: n, centre: -n.Dot(foot)}
}

// at returns the place so far along and away from the side.
func (s side) at(along, away float64) geometry.Point {
	return s.along.Times(along).Add(s.away.Times(away - s.centre))
}

// reach returns how far along the side the place lies that is away from it and r
// from the wheel's centre, the outer of the two; false when there is none.
func (s side) reach(r, away float64) (along float64, ok bool) {
	off := away - s.centre
	if r < math.Abs(off) {
		return 0, false
	}
	return math.Sqrt((r - off) * (r + off)), true
}

// apex returns how far along the side a circle of this radius touches it that lies
// on the window's axis and so touches both sides; false unless the sides draw
// together towards the wheel's centre to a corner of the window.
func (s side) apex(radius float64) (along float64, ok bool) {
	if s.away.X <= 0 || s.along.X <= 0 {
		return 0, false
	}
	return s.along.X * (radius - s.centre) / s.away.X, true
}
