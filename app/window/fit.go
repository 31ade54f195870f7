package window

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

// fit shows the whole drawing.
func (b *board) fit() {
	b.fitted = true
	b.view = b.fitting(b.all())
}

// all is the box of the sheet, or of the whole drawing.
func (b *board) all() geometry.Box {
	if b.painter.Sheet.Width() == 0 && b.whole != nil {
		return b.whole.Bounds()
	}
	return b.painter.Sheet
}

// fitting returns the view that shows a box of the drawing above the legend, and under the
// buttons where its lines would reach into their corner, or beside them where they take
// much of the height and it is larger so; a blank one where there is no
// drawing, or no room yet.
func (b *board) fitting(bounds geometry.Box) screen.View {
	s := b.Size()
	if b.drawing == nil || s.Width < 1 || s.Height < 1 {
		return screen.View{}
	}
	buttons := float64(2*cornerGap + cornerHigh)
	wide, high := float64(s.Width), float64(max(s.Height-legendHeight, 1))
	v := screen.Fit(bounds, wide, high, margin)
	across := float64(b.corner())
	corner := geometry.Box{Min: v.ToDrawing(screen.Pixel{X: wide - across, Y: buttons}), Max: v.ToDrawing(screen.Pixel{X: wide})}
	if !reaches(b.drawing, corner) {
		return v
	}
	under := screen.Fit(bounds, wide, high-buttons, margin).Pan(0, buttons)
	if beside := screen.Fit(bounds, wide-across, high, margin); high < 6*buttons && beside.Scale > under.Scale {
		return beside
	}
	return under
}

// reaches reports whether a line or a text of a drawing reaches into a box: by the box of
// each piece of line, which may be a little more than the piece.
func reaches(d *render.Drawing, in geometry.Box) bool {
	for i := range d.Items {
		it := &d.Items[i]
		if round, ok := it.Bounds(); !ok || !round.Touches(in) {
			continue
		}
		if it.Text != nil && it.Text.Bounds().Touches(in) {
			return true
		}
		for _, o := range it.Outlines {
			if passes(o.Len(), o.Segment, in) {
				return true
			}
		}
		for _, c := range it.Chains {
			if passes(c.Len(), c.Segment, in) {
				return true
			}
		}
	}
	return false
}

// passes reports whether one of so many pieces of line reaches into a box. It is
// looked at in short parts, whose boxes hold an arc closely.
func passes(n int, piece func(int) geometry.Segment, in geometry.Box) bool {
	for i := range n {
		s := piece(i)
		if !s.Bounds().Touches(in) {
			continue
		}
		for part := range arcParts {
			from, to := s.At(float64(part)/arcParts), s.At(float64(part+1)/arcParts)
			if (geometry.Box{Min: from, Max: from}).With(to).Touches(in) {
				return true
			}
		}
	}
	return false
}

// arcParts is in how many pieces an arc is looked at.
const arcParts = 32

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
// the handle, or at the flag; never from further than all is. Nothing lit leaves the view
// as it is.
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
	if v := b.fitting(bounds.Grow(roundLit * size)); v.Scale > b.fitting(b.all()).Scale {
		b.set(v)
		return
	}
	b.fitPart()
}
