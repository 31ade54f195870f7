package sheet

import (
	"strconv"

	"tipline/geometry"
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
