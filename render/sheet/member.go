package sheet

import (
	"slices"
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// member is a drawing on a sheet that it shares, with its caption: above it, as large
// as a sheet's own heading, or as a label below it.
type member struct {
	sheet  Sheet
	name   string       // of its part, and which copy
	title  string       // of the drawing, and which copy
	bounds geometry.Box // of its drawing
	above  bool
	lines  []captionLine // of the caption, from the top
	high   float64       // of the caption, with the room between it and the drawing
	size   geometry.Point
}

// captionLine is a text of a caption, its base line so far below the caption's top.
type captionLine struct {
	text render.Text
	ink  render.Ink
	down float64
	far  bool // at the right end of a heading
}

// member returns a drawing with what it is called: its part, and which copy.
func (g *gathering) member(sh Sheet) member {
	g.met[sh.Drawing]++
	m := member{sheet: sh, name: partOf(sh), title: sh.Drawing.Title, bounds: sh.Drawing.Bounds()}
	if all := g.copies[sh.Drawing]; all > 1 {
		n := g.met[sh.Drawing]
		m.name = g.style.Words.Say("sheet.together.copy", "name", m.name, "n", n, "m", all)
		m.title = g.style.Words.Say("sheet.together.copy", "name", m.title, "n", n, "m", all)
	}
	return m
}

// partOf returns what the drawing on a sheet is of.
func partOf(sh Sheet) string {
	if sh.Block.Part != "" {
		return sh.Block.Part
	}
	return sh.Drawing.Title
}

// isTemplate reports whether the drawing has a scale to keep, as cards have not.
func (m member) isTemplate() bool { return m.sheet.Drawing.Scale > 0 }

// own are the figures of the drawing's own title block that are not told yet, and its
// own lines' meaning where the sheet's legend, common to all, does not say it.
func (m member) own(common []template.Mark, told []template.Figure, most int) []string {
	var all []string
	for _, f := range m.sheet.Block.Notes.Figures {
		if f.Value != "" && len(all) < most && !slices.Contains(told, f) {
			all = append(all, f.Label+" "+f.Value)
		}
	}
	for _, mark := range m.sheet.Block.Notes.Legend {
		if !slices.Contains(common, mark) {
			all = append(all, mark.Text)
		}
	}
	return all
}

// draw draws the drawing and its caption on a part of the sheet: under a heading, cards
// from the left and templates in the middle, or above a label.
func (m member) draw(b *template.Board, box geometry.Box) {
	size := geometry.Point{X: m.bounds.Width(), Y: m.bounds.Height()}
	top := box.Centre().Y + m.size.Y/2
	low := geometry.Point{X: box.Centre().X - size.X/2, Y: top - size.Y}
	caption := geometry.Point{X: box.Centre().X, Y: low.Y}
	if m.above {
		caption = geometry.Point{X: box.Min.X, Y: box.Max.Y}
		low.Y = box.Max.Y - m.high - size.Y
		if m.isTemplate() {
			low.Y -= (box.Height() - m.size.Y) / 2
		} else {
			low.X = box.Min.X
		}
	}
	b.Drawing.Add(m.sheet.Drawing.Placed(low.Sub(m.bounds.Min), 1, 0).Items...)
	for _, line := range m.lines {
		t := line.text
		t.At = geometry.Point{X: caption.X, Y: caption.Y - line.down}
		if line.far {
			t.At.X = box.Max.X
		}
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: line.ink}, t)
	}
}

// inARow puts figures one after the other.
func inARow(figures []string) string { return strings.Join(figures, " · ") }
