package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// within is a thing that is seen: where it stands in its window, and what it stands in,
// the outermost first.
type within struct {
	fyne.CanvasObject
	at fyne.Position
	in []within
}

// walk visits a thing that is seen and all that is seen in it.
func walk(o fyne.CanvasObject, visit func(within)) {
	walkIn(within{CanvasObject: o, at: o.Position()}, visit)
}

func walkIn(o within, visit func(within)) {
	if !o.Visible() {
		return
	}
	visit(o)
	for _, c := range holds(o.CanvasObject) {
		in := append(o.in[:len(o.in):len(o.in)], o)
		walkIn(within{c, o.at.Add(c.Position()), in}, visit)
	}
}

// holds returns what stands in a thing.
func holds(o fyne.CanvasObject) []fyne.CanvasObject {
	switch o := o.(type) {
	case *fyne.Container:
		return o.Objects
	case fyne.Widget:
		return test.WidgetRenderer(o).Objects()
	}
	return nil
}
