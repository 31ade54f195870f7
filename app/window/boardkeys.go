package window

import "fyne.io/fyne/v2"

// stride is how far an arrow key moves the drawing.
const stride = 40

func (b *board) FocusGained() { b.focus = true; b.legend.frame(true) }
func (b *board) FocusLost()   { b.focus = false; b.legend.frame(false) }

// TypedRune zooms with plus and minus, fits all with nought and what is lit with nine,
// and takes up the rule with m.
func (b *board) TypedRune(r rune) {
	switch r {
	case '+', '=':
		b.zoom(closer, b.middle())
	case '-', '_':
		b.zoom(1/closer, b.middle())
	case '0':
		b.fitPart()
	case '9':
		b.fitLit()
	case 'm', 'M':
		b.measure()
	}
}

// TypedKey moves the drawing with the arrow keys and fits it with Home, which on paper goes to the first page; with the rule
// taken up the arrow keys move its cross-hair, and Enter lays it on.
func (b *board) TypedKey(e *fyne.KeyEvent) {
	if b.measuring() && b.rulerKey(e.Name) {
		return
	}
	switch name := e.Name; {
	case name == fyne.KeyLeft:
		b.set(b.view.Pan(stride, 0))
	case name == fyne.KeyRight:
		b.set(b.view.Pan(-stride, 0))
	case name == fyne.KeyUp:
		b.set(b.view.Pan(0, stride))
	case name == fyne.KeyDown:
		b.set(b.view.Pan(0, -stride))
	case name == fyne.KeyHome && !b.painter.Printed:
		b.fitPart()
	default:
		b.others(e)
	}
}

func (b *board) rulerKey(name fyne.KeyName) bool {
	switch name {
	case fyne.KeyLeft:
		b.ruler.move(b.view, -hairStep, 0)
	case fyne.KeyRight:
		b.ruler.move(b.view, hairStep, 0)
	case fyne.KeyUp:
		b.ruler.move(b.view, 0, -hairStep)
	case fyne.KeyDown:
		b.ruler.move(b.view, 0, hairStep)
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		b.ruler.press(b.view)
	default:
		return false
	}
	return true
}
