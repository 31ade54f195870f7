package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
)

// tip is a few words about the thing that the pointer or the keyboard is on, shown
// beside it over the rest of the window.
type tip struct {
	*fyne.Container
	ground *canvas.Rectangle
	text   *flow
	of     fyne.CanvasObject // that it is about; nil while it is hidden
}

// The measures of a tip.
const (
	tipWidth = 260
	tipInset = 9
)

func newTip() *tip {
	t := &tip{ground: sheetOf(paper), text: newFlow(readSize, ink)}
	t.ground.StrokeColor = faint
	t.Container = &fyne.Container{Objects: []fyne.CanvasObject{t.ground, t.text.Container}, Hidden: true}
	return t
}

// over lays the tip over what the window shows.
func (t *tip) over(w *Window) {
	w.SetContent(box.NewStack(w.Content(), &fyne.Container{Objects: []fyne.CanvasObject{t.Container}}))
}

// show shows words to the right of a thing; none hide the tip.
func (t *tip) show(of fyne.CanvasObject, words string) {
	if words == "" {
		t.hide(of)
		return
	}
	t.of = of
	wide := min(tipWidth, fyne.MeasureText(words, readSize, fyne.TextStyle{}).Width+1)
	t.text.set(words, ink)
	t.text.lay(wide)
	high := t.text.tall(wide)
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(of)
	put(t.text.Container, tipInset, tipInset-2, wide, high)
	put(t.ground, 0, 0, wide+2*tipInset, high+2*tipInset)
	put(t.Container, at.X+of.Size().Width+6, at.Y+8, wide+2*tipInset, high+2*tipInset)
	t.Show()
}

// hide hides the tip if it is about the thing.
func (t *tip) hide(of fyne.CanvasObject) {
	if t.of == of {
		t.of = nil
		t.Hide()
	}
}
