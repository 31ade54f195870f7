package template

import (
	"tipline/render"
)

// Cautions is the sheet of safety texts that ends every packet. It defers to the
// makers' instructions, local rules and licensed practice.
func Cautions(s Style) *render.Drawing {
	c := newCard(Wheel{}, s, s.Words.Say("cautions.title"), s.Words.Say("cautions.line"))
	const text, headApart = 52.0, 4.0
	for _, key := range []string{"eyes", "grinding", "fly", "stock", "brass", "glue", "drills"} {
		head := c.y
		for _, line := range Wrap(c.Say("cautions."+key), labelHeight, text-headApart, true) {
			c.text(0, head-labelHeight, labelHeight, render.Black, true, "", line)
			head -= 5
		}
		y := c.y
		for _, line := range Wrap(c.Say("cautions."+key+".text"), 3, CardWidth-text, false) {
			c.text(text, y-labelHeight, 3, render.Black, false, "", line)
			y -= 5
		}
		c.y = min(y, head) - 4
	}
	c.rule(c.y)
	for _, line := range Wrap(c.Say("cautions.last"), labelHeight, CardWidth, true) {
		c.text(0, c.y-4-labelHeight, labelHeight, render.Black, true, "", line)
		c.y -= 5.6
	}
	return c.Drawing
}
