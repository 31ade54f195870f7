package template

import (
	"tipline/geometry"
	"tipline/render"
)

// shroudBlankCard is the card for turning a lantern pinion's shrouds and cutting
// its trundles.
func shroudBlankCard(w Wheel, s Style) *render.Drawing {
	c := newCard(w, s, s.Words.Say("cards.blank.title", "name", w.title()), s.Words.Say("cards.blank.shrouds.line"))
	l := w.Lantern
	steps := []func(*card){func(c *card) { c.size("leaves", c.Say("cards.blank.shrouds"), l.Shroud) }}
	if w.Bore > 0 {
		steps = append(steps, func(c *card) { c.size("bore", c.Say("cards.blank.bore"), w.Bore) })
	}
	if w.Thickness > 0 {
		steps = append(steps, func(c *card) { c.size("thickness", c.Say("cards.blank.between"), w.Thickness) })
	}
	c.twoColumns(sizeColumn, append(steps, func(c *card) {
		c.length("trundle", c.Say("cards.blank.trundles", "n", len(l.Holes)), l.TrundleDiameter)
	}))
	c.wide = 2 * sizeColumn
	c.note(c.Say("cards.blank.drill", "drill", l.Drill.Name, "size", s.Units.Fine(l.Drill.MM)))
	c.beside(2*sizeColumn+2, shroudBeside(w, s))
	return c.Drawing
}

// shroudBeside draws a shroud beside the card's figures.
func shroudBeside(w Wheel, s Style) *render.Drawing {
	b := NewBoard(w.ID, s)
	k := besideScale(w.Lantern.Shroud / 2)
	shroudFace(b, w, k)
	if k > 1 {
		y := -k*w.Lantern.Shroud/2 - 6
		for _, line := range Wrap(b.Say("template.shroud.enlarged", "scale", scaleText(k, b.Style)), 2.5, 1.6*besideRadius, false) {
			b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Grey}, render.Text{
				At: geometry.Point{Y: y}, Height: 2.5, Align: render.Middle, String: line,
			})
			y -= noteLine
		}
	}
	return b.Drawing
}
