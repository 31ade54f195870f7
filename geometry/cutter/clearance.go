package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// leastFormed returns the least clearance, measured square to the edge, that a
// formed wheel leaves along what cuts at depth, and where: tan(side) =
// tan C·sin φ where the edge lies at φ to the infeed, so nothing on a wall along
// the infeed. A front that leans back, and the rounding below it, which begins
// along the infeed, are no part of it.
func (c Cut) leastFormed(clearance geometry.Angle) (least geometry.Angle, at geometry.Point) {
	least = clearance
	front := c.Form.Edge.Segment(0)
	leans := c.Form.fronted() && front.From.X > front.To.X
	for _, g := range c.tipToTip(c.Height()) {
		if leans && (g.Quantity == Undercut || g.Quantity == CornerRadius) {
			continue
		}
		// From end to end of a piece φ grows or shrinks, or grows and shrinks: a
		// swept edge never turns back, so that it is least at an end.
		for _, t := range [2]float64{0, 1} {
			phi := math.Asin(math.Min(math.Abs(g.Tangent(t).X), 1))
			if side := SideClearance(clearance, geometry.Angle(phi)); side < least {
				least, at = side, g.At(t)
			}
		}
	}
	return least, at
}

// clearanceNear is how near a clearance is told: finer than any table is set to.
var clearanceNear = geometry.Degrees(1e-3)

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
	return geometry.Angle(seek.Last(float64(mostClearance), float64(leastClearance), float64(clearanceNear), clears)), true
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
