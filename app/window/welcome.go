package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/assets/samples"
)

// welcome is what stands in the place of the drawing in a job without parts: the
// three ways to begin.
type welcome struct {
	*fyne.Container
	window *Window
	add    *pushButton
}

func newWelcome(w *Window) *welcome {
	say := w.desk.Words().Say
	v := &welcome{window: w}
	v.add = newPushButton(say("window.add"), nil)
	v.add.OnTapped = w.offerStarts
	v.add.Importance = widget.HighImportance
	open := newPushButton(say("menu.open"), w.askOpen)
	sample := newPushButton(say("window.sample"), func() { w.openSample(samples.First) })
	head := written(say("window.welcome"), headSize, light.ink, true)
	head.Alignment = fyne.TextAlignCenter
	line := written(say("window.no-parts"), textSize, light.faint, false)
	line.Alignment = fyne.TextAlignCenter
	buttons := box.New(layout.NewCustomPaddedHBoxLayout(12), v.add, open, sample)
	v.Container = box.NewCenter(box.New(layout.NewCustomPaddedVBoxLayout(14), head, line, box.NewCenter(buttons)))
	return v
}

func (v *welcome) show() {
	if hidden := v.window.desk.Part() != ""; hidden != v.Hidden {
		v.Hidden = hidden
		v.Refresh()
	}
}
