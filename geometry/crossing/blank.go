package crossing

import (
	"math"

	"tipline/geometry"
)

// inRange refuses a blank that is no wheel.
func (b Blank) inRange() error {
	if b.Count < 3 {
		return geometry.AtLeast("teeth.count", float64(b.Count), 3, "crossing.blank-teeth")
	}
	for _, l := range []struct {
		of    geometry.Quantity
		value float64
		least float64
		code  string
	}{
		{"teeth.root_diameter", b.RootRadius, Least, "crossing.blank-root"},
		{"teeth.tip_diameter", b.TipRadius, b.RootRadius, "crossing.blank-tips"},
		{"bore", b.Bore, 0, "crossing.blank-bore"},
		{"thickness", b.Thickness, Least, "crossing.blank-thickness"},
		{"material", b.Density, 1, "crossing.blank-material"},
		{"material", b.Young, 0.001, "crossing.blank-material"},
	} {
		if !(l.value >= l.least) || math.IsInf(l.value, 1) {
			return geometry.AtLeast(l.of, number(l.value), l.least, l.code)
		}
	}
	return nil
}

// Weighed returns the blank with the area and the polar moment of its outline
// worked out, unless they are there already: one outline laid out again and again
// needs it done once. Outlines that run clockwise count as well.
func (b Blank) Weighed() Blank {
	if b.Area == 0 && b.Outline.Len() > 0 {
		b.Area, b.Polar = math.Abs(b.Outline.Area()), math.Abs(b.Outline.PolarMoment())
	}
	return b
}
