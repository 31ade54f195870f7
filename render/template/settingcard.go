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
	c := newCard(w, s, s.Words.Say("cards.setting.title", "name", w.title()), s.Words.Say(straightKey("cards.setting.line", w)))
	f := &flows{c: c, wide: settingWide}
	f.write(0, settingSteps(w, s)...)
	low := c.right(settingPicture(w, s), settingWide+settingApart+settingField.X/2, 0) - 2
	f.low[1], f.low[2] = low, low
	if w.Relief != nil {
		f.write(f.shortest(), func(of *card) { of.speed(w) })
		f.write(f.shortest(), func(of *card) { of.clearance(w); of.heelAllows(w); of.y -= 5 })
	}
	for _, text := range c.minded(w) {
		f.write(f.shortest(), func(of *card) { of.note(text); of.y -= 1.5 })
	}
	return c.Drawing, nil
}

// The setting card's columns: the steps in the first, the form at depth over the other
// two, and below both what is to be minded, wherever there is room.
const (
	settingWide  = 57.0
	settingApart = 3.5
)

// flows are columns of a card that are written each on its own.
type flows struct {
	c    *card
	wide float64
	low  [3]float64 // how far down each has come
}

// write writes in a column, below what stands there.
func (f *flows) write(column int, what ...func(*card)) {
	for _, write := range what {
		f.c.y = f.low[column]
		f.low[column] = f.c.column((f.wide+settingApart)*float64(column), f.wide, write)
	}
}

// shortest returns the column that has the most room, the first of such.
func (f *flows) shortest() int {
	best := 0
	for i, low := range f.low {
		if low > f.low[best]+1 {
			best = i
		}
	}
	return best
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

// minded is what there is to mind in setting the cutter.
func (c *card) minded(w Wheel) []string {
	var texts []string
	for _, key := range []string{sideKey(w), "cards.setting.backing", straightKey("cards.setting.one-way", w)} {
		texts = append(texts, c.Say(key))
	}
	if r := w.Relief; r != nil && r.Swing > 0 && w.Thickness > 0 {
		texts = append(texts, c.Say("cards.setting.hollow", "depth", c.Style.Units.Fine(cutter.Sagitta(w.Thickness, r.Swing))))
	}
	return texts
}

// straightKey returns the key for a cutter that stands on the centre line where that is
// so: there is nothing to set over.
func straightKey(key string, w Wheel) string {
	if w.Cut.SetOver == 0 {
		return key + ".straight"
	}
	return key
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
