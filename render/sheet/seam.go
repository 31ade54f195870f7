package sheet

import (
	"cmp"
	"math"
	"slices"

	"tipline/geometry"
	"tipline/render"
)

// strip is a stretch of a drawing, along x or y.
type strip struct{ from, to float64 }

// strips returns the stretches along x and along y that neighbouring tiles share.
func strips(tiles []tile) (x, y []strip) {
	for _, t := range tiles {
		if t.column > 0 {
			x = appendNew(x, strip{t.region.Min.X, t.region.Min.X + t.shared.X})
		}
		if t.row > 0 {
			y = appendNew(y, strip{t.region.Min.Y, t.region.Min.Y + t.shared.Y})
		}
	}
	return x, y
}

// offSeams returns the drawing with those texts moved that would be cut in two where a
// tile ends, as little as has them stand whole in what two tiles share, or whole beside
// it: half a number would be read for another one. None is moved onto another text.
func offSeams(d *render.Drawing, tiles []tile) *render.Drawing {
	x, y := strips(tiles)
	out := *d
	out.Items = slices.Clone(d.Items)
	for i, it := range out.Items {
		if it.Text == nil {
			continue
		}
		box := it.Text.Bounds()
		for _, along := range asides(strip{box.Min.X, box.Max.X}, x) {
			for _, up := range asides(strip{box.Min.Y, box.Max.Y}, y) {
				text := *it.Text
				text.At = text.At.Add(geometry.Point{X: along, Y: up})
				if out.Items[i].Text == it.Text && text.At != it.Text.At && !onAnother(out.Items, i, text.Bounds()) {
					out.Items[i].Text = &text
				}
			}
		}
	}
	return &out
}

// onAnother reports whether another text than that of an item stands in a box.
func onAnother(items []render.Item, i int, box geometry.Box) bool {
	for n, it := range items {
		if n != i && it.Text != nil && it.Text.Bounds().Touches(box) {
			return true
		}
	}
	return false
}

// mostAside is the farthest that a text is moved off a seam: half of what tiles share, which
// does for every text that is not longer than that. A longer one may be cut between its letters.
const mostAside = overlap / 2

// seamClear is how far off a tile's edge a text then stands, in millimetres.
const seamClear = 0.4

// asides returns how far a text's stretch may move so that no end of a strip lies in it, the
// least first; nought alone where none does, or where it would be too far.
func asides(of strip, strips []strip) []float64 {
	for _, s := range strips {
		for _, edge := range []float64{s.from, s.to} {
			if of.to <= edge || of.from >= edge {
				continue
			}
			moves := []float64{edge - seamClear - of.to, edge + seamClear - of.from}
			slices.SortFunc(moves, func(a, b float64) int { return cmp.Compare(math.Abs(a), math.Abs(b)) })
			if math.Abs(moves[1]) > mostAside {
				moves = moves[:1]
			}
			if math.Abs(moves[0]) <= mostAside {
				return moves
			}
		}
	}
	return []float64{0}
}
