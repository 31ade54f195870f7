package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// The fields of a job that make a pinion.
const (
	pinionLeaves  geometry.Quantity = "leaves"
	pinionModule  geometry.Quantity = "module"
	pinionRatio   geometry.Quantity = "ratio"
	pinionTrundle geometry.Quantity = "trundle"
)

// Pinion is a pinion of cycloidal leaves, driven by a wheel of Ratio times as
// many teeth: radial flanks, and above the pitch circle two arcs that meet in a
// point, or a round top. Its proportions are from memory of BS 978-2:1952.
type Pinion struct {
	Leaves int     // 3 to 2000
	Module float64 // mm, 0.01 and more
	Ratio  float64 // teeth of the wheel to one leaf, 0.1 to 100; it need make no whole wheel
}

// The ratios that a job may ask for.
const (
	leastRatio = 0.1
	mostRatio  = 100.0
)

// leafClearance is how far the bottom of the space lies below the wheel's tip, in
// modules; from memory of BS 978-2:1952.
const leafClearance = 0.4

// proportion is what a leaf is made to, in modules.
type proportion struct {
	most                       int // leaves up to which it holds
	thickness, addendum, curve float64
}

// proportions are from memory of BS 978-2:1952: a high point up to 7 leaves, a
// medium one for 8 and 9, a round top above.
var proportions = []proportion{
	{7, 1.05, 0.855, 1.05},
	{9, 1.05, 0.67, 0.70},
	{10, 1.05, 0.525, 0.525},
	{mostLeaves, 1.25, 0.625, 0.625},
}

func proportionOf(leaves int) proportion {
	for _, p := range proportions {
		if leaves <= p.most {
			return p
		}
	}
	return proportions[len(proportions)-1]
}

// Addendum returns how far the leaves stand above the pitch circle, in modules.
func (p Pinion) Addendum() float64 { return proportionOf(p.Leaves).addendum }

// Thickness returns the leaves' thickness along the pitch circle, in modules.
func (p Pinion) Thickness() float64 { return proportionOf(p.Leaves).thickness }

// Dedendum returns how far the spaces reach below the pitch circle, in modules:
// the addendum of the wheel and 0.4. It is 0.4 without leaves or ratio.
func (p Pinion) Dedendum() float64 {
	if p.Leaves < 2 || !(p.Ratio > 0) {
		return leafClearance
	}
	leaves := float64(p.Leaves)
	return practicalAddendum*addendumFactor(p.Ratio*leaves, leaves) + leafClearance
}

// PitchRadius returns the radius of the pitch circle in mm.
func (p Pinion) PitchRadius() float64 { return p.Module * float64(p.Leaves) / 2 }

// TipRadius returns the radius over the leaves in mm.
func (p Pinion) TipRadius() float64 { return p.PitchRadius() + p.Addendum()*p.Module }

// RootRadius returns the radius of the root circle in mm.
func (p Pinion) RootRadius() float64 { return p.PitchRadius() - p.Dedendum()*p.Module }

// ArcRadius returns the radius of the tip's arcs in mm. A top whose radius is its
// addendum is round: one arc through both pitch points and the tip, whose radius
// lies within 0.001 modules of the addendum, for the pitch circle is curved.
func (p Pinion) ArcRadius() float64 {
	q := proportionOf(p.Leaves)
	if q.curve != q.addendum {
		return q.curve * p.Module
	}
	sin, cos := math.Sincos(float64(p.half()))
	across := p.PitchRadius() * sin
	rise := p.TipRadius() - p.PitchRadius()*cos
	return (rise*rise + across*across) / (2 * rise)
}

// half returns half a leaf's angle at the pitch circle.
func (p Pinion) half() geometry.Angle {
	return geometry.Angle(p.Thickness() / float64(p.Leaves))
}

// Wheel returns the pinion as a toothed wheel whose teeth are its leaves. Its
// outline and its space run as a cycloidal wheel's.
func (p Pinion) Wheel() (Wheel, error) {
	if err := p.check(); err != nil {
		return Wheel{}, err
	}
	return p.leaf().wheel()
}

// SpaceForm returns the form that cuts the pinion's spaces, fed in without
// set-over to the root circle, ground on a bit of that width in mm; 0 is no
// width. A bit narrower than the space is a *geometry.Limit.
func (p Pinion) SpaceForm(stockWidth float64) (cutter.Cut, error) {
	if err := p.check(); err != nil {
		return cutter.Cut{}, err
	}
	return p.leaf().spaceForm(stockWidth)
}

func (p Pinion) leaf() struck {
	return struck{
		count: p.Leaves, tip: p.TipRadius(), pitch: p.PitchRadius(), root: p.RootRadius(),
		half: p.half(), arc: p.ArcRadius(),
		arcs: pinionLeaves, flanks: pinionModule, floor: pinionRatio,
	}
}

// check refuses a count, ratio or size outside what a job may have. With any of
// those that it passes the root circle has a radius: three leaves keep 0.11 modules.
func (p Pinion) check() error {
	if p.Leaves < fewestLeaves || p.Leaves > mostLeaves {
		return geometry.Between(pinionLeaves, float64(p.Leaves), fewestLeaves, mostLeaves, "tooth.pinion-leaves")
	}
	if !(p.Ratio >= leastRatio && p.Ratio <= mostRatio) {
		return geometry.Between(pinionRatio, p.Ratio, leastRatio, mostRatio, "tooth.pinion-ratio")
	}
	most := geometry.MostLength / (float64(p.Leaves) + 2*p.Addendum())
	if !(p.Module >= geometry.LeastLength && p.Module <= most) {
		return geometry.Between(pinionModule, p.Module, geometry.LeastLength, most, "tooth.pinion-module")
	}
	return nil
}
