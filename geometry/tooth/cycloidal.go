package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// The practical proportions of a train wheel's tooth, from memory of
// BS 978-2:1952: the addendum is 0.95 of the theoretical one and its arcs are
// struck with 1.40 of the theoretical one.
const (
	practicalAddendum = 0.95
	arcRadius         = 1.40
)

// Cycloidal is a train wheel that drives a pinion of Leaves leaves. Its tooth and
// space are each π/2 modules wide at the pitch circle, its flanks are radial and
// π/2 modules deep, and two arcs meet in a point at its tip. Each arc meets its
// flank in a corner.
type Cycloidal struct {
	Count  int     // teeth, 3 to 2000
	Module float64 // mm, 0.01 and more
	Leaves int     // of the pinion driven, 3 to 2000
}

// TheoreticalAddendum returns f, in modules, of a wheel that can be made; 0 for
// one without teeth or leaves.
func (c Cycloidal) TheoreticalAddendum() float64 {
	if c.Count < 1 || c.Leaves < 2 {
		return 0
	}
	return addendumFactor(float64(c.Count), float64(c.Leaves))
}

// AddendumFactor returns the addendum that is cut, 0.95 f, in modules.
func (c Cycloidal) AddendumFactor() float64 { return practicalAddendum * c.TheoreticalAddendum() }

// ArcRadius returns the radius of the arcs of the tip, 1.40 f modules, in mm.
func (c Cycloidal) ArcRadius() float64 { return arcRadius * c.TheoreticalAddendum() * c.Module }

// PitchRadius returns the radius of the pitch circle in mm.
func (c Cycloidal) PitchRadius() float64 { return c.Module * float64(c.Count) / 2 }

// TipRadius returns the radius of the tip circle in mm.
func (c Cycloidal) TipRadius() float64 { return c.PitchRadius() + c.AddendumFactor()*c.Module }

// RootRadius returns the radius of the root circle in mm, the dedendum being π/2
// modules.
func (c Cycloidal) RootRadius() float64 { return c.PitchRadius() - math.Pi/2*c.Module }

// Wheel returns the wheel. Its outline runs anticlockwise from tip 0, five
// segments a tooth: arc, flank, root, flank, arc. Its space runs clockwise from
// tip 0 to tip 1.
func (c Cycloidal) Wheel() (Wheel, error) {
	if err := c.check(); err != nil {
		return Wheel{}, err
	}
	return c.tooth().wheel()
}

// tooth returns the tooth as it is struck.
func (c Cycloidal) tooth() struck {
	return struck{
		count: c.Count, tip: c.TipRadius(), pitch: c.PitchRadius(), root: c.RootRadius(),
		half: math.Pi / (2 * geometry.Angle(c.Count)), arc: c.ArcRadius(),
		arcs: "teeth.leaves", flanks: "teeth.count", floor: "teeth.module",
	}
}

// SpaceForm returns the form that cuts the wheel's spaces, fed in without
// set-over to the root circle, ground on a bit of that width in mm; 0 is no
// width. A bit narrower than the space is a *geometry.Limit.
func (c Cycloidal) SpaceForm(stockWidth float64) (cutter.Cut, error) {
	if err := c.check(); err != nil {
		return cutter.Cut{}, err
	}
	return c.tooth().spaceForm(stockWidth)
}
