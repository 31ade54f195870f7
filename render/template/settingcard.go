package template

import (
	"fmt"

	"tipline/geometry/cutter"
	"tipline/geometry/measure"
	"tipline/render"
)

// SettingCard is the card for setting the cutter over and feeding it to depth.
// ErrNothing if there is no cutter.
func SettingCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Cut == nil {
		return nil, fmt.Errorf("setting card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.setting.title", "name", w.title()), s.Words.Say("cards.setting.line"))
	if w.Cut.Undercut == 0 {
		c.instruct("cutter", c.Say("cards.setting.centre"), c.Say("cards.setting.centre.straight"))
	} else {
		c.instruct("teeth.undercut", c.Say("cards.setting.centre"), c.Say("cards.setting.centre.how"))
		c.length("teeth.undercut", c.Say(setOverKey(w)), w.Cut.SetOver)
	}
	c.instruct("cutter", c.Say("cards.setting.touch"), c.Say("cards.setting.touch.how"))
	c.length("cutter", c.Say("cards.setting.infeed"), w.Cut.Infeed)
	if w.Cut.Land > 0 {
		c.length("teeth.land", c.Say("cards.setting.land"), w.Cut.Land)
	} else {
		c.instruct("teeth.land", c.Say("cards.setting.pointed"), "")
	}
	if r := w.Relief; r != nil {
		c.step("cutter.clearance", c.Say("cards.setting.tilt"), s.Units.Angle(r.Clearance), "")
		if r.Swing > 0 && r.HeelLimit > 0 {
			c.length("cutter.swing", c.Say("cards.setting.heel", "swing", s.Units.Length(r.Swing)), r.HeelLimit)
		}
	}
	c.y -= 2
	for _, key := range []string{sideKey(w), "cards.setting.backing", "cards.setting.one-way"} {
		c.note(c.Say(key))
	}
	if r := w.Relief; r != nil && r.Swing > 0 && w.Thickness > 0 {
		c.note(c.Say("cards.setting.hollow", "depth", s.Units.Fine(cutter.Sagitta(w.Thickness, r.Swing))))
	}
	c.beside(settingBeside(w, s))
	c.depths(w)
	return c.Drawing, nil
}

// sideKey says from which side of the wheel the rake face enters.
func sideKey(w Wheel) string {
	if w.Enters == "back" {
		return "cards.setting.side.back"
	}
	return "cards.setting.side.template"
}

// setOverKey says to which side of the wheel's centre line the cutter is set, seen
// as the form is drawn.
func setOverKey(w Wheel) string {
	if w.Mirrored() {
		return "cards.setting.set-over.right"
	}
	return "cards.setting.set-over.left"
}

// settingBeside draws the form at depth over the teeth, no wider than the column.
func settingBeside(w Wheel, s Style) *render.Drawing {
	e := newEnlargement(w, s, viewScale(w.Cut.Form.StockWidth, 52))
	e.teethLeft(w, 12)
	e.form()
	for _, r := range []float64{w.Cut.TipRadius, w.Cut.RootRadius} {
		e.circleAtDepth(r, "teeth")
	}
	if w.Cut.SetOver != 0 {
		e.setOver(e.box().Min.Y-sightPast-5, s.Units.Fine(w.Cut.SetOver))
	}
	return e.Drawing
}

// Rows of the depth table: what is left to feed, in millimetres or in inches.
var (
	leftMillimetres = []float64{0.5, 0.3, 0.2, 0.1, 0.05, 0.02, 0}
	leftInches      = []float64{0.020, 0.010, 0.005, 0.004, 0.002, 0.001, 0}
)

// depths writes what land stands on the tip with so much still to feed.
func (c *card) depths(w Wheel) {
	left, unit, lastStep := leftMillimetres, 1.0, 100.0
	if c.Style.Units.Unit == measure.Inch {
		left, unit, lastStep = leftInches, 25.4, 1000
	}
	const x, second = cardColumn + 12, cardColumn + 44
	y := -depthsDown
	c.text(x, y, labelHeight, render.Black, true, "teeth.land", c.Say("cards.setting.depths"))
	y -= 6.5
	c.text(x, y, 2.5, render.Grey, false, "cutter", c.Say("cards.setting.still"))
	c.text(second, y, 2.5, render.Grey, false, "teeth.land", c.Say("cards.setting.land-now"))
	for _, l := range left {
		l *= unit
		land, ok := landAt(w, w.Cut.Infeed-l)
		if l >= w.Cut.Infeed || !ok {
			continue
		}
		y -= 6.2
		c.text(x, y, labelHeight, render.Black, false, "cutter", c.Style.Units.Fine(l))
		c.text(second, y, labelHeight, render.Black, true, "teeth.land", c.Style.Units.Fine(land))
	}
	if before, ok := landAt(w, w.Cut.Infeed-unit/lastStep); ok {
		text := c.Say("cards.setting.change", "step", c.Style.Units.Length(unit/lastStep), "change", c.Style.Units.Fine(before-w.Cut.Land))
		for _, line := range Wrap(text, 2.5, cardWidth-x, false) {
			y -= 5
			c.text(x, y, 2.5, render.Grey, false, "teeth.land", line)
		}
	}
}

// depthsDown is how far below the card's top the depth table starts.
const depthsDown = 108.0

// landAt returns the land on the tip at an infeed, none once the tips are gone.
func landAt(w Wheel, infeed float64) (float64, bool) {
	if infeed <= 0 {
		return 0, false
	}
	return max(0, w.Cut.LandAt(infeed)), true
}
