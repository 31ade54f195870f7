package template

import (
	"tipline/render"
)

// Cautions is the sheet of safety texts that ends every packet. It defers to the
// makers' instructions, local rules and licensed practice.
func Cautions(s Style) *render.Drawing {
	c := newCard(Wheel{}, s, s.Words.Say("cautions.title"), s.Words.Say("cautions.line"))
	const text = 52.0
	for _, key := range []string{"eyes", "grinding", "fly", "stock", "brass", "glue", "drills"} {
		c.text(0, c.y-labelHeight, labelHeight, render.Black, true, "", c.Say("cautions."+key))
		y := c.y
		for _, line := range Wrap(c.Say("cautions."+key+".text"), 3, CardWidth-text, false) {
			c.text(text, y-labelHeight, 3, render.Black, false, "", line)
			y -= 5
		}
		c.y = min(y, c.y-5) - 4
	}
	c.rule(c.y)
	for _, line := range Wrap(c.Say("cautions.last"), labelHeight, CardWidth, true) {
		c.text(0, c.y-4-labelHeight, labelHeight, render.Black, true, "", line)
		c.y -= 5.6
	}
	return c.Drawing
}
