package window

import (
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"
)

// textOf returns what a thing says, empty where it says nothing.
func textOf(o any) string {
	switch o := o.(type) {
	case *canvas.Text:
		return o.Text
	case *pushButton:
		return o.Text
	case *answer:
		return o.Text
	case *widget.Check:
		return o.Text
	}
	return ""
}
