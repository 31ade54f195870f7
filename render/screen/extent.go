package screen

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// fine is the view in which lit lines are traced to be measured: a pixel is 0.01 mm, and
// no chord lies further than a tenth of that from its arc.
var fine = View{Scale: 100}

// Extent returns the box of the lit lines that run on in one piece nearest to a place of
// the drawing; false when nothing is lit.
func Extent(d *render.Drawing, lit Lit, near geometry.Point) (geometry.Box, bool) {
	if d == nil {
		return geometry.NoBox(), false
	}
	lit, ok := litOn(d, lit)
	if !ok {
		return geometry.NoBox(), false
	}
	var t trace
	best, found := math.Inf(1), nowhere
	for i := range d.Items {
		it := &d.Items[i]
		if it.Part != lit.Part || it.Pen == render.NoPen {
			continue
		}
		t.reset()
		t.lit(it, lit.Quantity, fine)
		for _, r := range t.runs {
			if far := farOf(t.of(r), near); far < best {
				best, found = far, r.box
			}
		}
	}
	low, high := fine.ToDrawing(Pixel{found.x0, found.y1}), fine.ToDrawing(Pixel{found.x1, found.y0})
	return geometry.Box{Min: low, Max: high}, !math.IsInf(best, 1)
}

// farOf returns how far a run of the fine view lies from a place, in millimetres.
func farOf(ps []Pixel, p geometry.Point) float64 {
	best := math.Inf(1)
	for i := 1; i < len(ps); i++ {
		s := geometry.Segment{From: fine.ToDrawing(ps[i-1]), To: fine.ToDrawing(ps[i])}
		if s.From != s.To {
			best = math.Min(best, s.Dist(p))
		}
	}
	return best
}
