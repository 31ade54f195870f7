package crossing

import "math"

// stiffness returns the torque about the axis that turns the rim by one radian
// against one arm, in N·mm: a beam from radius hub to radius rim, built in at the
// hub and at a rim that turns as one, its width linear from atHub to atRim and its
// thickness t, of Young's modulus young in N/mm². Fillets are not counted.
//
// The bending moment is linear in the radius ρ, a + bρ, and a is the torque. With
// Iₙ = ∫ρⁿ/(EI) dρ the rim turns by a·I₀ + b·I₁, and having moved about the axis it
// has a·I₁ + b·I₂ = 0 (moment-area theorems); hence a = I₂/(I₀I₂ − I₁²). For a
// prismatic arm of length L this is (4EI/L)(1 + 3r/L + 3r²/L²), r the hub's radius.
func stiffness(young, t, hub, rim, atHub, atRim float64) float64 {
	l := rim - hub
	j0, j1, j2 := cubes(atHub, atRim)
	i2 := hub*hub*j0 + 2*hub*l*j1 + l*l*j2
	return young * t / 12 * i2 / (l * l * l * (j0*j2 - j1*j1))
}

// cubes returns ∫ uⁿ/(a + (b−a)u)³ du over 0 to 1 for n = 0, 1, 2, in closed form,
// to better than 1e-12 of its value for a/b from 1/100 to 100.
func cubes(a, b float64) (j0, j1, j2 float64) {
	return (a + b) / (2 * a * a * b * b), 1 / (2 * a * b * b), logTail(1-a/b) / (b * b * b)
}

// logTail returns (−ln(1−u) − u − u²/2)/u³ = Σ uⁿ/(n+3), u < 1. Near 0 the closed
// form loses its digits to cancellation and the series is summed instead; thirty
// terms at |u| = 0.2 leave 1e-22.
func logTail(u float64) float64 {
	if math.Abs(u) > 0.2 {
		return (-math.Log1p(-u) - u - u*u/2) / (u * u * u)
	}
	sum := 0.0
	for n := 30; n >= 0; n-- {
		sum = sum*u + 1/float64(n+3)
	}
	return sum
}

// windUp returns how far the rim moves round for a newton there, in µm, on arms
// of one thickness between hub and rim.
func windUp(b Blank, s Spec) float64 {
	rim := b.RootRadius - s.Rim
	return 1000 * rim * rim / (float64(s.Arms) * armStiffness(b, s))
}

// armStiffness returns the stiffness of one arm: in closed form where it is straight
// and tapers, else integrated along it.
func armStiffness(b Blank, s Spec) float64 {
	young, hub, rim := b.Young*1000, s.Hub/2, b.RootRadius-s.Rim
	if s.Style == Straight || s.Style == "" {
		return stiffness(young, b.Thickness, hub, rim, s.ArmAtHub, s.ArmAtRim)
	}
	return curvedStiffness(young, b.Thickness, centreOf(hub, rim, s), widths(hub, rim, s))
}
