// Package dividing works out how a blank is divided: whole turns and holes of an
// index plate for each tooth, two moves on one plate where no circle is exact, the
// error that is left, and the angle table.
package dividing

import "tipline/geometry"

// Head is a dividing head or rotary table.
type Head struct {
	Ratio   int   // turns of the crank to one of the work
	Circles []int // hole circles; the three-plate handbook set when empty
	Direct  []int // holes of the direct plates; none when empty
}

// Answer is how a number of divisions is indexed. Where it is exact, every tooth
// is Turns and Holes on from the last. Where it is not, Turns and Holes lead to
// the first tooth only and the places of the rest are to be taken from Place or
// Table: repeating the first step would add up its error. The crank turns one
// way throughout, so the worm's slack stays on one side.
type Answer struct {
	Divisions int
	Ratio     int
	TipRadius float64
	Turns     int     // whole turns of the crank
	Holes     int     // and holes on Circle
	Circle    int     // 0 when whole turns do
	Exact     bool    // every tooth to its place
	Error     float64 // greatest error at the tip circle in µm, 0 when exact
	Direct    []int   // direct plates that divide it

	Compound *Compound // two moves on one plate instead, where no circle is exact
}

// Angle returns tooth i's angle clockwise from tooth 0, exact.
func (a Answer) Angle(i int) geometry.Angle {
	return geometry.FullTurn * geometry.Angle(i) / geometry.Angle(a.divisions())
}

// Place returns the turns and holes of the crank from tooth 0 to tooth i, 0 to
// Divisions, the nearest hole to the tooth's exact place.
func (a Answer) Place(i int) (turns, holes int) {
	circle := max(a.Circle, 1)
	exact := i * a.Ratio * circle // in nths of a hole
	hole := (2*exact + a.divisions()) / (2 * a.divisions())
	return hole / circle, hole % circle
}

// Advance returns the turns and holes of the crank from tooth i−1 to tooth i, 1
// to Divisions. The last leads round to tooth 0 again.
func (a Answer) Advance(i int) (turns, holes int) {
	circle := max(a.Circle, 1)
	from, fromHoles := a.Place(i - 1)
	to, toHoles := a.Place(i)
	step := (to-from)*circle + toHoles - fromHoles
	return step / circle, step % circle
}

// Off returns how far past its exact place tooth i is cut, 0 when exact.
func (a Answer) Off(i int) geometry.Angle {
	circle := max(a.Circle, 1)
	turns, holes := a.Place(i)
	past := (turns*circle+holes)*a.Divisions - i*a.Ratio*circle
	return a.hole() * geometry.Angle(past) / geometry.Angle(a.divisions())
}

// Sector returns the holes that the sector arms span, counting the hole the pin
// is in; 0 when whole turns do or when the step is not always the same.
func (a Answer) Sector() int {
	if a.Circle == 0 || !a.Exact {
		return 0
	}
	return a.Holes + 1
}

// hole returns how far the work turns for one hole.
func (a Answer) hole() geometry.Angle {
	return geometry.FullTurn / geometry.Angle(max(a.Circle, 1)*max(a.Ratio, 1))
}

// divisions returns Divisions, and 1 for the zero Answer.
func (a Answer) divisions() int { return max(a.Divisions, 1) }
