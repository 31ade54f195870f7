package template

import (
	"tipline/geometry"
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
		for _, line := range Wrap(c.Say("cautions."+key+".text"), 3, cardWidth-text, false) {
			c.text(text, y-labelHeight, 3, render.Black, false, "", line)
			y -= 5
		}
		c.y = min(y, c.y-5) - 4
	}
	c.rule(c.y)
	for _, line := range Wrap(c.Say("cautions.last"), labelHeight, cardWidth, true) {
		c.text(0, c.y-4-labelHeight, labelHeight, render.Black, true, "", line)
		c.y -= 5.6
	}
	return c.Drawing
}

// Row is one part on a packet's cover: its name and what is said of it.
type Row []string

// Cover is the packet's first sheet: the job's parts with their figures, under the
// names of the columns, and the findings as sentences. What does not fit is
// counted.
func Cover(title string, columns Row, parts []Row, findings []string, s Style) *render.Drawing {
	c := newCard(Wheel{}, s, title, "")
	c.text(0, c.y-5, 5, render.Black, true, "", c.Say("cards.cover.parts"))
	c.y -= 12
	shares := columnWidths(columns, parts)
	c.row(columns, shares, render.Grey, false)
	for _, p := range parts {
		c.rule(c.y + 1.2)
		c.row(p, shares, render.Black, true)
	}
	c.y -= 8
	c.text(0, c.y-5, 5, render.Black, true, "", c.Say("cards.cover.findings"))
	c.y -= 12
	c.findings(findings)
	return c.Drawing
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
