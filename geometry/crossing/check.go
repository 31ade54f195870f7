package crossing

import (
	"math"

	"tipline/geometry"
)

// fault is a reason why a crossing cannot be laid out. They stand in the order in
// which they are looked for.
type fault int

const (
	sound fault = iota
	rimLeavesNothing
	hubInsideBore
	hubMeetsRim
	sweepTooFar
	waistTooWide // wider than an end
	waistOffArm
	armOverhangs // the side through the waist leaves an end backwards
	armPinches
	armMissesRim
	armsMeetAtRim
	outerMeetsHub
	outerMissesArm
	rimFilletsOverlap
	armMissesHub
	armsMeetAtHub // and leave no corner for the window to end in
	hubFilletsOverlap
	filletsMeet // on one side, rim and hub
	edgesCross
)

// check tells whether the crossing can be laid out, and if not why. The single
// values must be in range.
func check(b Blank, s Spec) fault {
	rim, hub := b.RootRadius-s.Rim, s.Hub/2
	switch {
	case rim <= b.Bore/2+geometry.LeastLength:
		return rimLeavesNothing
	case s.Hub < b.Bore+2*geometry.LeastLength:
		return hubInsideBore
	case hub >= rim:
		return hubMeetsRim
	}
	if f := checkArm(hub, rim, s); f != sound {
		return f
	}
	narrow, wide := halves(b.Count, s)
	if f := openingOf(narrow, b, s).check(); f != sound || narrow == wide {
		return f
	}
	return openingOf(wide, b, s).check()
}

// checkArm tells whether an arm of that style can stand between hub and rim.
func checkArm(hub, rim float64, s Spec) fault {
	switch s.Style {
	case Swept:
		c := centreOf(hub, rim, s)
		bent := math.Abs(c.curvature()) * max(s.ArmAtHub, s.ArmAtRim) / 2
		if c.atRim.X <= 0 || bent >= 1 {
			return sweepTooFar
		}
	case Waisted:
		at := s.WaistAt
		switch {
		case s.Waist > min(s.ArmAtHub, s.ArmAtRim):
			return waistTooWide
		case at != 0 && (at < hub+waistShare*(rim-hub) || at > rim-waistShare*(rim-hub)):
			return waistOffArm
		case overhangs(hub, rim, s):
			return armOverhangs
		case narrowest(hub, rim, s).Width < geometry.LeastLength/2: // a waist of the least may dip a little
			return armPinches
		}
	}
	return sound
}

// overhangs reports whether the sides of a waisted arm, so wide at an end beside its
// length, turn back on the way from hub to rim.
func overhangs(hub, rim float64, s Spec) bool {
	_, left := armSides(hub, rim, s)
	return left.along.X <= 0 || left.travel(left.rim).X <= 0
}

// waistShare is how near, as a share of the arm's length, a waist may be asked for at
// an end: nearer than a twentieth an arc through both has hardly any arm to its other
// side.
const waistShare = 0.05

// check tells whether the window can be. Between straight sides and circles about
// one centre its edges cannot cross unless its fillets do.
func (o opening) check() fault {
	t, f := o.touch()
	if f != sound || o.plain() {
		return f
	}
	outline, err := o.outline(t)
	if err != nil || !outline.Simple() || outline.Area() <= 0 {
		return edgesCross
	}
	return sound
}

// plain reports whether the sides are straight and the outer edge is the rim's.
func (o opening) plain() bool {
	return o.upper.bend == 0 && o.lower.bend == 0 && o.outerRadius == 0
}

// halves returns half the angle between neighbouring arms where it is least and
// where it is greatest; on tips the teeth between two arms differ by one at most.
func halves(teeth int, s Spec) (narrow, wide geometry.Angle) {
	if s.Placing == Equal || teeth%s.Arms == 0 {
		a := geometry.Angle(math.Pi) / geometry.Angle(s.Arms)
		return a, a
	}
	pitch := geometry.Angle(math.Pi) / geometry.Angle(teeth)
	n := geometry.Angle(teeth / s.Arms)
	return n * pitch, (n + 1) * pitch
}

// inRange refuses single values that no crossing may have, and a blank that is no
// wheel.
func inRange(b Blank, s Spec) error {
	if err := b.inRange(); err != nil {
		return err
	}
	if s.Arms < FewestArms || s.Arms > MostArms {
		return geometry.Between(ofArms, float64(s.Arms), FewestArms, MostArms, "crossing.arms-out-of-range")
	}
	switch s.Placing {
	case OnTips:
		if s.Arms > b.Count {
			return geometry.AtMost(ofArms, float64(s.Arms), float64(b.Count), "crossing.more-arms-than-teeth")
		}
	case Equal:
	default:
		return geometry.Refused(ofPlacing, 0, "crossing.placing-unknown")
	}
	if s.Style != Straight && s.Style != Swept && s.Style != Waisted {
		return geometry.Refused(ofStyle, 0, "crossing.style-unknown")
	}
	return s.lengthsInRange()
}

func (s Spec) lengthsInRange() error {
	lengths := []leastLength{
		{ofRim, s.Rim, geometry.LeastLength, "crossing.rim-too-thin"},
		{ofHub, s.Hub, geometry.LeastLength, "crossing.hub-too-small"},
		{ofArmAtRim, s.ArmAtRim, geometry.LeastLength, "crossing.arm-at-rim-too-thin"},
		{ofArmAtHub, s.ArmAtHub, geometry.LeastLength, "crossing.arm-at-hub-too-thin"},
		{ofFilletAtRim, s.FilletAtRim, 0, "crossing.fillet-negative"},
		{ofFilletAtHub, s.FilletAtHub, 0, "crossing.fillet-negative"},
		{ofAllowance, s.Allowance, 0, "crossing.allowance-negative"},
		{ofStartHole, s.StartHole, 0, "crossing.start-hole-negative"},
		{ofOuterRadius, s.OuterRadius, 0, "crossing.outer-radius-negative"},
	}
	if s.Style == Waisted {
		lengths = append(lengths,
			leastLength{ofWaist, s.Waist, geometry.LeastLength, "crossing.waist-too-thin"},
			leastLength{ofWaistAt, s.WaistAt, 0, "crossing.waist-at-negative"})
	}
	for _, l := range lengths {
		if !(l.value >= l.least) || math.IsInf(l.value, 1) {
			return geometry.AtLeast(l.of, l.value, l.least, l.code)
		}
	}
	if v := float64(s.Sweep); s.Style == Swept && !(math.Abs(v) <= mostSweep) {
		return geometry.Between(ofSweep, v, -mostSweep, mostSweep, "crossing.sweep-out-of-range")
	}
	return s.additionsInRange()
}

// leastLength is a length and the least it may be.
type leastLength struct {
	of           geometry.Quantity
	value, least float64
	code         string
}

// mostSweep is more than any arm's sweep can be: one swept by a quarter turn meets
// the rim, however large, at 90° to the radius.
const mostSweep = math.Pi / 2
