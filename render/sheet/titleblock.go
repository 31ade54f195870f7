package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// TitleBlock is what the title block says, by the fields of ISO 7200, and what
// stands beside the drawing. An empty field shows a dash.
type TitleBlock struct {
	Job      string // title
	Part     string // supplementary title
	Kind     string // document type: "Crossing template"
	Maker    string // legal owner and creator
	Number   string // identification number
	Date     string // of issue: the date the job was revised, never the clock's
	Sheet    string // "3 of 14"; Lay fills it
	Scale    string // "1 : 1"; made from the drawing when empty
	Material string // and thickness
	Profile  string // the printer's; made from the printer's profile when empty
	Notes    template.Notes
}

// blockWidth is the title block's greatest width (ISO 7200: 180 mm).
const (
	blockWidth = 180.0
	rowHeight  = 11.0
	maxAcross  = 4 // figures in a row

	partShare = 5.3 // of the 18 that the upper row has
	partRoom  = blockWidth*partShare/18 - 1.5*cellInset

	cellLine = 1.35 // from one base line of a field of two lines to the next, in heights
	cellName = 1.4  // from a field's upper line to its name
	cellText = 4.0  // from its lower line to the middle of what it says
	cellLow  = 2.9  // or where its name takes two lines
)

// cell is one field of the title block: its name, what it says, its share of the
// row's width, and its short name for where that is narrow.
type cell struct {
	label, value string
	share        float64
	short        string
}

// rows returns the title block's rows, the top one first.
func (t TitleBlock) rows(say func(string, ...any) string) [][]cell {
	rows := [][]cell{
		{{say("sheet.title"), t.Job, 6.2, ""}, {say("sheet.part"), t.Part, partShare, ""}, {say("sheet.kind"), t.Kind, 6.5, ""}},
	}
	figures := t.Notes.Figures
	if t.Material != "" {
		figures = append([]template.Figure{{Label: say("sheet.material"), Value: t.Material}}, figures...)
	}
	for _, f := range inRows(figures) {
		var row []cell
		for _, figure := range f {
			row = append(row, cell{figure.Label, figure.Value, 1, ""})
		}
		rows = append(rows, row)
	}
	return append(rows, []cell{
		{say("sheet.owner"), t.Maker, 3.8, say("sheet.owner.short")},
		{say("sheet.number"), t.Number, 2.6, ""},
		{say("sheet.date"), t.Date, 3, say("sheet.date.short")},
		{say("sheet.sheet"), t.Sheet, 2.5, ""},
		{say("sheet.scale"), t.Scale, 2.5, ""},
		{say("sheet.profile"), t.Profile, 4.6, say("sheet.profile.short")},
	})
}

// inRows shares figures out evenly over as few rows as hold them.
func inRows(figures []template.Figure) [][]template.Figure {
	if len(figures) == 0 {
		return nil
	}
	count := (len(figures) + maxAcross - 1) / maxAcross
	var rows [][]template.Figure
	for i := range count {
		rows = append(rows, figures[i*len(figures)/count:(i+1)*len(figures)/count])
	}
	return rows
}

// height returns how high the block stands.
func (t TitleBlock) height(say func(string, ...any) string) float64 {
	return rowHeight * float64(len(t.rows(say)))
}

// draw draws the block with its lower left corner at corner.
func (t TitleBlock) draw(b *template.Board, corner geometry.Point, width float64) {
	rows := t.rows(b.Say)
	top := corner.Y + rowHeight*float64(len(rows))
	thin := template.Stroke{Layer: render.LayerSheet, Pen: render.Thin}
	for i, row := range rows {
		y := top - rowHeight*float64(i)
		if i > 0 {
			b.Line(thin, geometry.Line{From: geometry.Point{X: corner.X, Y: y}, To: geometry.Point{X: corner.X + width, Y: y}})
		}
		t.drawRow(b, row, geometry.Point{X: corner.X, Y: y}, width)
	}
	b.Rectangle(template.Stroke{Layer: render.LayerSheet, Pen: render.Visible}, corner, geometry.Point{X: corner.X + width, Y: top})
}

// drawRow draws a row's cells below and right of corner.
func (t TitleBlock) drawRow(b *template.Board, row []cell, corner geometry.Point, width float64) {
	total := 0.0
	for _, c := range row {
		total += c.share
	}
	x := corner.X
	height := rowLettering(row, width/total)
	for i, c := range row {
		w := width * c.share / total
		if i > 0 {
			b.Line(template.Stroke{Layer: render.LayerSheet, Pen: render.Thin},
				geometry.Line{From: geometry.Point{X: x, Y: corner.Y}, To: geometry.Point{X: x, Y: corner.Y - rowHeight}})
		}
		drawCell(b, c, geometry.Point{X: x, Y: corner.Y}, w, height)
		x += w
	}
}

// cellInset is the room left beside a cell's text.
const cellInset = 2.0

// rowLettering returns the one height in which a row's fields are written: the
// larger, unless a field only fits in a smaller.
func rowLettering(row []cell, perShare float64) float64 {
	height := heightText
	for _, c := range row {
		room := c.share*perShare - 1.5*cellInset
		lines := lettered(c.value, room)
		height = min(height, lines[0].Height)
		if len(c.name(room)) > 1 && (len(lines) > 1 || height > heightSmall) {
			height = heightSmall
			if fit(c.value, false, room, height).String != c.value {
				height = heightLabel
			}
		}
	}
	return height
}

// name returns a field's name in one line, its short one if need be, or else in two, the
// second shortened where even that has no room.
func (c cell) name(room float64) []render.Text {
	for _, name := range []string{c.label, c.short} {
		if t := fit(name, false, room, heightLabel); name != "" && t.String == name {
			return []render.Text{t}
		}
	}
	if lines := inLines(c.label, room, heightLabel); lines != nil {
		return lines
	}
	return []render.Text{fit(c.label, false, room, heightLabel)}
}

// lettered returns a field's text as large as it fits its width: in one line, or smaller
// in one or two; shortened where even that has no room.
func lettered(value string, width float64) []render.Text {
	if t := fit(value, false, width, heightText, heightSmall); t.String == value {
		return []render.Text{t}
	}
	for _, height := range []float64{heightSmall, heightLabel} {
		if lines := inLines(value, width, height); lines != nil {
			return lines
		}
	}
	return []render.Text{fit(value, false, width, heightLabel)}
}

// inLines returns a text of a height in one or two lines of a width; nil where it takes
// more.
func inLines(value string, width, height float64) []render.Text {
	lines := template.Wrap(value, height, width, false)
	if len(lines) == 0 || len(lines) > 2 {
		return nil
	}
	var texts []render.Text
	for _, line := range lines {
		t := render.Text{String: line, Height: height}
		if t.Width() > width {
			return nil
		}
		texts = append(texts, t)
	}
	return texts
}

// drawCell writes one field below and right of corner.
func drawCell(b *template.Board, c cell, corner geometry.Point, width, height float64) {
	room := width - 1.5*cellInset
	names := c.name(room)
	for i, t := range names {
		t.At = geometry.Point{X: corner.X + cellInset, Y: corner.Y - cellName - heightLabel - cellLine*heightLabel*float64(i)}
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Grey}, t)
	}
	value := c.value
	if value == "" {
		value = "–"
	}
	lines := inLines(value, room, height)
	if one := fit(value, false, room, height); one.String == value || lines == nil {
		lines = []render.Text{one}
	}
	middle := corner.Y - rowHeight + cellText
	if len(names) > 1 {
		middle = corner.Y - rowHeight + cellLow
	}
	up := cellLine * height * float64(len(lines)-1) / 2
	for i, t := range lines {
		t.At = geometry.Point{X: corner.X + cellInset, Y: middle - height/2 + up - cellLine*height*float64(i)}
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Black}, t)
	}
}
