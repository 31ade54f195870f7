package template

import (
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
)

// Measures of a card in millimetres: it is drawn to stand on the free area of an
// upright A4 or Letter sheet, its top left corner at the origin.
const (
	cardWidth   = 178.0
	cardColumn  = 92.0 // steps left of it, the drawing right of it
	tickSize    = 4.5
	labelHeight = 3.5
	valueHeight = 7.0
	stepHeight  = 20
)

// card is a shop card being drawn: large figures down the left, each with a box
// to tick, a drawing beside them.
type card struct {
	*Board
	y float64 // where the next step starts
}

func newCard(w Wheel, s Style, title, line string) *card {
	c := &card{Board: NewBoard(w.ID, s)}
	c.Drawing.Title, c.Drawing.Description, c.Drawing.Scale = title, line, 0
	return c
}

// text writes a text on the card.
func (c *card) text(x, y, height float64, ink render.Ink, bold bool, q geometry.Quantity, text string) render.Text {
	t := render.Text{At: geometry.Point{X: x, Y: y}, Height: height, Bold: bold, String: text}
	c.Write(Stroke{Layer: render.LayerText, Quantity: q, Ink: ink}, t)
	return t
}

// step writes one step: a box to tick, what is done, and the figure it is done to,
// large, with a second reading of it beside.
func (c *card) step(q geometry.Quantity, label, figure, second string) {
	c.tick(0, c.y-tickSize)
	c.text(8, c.y-labelHeight-0.4, labelHeight, render.Black, false, q, label)
	if figure != "" {
		base := c.y - labelHeight - 3.4 - valueHeight
		t := c.text(8, base, valueHeight, render.Black, true, q, figure)
		c.text(8+t.Width()+3.5, base, labelHeight, render.Grey, false, q, second)
	}
	c.y -= stepHeight
}

// instruct writes a step without a figure: what is done, and how.
func (c *card) instruct(q geometry.Quantity, label, how string) {
	c.tick(0, c.y-tickSize)
	c.text(8, c.y-labelHeight-0.4, labelHeight, render.Black, true, q, label)
	y := c.y - labelHeight - 0.4
	for _, line := range Wrap(how, 2.5, cardColumn-12, false) {
		y -= 4.4
		c.text(8, y, 2.5, render.Grey, false, q, line)
	}
	c.y = y - 7
}

// length writes a step whose figure is a length, in the maker's unit large and in
// the other beside it.
func (c *card) length(q geometry.Quantity, label string, mm float64) {
	c.step(q, label, c.Style.Units.Fine(mm), c.other().Fine(mm))
}

// size writes a step as length does, to the hundredth that a blank is turned to.
func (c *card) size(q geometry.Quantity, label string, mm float64) {
	c.step(q, label, c.Style.Units.Length(mm), c.other().Length(mm))
}

// other returns units that write the unit the maker does not use.
func (c *card) other() measure.Units {
	if c.Style.Units.Unit == measure.Inch {
		return measure.Units{Unit: measure.MM, Comma: c.Style.Units.Comma}
	}
	return measure.Units{Unit: measure.Inch, Comma: c.Style.Units.Comma}
}

// tick draws a box to tick with its lower left corner there.
func (c *card) tick(x, y float64) {
	c.Rectangle(Stroke{Layer: render.LayerText, Pen: render.Thin}, geometry.Point{X: x, Y: y}, geometry.Point{X: x + tickSize, Y: y + tickSize})
}

// beside places a drawing in the column right of the steps, its top at the card's.
func (c *card) beside(d *render.Drawing) {
	bounds := d.Bounds()
	x := (cardColumn + cardWidth - bounds.Width()) / 2
	at := geometry.Point{X: x - bounds.Min.X, Y: -bounds.Max.Y}
	c.Drawing.Add(d.Placed(at, 1, 0).Items...)
}

// rule draws a thin line across the card.
func (c *card) rule(y float64) {
	c.Line(Stroke{Layer: render.LayerText, Pen: render.Hair, Ink: render.Grey},
		geometry.Line{From: geometry.Point{Y: y}, To: geometry.Point{X: cardWidth, Y: y}})
}
