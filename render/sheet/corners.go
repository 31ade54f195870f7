package sheet

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/template"
)

// The corner crosses stand in the margins, the corners of a rectangle whose two
// diagonals are told: a printer that skews makes one of them longer. They keep a
// little more than printers leave white at the edges, 3 to 5 mm (common practice,
// no source).
const (
	cornerLeft   = 8.0  // from the sheet's left edge
	cornerRight  = 6.0  // from its right edge
	cornerEdge   = 12.0 // least distance from its upper and lower edge
	cornerReach  = 2.0
	cornerClear  = 6.0 // above the upright bars
	diagonalFrom = 5.4 // from the right edge to the base line of what is written
)

// cornerQuantity tells the corner crosses from what else is drawn.
const cornerQuantity geometry.Quantity = "sheet.corner"

// corners returns the rectangle whose corners the crosses mark. Its diagonal is a
// whole number of millimetres, as round a one as the sheet allows.
func (l layout) corners() (box geometry.Box, diagonal float64) {
	low := geometry.Point{X: cornerLeft, Y: cornerEdge}
	width := l.paper.Width - cornerRight - cornerLeft
	least := l.upright.Y + BarInches + cornerClear - low.Y
	most := l.paper.Height - cornerEdge - low.Y
	height := most
	for _, step := range []float64{50, 10, 5, 1} {
		diagonal = step * math.Floor(math.Hypot(width, most)/step)
		height = math.Sqrt(max(0, diagonal*diagonal-width*width))
		if height >= max(least, width/2) {
			break
		}
	}
	return geometry.Box{Min: low, Max: low.Add(geometry.Point{X: width, Y: height})}, diagonal
}

// drawCorners draws the crosses and says how far apart they are.
func (l layout) drawCorners(b *template.Board) {
	box, diagonal := l.corners()
	s := template.Stroke{Layer: render.LayerSheet, Quantity: cornerQuantity, Pen: render.Hair}
	for _, at := range box.Corners() {
		b.Line(s,
			geometry.Line{From: at.Add(geometry.Point{X: -cornerReach}), To: at.Add(geometry.Point{X: cornerReach})},
			geometry.Line{From: at.Add(geometry.Point{Y: -cornerReach}), To: at.Add(geometry.Point{Y: cornerReach})})
	}
	inch, room := b.Style.Units.Number(diagonal/measure.MMPerInch, 3), box.Height()-4*cornerReach
	say := b.Say("sheet.corners", "mm", whole(diagonal), "inch", inch)
	text := fit(say, false, room, heightSmall, heightLabel)
	if text.String != say {
		text = fit(b.Say("sheet.corners.short", "mm", whole(diagonal), "inch", inch), false, room, heightSmall, heightLabel)
	}
	text.At = geometry.Point{X: l.paper.Width - diagonalFrom, Y: box.Centre().Y}
	text.Turn, text.Align = geometry.FullTurn/4, render.Middle
	b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Grey}, text)
}
