package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// pushButton is a button that Return presses too.
type pushButton struct{ widget.Button }

func newPushButton(text string, tapped func()) *pushButton {
	b := &pushButton{}
	b.Text, b.OnTapped = text, tapped
	b.ExtendBaseWidget(b)
	return b
}

func (b *pushButton) TypedKey(e *fyne.KeyEvent) {
	if b.Disabled() || !pressing(b.OnTapped).press(e.Name) {
		b.Button.TypedKey(e)
	}
}
