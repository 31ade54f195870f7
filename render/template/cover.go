package template

import (
	"tipline/geometry"
	"tipline/render"
)

// Row is one row of a table: a name and what is said of it.
type Row []string

// Table is a table of a packet's cover; one without rows is left out.
type Table struct {
	Title   string
	Columns Row
	Rows    []Row
}

// Cover is the packet's first sheet: tables of the job's parts with their figures,
// and the findings as sentences. What does not fit is counted.
func Cover(title string, tables []Table, findings []string, s Style) *render.Drawing {
	c := newCard(Wheel{}, s, title, "")
	for _, t := range tables {
		if len(t.Rows) > 0 {
			c.tabulate(t)
		}
	}
	c.text(0, c.y-5, 5, render.Black, true, "", c.Say("cards.cover.findings"))
	c.y -= 12
	c.findings(findings)
	return c.Drawing
}

// tabulate writes a table under its title.
func (c *card) tabulate(t Table) {
	c.text(0, c.y-5, 5, render.Black, true, "", t.Title)
	c.y -= 12
	shares := columnWidths(t.Columns, t.Rows)
	c.row(t.Columns, shares, render.Grey, false)
	for _, r := range t.Rows {
		c.rule(c.y + 1.2)
		c.row(r, shares, render.Black, true)
	}
	c.y -= 8
}

// coverRow is how high a row of the cover's table stands; coverDown how far the
// cover may reach.
const (
	coverRow  = 6.4
	coverDown = 176.0
)

// columnWidths shares the card's width out by the widest text of each column.
func columnWidths(columns Row, parts []Row) []float64 {
	widths := make([]float64, len(columns))
	total := 0.0
	for i := range columns {
		for _, r := range append([]Row{columns}, parts...) {
			if i < len(r) {
				widths[i] = max(widths[i], render.Text{String: r[i], Height: 2.5, Bold: i == 0}.Width()+4)
			}
		}
		total += widths[i]
	}
	for i := range widths {
		widths[i] *= cardWidth / total
	}
	return widths
}

// row writes one row of the cover's table; the first column bold if asked.
func (c *card) row(r Row, widths []float64, ink render.Ink, bold bool) {
	x, height := 0.0, 2.5
	for i, width := range widths {
		if i >= len(r) {
			break
		}
		t := render.Text{At: geometry.Point{X: x, Y: c.y - 3.4}, Height: height, Bold: bold && i == 0, String: r[i]}
		if over := t.Width() / (width - 2); over > 1 {
			t.Height /= over
		}
		c.Write(Stroke{Layer: render.LayerText, Ink: ink}, t)
		x += width
	}
	c.y -= coverRow
}

// findings writes the findings, each with a box to tick, as many as there is room
// for.
func (c *card) findings(sentences []string) {
	if len(sentences) == 0 {
		c.text(0, c.y-3, 3, render.Black, false, "", c.Say("cards.cover.none"))
		return
	}
	for i, sentence := range sentences {
		lines := Wrap(sentence, 2.5, cardWidth-8, false)
		if c.y-4.2*float64(len(lines)) < -coverDown && i > 0 {
			c.text(8, c.y-2.5, 2.5, render.Grey, false, "", c.Say("cards.cover.more", "n", len(sentences)-i))
			return
		}
		c.tick(0, c.y-tickSize+1)
		for _, line := range lines {
			c.text(8, c.y-2.5, 2.5, render.Black, false, "", line)
			c.y -= 4.2
		}
		c.y -= 2.4
	}
}
