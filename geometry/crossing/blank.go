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
		{"teeth.root_diameter", b.RootRadius, geometry.LeastLength, "crossing.blank-root"},
		{"teeth.tip_diameter", b.TipRadius, b.RootRadius, "crossing.blank-tips"},
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
	vs := b.Outline.Vertices()
	each := len(vs) / b.Count
	if each == 0 || each*b.Count != len(vs) || !b.repeats(vs, each) {
		return geometry.Outline{}, false
	}
	end := vs[each%len(vs)]
	end.Bulge = 0
	sector, err := geometry.NewOutline(append(append(make([]geometry.Vertex, 1, each+2), vs[:each]...), end))
	return sector, err == nil
}

// repeats reports whether each vertex, turned by one tooth, is the vertex that lies
// each places on.
func (b Blank) repeats(vs []geometry.Vertex, each int) bool {
	pitch := geometry.FullTurn / geometry.Angle(b.Count)
	if vs[0].Cross(vs[each%len(vs)].Point) < 0 {
		pitch = -pitch
	}
	turn := geometry.Polar(1, pitch)
	for i, v := range vs {
		on := vs[(i+each)%len(vs)]
		turned := v.Times(turn.X).Add(v.Left().Times(turn.Y))
		if turned.Dist(on.Point) > same || math.Abs(v.Bulge-on.Bulge) > same {
			return false
		}
	}
	return true
}
