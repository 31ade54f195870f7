package sheet

import (
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
// it: half a number would be read for another one.
func offSeams(d *render.Drawing, tiles []tile) *render.Drawing {
	x, y := strips(tiles)
	out := *d
	out.Items = slices.Clone(d.Items)
	for i, it := range out.Items {
		if it.Text == nil {
			continue
		}
		box := it.Text.Bounds()
		move := geometry.Point{X: aside(strip{box.Min.X, box.Max.X}, x), Y: aside(strip{box.Min.Y, box.Max.Y}, y)}
		if move != (geometry.Point{}) {
			text := *it.Text
			text.At = text.At.Add(move)
			out.Items[i].Text = &text
		}
	}
	return &out
}

// mostAside is the farthest that a text is moved off a seam: half of what tiles share, which
// does for every text that is not longer than that. A longer one may be cut between its letters.
const mostAside = overlap / 2

// seamClear is how far off a tile's edge a text then stands, in millimetres.
const seamClear = 0.4

// aside returns how far a text's stretch moves so that the ends of no strip lie in it;
// nought where they do not, or where it would be too far.
func aside(of strip, strips []strip) float64 {
	for _, s := range strips {
		for _, edge := range []float64{s.from, s.to} {
			if of.to <= edge || of.from >= edge {
				continue
			}
			back, on := edge-seamClear-of.to, edge+seamClear-of.from
			move := on
			if -back < on {
				move = back
			}
			if max(move, -move) <= mostAside {
				return move
			}
		}
	}
	return 0
}
