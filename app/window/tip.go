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
	lines  [2]*flow          // of an ordinary and of a quieter colour
	of     fyne.CanvasObject // that it is about; nil while it is hidden
}

// tipInset is round the words of a tip.
const tipInset = 9

func newTip() *tip {
	t := &tip{ground: sheetOf(well), lines: [2]*flow{newFlow(readSize, ink), newFlow(readSize, faint)}}
	t.ground.StrokeColor = faint
	t.Container = &fyne.Container{Objects: []fyne.CanvasObject{t.ground, t.lines[0].Container, t.lines[1].Container}, Hidden: true}
	return t
}

// over lays the tip over what the window shows.
func (t *tip) over(w *Window) {
	w.SetContent(box.NewStack(w.Content(), &fyne.Container{Objects: []fyne.CanvasObject{t.Container}}))
}

// show shows what there is to say to the right of a thing, and under it what more there
// is; nothing to say hides the tip.
func (t *tip) show(of fyne.CanvasObject, said, more string) {
	if said+more == "" {
		t.hide(of)
		return
	}
	t.of = of
	wide, high := float32(0), float32(tipInset-2)
	for _, line := range []string{said, more} {
		wide = min(tipWidth, max(wide, fyne.MeasureText(line, readSize, fyne.TextStyle{}).Width+1))
	}
	for i, line := range []string{said, more} {
		f := t.lines[i]
		f.set(line, f.colour)
		f.lay(wide)
		put(f.Container, tipInset, high, wide, f.tall(wide))
		high += f.tall(wide)
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(of)
	put(t.ground, 0, 0, wide+2*tipInset, high+tipInset)
	put(t.Container, at.X+of.Size().Width+6, at.Y+8, wide+2*tipInset, high+tipInset)
	t.Show()
}

// hide hides the tip if it is about the thing.
func (t *tip) hide(of fyne.CanvasObject) {
	if t.of == of {
		t.of = nil
		t.Hide()
	}
}
