package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// written returns a line of type.
func written(text string, size float32, c color.Color, bold bool) *canvas.Text {
	t := canvas.NewText(text, c)
	t.TextSize = size
	t.TextStyle.Bold = bold
	return t
}

// sheetOf returns a rounded ground to put things on.
func sheetOf(fill color.Color) *canvas.Rectangle {
	r := canvas.NewRectangle(fill)
	r.CornerRadius, r.StrokeWidth, r.StrokeColor = 7, 1, edge
	return r
}

// put sets a thing's place and size.
func put(o fyne.CanvasObject, x, y, width, height float32) {
	o.Move(fyne.NewPos(x, y))
	o.Resize(fyne.NewSize(width, height))
}

// say sets a line of type if it is another.
func say(t *canvas.Text, text string) {
	if t.Text != text {
		t.Text = text
		t.Refresh()
	}
}
