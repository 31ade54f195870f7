package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// revealed is left beside a thing that is scrolled to.
const revealed = 14

// reveal scrolls what holds a thing until it is seen.
func reveal(o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	c := driver.CanvasForObject(o)
	if c == nil {
		return
	}
	root := c.Content()
	if top, ok := c.Overlays().Top().(*widget.PopUp); ok {
		root = top.Content
	}
	s, found := scrollOf(root, o, nil)
	if !found || s == nil {
		return
	}
	top := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(s.Content).Y
	bottom := top + o.Size().Height
	switch at, high := s.Offset.Y, s.Size().Height; {
	case top < at || o.Size().Height > high:
		s.ScrollToOffset(fyne.NewPos(0, max(0, top-revealed)))
	case bottom > at+high:
		s.ScrollToOffset(fyne.NewPos(0, bottom-high+revealed))
	}
}

// scrollOf returns what a thing within another is scrolled by, nil for nothing, and
// whether it is within at all.
func scrollOf(in, o fyne.CanvasObject, by *box.Scroll) (*box.Scroll, bool) {
	if in == o {
		return by, true
	}
	switch in := in.(type) {
	case *box.Scroll:
		return scrollOf(in.Content, o, in)
	case *fyne.Container:
		for _, c := range in.Objects {
			if s, ok := scrollOf(c, o, by); ok {
				return s, true
			}
		}
	}
	return nil, false
}
