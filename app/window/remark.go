package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// remark is one finding under the drawing: its badge and its sentence. Tapped, it
// goes to its field.
type remark struct {
	widget.BaseWidget
	remark         desk.Remark
	text           *flow
	tapped         func()
	hovered, focus bool
}

func newRemark(m desk.Remark, tapped func()) *remark {
	r := &remark{remark: m, text: newFlow(readSize, ink), tapped: tapped}
	r.text.set(m.Said, ink)
	r.ExtendBaseWidget(r)
	return r
}

// tall returns how tall the remark is at a width.
func (r *remark) tall(width float32) float32 {
	return max(r.text.tall(width-remarkIndent-8), badgeSize+3) + 9
}

func (r *remark) Tapped(*fyne.PointEvent) { r.tapped() }

func (r *remark) MouseIn(*desktop.MouseEvent)    { r.hovered = true; r.Refresh() }
func (r *remark) MouseMoved(*desktop.MouseEvent) {}
func (r *remark) MouseOut()                      { r.hovered = false; r.Refresh() }
func (r *remark) FocusGained()                   { r.focus = true; r.Refresh(); reveal(r) }
func (r *remark) FocusLost()                     { r.focus = false; r.Refresh() }
func (r *remark) TypedRune(rune)                 {}

func (r *remark) TypedKey(e *fyne.KeyEvent) {
	if !pressing(r.tapped).press(e.Name) {
		pass(r, e)
	}
}

func (r *remark) CreateRenderer() fyne.WidgetRenderer {
	ground := canvas.NewRectangle(panel)
	ground.CornerRadius = 5
	return &remarkRenderer{r, ground, badge(r.remark.Severity, 0)}
}

type remarkRenderer struct {
	*remark
	ground *canvas.Rectangle
	badge  fyne.CanvasObject
}

func (r *remarkRenderer) Destroy()           {}
func (r *remarkRenderer) MinSize() fyne.Size { return fyne.NewSize(200, 29) }

func (r *remarkRenderer) Layout(s fyne.Size) {
	put(r.ground, 0, 0, s.Width, s.Height)
	r.badge.Move(fyne.NewPos(10, 6))
	put(r.text.Container, remarkIndent, 4.5, s.Width-remarkIndent-8, s.Height-9)
}

func (r *remarkRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.badge, r.text.Container}
}

func (r *remarkRenderer) Refresh() {
	r.ground.FillColor, r.ground.StrokeWidth = panel, 0
	if r.hovered {
		r.ground.FillColor = backdrop
	}
	if r.focus {
		r.ground.StrokeColor, r.ground.StrokeWidth = blue, ringWidth
	}
	r.ground.Refresh()
}
