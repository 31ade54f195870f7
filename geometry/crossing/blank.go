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
		{"teeth.root_diameter", 2 * b.RootRadius, 2 * geometry.LeastLength, "crossing.blank-root"},
		{"teeth.tip_diameter", 2 * b.TipRadius, 2 * b.RootRadius, "crossing.blank-tips"},
		{"bore", b.Bore, 0, "crossing.blank-bore"},
		{"thickness", b.Thickness, geometry.LeastLength, "crossing.blank-thickness"},
		{"material", b.Density, 1, "crossing.blank-material"},
		{"material", b.Young, 0.001, "crossing.blank-material"},
	} {
		if !(l.value >= l.least) || math.IsInf(l.value, 1) {
			return geometry.AtLeast(l.of, l.value, l.least, l.code)
		}
	}
	return nil
}

// Weighed returns the blank with the area and the polar moment of its outline
// worked out, unless they are there already: one outline laid out again and again
// needs it done once. Outlines that run clockwise count as well.
func (b Blank) Weighed() Blank {
	if b.Area != 0 || b.Outline.Len() == 0 {
		return b
	}
	part, times := b.Outline, 1.0
	if tooth, ok := b.tooth(); ok {
		part, times = tooth, float64(b.Count)
	}
	b.Area, b.Polar = times*math.Abs(part.Area()), times*math.Abs(part.PolarMoment())
	return b
}

// tooth returns the sector of the outline that one tooth takes up, closed through
// the wheel's centre; false where the outline is not the same tooth all round.
func (b Blank) tooth() (geometry.Outline, bool) {
	each, ok := b.Outline.Repeats(b.Count, same)
	if !ok {
		return geometry.Outline{}, false
	}
	vs := b.Outline.Vertices()
	end := vs[each%len(vs)]
	end.Bulge = 0
	sector, err := geometry.NewOutline(append(append(make([]geometry.Vertex, 1, each+2), vs[:each]...), end))
	return sector, err == nil
}
