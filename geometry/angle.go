package geometry

import "math"

// Angle is an angle in radians. As a direction it is measured anticlockwise
// from the x axis; as a turn it is positive anticlockwise.
type Angle float64

// FullTurn is once round.
const FullTurn Angle = 2 * math.Pi

// Degrees returns the angle of d degrees.
func Degrees(d float64) Angle { return Angle(d * math.Pi / 180) }

// Degrees returns a in degrees.
func (a Angle) Degrees() float64 { return float64(a) * 180 / math.Pi }

// Clock turns an angle counted clockwise from 12 o'clock, as a maker counts
// teeth, into a direction, and a direction back into such an angle.
func Clock(a Angle) Angle { return math.Pi/2 - a }

// Normal returns the same direction in (−π, π].
func (a Angle) Normal() Angle {
	r := Angle(math.Remainder(float64(a), float64(FullTurn)))
	if r <= -math.Pi {
		r += FullTurn
	}
	return r
}

// Turn returns the same direction in [0, 2π).
func (a Angle) Turn() Angle {
	r := Angle(math.Mod(float64(a), float64(FullTurn)))
	if r < 0 {
		r += FullTurn
	}
	if r >= FullTurn {
		return 0
	}
	return r
}
