package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// pushButton is a button that Return presses too, and that wears a ring and is scrolled to
// while it has the keyboard.
type pushButton struct {
	widget.Button
	ring ring
}

func newPushButton(text string, tapped func()) *pushButton {
	b := &pushButton{}
	b.Text, b.OnTapped = text, tapped
	b.ExtendBaseWidget(b)
	return b
}

func (b *pushButton) CreateRenderer() fyne.WidgetRenderer {
	return b.ring.round(b.Button.CreateRenderer())
}

func (b *pushButton) FocusGained() {
	b.Button.FocusGained()
	b.ring.show(true)
	reveal(b)
}

func (b *pushButton) FocusLost() {
	b.Button.FocusLost()
	b.ring.show(false)
}

func (b *pushButton) TypedKey(e *fyne.KeyEvent) {
	if b.Disabled() || !pressing(b.OnTapped).press(e.Name) {
		pass(b, e)
	}
}

// pass hands a key that a thing has no use for to its window, as though nothing had the
// keyboard.
func pass(from fyne.CanvasObject, e *fyne.KeyEvent) {
	c := fyne.CurrentApp().Driver().CanvasForObject(from)
	if c == nil || c.OnTypedKey() == nil {
		return
	}
	c.OnTypedKey()(e)
}
