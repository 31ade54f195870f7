package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// turner turns the present pair through a pitch; it is seen on the step of depthing
// only.
type turner struct {
	*fyne.Container
	desk   *desk.Desk
	legend *legend
	slider *slider
	seen   fyne.CanvasObject // the slider in colours for paper
	groove *canvas.Rectangle
	name   *canvas.Text
	filled bool // while the turner itself sets the slider
}

// slider is a slider that has the keyboard once it is taken hold of, which the toolkit's
// own has only when it is let go where it was.
type slider struct {
	widget.Slider
	ring ring
}

func newSlider() *slider {
	s := &slider{}
	s.Max = 1
	s.ExtendBaseWidget(s)
	return s
}

func (s *slider) MouseDown(*desktop.MouseEvent) {
	if c := fyne.CurrentApp().Driver().CanvasForObject(s); c != nil {
		c.Focus(s)
	}
}

func (s *slider) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyF1 {
		pass(s, e)
		return
	}
	s.Slider.TypedKey(e)
}

func (s *slider) MouseUp(*desktop.MouseEvent) {}

// turns is how many steps the slider divides a pitch in.
const turns = 200

// leastGroove is how long the slider is at least, beside what stands on either side of it.
const leastGroove = 130

// newTurner returns a turner, which stands within a legend; turned is called after each
// turn.
func newTurner(d *desk.Desk, l *legend, turned func()) *turner {
	t := &turner{desk: d, legend: l, slider: newSlider(), name: written(d.Words().Say("window.turn"), smallSize, light.faint, false)}
	t.groove = canvas.NewRectangle(light.backdrop)
	t.groove.CornerRadius = 14
	t.slider.Step = 1.0 / turns
	t.slider.OnChanged = func(to float64) {
		if !t.filled {
			d.TurnMesh(to)
			turned()
		}
	}
	t.seen = onPaper(t.slider)
	t.Container = &fyne.Container{Layout: turnerLayout{t}, Objects: []fyne.CanvasObject{t.groove, t.name, t.seen}}
	l.within = func() { t.Layout.Layout(nil, t.Size()) }
	return t
}

func (t *turner) show() {
	at, ok := t.desk.Mesh()
	if ok != t.Visible() {
		t.Hidden = !ok
		t.Refresh()
	}
	if ok && t.slider.Value != at {
		t.filled = true
		t.slider.SetValue(at)
		t.filled = false
	}
}

type turnerLayout struct{ *turner }

func (turnerLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l turnerLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	const high = 32
	left, right := l.legend.sides()
	name := l.name.MinSize()
	y := s.Height - high - 5
	width := s.Width - left - right
	if width < name.Width+leastGroove {
		left, width, y = cornerGap, s.Width-2*cornerGap, s.Height-legendHeight-high
	}
	put(l.name, left, y+(high-name.Height)/2, name.Width, name.Height)
	put(l.groove, left+name.Width+8, y+2, width-name.Width-8, high-4)
	put(l.seen, left+name.Width+6, y, width-name.Width-6, high)
}

func (s *slider) CreateRenderer() fyne.WidgetRenderer { return s.ring.round(s.Slider.CreateRenderer()) }

func (s *slider) FocusGained() {
	s.Slider.FocusGained()
	s.ring.show(true)
	reveal(s)
}

func (s *slider) FocusLost() {
	s.Slider.FocusLost()
	s.ring.show(false)
}
