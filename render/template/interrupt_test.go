package template

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// The sides of the stock, and what leads its width out, are interrupted where a note
// above the form stands on them, and run on elsewhere.
func TestTheStocksSidesKeepClearOfTheNotesAboveTheForm(t *testing.T) {
	w := trainWheel(t, 72, 6)
	cut := *w.Cut
	cut.Form.StockFront, cut.Form.StockWidth = -4, 8
	w.Cut = &cut
	for _, high := range []float64{-2, 3, 10} {
		e := newEnlargement(w, metric, 10)
		e.stock()
		e.topNote(geometry.Point{X: 30, Y: e.box().Max.Y + high}, "cutter", "flank 14.98°, as it is", false)
		before := stockLines(e.Drawing)
		e.interrupt()
		after := stockLines(e.Drawing)
		box := e.tops[0].Bounds()
		require.Less(t, lengthOf(after), lengthOf(before)-1, "a side was interrupted")
		for _, s := range after {
			for _, piece := range Split(s, Edges(box)) {
				require.False(t, box.Contains(piece.At(0.5)), "a side runs through the note")
			}
		}
		require.Less(t, lengthOf(before)-lengthOf(after), 2*(box.Height()+2*textClear)+1e-9, "no more of it is gone")
	}
}

// stockLines are the lines that show the stock and its width.
func stockLines(d *render.Drawing) []geometry.Segment {
	var all []geometry.Segment
	for _, it := range d.Items {
		if it.Quantity != "cutter.stock_width" {
			continue
		}
		for _, c := range it.Chains {
			for i := range c.Len() {
				all = append(all, c.Segment(i))
			}
		}
	}
	return all
}

func lengthOf(segments []geometry.Segment) float64 {
	sum := 0.0
	for _, s := range segments {
		sum += s.From.Dist(s.To)
	}
	return sum
}
