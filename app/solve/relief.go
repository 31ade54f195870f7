package solve

import (
	"tipline/app/job"
	"tipline/geometry"
)

// usualClearance is the clearance taken when none is given: 10° (Raymond, Modern
// Shop Practice, forming tools: 10 to 15°; Zerbe, 1914: 10°).
var usualClearance = geometry.Degrees(10)

// leastSide is the side clearance below which an edge rubs rather than cuts: the
// least that a clearance may be (common practice, no source).
var leastSide = geometry.Degrees(1)

// solveRelief works out what the clearance makes of the bit.
func (t *Tooling) solveRelief(r *reader, c *job.Cutter) {
	mark := len(r.findings)
	clearance := r.angle("cutter.clearance", c.Clearance, usualClearance)
	thickness := r.length("cutter.stock_thickness", c.StockThickness, t.Cut.Form.StockWidth)
	swing := r.length("cutter.swing", c.Swing, 0)
	t.Rake = r.angle("cutter.rake", c.Rake, 0)
	t.Enters = r.choice("cutter.enters", c.Enters, "front")
	t.Formed = r.choice("cutter.ground", c.Ground, "facets") == "formed"
	relieve := t.Cut.Relieve
	if t.Formed {
		relieve = t.Cut.RelieveFormed
	}
	if !r.sound(mark) {
		return
	}
	relief, err := relieve(clearance, thickness, swing)
	if r.fail("cutter.clearance", err) {
		return
	}
	t.Relief = &relief
	if relief.UsableThickness < relief.Thickness {
		r.find(Note, "cutter.stock_thickness", "cutter.pinches-out",
			number("max", relief.UsableThickness, Length), number("value", relief.Thickness, Length),
			number("clearance", float64(clearance), Angle))
	}
	t.heelFinding(r)
	t.sideFinding(r)
}

// heelFinding says when the heel rubs, and what would do.
func (t *Tooling) heelFinding(r *reader) {
	relief := t.Relief
	deep := min(relief.Thickness, relief.UsableThickness)
	if relief.HeelLimit == 0 || relief.HeelLimit >= deep {
		return
	}
	code := "cutter.heel-rubs-at-any"
	clears, ok := t.Cut.ClearanceFor(relief.Thickness, relief.Swing, t.Formed)
	if ok {
		code, t.Clears = "cutter.heel-rubs", clears
	}
	r.find(Caution, "cutter.swing", code,
		number("value", deep, Length), atMost("max", relief.HeelLimit, Length),
		number("swing", relief.Swing, Length), atLeast("least", relief.LeastSwing, Length),
		number("clearance", float64(relief.Clearance), Angle), atLeast("clears", float64(clears), Angle))
}

// sideFinding says when a formed wheel leaves the walls of the form next to no
// clearance.
func (t *Tooling) sideFinding(r *reader) {
	if side := t.Relief.LeastClearance; side < leastSide {
		r.find(Caution, "cutter.ground", "cutter.side-rubs", number("side", float64(side), Angle),
			number("x", t.Relief.LeastAt.X, Length), number("y", t.Relief.LeastAt.Y, Length))
	}
}
