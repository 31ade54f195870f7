package crossing

import (
	"math"

	"tipline/geometry"
)

// armSides returns the two sides of an arm whose rim end stands on the x axis, hub
// and rim being radii: the one on its right going outwards, which bounds the window
// clockwise of it, and the one on its left.
//
// A straight side runs through (hub, ±ArmAtHub/2) and (rim, ±ArmAtRim/2). A waisted
// one is the arc through these and (WaistAt, ±Waist/2). How the sides of a swept arm
// run is told at sweptBulge.
func armSides(hub, rim float64, s Spec) (right, left side) {
	if s.Style == Swept {
		c := centreLine(hub, rim, s.Sweep)
		return c.sweptSide(s, -1), c.sweptSide(s, 1)
	}
	from, to := geometry.Point{X: hub, Y: s.ArmAtHub / 2}, geometry.Point{X: rim, Y: s.ArmAtRim / 2}
	bulge := 0.0
	if s.Style == Waisted {
		waist := geometry.Point{X: s.waistAt(hub, rim), Y: s.Waist / 2}
		bulge = math.Tan(float64(waist.Sub(from).Angle(to.Sub(waist))) / 2)
	}
	left = arched(from, to, bulge, 1)
	from.Y, to.Y = -from.Y, -to.Y
	return arched(from, to, -bulge, -1), left
}

// waistAt returns the radius of a waisted arm's waist: the one asked for, or that at
// which the arc through the three points is narrowest. With the ends a and b above
// the waist by half the widths' difference, l apart, the arc that touches the waist's
// width x from the hub has the radius (x² + a²)/2a = ((l − x)² + b²)/2b. A waist as
// wide as an end lies there.
func (s Spec) waistAt(hub, rim float64) float64 {
	if s.WaistAt != 0 {
		return s.WaistAt
	}
	a, b, l := max(same, (s.ArmAtHub-s.Waist)/2), max(same, (s.ArmAtRim-s.Waist)/2), rim-hub
	half, last := a*l, a*(l*l+b*b-a*b)
	return hub + last/(half+math.Sqrt(half*half+(b-a)*last))
}

// centre is the centre line of a swept arm as an arc, in the frame of its arm.
type centre struct {
	side                  // its window to the left, though it bounds none
	atRim  geometry.Point // unit, the way it arrives at the rim
	length float64
}

// centreLine returns the arc that leaves the hub radially, seen from the wheel's
// centre the sweep anticlockwise of its rim end on the x axis. An arc turns from its
// chord at either end by half its own sweep.
func centreLine(hub, rim float64, sweep geometry.Angle) centre {
	from, to := geometry.Polar(hub, sweep), geometry.Point{X: rim}
	leaves := geometry.Polar(1, sweep)
	half := leaves.Angle(to.Sub(from))
	c := centre{side: arched(from, to, math.Tan(float64(half)/2), 1), length: to.Dist(from)}
	c.atRim = leaves.Rotate(2 * half)
	if half != 0 {
		c.length *= float64(half) / math.Sin(float64(half))
	}
	return c
}

// sweptSide returns the side of a swept arm to the left of its centre line, for
// window 1, or to its right, for −1.
func (c centre) sweptSide(s Spec, window float64) side {
	leaves := c.atHub()
	hub := c.hub.Add(leaves.Left().Times(window * s.ArmAtHub / 2))
	rim := c.rim.Add(c.atRim.Left().Times(window * s.ArmAtRim / 2))
	return arched(hub, rim, c.sweptBulge(s, window, rim.Sub(hub)), window)
}

// atHub returns the way the centre line leaves the hub.
func (c centre) atHub() geometry.Point { return c.hub.Times(1 / c.hub.Norm()) }

// sweptBulge returns the bulge of a swept arm's side. Taken square to the centre
// line, the width asked for is linear along it from hub to rim, which gives a
// spiral. The side is an arc through the spiral's ends: of the two that touch it at
// one of them, the one that leaves more metal. That one leaves the arm nowhere
// thinner, for an arc and the spiral through the same ends part by e(k − ct) to
// second order, e the share of the arm times what is left of it and t the share.
// Without taper both are the parallel to the centre line.
func (c centre) sweptBulge(s Spec, window float64, chord geometry.Point) float64 {
	widens := window * (s.ArmAtRim - s.ArmAtHub) / 2 / c.length
	touching := func(way geometry.Point, width float64) geometry.Point {
		return way.Times(1 - window*c.curvature()*width/2).Add(way.Left().Times(widens))
	}
	atHub := touching(c.atHub(), s.ArmAtHub).Angle(chord)
	atRim := chord.Angle(touching(c.atRim, s.ArmAtRim))
	// an arc bows to the right of its chord where it turns left, bulge more than 0
	if window > 0 {
		return math.Tan(float64(min(atHub, atRim)) / 2)
	}
	return math.Tan(float64(max(atHub, atRim)) / 2)
}

// curvature returns the centre line's, positive to the left, also where it is taken
// as straight.
func (c centre) curvature() float64 { return float64(c.atHub().Angle(c.atRim)) / c.length }
