package template

import (
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
)

// Measures of a card in millimetres: it is drawn to stand on the free area of an
// upright A4 or Letter sheet, its top left corner at the origin.
const (
	CardWidth   = 178.0
	cardColumn  = 92.0 // steps left of it, the drawing right of it
	tickSize    = 4.5
	labelHeight = 3.5
	valueHeight = 7.0
	stepHeight  = 20
	stepWrap    = 5.0 // more for each further line of what is done

	sizeColumn = 71.0 // width of one of two columns of steps, their second reading beside them
	stepsApart = 5.0  // from what stands in one column of steps to the next
)

// card is a shop card being drawn: large figures down the left, each with a box
// to tick, a drawing beside them.
type card struct {
	*Board
	y    float64 // where the next step starts
	wide float64 // of the column it stands in
}

func newCard(w Wheel, s Style, title, line string) *card {
	c := &card{Board: NewBoard(w.ID, s), wide: cardColumn - 4}
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
// large, with a second reading of it beside, or below where the column is too narrow.
func (c *card) step(q geometry.Quantity, label, figure, second string) {
	c.tick(0, c.y-tickSize)
	for i, line := range Wrap(label, labelHeight, c.wide-8, false) {
		c.y -= stepWrap * float64(min(i, 1))
		c.text(8, c.y-labelHeight-0.4, labelHeight, render.Black, false, q, line)
	}
	if figure != "" {
		base := c.y - labelHeight - 3.4 - valueHeight
		t := c.text(8, base, valueHeight, render.Black, true, q, figure)
		at := geometry.Point{X: 8 + t.Width() + 3.5, Y: base}
		if at.X+(render.Text{Height: labelHeight, String: second}).Width() > c.wide {
			c.y -= 5.5
			at = geometry.Point{X: 8, Y: base - 5.5}
		}
		c.text(at.X, at.Y, labelHeight, render.Grey, false, q, second)
	}
	c.y -= stepHeight
}

// instruct writes a step without a figure: what is done, and how.
func (c *card) instruct(q geometry.Quantity, label, how string) {
	c.tick(0, c.y-tickSize)
	y := c.y - labelHeight - 0.4
	for i, line := range Wrap(label, labelHeight, c.wide-8, true) {
		y -= stepWrap * float64(min(i, 1))
		c.text(8, y, labelHeight, render.Black, true, q, line)
	}
	for _, line := range Wrap(how, 2.5, c.wide-8, false) {
		y -= 4.4
		c.text(8, y, 2.5, render.Grey, false, q, line)
	}
	c.y = y - 5.5
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

// beside places a drawing right of the steps, from there on, its top at the card's, and
// returns how far down it comes.
func (c *card) beside(from float64, d *render.Drawing) (low float64) {
	return c.right(d, (from+CardWidth)/2, 0)
}

// column has a column of the card written that starts where the card has come to, and
// returns how far down it comes.
func (c *card) column(x, wide float64, write func(*card)) (low float64) {
	of := &card{Board: NewBoard(c.Part, c.Style), y: c.y, wide: wide}
	write(of)
	c.Drawing.Add(of.Drawing.Placed(geometry.Point{X: x}, 1, 0).Items...)
	return of.y
}

// twoColumns has steps written in two columns of that width, the first half of them in
// the first, and goes on below the longer.
func (c *card) twoColumns(wide float64, steps []func(*card)) {
	half := (len(steps) + 1) / 2
	low := c.y
	for i, part := range [][]func(*card){steps[:half], steps[half:]} {
		low = min(low, c.column(wide*float64(i), wide-stepsApart, func(of *card) {
			for _, step := range part {
				step(of)
			}
		}))
	}
	c.y = low
}

// rule draws a thin line across the card.
func (c *card) rule(y float64) { c.ruled(y, CardWidth) }

// ruled draws a thin line from the left edge to there.
func (c *card) ruled(y, to float64) {
	c.Line(Stroke{Layer: render.LayerText, Pen: render.Hair, Ink: render.Grey},
		geometry.Line{From: geometry.Point{Y: y}, To: geometry.Point{X: to, Y: y}})
}
