// Package dividing works out index plates: whole turns and holes for each tooth,
// the error where no circle is exact, and the angle table.
package dividing

import "tipline/geometry"

// Head is a dividing head or rotary table.
type Head struct {
	Ratio   int   // turns of the crank to one of the work
	Circles []int // hole circles; the three-plate handbook set when empty
	Direct  []int // holes of the direct plates; none when empty
}

// Answer is how a number of divisions is indexed.
type Answer struct {
	Divisions int
	Ratio     int
	Turns     int     // whole turns of the crank
	Holes     int     // and holes on Circle
	Circle    int     // 0 when whole turns do
	Exact     bool    //
	Error     float64 // greatest error at the tip circle in µm, 0 when exact
	Direct    []int   // direct plates that divide it
}

// Angle returns tooth i's angle clockwise from tooth 0, exact.
func (a Answer) Angle(i int) geometry.Angle {
	return geometry.FullTurn * geometry.Angle(i) / geometry.Angle(a.Divisions)
}
