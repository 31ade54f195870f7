package crossing

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// armSides returns the two sides of an arm whose rim end stands on the x axis, hub
// and rim being radii: the one on its right going outwards, which bounds the window
// clockwise of it, and the one on its left.
//
// A straight side runs through (hub, ±ArmAtHub/2) and (rim, ±ArmAtRim/2). A waisted
// one is the arc through these and (WaistAt, ±Waist/2). The sides of a swept arm
// are told of at sweptSide.
func armSides(hub, rim float64, s Spec) (right, left side) {
	if s.Style == Swept {
		c := centreOf(hub, rim, s)
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

// centreOf returns the centre line of an arm of any style.
func centreOf(hub, rim float64, s Spec) centre {
	if s.Style != Swept {
		return centreLine(hub, rim, 0)
	}
	return centreLine(hub, rim, s.Sweep)
}

// atHub returns the way the centre line leaves the hub.
func (c centre) atHub() geometry.Point { return c.hub.Times(1 / c.hub.Norm()) }

// sweptSide returns the side of a swept arm to the left of its centre line, for
// window 1, or to its right, for −1.
//
// Taken square to the centre line, the width asked for is linear along it from hub
// to rim, which gives a spiral. The side is an arc through the spiral's ends, the
// flattest that leaves the arm nowhere thinner. Without taper both are the parallel
// to the centre line; with the usual ones an arc and the spiral part by e(k − ct), t
// the share of the way and e = t(1 − t), and the arc touches the spiral at an end.
func (c centre) sweptSide(s Spec, window float64) side {
	p := spiral{c, s, window}
	from, to := p.at(0), p.at(1)
	touch := func(share float64) float64 {
		if share <= 0 || share >= 1 {
			return p.touching(share, to.Sub(from))
		}
		at := p.at(share)
		return -window * float64(at.Sub(from).Angle(to.Sub(at)))
	}
	return arched(from, to, -window*math.Tan(greatest(touch)/2), window)
}

// spiral is the side that an arm would have if its width were linear along it.
type spiral struct {
	c      centre
	s      Spec
	window float64
}

func (p spiral) at(share float64) geometry.Point {
	place := p.c.station(share)
	return place.Point.Add(place.way.Left().Times(p.window * p.s.taper(share) / 2))
}

// touching returns by how much an arc that runs along the spiral at one of its ends
// turns there from the chord, or to it; positive where it leaves the arm wider.
func (p spiral) touching(share float64, chord geometry.Point) float64 {
	place := p.c.station(share)
	widens := p.window * (p.s.ArmAtRim - p.s.ArmAtHub) / 2 / p.c.length
	way := place.way.Times(1 - p.window*p.c.curvature()*p.s.taper(share)/2).Add(place.way.Left().Times(widens))
	if share <= 0 {
		return -p.window * float64(way.Angle(chord))
	}
	return -p.window * float64(chord.Angle(way))
}

// greatest returns the greatest value of f over 0 to 1: where an end has it, exactly,
// else narrowed down from sixteenths.
func greatest(f func(share float64) float64) float64 {
	const parts = 16
	best, at := math.Inf(-1), 0
	for i := 0; i <= parts; i++ {
		if v := f(float64(i) / parts); v > best {
			best, at = v, i
		}
	}
	if at == 0 || at == parts {
		return best
	}
	top := seek.Top(float64(at-1)/parts, float64(at+1)/parts, same, f)
	return max(best, f(top))
}

// station is a place of an arm's centre line and the unit direction of the line
// there, outwards.
type station struct {
	geometry.Point
	way geometry.Point
}

// station returns the place at a share of the centre line's length.
func (c centre) station(share float64) station {
	half := share * c.curvature() * c.length / 2
	leaves := c.atHub()
	chord := leaves.Rotate(geometry.Angle(half)).Times(share * c.length * sinc(half))
	return station{c.hub.Add(chord), leaves.Rotate(geometry.Angle(2 * half))}
}

// sinc returns sin(a)/a.
func sinc(a float64) float64 {
	if a == 0 {
		return 1
	}
	return math.Sin(a) / a
}

// curvature returns the centre line's, positive to the left, also where it is taken
// as straight.
func (c centre) curvature() float64 { return float64(c.atHub().Angle(c.atRim)) / c.length }
