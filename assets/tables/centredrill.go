package tables

import "sync"

var centreDrills = sync.OnceValue(func() []float64 {
	var points []float64
	for _, r := range sheet("centredrills.csv") {
		points = append(points, r.number("pilot_mm"))
	}
	return points
})

// CentreDrills lists the diameters in millimetres of the points of the usual
// centre drills, the smallest first.
func CentreDrills() []float64 { return append([]float64(nil), centreDrills()...) }
