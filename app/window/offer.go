package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
	"tipline/render"
)

// offer is a part to start from in a question: what it is called, and what it is.
type offer struct {
	widget.BaseWidget
	start          desk.Start
	of             *question
	ground         *canvas.Rectangle
	sketch         *picture
	draw           func() *render.Drawing // what the sketch shows
	tapped         func()
	step           func(by int) // to a neighbour
	hovered, focus bool
}

func newOffer(of *question, s desk.Start, draw func() *render.Drawing, tapped func()) *offer {
	o := &offer{start: s, of: of, ground: sheetOf(panel), sketch: newPicture(), draw: draw, tapped: tapped}
	o.sketch.show(s.Kind, draw, false)
	o.ground.StrokeColor = panel
	o.ExtendBaseWidget(o)
	return o
}

func (o *offer) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(o.lines(o.start))
}

func (o *offer) Tapped(*fyne.PointEvent) { o.tapped() }

func (o *offer) MouseMoved(*desktop.MouseEvent) {}
func (o *offer) TypedRune(rune)                 {}

func (o *offer) MouseIn(*desktop.MouseEvent) { o.hovered = true; o.paint() }
func (o *offer) MouseOut()                   { o.hovered = false; o.paint() }
func (o *offer) FocusGained()                { o.focus = true; o.paint(); reveal(o) }
func (o *offer) FocusLost()                  { o.focus = false; o.paint() }

func (o *offer) paint() {
	o.ground.FillColor, o.ground.StrokeColor, o.ground.StrokeWidth = panel, panel, 1
	if o.hovered || o.focus {
		o.ground.FillColor, o.ground.StrokeColor = well, edge
	}
	if o.focus {
		o.ground.StrokeColor, o.ground.StrokeWidth = blue, 2
	}
	o.ground.Refresh()
	o.sketch.show(o.start.Kind, o.draw, o.hovered || o.focus)
}

func (o *offer) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		o.tapped()
	case fyne.KeyDown:
		o.step(1)
	case fyne.KeyUp:
		o.step(-1)
	default:
		o.of.typed(e)
	}
}
