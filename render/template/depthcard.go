package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/measure"
	"tipline/render"
)

// DepthCard is the card for feeding to depth: what the land on a tip must be at
// round distances from depth, finer near the end, with the readings of both dials
// and by how much the land then narrows, in mm and inches side by side, room for a
// pencil, and the land against the infeed as a plot. ErrNothing if there is no
// cutter.
func DepthCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Cut == nil {
		return nil, fmt.Errorf("depth card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.depth.title", "name", w.title()), s.Words.Say("cards.depth.line"))
	c.targets(w.Cut)
	c.depthTable(w.Cut)
	c.stopNote(w.Cut)
	c.depthPlots(w.Cut)
	return c.Drawing, nil
}

// targetColumn is where the second of the card's large figures stands.
const targetColumn = 86.0

// targets writes the two figures of the step, large, side by side.
func (c *card) targets(cut *cutter.Cut) {
	half := *c
	half.length("teeth.root_diameter", c.Say("cards.depth.infeed"), cut.Infeed)
	right := &card{Board: NewBoard(c.Part, c.Style)}
	if cut.Land > 0 {
		right.length("teeth.land", c.Say("cards.setting.land"), cut.Land)
	} else {
		right.instruct("teeth.land", c.Say("cards.setting.pointed"), "")
	}
	c.Drawing.Add(right.Drawing.Placed(geometry.Point{X: targetColumn}, 1, 0).Items...)
	c.y -= stepHeight - 1
}

// Rows of the depth card by what is still to be fed, in millimetres or in inches,
// and how many stand on a card besides first touch.
var (
	toGoMillimetres = []float64{100, 50, 20, 10, 7, 5, 3, 2, 1.5, 1, 0.7, 0.5, 0.3, 0.2, 0.1, 0.05, 0.02, 0.01, 0}
	toGoInches      = []float64{4, 2, 1, 0.5, 0.3, 0.2, 0.15, 0.1, 0.07, 0.05, 0.03, 0.02, 0.01, 0.005, 0.002, 0.001, 0.0005, 0}
)

const mostDepths = 12

// depthRows returns the rows of the card: first touch, and what is round in the
// maker's unit, as near depth as the card has rows.
func depthRows(cut *cutter.Cut, u measure.Units) []cutter.Depth {
	var left []float64
	if u.Unit == measure.Inch {
		for _, l := range toGoInches {
			left = append(left, l*measure.MMPerInch)
		}
	} else {
		left = toGoMillimetres
	}
	rows := cut.DepthsLeft(left...)
	if over := len(rows) - mostDepths; over > 0 {
		rows = rows[over:]
	}
	return append([]cutter.Depth{cut.DepthAt(0)}, rows...)
}

// stopNote says, under the line at which feeding stops, what the last division
// takes off and how far on the tips are gone.
func (c *card) stopNote(cut *cutter.Cut) {
	step, change := 0.01, cut.LandAt(cut.Infeed-0.01)-cut.LandAt(cut.Infeed)
	if c.Style.Units.Unit == measure.Inch {
		step, change = measure.MMPerInch/1000, cut.LandAt(cut.Infeed-measure.MMPerInch/1000)-cut.LandAt(cut.Infeed)
	}
	text := c.Say("cards.depth.stop")
	if step < cut.Infeed {
		text += " " + c.Say("cards.setting.change", "step", c.Style.Units.Length(step), "change", c.Style.Units.Fine(change))
	}
	if gone, ok := cut.InfeedFor(0); ok && cut.Land > 0 {
		text += " " + c.Say("cards.depth.gone", "length", c.Style.Units.Fine(gone-cut.Infeed))
	}
	for _, line := range Wrap(text, 2.5, cardWidth, false) {
		c.text(0, c.y-4.6, 2.5, render.Black, false, "teeth.land", line)
		c.y -= 4.4
	}
	c.y -= 2
}
