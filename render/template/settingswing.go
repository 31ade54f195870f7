package template

import (
	"math"

	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/measure"
	"tipline/render"
)

// lines writes a text in lines down a column.
func (c *card) lines(height float64, ink render.Ink, q geometry.Quantity, text string) {
	for _, line := range Wrap(text, height, c.wide, false) {
		c.y -= 1.76 * height
		c.text(0, c.y, height, ink, false, q, line)
	}
}

// head writes a heading of a column.
func (c *card) head(q geometry.Quantity, text string) {
	for _, line := range Wrap(text, labelHeight, c.wide, true) {
		c.y -= stepWrap
		c.text(0, c.y, labelHeight, render.Black, true, q, line)
	}
	c.y -= 1.4
}

// speed writes the range of spindle speeds that gives the usual cutting speeds.
func (c *card) speed(w Wheel) {
	usual, ok := tables.SpeedFor(w.Material.Name, "milling")
	if !ok || w.Relief.Swing <= 0 {
		return
	}
	low, high := spindle(usual.Low, w.Relief.Swing), spindle(usual.High, w.Relief.Swing)
	number := func(v float64) string { return c.Style.Units.Number(v, 0) }
	c.head("cutter.swing", c.Say("cards.setting.speed", "swing", c.Style.Units.Length(w.Relief.Swing)))
	figure := c.Say("cards.setting.rpm", "speed", number(low))
	per, unit := 1.0, c.Say("cards.setting.metres")
	if c.Style.Units.Unit == measure.Inch {
		per, unit = 1000/(12*measure.MMPerInch), c.Say("cards.setting.feet")
	}
	cutting := number(per * usual.Low)
	if high > low {
		figure = c.Say("cards.setting.rpm.range", "low", number(low), "high", number(high))
		cutting = c.Say("cards.setting.range", "low", cutting, "high", number(per*usual.High))
	}
	c.y -= 6.5
	c.text(0, c.y, 5, render.Black, true, "cutter.swing", figure)
	c.y -= 1
	c.lines(2.5, render.Black, "cutter.swing", c.Say("cards.setting.cutting", "speed", cutting, "unit", unit, "tool", usual.Tool, "material", c.Style.Words.Choice("material", usual.Material)))
	c.lines(1.8, render.Grey, "cutter.swing", c.Say("cards.setting.source", "source", usual.Source))
	c.y -= 4
}

// spindle returns the spindle speed for a cutting speed at a swing, to the ten turns
// that a pulley can be chosen by.
func spindle(cutting, swing float64) float64 {
	return 10 * math.Round(cutter.SpindleSpeed(cutting, swing)/10)
}

// clearance says how the clearance is measured, and what is left of it along an
// edge that a formed wheel grinds.
func (c *card) clearance(w Wheel) {
	c.head("cutter.clearance", c.Say("cards.setting.relief"))
	angle := c.Style.Units.Angle(w.Relief.Clearance)
	if !w.Formed {
		c.lines(2.5, render.Black, "cutter.clearance", c.Say("cards.setting.relief.facets", "angle", angle))
		return
	}
	c.lines(2.5, render.Black, "cutter.clearance", c.Say("cards.setting.relief.formed", "angle", angle,
		"least", c.Style.Units.Angle(w.Relief.LeastClearance), "height", c.Style.Units.Length(w.Relief.LeastAt.Y)))
}

// heelAllows says how far behind the rake face the heel clears, from what swing on
// all of it does, and what clearance would do.
func (c *card) heelAllows(w Wheel) {
	r, u := w.Relief, c.Style.Units
	if r.Swing <= 0 {
		return
	}
	thick := min(r.Thickness, r.UsableThickness)
	key, limit := "cards.setting.heel.clears", 0.0
	if r.HeelLimit > 0 && r.HeelLimit < thick {
		key, limit = "cards.setting.heel.rubs", r.HeelLimit
	}
	c.lines(2.5, render.Black, "cutter.swing", c.Say(key, "swing", u.Length(r.Swing), "limit", u.Length(limit-c.lastDigit()/2)))
	swing := u.Length(r.LeastSwing + c.lastDigit()/2)
	text := c.Say("cards.setting.heel.swing", "thickness", u.Length(thick), "least", swing)
	if limit > 0 {
		if angle, ok := w.Cut.ClearanceFor(r.Thickness, r.Swing, w.Formed); ok {
			text = c.Say("cards.setting.heel.either", "thickness", u.Length(thick), "least", swing, "angle", u.Angle(angle+lastHundredth/2))
		}
	}
	c.lines(2.5, render.Black, "cutter.swing", text)
}

// lastDigit returns the last digit of a length as it is written, in millimetres: half
// of it added or taken off rounds up or down.
func (c *card) lastDigit() float64 {
	if c.Style.Units.Unit == measure.Inch {
		return measure.MMPerInch / 1000
	}
	return 0.01
}

// lastHundredth is the last digit of an angle as it is written.
var lastHundredth = geometry.Degrees(0.01)
