package template

import (
	"fmt"

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
	if w.Cut.Undercut == 0 {
		c.instruct("cutter", c.Say("cards.setting.centre"), c.Say("cards.setting.centre.straight"))
	} else {
		c.instruct("teeth.undercut", c.Say("cards.setting.centre"), c.Say("cards.setting.centre.how"))
		c.length("teeth.undercut", c.Say(setOverKey(w)), w.Cut.SetOver)
	}
	c.instruct("cutter", c.Say("cards.setting.touch"), c.Say("cards.setting.touch.how"))
	c.length("cutter", c.Say("cards.setting.infeed"), w.Cut.Infeed)
	if w.Cut.SetOver != 0 {
		radial := w.Cut.Radial(w.Cut.Infeed)
		c.text(8, c.y+1.6, 2.5, render.Grey, false, "cutter", c.Say("cards.setting.radial", "length", s.Units.Fine(radial), "other", c.other().Fine(radial)))
		c.y -= 3
	}
	if w.Cut.Land > 0 {
		c.length("teeth.land", c.Say("cards.setting.land"), w.Cut.Land)
	} else {
		c.instruct("teeth.land", c.Say("cards.setting.pointed"), "")
	}
	if r := w.Relief; r != nil {
		c.step("cutter.clearance", c.Say("cards.setting.tilt"), s.Units.Angle(r.Clearance), "")
	}
	c.y -= 2
	for _, key := range []string{sideKey(w), "cards.setting.backing", "cards.setting.one-way"} {
		c.note(c.Say(key))
	}
	if r := w.Relief; r != nil && r.Swing > 0 && w.Thickness > 0 {
		c.note(c.Say("cards.setting.hollow", "depth", s.Units.Fine(cutter.Sagitta(w.Thickness, r.Swing))))
	}
	c.beside(settingBeside(w, s))
	c.swing(w)
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

// Beside the steps the form is drawn no wider than the column and no higher than
// leaves room for what is written below it, at the greatest scale that does.
const (
	besideWide = 52.0
	besideHigh = swingDown - 6
)

// settingBeside draws the form at depth over the teeth.
func settingBeside(w Wheel, s Style) *render.Drawing {
	scale := viewScale(w.Cut.Form.StockWidth, besideWide)
	for {
		d := formAtDepth(w, s, scale)
		if scale <= leastScale || d.Bounds().Height() <= besideHigh {
			return d
		}
		scale /= 2
	}
}

// formAtDepth draws the form at depth over the teeth at a scale, with its set-over.
func formAtDepth(w Wheel, s Style, scale float64) *render.Drawing {
	e := newEnlargement(w, s, scale)
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
