package solve

import (
	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/render/template"
)

// Tooling is how the teeth of a part are cut and divided. What was not asked for
// or could not be built is nil.
type Tooling struct {
	Enters     string         // "back" where the rake face enters from the template's back, else "front"
	Formed     bool           // the relief is ground by a formed wheel, else edge by edge
	Rake       geometry.Angle // of the rake face
	WheelEdge  float64        // radius of the grinding wheel's edge; 0 where not said
	Cut        *cutter.Cut
	Relief     *cutter.Relief
	Clears     geometry.Angle // where the heel rubs: the least clearance at which it does not; 0 where it clears, or none does
	Speed      *Speed         // nil when not swung
	Ground     *cutter.Ground // the bit as it was measured
	BitBase    float64        // the height at which its lowest point was typed
	Photograph *Photograph    // of the bit
	Dividing   *dividing.Answer
}

// solveSpaceForm works out the cutter of a space, if one is asked for.
func (t *Tooling) solveSpaceForm(r *reader, c *job.Cutter, form func(stockWidth float64) (cutter.Cut, error)) {
	if c == nil {
		return
	}
	cut, err := form(r.length("cutter.stock_width", c.StockWidth, usualStock))
	if !r.fail("cutter.stock_width", err) {
		t.Cut = &cut
	}
}

// solveCutter works out how the form that makes the teeth is ground, swung and fed
// into a material.
func (t *Tooling) solveCutter(r *reader, c *job.Cutter, material string) {
	if c == nil {
		return
	}
	t.solvePhotograph(r, c.Bit)
	if t.Cut == nil {
		return
	}
	t.solveRelief(r, c)
	t.solveGrinding(r, c)
	t.solveSpeed(r, c, material)
	t.solveBit(r, c.Bit)
}

// onto hands the tooling over with the part that it makes the teeth of. The
// photograph needs its picture, which is not read here.
func (t *Tooling) onto(w template.Wheel) template.Wheel {
	w.Enters, w.Rake, w.Formed, w.WheelEdge = t.Enters, t.Rake, t.Formed, t.WheelEdge
	w.Cut, w.Relief, w.Dividing = t.Cut, t.Relief, t.Dividing
	w.Ground, w.BitBase = t.Ground, t.BitBase
	return w
}
