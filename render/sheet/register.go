package sheet

import (
	"math"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// registerMarks draws, on tile i of a drawing, the marks that lie on those of its
// neighbours, its edge as a thin line, and its name.
func registerMarks(b *template.Board, d *render.Drawing, tiles []tile, i int, at geometry.Point) {
	t := tiles[i]
	thin := template.Stroke{Layer: render.LayerCentreLines, Pen: render.Hair, Ink: render.Grey}
	b.Rectangle(thin, t.region.Min.Add(at), t.region.Max.Add(at))
	for _, p := range marks(d, tiles, i) {
		registerMark(b, p.Add(at))
	}
	first := tiles[0]
	say := b.Say("sheet.tile", "tile", t.name(), "rows", first.rows, "columns", first.columns)
	text := fit(say, false, t.region.Width(), heightSmall, heightLabel)
	text.At = geometry.Point{X: t.region.Min.X, Y: t.region.Max.Y + 1.5}.Add(at)
	b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Black}, text)
}

// registerMarkQuantity tells register marks from the drawing they lie on.
const registerMarkQuantity geometry.Quantity = "sheet.register"

// registerReach is how far a register mark reaches from its middle, in millimetres.
const registerReach = 4.0

// registerMark draws a cross in a circle, above whatever is filled there.
func registerMark(b *template.Board, at geometry.Point) {
	s := template.Stroke{Layer: render.LayerCentreLines, Quantity: registerMarkQuantity, Pen: render.Hair}
	b.Circle(s, at, registerReach/2)
	b.Line(s,
		geometry.Line{From: at.Add(geometry.Point{X: -registerReach}), To: at.Add(geometry.Point{X: registerReach})},
		geometry.Line{From: at.Add(geometry.Point{Y: -registerReach}), To: at.Add(geometry.Point{Y: registerReach})})
}

// marks returns where the register marks of tile i stand on the drawing: two in each
// overlap that it shares.
func marks(d *render.Drawing, tiles []tile, i int) []geometry.Point {
	var points []geometry.Point
	for n, t := range tiles {
		if n == i || t.column+1 == tiles[i].column && t.row == tiles[i].row {
			points = append(points, t.right().marks(d)...)
		}
		if n == i || t.row+1 == tiles[i].row && t.column == tiles[i].column {
			points = append(points, t.upper().marks(d)...)
		}
	}
	return points
}

// leastSeam is the length in millimetres of a seam that has room for two marks, far enough
// apart to lay one sheet straight on the other.
const leastSeam = 40.0

// seam is the overlap of two neighbouring tiles, without what other tiles share of it too
// unless little were left; empty where there is no neighbour.
type seam struct {
	box     geometry.Box
	upright bool
}

// right is the tile's seam with the tile on its right.
func (t tile) right() seam {
	if t.column == t.columns-1 {
		return seam{box: geometry.NoBox()}
	}
	box := t.region
	if inner := t.inside(false, true); inner.Height() >= leastSeam {
		box = inner
	}
	box.Min.X = box.Max.X - t.shared.X
	return seam{box, true}
}

// upper is the tile's seam with the tile above it.
func (t tile) upper() seam {
	if t.row == t.rows-1 {
		return seam{box: geometry.NoBox()}
	}
	box := t.region
	if inner := t.inside(true, false); inner.Width() >= leastSeam {
		box = inner
	}
	box.Min.Y = box.Max.Y - t.shared.Y
	return seam{box, false}
}

// inside returns the tile without what it shares with its neighbours along x, along y.
func (t tile) inside(x, y bool) geometry.Box {
	box := t.region
	if x && t.column > 0 {
		box.Min.X += t.shared.X
	}
	if x && t.column < t.columns-1 {
		box.Max.X -= t.shared.X
	}
	if y && t.row > 0 {
		box.Min.Y += t.shared.Y
	}
	if y && t.row < t.rows-1 {
		box.Max.Y -= t.shared.Y
	}
	return box
}

// seamShare is the part of a seam, from either end, in which its one mark stands: two that
// are near to each other turn one sheet on the other.
const seamShare = 0.4

// marks returns where the seam's two marks stand: each as near to half way across it and a
// quarter of the way along from its end as it crosses the least of the drawing, nothing if
// that can be.
func (s seam) marks(d *render.Drawing) []geometry.Point {
	if s.box.Empty() {
		return nil
	}
	ink := inkOf(clipped(d, s.box), s.box)
	size := geometry.Point{X: s.box.Width(), Y: s.box.Height()}
	low, high := s.box, s.box
	quarter := geometry.Point{Y: size.Y / 4}
	if s.upright {
		low.Max.Y, high.Min.Y = low.Min.Y+seamShare*size.Y, high.Max.Y-seamShare*size.Y
	} else {
		low.Max.X, high.Min.X = low.Min.X+seamShare*size.X, high.Max.X-seamShare*size.X
		quarter = geometry.Point{X: size.X / 4}
	}
	return []geometry.Point{
		ink.least(low, s.box.Centre().Sub(quarter)),
		ink.least(high, s.box.Centre().Add(quarter)),
	}
}

// least returns where in a box a mark crosses least, and of such places the nearest to
// one.
func (k ink) least(box geometry.Box, to geometry.Point) geometry.Point {
	box.Min, box.Max = box.Min.Add(geometry.Point{X: markReach, Y: markReach}), box.Max.Sub(geometry.Point{X: markReach, Y: markReach})
	if box.Empty() || !box.Contains(to) {
		return to
	}
	best, fewest, nearest := to, math.MaxInt, 0.0
	for x := -math.Floor((to.X - box.Min.X) / inkCell); to.X+x*inkCell <= box.Max.X; x++ {
		for y := -math.Floor((to.Y - box.Min.Y) / inkCell); to.Y+y*inkCell <= box.Max.Y; y++ {
			at := to.Add(geometry.Point{X: x * inkCell, Y: y * inkCell})
			n, away := k.under(at), math.Hypot(x, y)
			if n < fewest || n == fewest && away < nearest {
				best, fewest, nearest = at, n, away
			}
		}
	}
	return best
}

// markReach is what a register mark takes, with a little room about it.
const markReach = registerReach + inkCell
