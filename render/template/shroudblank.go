package template

import (
	"strconv"

	"tipline/geometry"
	"tipline/render"
)

// shroudBlankCard is the card for turning a lantern pinion's shrouds and cutting
// its trundles.
func shroudBlankCard(w Wheel, s Style) *render.Drawing {
	c := newCard(w, s, s.Words.Say("cards.blank.title", "name", w.title()), s.Words.Say("cards.blank.shrouds.line"))
	l := w.Lantern
	c.size("leaves", c.Say("cards.blank.shrouds"), l.Shroud)
	if w.Bore > 0 {
		c.size("bore", c.Say("cards.blank.bore"), w.Bore)
	}
	if w.Thickness > 0 {
		c.size("thickness", c.Say("cards.blank.between"), w.Thickness)
	}
	c.length("trundle", c.Say("cards.blank.trundles", "n", len(l.Holes)), l.TrundleDiameter)
	c.note(c.Say("cards.blank.drill", "drill", l.Drill.Name, "size", s.Units.Fine(l.Drill.MM)))
	c.beside(shroudBeside(w, s))
	return c.Drawing
}

// shroudBeside draws a shroud beside the card's figures.
func shroudBeside(w Wheel, s Style) *render.Drawing {
	b := NewBoard(w.ID, s)
	k := besideScale(w.Lantern.Shroud / 2)
	shroudFace(b, w, k)
	if k > 1 {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Grey}, render.Text{
			At: geometry.Point{Y: -k*w.Lantern.Shroud/2 - 6}, Height: 2.5, Align: render.Middle,
			String: b.Say("template.shroud.enlarged", "scale", strconv.FormatFloat(k, 'f', -1, 64)),
		})
	}
	return b.Drawing
}
