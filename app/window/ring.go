package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// ring is drawn round a thing while it has the keyboard: a dark line and, within, a light
// one, so that it is seen on a thing of any colour.
type ring struct{ lines [2]*canvas.Rectangle }

// ringWidth is how wide the outer line is.
const ringWidth = 2

// ringed is a thing's rendering with its ring.
type ringed struct {
	fyne.WidgetRenderer
	*ring
}

// round returns a rendering with the ring round it.
func (r *ring) round(of fyne.WidgetRenderer) fyne.WidgetRenderer {
	for i := range r.lines {
		l := canvas.NewRectangle(color.Transparent)
		l.StrokeColor, l.StrokeWidth, l.CornerRadius = []color.Color{blue, well}[i], []float32{ringWidth, 1}[i], float32(5-2*i)
		l.Hidden = true
		r.lines[i] = l
	}
	return ringed{of, r}
}

// show shows the ring or takes it away.
func (r *ring) show(on bool) {
	for _, l := range r.lines {
		if l != nil {
			l.Hidden = !on
			l.Refresh()
		}
	}
}

func (r ringed) Layout(s fyne.Size) {
	r.WidgetRenderer.Layout(s)
	for i, l := range r.lines {
		in := float32(i) * ringWidth
		put(l, in, in, s.Width-2*in, s.Height-2*in)
	}
}

func (r ringed) Objects() []fyne.CanvasObject {
	all := r.WidgetRenderer.Objects()
	return append(all[:len(all):len(all)], r.lines[0], r.lines[1])
}
