package cutter

import (
	"math"

	"tipline/geometry"
)

// The relations of a straight forming tool, whose clearance face is ground by a
// formed wheel (Machinery's Handbook, Forming Tools, from memory; plane geometry).

// SquareDepth returns T, the depth measured square to the clearance face that
// cuts a depth D in the work: T = D·cos(C+G)/cos G, with clearance C and top rake
// G; without rake T = D·cos C.
func SquareDepth(depth float64, clearance, rake geometry.Angle) float64 {
	return depth * math.Cos(float64(clearance+rake)) / math.Cos(float64(rake))
}

// SideClearance returns the clearance left on an edge that lies at an angle phi
// to the infeed, when the clearance is measured along the infeed, as a formed
// wheel leaves it: tan(side) = tan C·sin φ (solid geometry).
func SideClearance(clearance, phi geometry.Angle) geometry.Angle {
	return geometry.Angle(math.Atan(math.Tan(float64(clearance)) * math.Sin(float64(phi))))
}

// Sagitta returns w²/8ρ, the height of the hump that a cutter swung at radius ρ
// leaves across a blank w thick when it is plunged without traverse (from
// memory; the exact height is ρ − √(ρ² − w²/4)).
func Sagitta(thickness, swing float64) float64 { return thickness * thickness / (8 * swing) }
