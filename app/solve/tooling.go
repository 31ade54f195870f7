package solve

import (
	"tipline/app/job"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
)

// Tooling is how the teeth of a part are cut and divided. What was not asked for
// or could not be built is nil.
type Tooling struct {
	Enters   string // "back" where the rake face enters from the template's back, else "front"
	Cut      *cutter.Cut
	Relief   *cutter.Relief
	Dividing *dividing.Answer
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
