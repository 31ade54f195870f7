package geometry

import "math"

// slice is a circular segment: what lies between an arc and its chord.
type slice struct {
	area  float64 // signed as the arc's sweep
	first Point   // ∫ r dA from the middle of the chord
	polar float64 // ∫ r² dA about the middle of the chord, signed as its area
}

// sliceOf returns the circular segment between an arc and its chord.
//
// On a chord of length 1 with bulge b, so of sweep θ = 4·atan b and radius
// (1 + b²)/4b, let q be what sliceExcess returns. Then
//
//	area                     b/3·(1 + b²q)
//	height times area        b²/12·(1 − q(1 − b²))
//	polar about the middle   b/32·(1/3 + b² + q(1 − 2b²/3 + b⁴))
//
// The first defines q by the handbook's r²(θ − sin θ)/2 (from memory). The other
// two are what it has about the circle's centre, 2/3·(r·sin θ/2)³ and
// r⁴/4·(θ − sin θ·(2 + cos θ)/3) by integration, carried to the chord; what is left
// of them has no term that the flattest arc would make infinite or wipe out.
func sliceOf(from, to Point, bulge float64) slice {
	chord, b2 := to.Sub(from), bulge*bulge
	c2, q := chord.Dot(chord), sliceExcess(b2)
	return slice{
		area:  c2 * sliceArea(bulge, q),
		first: chord.Left().Times(-c2 * b2 / 12 * (1 - q*(1-b2))),
		polar: c2 * c2 * bulge / 32 * (1.0/3 + b2 + q*(1-2*b2/3+b2*b2)),
	}
}

// sliceArea returns the area of a circular segment on a chord of length 1, where q
// is its excess.
func sliceArea(bulge, q float64) float64 { return bulge / 3 * (1 + bulge*bulge*q) }

// shallowSlice is the square of the bulge up to which sliceExcess takes its series.
// There the closed form has lost 0.4/b⁴ = 100 units of its last place, of which b²
// enters the area; and the series' first term left out, of the 12th power of b²,
// is below 1e-17.
const shallowSlice = 1.0 / 16

// sliceExcess returns, by the square of its bulge, by how much of b² the area of a
// circular segment is more than b/3 of its chord's square: 3/8·((1 + b²)²·atan(b)/b
// − 1 + b²)/b⁴ − 1/b², or, with the series of the arc tangent put in,
// 3·Σ (−b²)ⁿ/((2n + 1)(2n + 3)(2n + 5)).
func sliceExcess(b2 float64) float64 {
	if b2 > shallowSlice {
		b := math.Sqrt(b2)
		return (3.0/8*((1+b2)*(1+b2)*math.Atan(b)/b-1+b2)/b2 - 1) / b2
	}
	sum, power := 0.0, 3.0
	for n := 0.0; n < 12; n++ {
		sum += power / ((2*n + 1) * (2*n + 3) * (2*n + 5))
		power *= -b2
	}
	return sum
}
