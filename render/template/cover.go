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

// coverRow is how high a row of the cover's table stands; coverLeast how far down the
// cover may reach at least, and coverHeading how high a heading stands with the first line
// below it.
const (
	coverRow     = 5.4
	coverLeast   = 90.0
	coverHeading = 10.0
)

// Cover is the packet's first sheet, and as many more as it takes, each as high as there is
// room: tables of the job's parts with their figures, and the findings as sentences.
func Cover(title string, tables []Table, findings []string, room float64, s Style) []*render.Drawing {
	c := newCover(title, "", s.Words.Say("cards.cover.on"), room, s)
	for _, t := range tables {
		if len(t.Rows) > 0 {
			c.tabulate(t)
		}
	}
	c.heading(c.Say("cards.cover.findings"), coverRow)
	c.findings(findings)
	return append(c.full, c.Drawing)
}

// coverSheets are the sheets of a cover: those that are full, and the one that is
// being written.
type coverSheets struct {
	*card
	title string
	on    string // what stands under the title of those that go on
	down  float64
	full  []*render.Drawing
}

// newCover returns a cover to write on, with a line under its title and another on the
// sheets that go on, each as high as there is room.
func newCover(title, line, on string, room float64, s Style) *coverSheets {
	return &coverSheets{card: newCard(Wheel{}, s, title, line), title: title, on: on, down: max(room, coverLeast)}
}

// room goes on to another sheet where so much does not fit below; true if it did.
func (c *coverSheets) room(height float64) bool {
	if c.y-height >= -c.down {
		return false
	}
	c.full = append(c.full, c.Drawing)
	c.card = newCard(Wheel{}, c.Style, c.title, c.on)
	return true
}

// heading writes a heading with room below it for a first line that high.
func (c *coverSheets) heading(text string, first float64) {
	c.room(coverHeading + first)
	c.text(0, c.y-5, 5, render.Black, true, "", text)
	c.y -= coverHeading
}

// tabulate writes a table under its title; its columns are named again on every
// sheet.
func (c *coverSheets) tabulate(t Table) {
	c.heading(t.Title, 2*coverRow)
	shares := columnWidths(t.Columns, t.Rows)
	c.row(t.Columns, shares, render.Grey, false)
	for _, r := range t.Rows {
		if c.room(coverRow) {
			c.row(t.Columns, shares, render.Grey, false)
		}
		c.rule(c.y + 1.2)
		c.row(r, shares, render.Black, true)
	}
	c.y -= 6
}

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
		widths[i] *= CardWidth / total
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

// findings writes the findings, each with a box to tick.
func (c *coverSheets) findings(sentences []string) {
	if len(sentences) == 0 {
		c.text(0, c.y-3, 3, render.Black, false, "", c.Say("cards.cover.none"))
		return
	}
	for _, sentence := range sentences {
		lines := Wrap(sentence, 2.5, CardWidth-8, false)
		c.room(4.2 * float64(len(lines)))
		c.tick(0, c.y-tickSize+1)
		for _, line := range lines {
			c.text(8, c.y-2.5, 2.5, render.Black, false, "", line)
			c.y -= 4.2
		}
		c.y -= 2.4
	}
}
