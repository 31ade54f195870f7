package sheet

import (
	"strconv"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// overlap is the least of the drawing that two neighbouring tiles share, in
// millimetres: enough to lay one sheet's marks on the other's and to glue.
const overlap = 14.0

// mostTiles is the most sheets that one drawing is tiled over: no one glues more.
const mostTiles = 400

// tile is one sheet's part of a drawing: its column and row, counted from the
// lower left, its region of the drawing, and what it shares with each neighbour.
type tile struct {
	column, row   int
	columns, rows int
	region        geometry.Box
	shared        geometry.Point
}

// name returns a tile's name: letters for the row from the top, A to Z, then AA, and
// a number for the column from the left.
func (t tile) name() string {
	letters := ""
	for n := t.rows - t.row; n > 0; n = (n - 1) / 26 {
		letters = string(rune('A'+(n-1)%26)) + letters
	}
	return letters + strconv.Itoa(t.column+1)
}

// own returns the tile's part of the drawing when every overlap is halved.
func (t tile) own() geometry.Box {
	own := t.region
	if t.column > 0 {
		own.Min.X += t.shared.X / 2
	}
	if t.column < t.columns-1 {
		own.Max.X -= t.shared.X / 2
	}
	if t.row > 0 {
		own.Min.Y += t.shared.Y / 2
	}
	if t.row < t.rows-1 {
		own.Max.Y -= t.shared.Y / 2
	}
	return own
}

// cut divides a drawing's bounds into tiles of width × height that overlap: one
// tile when all of it fits. Tiles come row by row from the top left, and lie so that no
// seam passes near the drawing's origin, where it is in the bounds. Nil where there would
// be more than mostTiles.
func cut(bounds geometry.Box, width, height float64) []tile {
	columns, stepX := pieces(bounds.Width(), width)
	rows, stepY := pieces(bounds.Height(), height)
	if columns*rows > mostTiles {
		return nil
	}
	shared := geometry.Point{X: width - stepX, Y: height - stepY}
	start := geometry.Point{
		X: tiling{bounds.Min.X, bounds.Max.X, stepX, shared.X, columns}.start(),
		Y: tiling{bounds.Min.Y, bounds.Max.Y, stepY, shared.Y, rows}.start(),
	}
	var tiles []tile
	for row := rows - 1; row >= 0; row-- {
		for column := range columns {
			low := start.Add(geometry.Point{X: float64(column) * stepX, Y: float64(row) * stepY})
			tiles = append(tiles, tile{column, row, columns, rows, geometry.Box{
				Min: low, Max: low.Add(geometry.Point{X: width, Y: height}),
			}, shared})
		}
	}
	return tiles
}

// registerMarks draws, on tile i, the marks that lie on those of its neighbours,
// its edge as a thin line, and its name.
func registerMarks(b *template.Board, tiles []tile, i int, at geometry.Point) {
	t := tiles[i]
	thin := template.Stroke{Layer: render.LayerCentreLines, Pen: render.Hair, Ink: render.Grey}
	b.Rectangle(thin, t.region.Min.Add(at), t.region.Max.Add(at))
	for _, p := range marks(t) {
		registerMark(b, p.Add(at))
	}
	first := tiles[0]
	say := b.Say("sheet.tile", "tile", t.name(), "rows", first.rows, "columns", first.columns)
	text := fit(say, false, t.region.Width(), heightSmall, heightLabel)
	text.At = geometry.Point{X: t.region.Min.X, Y: t.region.Max.Y + 1.5}.Add(at)
	b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Black}, text)
}

// marks returns where a tile's register marks stand on the drawing: half way
// across each overlap it shares, a quarter of the way from both ends, clear of the
// middle of a drawing.
func marks(t tile) []geometry.Point {
	inner := geometry.Box{Min: t.region.Min.Add(t.shared.Times(0.5)), Max: t.region.Max.Sub(t.shared.Times(0.5))}
	var points []geometry.Point
	for _, share := range []float64{0.25, 0.75} {
		x := t.region.Min.X + share*t.region.Width()
		y := t.region.Min.Y + share*t.region.Height()
		if t.column > 0 {
			points = append(points, geometry.Point{X: inner.Min.X, Y: y})
		}
		if t.column < t.columns-1 {
			points = append(points, geometry.Point{X: inner.Max.X, Y: y})
		}
		if t.row > 0 {
			points = append(points, geometry.Point{X: x, Y: inner.Min.Y})
		}
		if t.row < t.rows-1 {
			points = append(points, geometry.Point{X: x, Y: inner.Max.Y})
		}
	}
	return points
}

// registerMarkQuantity tells register marks from the drawing they lie on.
const registerMarkQuantity geometry.Quantity = "sheet.register"

// registerMark draws a cross in a circle, above whatever is filled there.
func registerMark(b *template.Board, at geometry.Point) {
	s := template.Stroke{Layer: render.LayerCentreLines, Quantity: registerMarkQuantity, Pen: render.Hair}
	b.Circle(s, at, 2)
	b.Line(s,
		geometry.Line{From: at.Add(geometry.Point{X: -4}), To: at.Add(geometry.Point{X: 4})},
		geometry.Line{From: at.Add(geometry.Point{Y: -4}), To: at.Add(geometry.Point{Y: 4})})
}
