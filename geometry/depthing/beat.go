package depthing

import (
	"math"
	"math/big"

	"tipline/geometry"
)

// Gravity is the standard acceleration of free fall in mm/s² (3rd CGPM, 1901,
// exact by definition).
const Gravity = 9806.65

// Beat is what an escape wheel makes of a train.
type Beat struct {
	PerHour *big.Rat // exact
	Whole   bool     // PerHour is a whole number
	Seconds float64  // from one beat to the next
	Length  float64  // mm, of the simple pendulum that beats so, for small arcs
}

// Beats returns the beats of an escape wheel of that many teeth, two beats a
// tooth, on an arbor that turns ratio times to one of an arbor that turns
// turnsPerHour times an hour (1 for the centre arbor).
func Beats(ratio, turnsPerHour *big.Rat, teeth int) (Beat, error) {
	if err := checkCount(teeth); err != nil {
		return Beat{}, err
	}
	for _, r := range []*big.Rat{ratio, turnsPerHour} {
		if r == nil || r.Sign() <= 0 {
			return Beat{}, geometry.AtLeast("train.turns", 0, 0, "depthing.still")
		}
	}
	beats := new(big.Rat).Mul(ratio, turnsPerHour)
	beats.Mul(beats, big.NewRat(2*int64(teeth), 1))
	perHour, _ := beats.Float64()
	return Beat{beats, beats.IsInt(), 3600 / perHour, PendulumLength(3600 / perHour)}, nil
}

// PendulumLength returns the length in mm of the simple pendulum that takes that
// many seconds from one beat to the next, half its period, in small arcs:
// L = g·(t/π)².
func PendulumLength(seconds float64) float64 {
	return Gravity * seconds * seconds / (math.Pi * math.Pi)
}
