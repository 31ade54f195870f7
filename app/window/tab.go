package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/solve"
	"tipline/app/window/desk"
)

// tab is one step of the strip: its name, and the mark it wears.
type tab struct {
	widget.BaseWidget
	name           string
	chosen         bool
	mark           desk.Mark
	tapped, help   func()
	hovered, focus bool
}

func newTab(name string, tapped func()) *tab {
	t := &tab{name: name, tapped: tapped, help: func() {}}
	t.ExtendBaseWidget(t)
	return t
}

// show sets whether the step is the present one and what it wears.
func (t *tab) show(chosen bool, m desk.Mark) {
	if t.chosen != chosen || t.mark != m {
		t.chosen, t.mark = chosen, m
		t.Refresh()
	}
}

func (t *tab) Tapped(*fyne.PointEvent) { t.tapped() }

func (t *tab) MouseIn(*desktop.MouseEvent)    { t.hovered = true; t.Refresh() }
func (t *tab) MouseMoved(*desktop.MouseEvent) {}
func (t *tab) MouseOut()                      { t.hovered = false; t.Refresh() }
func (t *tab) FocusGained()                   { t.focus = true; t.Refresh() }
func (t *tab) FocusLost()                     { t.focus = false; t.Refresh() }
func (t *tab) TypedRune(rune)                 {}

func (t *tab) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyF1 {
		t.help()
		return
	}
	if !pressing(t.tapped).press(e.Name) {
		pass(t, e)
	}
}

func (t *tab) CreateRenderer() fyne.WidgetRenderer {
	r := &tabRenderer{tab: t, ground: sheetOf(panel), name: written(t.name, tabSize, ink, false)}
	r.name.Alignment = fyne.TextAlignCenter
	r.Refresh()
	return r
}

type tabRenderer struct {
	tab    *tab
	ground *canvas.Rectangle
	name   *canvas.Text
	badge  fyne.CanvasObject
	mark   desk.Mark
}

func (r *tabRenderer) MinSize() fyne.Size {
	bold := fyne.MeasureText(r.tab.name, tabSize, fyne.TextStyle{Bold: true})
	return fyne.NewSize(max(bold.Width+12, 60), stripHeight)
}
func (r *tabRenderer) Destroy() {}

func (r *tabRenderer) Layout(s fyne.Size) {
	put(r.ground, 0, 0, s.Width, s.Height)
	high := r.name.MinSize().Height
	put(r.name, 0, (s.Height-high)/2, s.Width, high)
	if r.badge != nil {
		r.badge.Move(fyne.NewPos(s.Width-badgeSize-6, 5))
	}
}

func (r *tabRenderer) Objects() []fyne.CanvasObject {
	objects := []fyne.CanvasObject{r.ground, r.name}
	if r.badge != nil {
		objects = append(objects, r.badge)
	}
	return objects
}

func (r *tabRenderer) Refresh() {
	t := r.tab
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = backdrop, edge, 1
	r.name.Color, r.name.TextStyle.Bold = faint, t.chosen
	switch {
	case t.chosen:
		r.ground.FillColor, r.ground.StrokeColor, r.name.Color = panel, ink, ink
	case t.hovered:
		r.ground.FillColor, r.name.Color = panel, ink
	}
	if t.focus {
		r.ground.StrokeColor, r.ground.StrokeWidth = blue, 2
	}
	if r.mark != t.mark || r.badge == nil {
		r.mark, r.badge = t.mark, badgeOf(t.mark)
	}
	r.Layout(t.Size())
	r.ground.Refresh()
	r.name.Refresh()
	canvas.Refresh(t)
}

// badgeOf returns what a step wears, nil for nothing.
func badgeOf(m desk.Mark) fyne.CanvasObject {
	switch {
	case m.Errors > 0:
		return badge(solve.Error, m.Errors)
	case m.Caution > 0:
		return badge(solve.Caution, m.Caution)
	case m.Done:
		return tick()
	}
	return nil
}
