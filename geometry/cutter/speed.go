package cutter

import "math"

// SpindleSpeed returns the turns a minute at which a cutter swung at a radius in
// millimetres meets the work at a cutting speed in m/min: v/(2πρ). A swing that is
// not more than 0 has none, 0.
func SpindleSpeed(cuttingSpeed, swing float64) float64 {
	if !(swing > 0) {
		return 0
	}
	return 1000 * cuttingSpeed / (2 * math.Pi * swing)
}
