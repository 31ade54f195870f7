package cutter

import (
	"math"

	"tipline/geometry"
)

// SquareClearance is the clearance left on a bit's edge, measured square to it.
type SquareClearance struct {
	Least geometry.Angle // the least of it along the cutting edge
	At    geometry.Point // where, on the form
}

// LeastSideClearance returns the least clearance along the edge of a bit whose
// relief is ground by a formed wheel, measured square to the edge, and where:
// tan(side) = tan C·sin φ where the edge lies at φ to the infeed, so nothing on a
// wall along the infeed. The edge is what cuts at depth, from tip to tip, where
// it rubs at all: a relieved front is no part of it. (On a bit ground edge by edge
// the clearance is the same all along.)
func (c Cut) LeastSideClearance(clearance geometry.Angle) SquareClearance {
	least := SquareClearance{Least: clearance}
	for _, g := range c.tipToTip(c.Height()) {
		if g.Quantity == Undercut && c.Form.relieved() {
			continue
		}
		for _, t := range [2]float64{0, 1} {
			// Along a piece φ goes one way, but for an arc past the infeed's own
			// direction, which a swept edge has none of.
			phi := math.Asin(math.Min(math.Abs(g.Tangent(t).X), 1))
			if side := SideClearance(clearance, geometry.Angle(phi)); side < least.Least {
				least = SquareClearance{side, g.At(t)}
			}
		}
	}
	return least
}

// clearanceSteps halves the range of clearances to 1/1000 degree.
const clearanceSteps = 15

// ClearanceFor returns the least clearance, 1° to 30° and told to 1/1000°, at
// which the heel of a bit of a thickness clears at a swing, ground edge by edge
// or, if formed, by a formed wheel. It is false where 30° does not do either; a
// larger swing or a thinner bit then must. A swing of 0 is a bit that is not
// swung, which clears at any.
func (c Cut) ClearanceFor(thickness, swing float64, formed bool) (geometry.Angle, bool) {
	clears := func(a float64) bool { return c.clears(geometry.Angle(a), thickness, swing, formed) }
	switch {
	case swing == 0 || clears(float64(leastClearance)):
		return leastClearance, true
	case swing <= c.Infeed || !clears(float64(mostClearance)):
		return 0, false
	}
	little, enough := float64(leastClearance), float64(mostClearance)
	for range clearanceSteps {
		if mid := (little + enough) / 2; clears(mid) {
			enough = mid
		} else {
			little = mid
		}
	}
	return geometry.Angle(enough), true
}

// clears reports whether every section as far as the thickness clears, or as far
// as there is any.
func (c Cut) clears(clearance geometry.Angle, thickness, swing float64, formed bool) bool {
	if formed {
		deep := math.Min(thickness, c.Infeed/math.Tan(float64(clearance)))
		return c.formedLimit(clearance, swing) >= deep
	}
	b := c.bit(clearance)
	end := b.asFarAs(c.Infeed/b.slope, func(pieces int) bool { return pieces > 0 })
	limit, _, fouls := b.heelLimit(b.needs(end), swing)
	return !fouls || limit >= math.Min(thickness, end)
}
