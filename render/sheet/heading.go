package sheet

import (
	"math"
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Measures of the heading above a drawing on a sheet that it shares.
const (
	headingBelow = 3.2  // from the heading to the drawing
	headingLine  = 6.7  // from the title's base line to that of the line under it
	headingNotes = 4.6  // and on to those of the figures
	headingApart = 5.0  // between what stands on one line of it
	headingLeast = 82.0 // width it has, however small the drawing
)

// leastWidth returns the width that a drawing and its heading take at least.
func (m member) leastWidth() float64 { return max(m.bounds.Width(), headingLeast) }

// headed returns the drawing with its heading over it, as wide as both may be: its title
// and scale, its line, and the figures that are not told yet.
func (m member) headed(common []template.Mark, told []template.Figure, width float64) member {
	d := m.sheet.Drawing
	m.lines, m.above, m.high = nil, true, heightTitle
	left := m.head(width)
	line := render.Text{String: d.Description, Height: heightSmall, Align: render.Right}
	switch {
	case d.Description == "":
	case !strings.Contains(d.Description, "\n") && line.Width() <= left:
		m.far(line)
	default:
		m.high += headingLine - lineHeight
		m.heading(d.Description, heightText, lineHeight, width)
	}
	m.heading(inARow(m.own(common, told, math.MaxInt)), heightSmall, headingNotes, width)
	m.high += headingBelow
	m.size = geometry.Point{X: max(width, m.bounds.Width()), Y: m.high + m.bounds.Height()}
	return m
}

// head writes the title, in lines where it is too long for one, and at the right end of the
// first the scale, and returns how much of that is left for more.
func (m *member) head(width float64) (left float64) {
	scale := render.Text{String: scaleText(m.sheet.Drawing.Scale), Height: heightScale, Bold: true, Align: render.Right}
	room := width - scale.Width() - 2*headingApart
	title := fit(m.title, true, room, heightTitle, heightText)
	if scale.String != "" {
		m.far(scale)
	}
	if title.String != m.title {
		for i, line := range template.Wrap(m.title, heightText, room, true) {
			m.high += lineHeight * float64(min(i, 1))
			m.lines = append(m.lines, captionLine{text: render.Text{String: line, Height: heightText, Bold: true}, down: m.high})
		}
		return 0
	}
	m.lines = append(m.lines, captionLine{text: title, down: m.high})
	if scale.String != "" {
		return 0
	}
	return width - title.Width() - headingApart
}

// far writes a text at the right end of a heading's first line.
func (m *member) far(t render.Text) {
	m.lines = append(m.lines, captionLine{text: t, down: m.high, far: true})
}

// heading writes a text in lines below those of the heading.
func (m *member) heading(text string, height, step, width float64) {
	if text == "" {
		return
	}
	for _, line := range template.Wrap(text, height, width, false) {
		m.high += step
		m.lines = append(m.lines, captionLine{text: render.Text{String: line, Height: height}, down: m.high})
	}
}
