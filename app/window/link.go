package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// link leads to a page of the guide.
type link struct {
	widget.BaseWidget
	guide          *guideWindow
	text, to       string
	size           float32
	bold           bool
	hovered, focus bool
}

func newLink(g *guideWindow, text string, size float32, to string) *link {
	l := &link{guide: g, text: text, size: size, to: to}
	l.ExtendBaseWidget(l)
	return l
}

func (l *link) follow() { l.guide.open(l.to, "") }

func (l *link) Tapped(*fyne.PointEvent)      { l.follow() }
func (l *link) Cursor() desktop.Cursor       { return desktop.PointerCursor }
func (l *link) MouseIn(*desktop.MouseEvent)  { l.hovered = true; l.Refresh() }
func (*link) MouseMoved(*desktop.MouseEvent) {}
func (l *link) MouseOut()                    { l.hovered = false; l.Refresh() }
func (l *link) FocusLost()                   { l.focus = false; l.Refresh() }
func (*link) TypedRune(rune)                 {}

// FocusGained shows that the link has the keyboard, and scrolls to it.
func (l *link) FocusGained() {
	l.focus = true
	l.Refresh()
	s, top := l.guide.scroll, l.Position().Y
	if top < s.Offset.Y || top+l.Size().Height > s.Offset.Y+s.Size().Height {
		s.ScrollToOffset(fyne.NewPos(0, max(0, top-s.Size().Height/3)))
	}
}

// TypedKey follows the link; what does not is the guide's.
func (l *link) TypedKey(e *fyne.KeyEvent) {
	if !pressing(l.follow).press(e.Name) {
		l.guide.typed(e)
	}
}

func (l *link) CreateRenderer() fyne.WidgetRenderer {
	r := &linkRenderer{link: l, ground: canvas.NewRectangle(color.Transparent), text: written(l.text, l.size, blue, l.bold), line: canvas.NewRectangle(blue)}
	r.ground.CornerRadius = 3
	r.Refresh()
	return r
}

type linkRenderer struct {
	link         *link
	ground, line *canvas.Rectangle
	text         *canvas.Text
}

func (r *linkRenderer) Destroy()           {}
func (r *linkRenderer) MinSize() fyne.Size { return r.text.MinSize() }

func (r *linkRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.text, r.line}
}

func (r *linkRenderer) Layout(s fyne.Size) {
	put(r.ground, -2, 0, s.Width+4, s.Height)
	put(r.text, 0, 0, s.Width, s.Height)
	put(r.line, 0, s.Height/2+0.56*r.link.size, s.Width, 1)
}

func (r *linkRenderer) Refresh() {
	r.ground.StrokeColor, r.ground.StrokeWidth, r.ground.FillColor = blue, 0, color.Transparent
	if r.link.hovered {
		r.ground.FillColor = thin(present.blue, 26)
	}
	if r.link.focus {
		r.ground.StrokeWidth = 2
	}
	r.ground.Refresh()
	canvas.Refresh(r.link)
}

// guideButton is a button of the guide, whose keys work on it too.
type guideButton struct {
	widget.Button
	guide *guideWindow
}

func newGuideButton(g *guideWindow, text string, tapped func()) *guideButton {
	b := &guideButton{guide: g}
	b.Text, b.OnTapped = text, tapped
	b.ExtendBaseWidget(b)
	return b
}

func (b *guideButton) TypedKey(e *fyne.KeyEvent) {
	if b.Disabled() || !pressing(b.OnTapped).press(e.Name) {
		b.guide.typed(e)
	}
}

// enable lets the button be pressed, or not.
func (b *guideButton) enable(yes bool) {
	if yes == b.Disabled() {
		if yes {
			b.Enable()
		} else {
			b.Disable()
		}
	}
}
