package window

import (
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"tipline/render/screen"
)

func (b *board) Dragged(e *fyne.DragEvent) {
	b.moved = true
	if b.grips.held() {
		b.grips.drag(b.view.ToDrawing(pixelAt(e.Position)))
		return
	}
	if b.grips.spent {
		return
	}
	b.set(b.view.Pan(float64(e.Dragged.DX), float64(e.Dragged.DY)))
}

func (b *board) DragEnd() { b.grips.release() }

func pixelAt(at fyne.Position) screen.Pixel { return screen.Pixel{X: float64(at.X), Y: float64(at.Y)} }

// notch is how much the wheel scrolls by one notch, and closer how much nearer
// that brings the drawing.
const (
	notch  = 25
	closer = 1.2
)

func (b *board) Scrolled(e *fyne.ScrollEvent) {
	if e.Scrolled.DY != 0 {
		b.zoom(math.Pow(closer, float64(e.Scrolled.DY)/notch), e.Position)
	}
}

func (b *board) zoom(factor float64, about fyne.Position) {
	if !b.view.Blank() {
		b.set(b.view.Zoom(factor, pixelAt(about)))
	}
}

func (b *board) middle() fyne.Position { return fyne.NewPos(b.Size().Width/2, b.Size().Height/2) }

func (b *board) MouseDown(e *desktop.MouseEvent) {
	b.moved = false
	if e.Button == desktop.MouseButtonPrimary {
		b.grips.take(pixelAt(e.Position))
	}
}

// The pointer over the drawing tells what it would take hold of.
func (b *board) MouseIn(e *desktop.MouseEvent) { b.MouseMoved(e) }

func (b *board) MouseMoved(e *desktop.MouseEvent) {
	if b.measuring() {
		b.ruler.point(b.view, pixelAt(e.Position))
		return
	}
	b.grips.hover(b.view, pixelAt(e.Position))
}

func (b *board) MouseOut() {
	b.grips.leave(b.view)
	if b.measuring() {
		b.ruler.leave(b.view)
	}
}

// measuring reports whether the pointer and the arrow keys are the rule's.
func (b *board) measuring() bool { return b.legend.desk.Measuring() && !b.view.Blank() }

// Cursor is a hand over a handle, and a cross where points are picked or measured.
func (b *board) Cursor() desktop.Cursor {
	switch {
	case b.legend.desk.Prompt() != "" || b.measuring():
		return desktop.CrosshairCursor
	case b.grips.over != nil || b.grips.held():
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

func (b *board) MouseUp(e *desktop.MouseEvent) {
	if !b.moved && e.Button == desktop.MouseButtonPrimary {
		b.press(e.Position)
		b.grips.release()
	}
}

// press lays the rule on a place where it is taken up, else it tells which line lies
// there, or whose handle.
func (b *board) press(at fyne.Position) {
	p := pixelAt(at)
	if b.measuring() {
		b.ruler.point(b.view, p)
		b.ruler.press(b.view)
		return
	}
	if !b.view.Blank() && b.picked(b.view.ToDrawing(p)) {
		return
	}
	if h := b.grips.at(p); h != nil {
		b.pressed(screen.Found{Part: b.painter.Lit.Part, Quantity: h.Quantity})
		return
	}
	if found, ok := screen.Find(b.drawing, b.view, p, reach); ok {
		b.clicked = found
		b.pressed(found)
	}
}

// Tapped is there so that DoubleTapped is told; MouseUp does not wait for a
// second tap.
func (b *board) Tapped(*fyne.PointEvent) {}

func (b *board) DoubleTapped(*fyne.PointEvent) {
	if !b.measuring() {
		b.fitPart()
	}
}
