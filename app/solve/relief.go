package solve

import (
	"tipline/app/job"
	"tipline/geometry"
)

// usualClearance is the clearance taken when none is given: 10° (Raymond, Modern
// Shop Practice, forming tools: 10 to 15°; Zerbe, 1914: 10°).
var usualClearance = geometry.Degrees(10)

// solveRelief works out what the clearance makes of the bit.
func (t *Tooling) solveRelief(r *reader, c *job.Cutter) {
	if c == nil || t.Cut == nil {
		return
	}
	mark := len(r.findings)
	clearance := r.angle("cutter.clearance", c.Clearance, usualClearance)
	thickness := r.length("cutter.stock_thickness", c.StockThickness, t.Cut.Form.StockWidth)
	swing := r.length("cutter.swing", c.Swing, 0)
	t.Enters = r.choice("cutter.enters", c.Enters, "front")
	relieve := t.Cut.Relieve
	if r.choice("cutter.ground", c.Ground, "facets") == "formed" {
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
	if deep := min(relief.Thickness, relief.UsableThickness); relief.HeelLimit > 0 && relief.HeelLimit < deep {
		r.find(Caution, "cutter.swing", "cutter.heel-rubs",
			number("value", deep, Length), number("max", roundDown(relief.HeelLimit, Length), Length),
			number("swing", swing, Length), number("least", roundUp(relief.LeastSwing, Length), Length),
			number("clearance", float64(clearance), Angle))
	}
}
