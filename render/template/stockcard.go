package template

import "tipline/render"

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

// Where the columns of the stock card stand, in millimetres.
const (
	stockItem = 8.0
	stockFor  = 98.0
	stockStep = 6.4
)

// StockCards list what a job needs, each thing with a box to tick, on as many cards as
// it takes; one that says so where it needs nothing.
func StockCards(title string, groups []StockGroup, s Style) []*render.Drawing {
	if title == "" {
		title = s.Words.Say("cards.stock.untitled")
	} else {
		title = s.Words.Say("cards.stock.title", "name", title)
	}
	line := s.Words.Say("cards.stock.line")
	c := &coverSheets{card: newCard(Wheel{}, s, title, line), title: title, on: line}
	for _, g := range groups {
		if len(g.Rows) == 0 {
			continue
		}
		c.heading(g.Title, 2*stockStep)
		for _, r := range g.Rows {
			c.stock(r)
		}
		c.y -= 4
	}
	if len(c.full) == 0 && len(c.Drawing.Items) == 0 {
		c.text(0, c.y-3, 3, render.Black, false, "", c.Say("stock.nothing"))
	}
	return append(c.full, c.Drawing)
}

// stock writes one thing.
func (c *coverSheets) stock(r StockRow) {
	item := r.Item
	if r.Usual {
		item = c.Say("stock.usual", "item", item)
	}
	items, uses := Wrap(item, 2.5, stockFor-stockItem-4, false), Wrap(r.For, 2.5, cardWidth-stockFor, false)
	high := stockStep + 3.8*float64(max(len(items), len(uses))-1)
	c.room(high)
	c.tick(0, c.y-tickSize)
	for i, text := range items {
		c.text(stockItem, c.y-3.4-3.8*float64(i), 2.5, render.Black, false, "", text)
	}
	for i, text := range uses {
		c.text(stockFor, c.y-3.4-3.8*float64(i), 2.5, render.Grey, false, "", text)
	}
	c.y -= high
	c.rule(c.y + 0.6)
}
