package template

import (
	"tipline/geometry"
	"tipline/render"
)

// StockGroup is one kind of thing that a job needs.
type StockGroup struct {
	Title string
	Rows  []StockRow
}

// StockRow is one thing to get in: what it is, which part needs it and what for, and
// whether nobody asked for just this and it is what is usual.
type StockRow struct {
	Item, For string
	Usual     bool
}

// The stock card's two columns, in millimetres: the width of one, where what stands right
// of its boxes begins, and its lines.
const (
	stockWide  = 87.0
	stockItem  = 7.0
	stockLine  = 3.5
	stockApart = 2.4 // from one thing to the next
	stockHead  = 8.5 // of a group, with the first thing below it
	stockOn    = 3.4 // of one that goes on
)

// StockCards list what a job needs, each thing with a box to tick and below it what it is
// for, in two columns on as many cards as it takes, each as high as there is room; one that
// says so where it needs nothing.
func StockCards(title string, groups []StockGroup, room float64, s Style) []*render.Drawing {
	if title == "" {
		title = s.Words.Say("cards.stock.untitled")
	} else {
		title = s.Words.Say("cards.stock.title", "name", title)
	}
	line := s.Words.Say("cards.stock.line")
	c := &stockSheets{coverSheets: newCover(title, line, line, room, s)}
	for _, g := range groups {
		for i, r := range g.Rows {
			c.stock(g.Title, i == 0, r)
		}
	}
	if len(c.full) == 0 && len(c.Drawing.Items) == 0 {
		c.text(0, c.y-3, 3, render.Black, false, "", c.Say("stock.nothing"))
	}
	return append(c.full, c.Drawing)
}

// stockSheets are the sheets of a list in two columns, and where the one that is written
// begins.
type stockSheets struct {
	*coverSheets
	left float64
}

// column goes on in the next column where so much does not fit below in this one; true if
// it did.
func (c *stockSheets) column(height float64) bool {
	switch {
	case c.y-height >= -c.down:
		return false
	case c.left == 0:
		c.left, c.y = CardWidth-stockWide, 0
	default:
		c.room(height)
		c.left = 0
	}
	return true
}

// stock writes one thing, the first of a group under its heading and the first of a column
// under that it goes on.
func (c *stockSheets) stock(group string, first bool, r StockRow) {
	item := r.Item
	if r.Usual {
		item = c.Say("stock.usual", "item", item)
	}
	items, uses := Wrap(item, 2.5, stockWide-stockItem, false), Wrap(r.For, 2.5, stockWide-stockItem, false)
	high := stockLine*float64(len(items)+len(uses)) + stockApart
	if first {
		c.column(stockHead + high)
		c.y -= 3 * min(1, -c.y) // from what stands above
		c.text(c.left, c.y-4.5, 4.5, render.Black, true, "", group)
		c.y -= stockHead
	} else if c.column(high) {
		c.text(c.left, c.y-2.5, 2.5, render.Grey, true, "", c.Say("cards.stock.on", "group", group))
		c.y -= stockOn
	}
	c.tick(c.left, c.y-tickSize)
	for i, text := range append(items, uses...) {
		ink := render.Black
		if i >= len(items) {
			ink = render.Grey
		}
		c.text(c.left+stockItem, c.y-3.4-stockLine*float64(i), 2.5, ink, false, "", text)
	}
	c.y -= high
	y := c.y + 1
	c.Line(Stroke{Layer: render.LayerText, Pen: render.Hair, Ink: render.Grey},
		geometry.Line{From: geometry.Point{X: c.left, Y: y}, To: geometry.Point{X: c.left + stockWide, Y: y}})
}
