package window

import (
	"tipline/geometry"
	"tipline/render/screen"
)

// fit shows the whole drawing.
func (b *board) fit() {
	b.fitted = true
	bounds := b.painter.Sheet
	if bounds.Width() == 0 && b.whole != nil {
		bounds = b.whole.Bounds()
	}
	b.view = b.fitting(bounds)
}

// fitting returns the view that shows a box of the drawing above the legend; a blank one
// where there is no drawing, or no room yet.
func (b *board) fitting(bounds geometry.Box) screen.View {
	s := b.Size()
	if b.drawing == nil || s.Width < 1 || s.Height < 1 {
		return screen.View{}
	}
	return screen.Fit(bounds, float64(s.Width), float64(max(s.Height-legendHeight, 1)), margin)
}

// fitPart shows the whole drawing from now on.
func (b *board) fitPart() {
	b.fit()
	b.changed()
}

// roundLit is what is left round what is lit, in shares of its size, and leastLit the
// least size of the drawing, in millimetres, that is so shown.
const (
	roundLit = 0.6
	leastLit = 0.5
)

// fitLit shows what is lit from near: the piece of line that was pressed, or the one at
// the handle, or at the flag. Nothing lit leaves the view as it is.
func (b *board) fitLit() {
	lit := b.painter.Lit
	at, ok := b.litPlace()
	near := geometry.Point{}
	if ok {
		near = b.view.ToDrawing(at)
	}
	if b.clicked.Quantity == lit.Quantity && b.clicked.Part == lit.Part {
		near = b.clicked.At
	}
	bounds, found := screen.Extent(b.drawing, lit, near)
	if !found && ok {
		bounds, found = geometry.Box{Min: near, Max: near}, true
	}
	if !found {
		return
	}
	size := max(bounds.Width(), bounds.Height(), leastLit)
	b.set(b.fitting(bounds.Grow(roundLit * size)))
}
