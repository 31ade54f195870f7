package cutter

import (
	"math"

	"tipline/geometry"
)

// The fields of a job that make a pointed form.
const (
	Count        geometry.Quantity = "teeth.count"
	TipDiameter  geometry.Quantity = "teeth.tip_diameter"
	RootDiameter geometry.Quantity = "teeth.root_diameter"
	Undercut     geometry.Quantity = "teeth.undercut"
	FrontRelief  geometry.Quantity = "teeth.front_relief"
	Floor        geometry.Quantity = "teeth.floor"
	FloorSlope   geometry.Quantity = "teeth.floor_slope"
	CornerRadius geometry.Quantity = "teeth.corner_radius"
	BackRadius   geometry.Quantity = "teeth.back_radius"
	BackAngle    geometry.Quantity = "teeth.back_angle"
	BackFillet   geometry.Quantity = "teeth.back_fillet"
	Land         geometry.Quantity = "teeth.land"
	StockWidth   geometry.Quantity = "cutter.stock_width"
)

// Pointed is what a plan says of a pointed tooth and of the bit that cuts it.
// Lengths in millimetres. Solve names the one of RootDiameter, BackRadius,
// BackAngle and Land that is worked out from the others; its own value here is
// not read.
type Pointed struct {
	Count        int            // 3 to 2000
	TipRadius    float64        // R
	RootRadius   float64        // least distance from the wheel's centre to the form at depth
	Undercut     geometry.Angle // u at the tip, 0 to 45°
	FrontRelief  geometry.Angle // lean of the front edge, 0 to 10°
	Floor        float64        // width of the floor measured across the tool, from the sharp corner to the back
	FloorSlope   geometry.Angle // rise of the floor from front to back, 0 to 30°
	CornerRadius float64        // rounding of the front corner; 0 for a sharp one
	Straight     bool           // a straight back, else an arc
	BackRadius   float64        // of an arc back
	BackAngle    geometry.Angle // lean of a straight back from the infeed
	BackFillet   float64        // rounding between floor and straight back; 0 for a sharp corner
	Land         float64        // t, arc length left on the tip
	StockWidth   float64        // of the bit; 0 when not said
	Solve        geometry.Quantity
}

// The bounds of what a maker may ask for. Angles of relief, slope and undercut
// are those a bit can be ground to and still stand (common practice, no source);
// a length is bounded as every length in a job is.
const (
	fewestTeeth   = 3
	mostTeeth     = 2000
	coincide      = 1e-9 // mm; shorter pieces of a form are nothing
	noLand        = 1e-3 // mm; a land under 1 µm is none
	shallowestCut = 0.25 // a root nearer the centre than this share of the tip radius leaves no wheel
)

var (
	mostUndercut    = geometry.Degrees(45)
	mostFrontRelief = geometry.Degrees(10)
	mostFloorSlope  = geometry.Degrees(30)
	mostBackLean    = geometry.Degrees(85) // back angle and floor slope together: the corner between them must still turn
)

// Cut works out the form, its setting and the space it leaves. A value that
// cannot be built with is a *geometry.Limit.
func (p Pointed) Cut() (Cut, error) {
	p = p.withoutSpecks()
	if err := p.check(); err != nil {
		return Cut{}, err
	}
	p, height, err := p.solved()
	if err != nil {
		return Cut{}, err
	}
	if err := p.checkTooth(height); err != nil {
		return Cut{}, err
	}
	return p.cut(height)
}

// withoutSpecks returns p with roundings and a land too small to be there as 0.
func (p Pointed) withoutSpecks() Pointed {
	if math.Abs(p.CornerRadius) < coincide {
		p.CornerRadius = 0
	}
	if math.Abs(p.BackFillet) < coincide {
		p.BackFillet = 0
	}
	if p.Land > 0 && p.Land < noLand {
		p.Land = 0
	}
	return p
}

// setOver returns e, which makes the undercut at the tip: sin u = e/R.
func (p Pointed) setOver() float64 { return p.TipRadius * math.Sin(float64(p.Undercut)) }

// leastRoot returns the least root radius that leaves a wheel: the face ends
// outside the foot of its perpendicular from the centre, which is e away.
func (p Pointed) leastRoot() float64 {
	return math.Max(shallowestCut*p.TipRadius, p.setOver())
}

// pitch returns the arc from tip to tip on the tip circle.
func (p Pointed) pitch() float64 { return p.TipRadius * 2 * math.Pi / float64(p.Count) }

// cut puts the solved form together, the wheel's centre height below its lowest
// point.
func (p Pointed) cut(height float64) (Cut, error) {
	o := p.profile()
	c := Cut{
		Count: p.Count, TipRadius: p.TipRadius,
		SetOver: p.setOver(), Undercut: p.Undercut,
		RootRadius: p.RootRadius, Land: p.Land,
		swept: o.swept,
	}
	c.TouchHeight = o.swept.touch(c.SetOver, c.TipRadius)
	c.Infeed = c.TouchHeight - height
	if p.Straight {
		c.BackAngle = p.BackAngle
	} else {
		c.BackRadius = p.BackRadius
	}
	form, err := p.form(o, height)
	c.Form = form
	return c, err
}
