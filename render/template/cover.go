package template

import (
	"slices"

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
	Halves  bool // the second half of its rows stands beside the first
}

// halved returns the table with the second half of its rows beside the first.
func (t Table) halved() Table {
	half := (len(t.Rows) + 1) / 2
	two := Table{Title: t.Title, Columns: slices.Repeat(t.Columns, 2)}
	for i, r := range t.Rows[:half] {
		if i+half < len(t.Rows) {
			r = slices.Concat(r, t.Rows[i+half])
		}
		two.Rows = append(two.Rows, r)
	}
	return two
}

// coverRow is how high a row of the cover's table stands; coverLeast how far down the
// cover may reach at least, and coverHeading how high a heading stands with the first line
// below it.
const (
	coverRow     = 5.0
	coverLeast   = 90.0
	coverHeading = 10.0
)

// Cover is the packet's first sheet, and as many more as it takes, each as high as there is
// room, of which the first has more: tables of the job's parts with their figures, and the
// findings as sentences.
func Cover(title string, tables []Table, findings []string, first, room float64, s Style) []*render.Drawing {
	c := newCover(title, "", s.Words.Say("cards.cover.on"), room, s)
	c.down = max(first, c.down)
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
	later float64 // down, on the sheets that go on
	full  []*render.Drawing
}

// newCover returns a cover to write on, with a line under its title and another on the
// sheets that go on, each as high as there is room.
func newCover(title, line, on string, room float64, s Style) *coverSheets {
	down := max(room, coverLeast)
	return &coverSheets{card: newCard(Wheel{}, s, title, line), title: title, on: on, down: down, later: down}
}

// room goes on to another sheet where so much does not fit below; true if it did.
func (c *coverSheets) room(height float64) bool {
	if c.y-height >= -c.down {
		return false
	}
	c.full, c.down = append(c.full, c.Drawing), c.later
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
	names := len(t.Columns)
	if t.Halves && len(t.Rows) > 3 {
		t = t.halved()
	}
	shares := columnWidths(t.Columns, t.Rows, names)
	c.row(t.Columns, shares, render.Grey, 0)
	for _, r := range t.Rows {
		if c.room(coverRow) {
			c.row(t.Columns, shares, render.Grey, 0)
		}
		c.rule(c.y + 0.8)
		c.row(r, shares, render.Black, names)
	}
	c.y -= 4
}

// columnWidths shares the card's width out by the widest text of each column; every so many
// columns there is one of names.
func columnWidths(columns Row, parts []Row, names int) []float64 {
	widths := make([]float64, len(columns))
	total := 0.0
	for i := range columns {
		for _, r := range append([]Row{columns}, parts...) {
			if i < len(r) {
				widths[i] = max(widths[i], render.Text{String: r[i], Height: 2.5, Bold: i%names == 0}.Width()+4)
			}
		}
		total += widths[i]
	}
	for i := range widths {
		widths[i] *= CardWidth / total
	}
	return widths
}

// row writes one row of the cover's table, every so many columns a name in bold; none where
// names is nought.
func (c *card) row(r Row, widths []float64, ink render.Ink, names int) {
	x, height := 0.0, 2.5
	for i, width := range widths {
		if i >= len(r) {
			break
		}
		t := render.Text{At: geometry.Point{X: x, Y: c.y - 3.4}, Height: height, Bold: names > 0 && i%names == 0, String: r[i]}
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
