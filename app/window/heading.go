package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// heading is the job's name, with a dot when it is not saved.
type heading struct {
	*fyne.Container
	name *canvas.Text
	dot  *canvas.Circle
	full string
}

func newHeading() *heading {
	h := &heading{name: written("", tabSize, ink, true), dot: canvas.NewCircle(orange)}
	h.Container = &fyne.Container{Layout: headingLayout{h}, Objects: []fyne.CanvasObject{h.name, h.dot}}
	return h
}

func (h *heading) show(name string, saved bool) {
	h.full, h.dot.Hidden = name, saved
	h.Layout.Layout(nil, h.Size())
	h.Refresh()
}

type headingLayout struct{ *heading }

func (headingLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(60, 20) }

func (l headingLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	l.name.Text = shortened(l.full, l.name.TextSize, l.name.TextStyle, s.Width-34)
	high := l.name.MinSize().Height
	put(l.name, 21, (s.Height-high)/2, s.Width-34, high)
	put(l.dot, 6, s.Height/2-3.5, 8, 8)
}
