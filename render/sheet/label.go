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

	labelFigures = 3 // at most
)

// labelled returns the template with its label: its name, what kind in which scale,
// figures of its own title block, and what its lines mean where the
// sheet's legend, common to all, does not say it.
func (m member) labelled(common []template.Mark) member {
	width := max(m.bounds.Width(), labelLeast)
	kind := m.sheet.Block.Kind + ", " + scaleText(m.sheet.Drawing.Scale)
	m.lines, m.high = nil, labelBelow
	m.label(m.name, true, render.Black, width)
	m.label(strings.TrimPrefix(kind, ", "), false, render.Black, width)
	m.label(inARow(m.own(common, nil, labelFigures)), false, render.Grey, width)
	m.size = geometry.Point{X: m.bounds.Width(), Y: m.bounds.Height() + m.high}
	for _, t := range m.lines {
		m.size.X = max(m.size.X, t.text.Width())
	}
	return m
}

func (m *member) label(text string, bold bool, ink render.Ink, width float64) {
	if text == "" {
		return
	}
	for _, line := range template.Wrap(text, heightSmall, width, bold) {
		m.high += lineOfFoot
		m.lines = append(m.lines, captionLine{
			text: render.Text{String: line, Height: heightSmall, Bold: bold, Align: render.Middle},
			ink:  ink, down: m.high - (lineOfFoot-heightSmall)/2,
		})
	}
}
