package window

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"
)

// The mark in the box that is typed in is painted once, in full.
func TestNothingMovesByItself(t *testing.T) {
	app := test.NewTempApp(t)
	app.Settings().SetTheme(newLook())
	fyne.SetCurrentApp(Still(app))
	require.False(t, fyne.CurrentApp().Settings().ShowAnimations())
	e := newEntry()
	w := test.NewTempWindow(t, e)
	w.Resize(fyne.NewSize(200, 60))
	w.Canvas().Focus(e)
	marks := 0
	walk(e, func(o within) {
		if r, ok := o.CanvasObject.(*canvas.Rectangle); ok && r.Size().Width <= 2 && r.Size().Height > 5 {
			marks++
			require.Equal(t, color.Color(blue), r.FillColor)
		}
	})
	require.Equal(t, 1, marks)
}
