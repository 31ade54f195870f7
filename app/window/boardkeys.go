package window

import "fyne.io/fyne/v2"

// stride is how far an arrow key moves the drawing.
const stride = 40

func (b *board) FocusGained() { b.focus = true; b.legend.frame(true) }
func (b *board) FocusLost()   { b.focus = false; b.legend.frame(false) }

// TypedRune zooms with plus and minus and fits with nought.
func (b *board) TypedRune(r rune) {
	switch r {
	case '+', '=':
		b.zoom(closer, b.middle())
	case '-', '_':
		b.zoom(1/closer, b.middle())
	case '0':
		b.DoubleTapped(nil)
	}
}

// TypedKey moves the drawing with the arrow keys and fits it with Home.
func (b *board) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyLeft:
		b.set(b.view.Pan(stride, 0))
	case fyne.KeyRight:
		b.set(b.view.Pan(-stride, 0))
	case fyne.KeyUp:
		b.set(b.view.Pan(0, stride))
	case fyne.KeyDown:
		b.set(b.view.Pan(0, -stride))
	case fyne.KeyHome:
		b.DoubleTapped(nil)
	default:
		b.others(e)
	}
}
