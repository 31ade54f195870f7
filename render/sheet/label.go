package sheet

import (
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Measures of the label below a template on a shared sheet, in millimetres.
const (
	labelBelow = 3.0  // from the drawing to the label
	labelLeast = 44.0 // width it may have, however small the drawing
)

// member returns a template with its label: what it is of, which copy, what kind in
// which scale, and the figures that its own title block would hold.
func (g *gathering) member(sh Sheet) member {
	g.met[sh.Drawing]++
	bounds := sh.Drawing.Bounds()
	width := max(bounds.Width(), labelLeast)
	name := partOf(sh)
	if all := g.copies[sh.Drawing]; all > 1 {
		name = g.style.Words.Say("sheet.together.copy", "name", name, "n", g.met[sh.Drawing], "m", all)
	}
	kind := sh.Block.Kind + ", " + scaleText(sh.Drawing.Scale)
	m := member{sheet: sh, bounds: bounds}
	m.write(name, heightSmall, true, width)
	m.write(strings.TrimPrefix(kind, ", "), heightSmall, false, width)
	m.write(figuresOf(sh.Block), heightLabel, false, width)
	m.size = geometry.Point{X: bounds.Width(), Y: bounds.Height() + labelBelow}
	for _, t := range m.label {
		m.size.X = max(m.size.X, t.Width())
		m.size.Y += lineOf(t)
	}
	return m
}

// lineOf returns how much height a line of the label takes (ISO 3098: base lines
// 1.5 h apart).
func lineOf(t render.Text) float64 { return 1.5 * t.Height }

func (m *member) write(text string, height float64, bold bool, width float64) {
	if text == "" {
		return
	}
	for _, line := range template.Wrap(text, height, width, bold) {
		m.label = append(m.label, render.Text{String: line, Height: height, Bold: bold, Align: render.Middle})
	}
}

// figuresOf writes the figures of a title block in a row.
func figuresOf(t TitleBlock) string {
	var all []string
	for _, f := range t.Notes.Figures {
		if f.Value != "" {
			all = append(all, f.Label+" "+f.Value)
		}
	}
	return strings.Join(all, " · ")
}

// draw draws the template and its label in the middle of a box.
func (m member) draw(b *template.Board, box geometry.Box) {
	bounds := m.bounds
	top := box.Centre().Y + m.size.Y/2
	at := geometry.Point{X: box.Centre().X - bounds.Centre().X, Y: top - bounds.Max.Y}
	b.Drawing.Add(m.sheet.Drawing.Placed(at, 1, 0).Items...)
	y := top - bounds.Height() - labelBelow
	for _, t := range m.label {
		y -= lineOf(t)
		t.At = geometry.Point{X: box.Centre().X, Y: y + (lineOf(t)-t.Height)/2}
		ink := render.Black
		if t.Height < heightSmall {
			ink = render.Grey
		}
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: ink}, t)
	}
}
