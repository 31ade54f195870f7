package tooth

import (
	"math"

	"tipline/geometry"
)

// action is the part of the curve that a tooth has, and so the part of a turn
// through which it drives a trundle.
type action struct {
	rolling
	count, leaves int
	eased         geometry.Angle // how far each side of a space is moved away from its middle for the play
	from, to      float64        // the pinion's turns against the line of centres
}

// action works out where the flank begins and ends: after 1.1 pitches, or in the
// tooth's point if that comes first or leaves less than noLand between them.
func (d LanternDriver) action() action {
	a := action{
		rolling: rolling{d.PitchRadius(), d.Module * float64(d.Leaves) / 2, d.TrundleDiameter() / 2},
		count:   d.Count, leaves: d.Leaves,
		eased: geometry.Angle(d.SidePlay() / 2 / d.PitchRadius()),
	}
	a.from = a.begins()
	a.to = math.Min(a.from+wantedContact*a.pitch(), math.Pi)
	if a.land() < noLand {
		a.to = a.reaches(a.middle(), a.from)
	}
	return a
}

// pitch returns the pinion's turn from one trundle to the next.
func (a action) pitch() float64 { return 2 * math.Pi / float64(a.leaves) }

// middle returns how far aside of the curve's own zero the middle of the tooth
// stands.
func (a action) middle() geometry.Angle { return math.Pi/geometry.Angle(a.count) - a.eased }

// contact returns the contact ratio.
func (a action) contact() float64 { return (a.to - a.from) / a.pitch() }

// wheelTurn returns how far the wheel turns while the pinion turns.
func (a action) wheelTurn(rolled float64) geometry.Angle {
	return geometry.Angle(rolled * a.pinion / a.wheel)
}

func (a action) tipRadius() float64 { return a.at(a.to).Norm() }

// landAngle returns the angle of the land, less than 0 beyond the tooth's point.
func (a action) landAngle() geometry.Angle { return 2 * (a.middle() - a.aside(a.to)) }

func (a action) land() float64 { return float64(a.landAngle()) * a.tipRadius() }

func (a action) pointed() bool { return a.land() < noLand }
