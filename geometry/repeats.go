package geometry

import "math"

// Repeats tells whether the outline, of either hand, is count times the same round
// the origin, to so many mm, and if so after how many segments. Counts below 3 are
// not told.
func (o Outline) Repeats(count int, near float64) (each int, ok bool) {
	n := len(o.vertices)
	if count < 3 || n == 0 || n%count != 0 {
		return 0, false
	}
	each = n / count
	first := o.vertices[:each]
	pitch := FullTurn / Angle(count)
	if first[0].Cross(o.vertices[each].Point) < 0 {
		pitch = -pitch
	}
	for k := 1; k < count; k++ {
		turn := Polar(1, Angle(k)*pitch)
		for i, v := range o.vertices[k*each : (k+1)*each] {
			turned := first[i].Times(turn.X).Add(first[i].Left().Times(turn.Y))
			if turned.Dist(v.Point) > near || math.Abs(first[i].Bulge-v.Bulge) > near {
				return 0, false
			}
		}
	}
	return each, true
}
