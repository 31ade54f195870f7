package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
)

// strip is the steps along the top, joined by the order of the work.
type strip struct {
	*fyne.Container
	desk *desk.Desk
	tabs []*tab
}

func newStrip(d *desk.Desk) *strip {
	s := &strip{desk: d, Container: &fyne.Container{Layout: stripLayout{}}}
	for i, step := range desk.Steps() {
		if i > 0 {
			link := canvas.NewRectangle(edge)
			s.Add(link)
		}
		t := newTab(d.Words().Say("step."+string(step)), func() { d.Go(step) })
		s.tabs = append(s.tabs, t)
		s.Add(t)
	}
	return s
}

func (s *strip) show() {
	for i, step := range desk.Steps() {
		s.tabs[i].show(step == s.desk.Step(), s.desk.Mark(step))
	}
}

// stripLayout sets tabs side by side with links between them.
type stripLayout struct{}

const (
	tabWidth  = 150
	linkWidth = 14
)

func (stripLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(float32(len(objects)/2+1)*100, 44)
}

func (stripLayout) Layout(objects []fyne.CanvasObject, s fyne.Size) {
	tabs := float32(len(objects)/2 + 1)
	width := min(tabWidth, (s.Width-(tabs-1)*linkWidth)/tabs)
	x := float32(0)
	for i, o := range objects {
		if i%2 == 1 {
			put(o, x+2, s.Height/2-1, linkWidth-4, 2)
			x += linkWidth
			continue
		}
		put(o, x, 0, width, s.Height)
		x += width
	}
}
