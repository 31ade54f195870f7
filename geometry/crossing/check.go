package crossing

import (
	"math"

	"tipline/geometry"
)

// fault is a reason why a crossing cannot be laid out.
type fault int

const (
	sound fault = iota
	rimLeavesNothing
	hubInsideBore
	hubMeetsRim
	armsMeetAtRim
	armsMeetAtHub // and leave no corner for the window to end in
	armMissesHub
	rimFilletsOverlap
	hubFilletsOverlap
	filletsMeet // on one side, rim and hub
)

// Least is the least length that a job may hold, in mm: the least rim, arm or edge
// of metal round a bore.
const Least = 0.01

// check tells whether the crossing can be laid out, and if not why. The single
// values must be in range.
func check(b Blank, s Spec) fault {
	rim, hub := b.RootRadius-s.Rim, s.Hub/2
	switch {
	case rim <= b.Bore/2+Least:
		return rimLeavesNothing
	case s.Hub < b.Bore+2*Least:
		return hubInsideBore
	case hub >= rim:
		return hubMeetsRim
	}
	narrow, wide := halves(b.Count, s)
	if _, f := openingOf(narrow, b, s).touch(); f != sound || narrow == wide {
		return f
	}
	_, f := openingOf(wide, b, s).touch()
	return f
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
		return &geometry.Limit{Quantity: ofPlacing, Min: math.Inf(-1), Max: math.Inf(1), Code: "crossing.placing-unknown"}
	}
	return s.lengthsInRange()
}

func (s Spec) lengthsInRange() error {
	for _, l := range []struct {
		of           geometry.Quantity
		value, least float64
		code         string
	}{
		{ofRim, s.Rim, Least, "crossing.rim-too-thin"},
		{ofHub, s.Hub, Least, "crossing.hub-too-small"},
		{ofArmAtRim, s.ArmAtRim, Least, "crossing.arm-at-rim-too-thin"},
		{ofArmAtHub, s.ArmAtHub, Least, "crossing.arm-at-hub-too-thin"},
		{ofFilletAtRim, s.FilletAtRim, 0, "crossing.fillet-negative"},
		{ofFilletAtHub, s.FilletAtHub, 0, "crossing.fillet-negative"},
		{ofAllowance, s.Allowance, 0, "crossing.allowance-negative"},
		{ofStartHole, s.StartHole, 0, "crossing.start-hole-negative"},
	} {
		if !(l.value >= l.least) || math.IsInf(l.value, 1) {
			return geometry.AtLeast(l.of, number(l.value), l.least, l.code)
		}
	}
	return nil
}

// number returns v where it is one, and 0 for what is none.
func number(v float64) float64 {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return 0
	}
	return v
}
