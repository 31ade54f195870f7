package sheet

import (
	"slices"
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Measures of the label below a template on a shared sheet, in millimetres.
const (
	labelBelow = 3.0  // from the drawing to the label
	labelLeast = 44.0 // width it may have, however small the drawing

	labelFigures = 3 // at most
)

// member returns a template with what it is called: its part, and which copy.
func (g *gathering) member(sh Sheet) member {
	g.met[sh.Drawing]++
	name := partOf(sh)
	if all := g.copies[sh.Drawing]; all > 1 {
		name = g.style.Words.Say("sheet.together.copy", "name", name, "n", g.met[sh.Drawing], "m", all)
	}
	return member{sheet: sh, name: name, bounds: sh.Drawing.Bounds()}
}

// labelled returns the template with its label: its name, what kind in which scale,
// figures of its own title block, and what its lines mean where the
// sheet's legend, common to all, does not say it.
func (m member) labelled(common []template.Mark) member {
	width := max(m.bounds.Width(), labelLeast)
	kind := m.sheet.Block.Kind + ", " + scaleText(m.sheet.Drawing.Scale)
	m.label = nil
	m.write(m.name, true, render.Black, width)
	m.write(strings.TrimPrefix(kind, ", "), false, render.Black, width)
	m.write(m.figures(common), false, render.Grey, width)
	m.size = geometry.Point{X: m.bounds.Width(), Y: m.bounds.Height() + labelBelow + lineOfFoot*float64(len(m.label))}
	for _, t := range m.label {
		m.size.X = max(m.size.X, t.text.Width())
	}
	return m
}

// labelLine is a line of a label, its place still to be given.
type labelLine struct {
	text render.Text
	ink  render.Ink
}

func (m *member) write(text string, bold bool, ink render.Ink, width float64) {
	if text == "" {
		return
	}
	for _, line := range template.Wrap(text, heightSmall, width, bold) {
		m.label = append(m.label, labelLine{render.Text{String: line, Height: heightSmall, Bold: bold, Align: render.Middle}, ink})
	}
}

// figures writes the first figures of the template's own title block, which tell it
// from others, and its own lines' meaning, in a row.
func (m member) figures(common []template.Mark) string {
	var all []string
	for _, f := range m.sheet.Block.Notes.Figures {
		if f.Value != "" && len(all) < labelFigures {
			all = append(all, f.Label+" "+f.Value)
		}
	}
	for _, mark := range m.sheet.Block.Notes.Legend {
		if !slices.Contains(common, mark) {
			all = append(all, mark.Text)
		}
	}
	return strings.Join(all, " · ")
}

// draw draws the template and its label in the middle of a box.
func (m member) draw(b *template.Board, box geometry.Box) {
	top := box.Centre().Y + m.size.Y/2
	at := geometry.Point{X: box.Centre().X - m.bounds.Centre().X, Y: top - m.bounds.Max.Y}
	b.Drawing.Add(m.sheet.Drawing.Placed(at, 1, 0).Items...)
	y := top - m.bounds.Height() - labelBelow
	for _, line := range m.label {
		y -= lineOfFoot
		t := line.text
		t.At = geometry.Point{X: box.Centre().X, Y: y + (lineOfFoot-t.Height)/2}
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: line.ink}, t)
	}
}
