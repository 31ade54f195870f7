package crossing

import (
	"math"

	"tipline/geometry"
)

// FewestArms and MostArms bound the number of arms.
const (
	FewestArms = 3
	MostArms   = 12
)

// TipOf returns the tip that arm j of arms stands on, or nearest to, on a wheel of
// teeth tips: jN/k rounded, halves up. j is 0 to arms−1.
func TipOf(j, arms, teeth int) int {
	return (2*j*teeth + arms) / (2 * arms) % teeth
}

// placed returns the arms, clockwise from tip 0.
func placed(teeth int, s Spec) []Arm {
	arms := make([]Arm, s.Arms)
	for j := range arms {
		tip := TipOf(j, s.Arms, teeth)
		on := geometry.FullTurn * geometry.Angle(tip) / geometry.Angle(teeth)
		arms[j] = Arm{Tip: tip, Angle: on}
		if s.Placing == Equal {
			arms[j].Angle = geometry.FullTurn * geometry.Angle(j) / geometry.Angle(s.Arms)
			// j/k − tip/N, worked out in whole numbers so that an exact tip gives exactly 0
			arms[j].Deviation = geometry.FullTurn * geometry.Angle(j*teeth-tip*s.Arms) / geometry.Angle(s.Arms*teeth)
			arms[j].Deviation = arms[j].Deviation.Normal()
		}
	}
	return arms
}

// between returns the angle from arm j clockwise to the next, in (0, 2π].
func between(arms []Arm, j int) geometry.Angle {
	if j+1 < len(arms) {
		return arms[j+1].Angle - arms[j].Angle
	}
	return geometry.FullTurn + arms[0].Angle - arms[j].Angle
}

// Divides lists the nearest counts of arms, one below and one above, that divide
// the teeth, so that every arm stands on a tip exactly; none when arms does, or
// when no count from 3 to 12 divides.
func Divides(arms, teeth int) []int {
	if arms < 1 || teeth%arms == 0 {
		return nil
	}
	var counts []int
	for k := min(arms, MostArms+1) - 1; k >= FewestArms; k-- {
		if teeth%k == 0 {
			counts = append(counts, k)
			break
		}
	}
	for k := max(arms, FewestArms-1) + 1; k <= MostArms; k++ {
		if teeth%k == 0 {
			counts = append(counts, k)
			break
		}
	}
	return counts
}

// chord returns the divider setting that steps round angle a at radius r: 2r·sin(a/2).
func chord(r float64, a geometry.Angle) float64 {
	return 2 * r * math.Sin(float64(a)/2)
}
