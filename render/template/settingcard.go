package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
)

// SettingCard is the card for setting the cutter over and feeding it to depth, with
// the speed it is swung at and what its heel allows. ErrNothing if there is no
// cutter.
func SettingCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Cut == nil {
		return nil, fmt.Errorf("setting card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.setting.title", "name", w.title()), s.Words.Say("cards.setting.line"))
	c.twoColumns(stepColumn, settingSteps(w, s))
	low := c.beside(2*stepColumn+sideRoom, settingBeside(w, s))
	c.y = min(c.y, low-3) - 1
	c.column(0, mindColumn-3, func(of *card) { of.minded(w) })
	if w.Relief != nil {
		c.column(mindColumn, reliefColumn-mindColumn-4, func(of *card) { of.speed(w) })
		c.column(reliefColumn, cardWidth-reliefColumn, func(of *card) { of.clearance(w); of.heelAllows(w) })
	}
	return c.Drawing, nil
}

// settingSteps are the steps of setting the cutter over and feeding it, in their order.
func settingSteps(w Wheel, s Style) []func(*card) {
	var steps []func(*card)
	instruct := func(q geometry.Quantity, key, how string) {
		steps = append(steps, func(c *card) { c.instruct(q, c.Say("cards.setting."+key), how) })
	}
	length := func(q geometry.Quantity, mm float64, label string) {
		steps = append(steps, func(c *card) { c.length(q, label, mm) })
	}
	say := func(key string) string { return s.Words.Say("cards.setting." + key) }
	if w.Cut.Undercut == 0 {
		instruct("cutter", "centre", say("centre.straight"))
	} else {
		instruct("teeth.undercut", "centre", say("centre.how"))
		length("teeth.undercut", w.Cut.SetOver, s.Words.Say(setOverKey(w)))
	}
	instruct("cutter", "touch", say("touch.how"))
	steps = append(steps, func(c *card) { c.infeed(w) })
	if w.Cut.Land > 0 {
		length("teeth.land", w.Cut.Land, say("land"))
	} else {
		instruct("teeth.land", "pointed", "")
	}
	return steps
}

// infeed writes the step of feeding to depth, and how deep that is along the radius
// where the cutter is set over.
func (c *card) infeed(w Wheel) {
	c.length("cutter", c.Say("cards.setting.infeed"), w.Cut.Infeed)
	if w.Cut.SetOver == 0 {
		return
	}
	radial := w.Cut.Radial(w.Cut.Infeed)
	text := c.Say("cards.setting.radial", "length", c.Style.Units.Fine(radial), "other", c.other().Fine(radial))
	c.y += 4.2
	for _, line := range Wrap(text, 2.5, c.wide-8, false) {
		c.text(8, c.y-2.5, 2.5, render.Grey, false, "cutter", line)
		c.y -= 4.2
	}
	c.y -= 2.5
}

// minded says what there is to mind in setting the cutter.
func (c *card) minded(w Wheel) {
	for _, key := range []string{sideKey(w), "cards.setting.backing", "cards.setting.one-way"} {
		c.note(c.Say(key))
	}
	if r := w.Relief; r != nil && r.Swing > 0 && w.Thickness > 0 {
		c.note(c.Say("cards.setting.hollow", "depth", c.Style.Units.Fine(cutter.Sagitta(w.Thickness, r.Swing))))
	}
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

// Where the speeds stand below the steps, right of what is to be minded, and where the
// clearance and the heel.
const (
	mindColumn   = 76.0
	reliefColumn = 132.0
)

// Beside the steps the form is drawn no wider and no higher than that.
const (
	besideWide = cardWidth - 2*stepColumn - sideRoom
	besideHigh = 44.0
	besidePast = 4.0 // of the teeth and the circles on either side of the form
)

// settingBeside draws the form at depth over the teeth, as large as there is room.
func settingBeside(w Wheel, s Style) *render.Drawing {
	scale := viewScale(w.Cut.Form.StockWidth, besideWide)
	for {
		d := formAtDepth(w, s, scale)
		of := d.Bounds()
		if scale <= leastScale || of.Width() <= besideWide && of.Height() <= besideHigh {
			return d
		}
		scale *= 0.9
	}
}

// formAtDepth draws the form at depth over the teeth at a scale, with its set-over.
func formAtDepth(w Wheel, s Style, scale float64) *render.Drawing {
	e := newEnlargement(w, s, scale)
	e.past = besidePast
	e.teethLeft(w, besidePast)
	e.form()
	for _, r := range []float64{w.Cut.TipRadius, w.Cut.RootRadius} {
		e.circleAtDepth(r, "teeth")
	}
	if w.Cut.SetOver != 0 {
		e.setOver(e.box().Min.Y-sightPast-5, s.Units.Fine(w.Cut.SetOver))
	}
	return e.Drawing
}
