package template

import (
	"strings"

	"tipline/geometry"
	"tipline/render"
)

// Widths across the form: how many are given, and how they stand on the paper, in a
// table beside the form or, where that has no room, in a row below it.
const (
	widthsGiven  = 6
	widthsColumn = 26.0
	widthsWide   = 180.0 // of form and table together
	widthsNarrow = 169.0 // or of a narrow form, that a sheet of 140 × 200 mm holds on its side
	widthsGap    = 3.0   // from the sighting lines to the table
	widthsDown   = 8.0   // that the table may reach below the form's drawing
	widthsRow    = 5.4
	widthsHead   = 4.4
	widthsApart  = 3.2 // from a column of the table to the next
)

// widthRow is a width across the form: at a depth, which is drawn as another where depths
// are not drawn as they lie along the infeed.
type widthRow struct{ depth, drawn, width float64 }

// widthRows returns the widths across the form at depths from the cutting end.
func (e *enlargement) widthRows() []widthRow {
	var rows []widthRow
	for _, d := range e.depths() {
		if front, back, ok := e.cut.Form.Width(d * e.share); ok {
			rows = append(rows, widthRow{d, d * e.share, back - front})
		}
	}
	return rows
}

// widths writes the widths across the form at depths from the cutting end, and where
// depths are drawn otherwise than along the infeed, how they are drawn.
func (e *enlargement) widths() {
	table := e.widthTable()
	of := table.Bounds()
	if corner, ok := e.roomBeside(of.Width(), of.Height()); ok {
		e.Drawing.Add(table.Placed(corner.Sub(of.Min), 1, 0).Items...)
		return
	}
	e.widthsBelow()
}

// roomBeside returns the lower left corner of so much room beside the form, left of it or
// else right, clear of every note and its leader, or of a narrow form beyond them, as high as there is
// any; false where the whole would be wider than the sheet.
func (e *enlargement) roomBeside(width, height float64) (geometry.Point, bool) {
	of, past := e.Drawing.Bounds(), e.sightPast()+widthsGap
	places, wide := []float64{e.box().Min.X - past - width, e.box().Max.X + past}, widthsWide
	if e.narrow() {
		wide = widthsNarrow
		places = append(places, of.Min.X-widthsGap-width, of.Max.X+widthsGap)
	}
	for _, left := range places {
		if max(of.Max.X, left+width)-min(of.Min.X, left) > wide {
			continue
		}
		for low := of.Max.Y - height; low >= min(of.Min.Y, of.Max.Y-height)-widthsDown; low -= 2 {
			at := geometry.Point{X: left, Y: low}
			if e.clearOfNotes(geometry.Box{Min: at, Max: at.Add(geometry.Point{X: width, Y: height})}.Grow(2)) {
				return at, true
			}
		}
	}
	return geometry.Point{}, false
}

// clearOfNotes reports whether no text, no line of a note or a dimension and nothing of the
// form, also at full size, stands in a box.
func (e *enlargement) clearOfNotes(box geometry.Box) bool {
	for _, it := range e.Drawing.Items {
		bounds, ok := it.Bounds()
		if ok && (it.Layer == render.LayerDimensions || it.Layer == render.LayerForm) && bounds.Touches(box) {
			return false
		}
	}
	return e.clear(box)
}

// widthTable draws the widths as a table: depth, where it is drawn otherwise so too, and
// width.
func (e *enlargement) widthTable() *render.Drawing {
	b := NewBoard(e.Part, e.Style)
	rows := e.widthTexts()
	ends := widthEnds(rows)
	cells := func(y float64, ink render.Ink, last float64, texts ...string) {
		for i, text := range texts {
			t := render.Text{At: geometry.Point{X: ends[i], Y: y}, Height: 2.5, Align: render.Right, String: text}
			if i == len(texts)-1 {
				t.Height = last
			}
			b.Write(Stroke{Layer: render.LayerText, Quantity: "cutter", Ink: ink}, t)
		}
	}
	y := 0.0
	for _, line := range Wrap(e.Say("template.grinding.across", "unit", e.Style.Units.Name()), 2.5, ends[len(ends)-1], true) {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "cutter"}, render.Text{At: geometry.Point{Y: y}, Height: 2.5, Bold: true, String: line})
		y -= widthsHead
	}
	cells(y-0.6, render.Grey, 2.5, rows[0]...)
	y -= 0.6 + widthsRow + 0.6
	for _, r := range rows[1:] {
		cells(y, render.Black, 3.5, r...)
		y -= widthsRow
	}
	return b.Drawing
}

// widthTexts are the rows of the table of widths, its heads first.
func (e *enlargement) widthTexts() [][]string {
	u, bare := e.Style.Units, func(length string) string { return bareOf(e.Style, length) }
	rows := [][]string{{e.Say("template.grinding.across.depth"), e.Say("template.grinding.across.drawn"), e.Say("template.grinding.across.width")}}
	for _, r := range e.widthRows() {
		rows = append(rows, []string{bare(u.Length(r.depth)), bare(u.Fine(r.drawn)), bare(u.Fine(r.width))})
	}
	if e.share == 1 {
		for i, r := range rows {
			rows[i] = []string{r[0], r[2]}
		}
	}
	return rows
}

// widthEnds returns where the columns of the table of widths end: a column is as wide as
// the widest of its texts, and the last is written larger.
func widthEnds(rows [][]string) []float64 {
	ends, end := make([]float64, len(rows[0])), 0.0
	for i := range ends {
		wide := 10.0
		for k, r := range rows {
			height := 2.5
			if k > 0 && i == len(r)-1 {
				height = 3.5
			}
			wide = max(wide, render.Text{String: r[i], Height: height}.Width())
		}
		end += wide + widthsApart*float64(min(i, 1))
		ends[i] = end
	}
	return ends
}

// bareOf returns a length as it is written, without its unit.
func bareOf(s Style, length string) string { return strings.TrimSuffix(length, " "+s.Units.Name()) }

// widthsBelow writes the widths in a row below the form.
func (e *enlargement) widthsBelow() {
	box := e.box()
	x := box.Centre().X - widthsColumn*float64(widthsGiven)/2
	y := box.Min.Y - e.sightPast() - 5.5
	title := e.Say("template.grinding.widths")
	if e.share != 1 {
		title = e.Say("template.grinding.widths.laid")
	}
	ink, grey := Stroke{Layer: render.LayerText, Quantity: "cutter", Ink: render.Black}, Stroke{Layer: render.LayerText, Quantity: "cutter", Ink: render.Grey}
	e.Write(ink, render.Text{At: geometry.Point{X: x, Y: y}, Height: 2.5, Bold: true, String: title})
	for i, r := range e.widthRows() {
		at := geometry.Point{X: x + widthsColumn*float64(i), Y: y - 6.5}
		e.Write(grey, render.Text{At: at, Height: 2.5, String: e.Style.Units.Length(r.depth)})
		if e.share != 1 {
			at.Y -= 4.8
			e.Write(ink, render.Text{At: at, Height: 2.5, String: e.Style.Units.Fine(r.drawn)})
		}
		e.Write(ink, render.Text{At: at.Add(geometry.Point{Y: -6}), Height: 3.5, String: e.Style.Units.Fine(r.width)})
	}
}
