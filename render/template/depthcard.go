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
	groups, rows := c.depthGroups(w.Cut), depthRows(w.Cut, s.Units)
	if tableWidth(groups)+leastPencil > CardWidth-depthAside {
		c.wide = CardWidth
		c.targets(w.Cut)
		c.depthTable(groups, rows)
		c.stopNote(w.Cut)
		c.depthPlots(w.Cut)
		return c.Drawing, nil
	}
	c.column(CardWidth-depthAside+6, depthAside-6, func(of *card) { of.asideTable(w.Cut) })
	c.wide = CardWidth - depthAside
	c.depthTable(groups, rows)
	c.stopNote(w.Cut)
	return c.Drawing, nil
}

// The room right of a depth card's table for its large figures and its plot, and the
// least that the table keeps for a pencil. A table that has no such room takes the whole
// width, between the figures and the plots.
const (
	depthAside   = 60.0
	leastPencil  = 14.0
	targetColumn = 86.0 // where the second of the large figures stands above a wide table
)

// asideTable writes, right of the table, the two figures of the step, large, and below
// them the plot of the whole feed.
func (c *card) asideTable(cut *cutter.Cut) {
	c.target(cut)
	c.goal(cut)
	unit, _ := c.depthUnit()
	c.y -= 2
	frame := geometry.Box{Min: geometry.Point{X: 9, Y: c.y - depthPlotHigh}, Max: geometry.Point{X: c.wide - 2, Y: c.y - 5}}
	c.depthPlot(cut, frame, 0, unit)
}

// target writes how far is fed from first touch, large.
func (c *card) target(cut *cutter.Cut) {
	c.length("teeth.root_diameter", c.Say("cards.depth.infeed"), cut.Infeed)
}

// goal writes the land to stop at, large, or that it is none.
func (c *card) goal(cut *cutter.Cut) {
	if cut.Land > 0 {
		c.length("teeth.land", c.Say("cards.setting.land"), cut.Land)
	} else {
		c.instruct("teeth.land", c.Say("cards.setting.pointed"), "")
	}
}

// targets writes the two figures of the step side by side.
func (c *card) targets(cut *cutter.Cut) {
	c.y = min(c.column(0, targetColumn-6, func(of *card) { of.target(cut) }),
		c.column(targetColumn, CardWidth-targetColumn, func(of *card) { of.goal(cut) })) + 1
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
	for _, line := range Wrap(text, 2.5, c.wide, false) {
		c.text(0, c.y-4.6, 2.5, render.Black, false, "teeth.land", line)
		c.y -= 4.4
	}
	c.y -= 2
}
