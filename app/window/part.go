package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/solve"
	"tipline/render"
)

// part is one part on the rail: its picture and its name.
type part struct {
	widget.BaseWidget
	id             string
	name           string
	chosen         bool
	trouble        solve.Severity // empty for none
	picture        *picture
	tapped         func()
	hovered, focus bool
}

func newPart(id string, tapped func()) *part {
	p := &part{id: id, picture: newPicture(), tapped: tapped}
	p.ExtendBaseWidget(p)
	return p
}

func (p *part) show(name string, chosen bool, trouble solve.Severity, d *render.Drawing) {
	p.picture.show(d, chosen)
	if p.name != name || p.chosen != chosen || p.trouble != trouble {
		p.name, p.chosen, p.trouble = name, chosen, trouble
		p.Refresh()
	}
}

func (p *part) Tapped(*fyne.PointEvent) { p.tapped() }

func (p *part) MouseIn(*desktop.MouseEvent)    { p.hovered = true; p.Refresh() }
func (p *part) MouseMoved(*desktop.MouseEvent) {}
func (p *part) MouseOut()                      { p.hovered = false; p.Refresh() }
func (p *part) FocusGained()                   { p.focus = true; p.Refresh() }
func (p *part) FocusLost()                     { p.focus = false; p.Refresh() }
func (p *part) TypedRune(rune)                 {}

func (p *part) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace || e.Name == fyne.KeyReturn || e.Name == fyne.KeyEnter {
		p.tapped()
	}
}

func (p *part) CreateRenderer() fyne.WidgetRenderer {
	r := &partRenderer{part: p, ground: sheetOf(panel), name: written(p.name, readSize, ink, false)}
	r.name.Alignment = fyne.TextAlignCenter
	r.Refresh()
	return r
}

type partRenderer struct {
	part   *part
	ground *canvas.Rectangle
	name   *canvas.Text
	badge  fyne.CanvasObject
}

// pictureSize is the width and height of a part's picture.
const pictureSize = 64

func (r *partRenderer) MinSize() fyne.Size { return fyne.NewSize(112, 100) }
func (r *partRenderer) Destroy()           {}

func (r *partRenderer) Layout(s fyne.Size) {
	put(r.ground, 0, 0, s.Width, s.Height)
	put(r.part.picture.Raster, (s.Width-pictureSize)/2, 9, pictureSize, pictureSize)
	put(r.name, 2, 76, s.Width-4, r.name.MinSize().Height)
	if r.badge != nil {
		r.badge.Move(fyne.NewPos(s.Width-badgeSize-5, 5))
	}
}

func (r *partRenderer) Objects() []fyne.CanvasObject {
	objects := []fyne.CanvasObject{r.ground, r.part.picture.Raster, r.name}
	if r.badge != nil {
		objects = append(objects, r.badge)
	}
	return objects
}

func (r *partRenderer) Refresh() {
	p := r.part
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = panel, panel, 1
	switch {
	case p.chosen:
		r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = paper, blue, 1.6
	case p.hovered:
		r.ground.StrokeColor = edge
	}
	if p.focus {
		r.ground.StrokeColor, r.ground.StrokeWidth = blue, 2.4
	}
	r.name.TextStyle.Bold = p.chosen
	r.name.Text = shortened(p.name, r.name.TextSize, r.name.TextStyle, p.Size().Width-8)
	r.badge = nil
	if p.trouble != "" {
		r.badge = badge(p.trouble, 0)
	}
	r.Layout(p.Size())
	canvas.Refresh(p)
}

// shortened cuts a text that is wider than there is room for.
func shortened(text string, size float32, style fyne.TextStyle, room float32) string {
	letters := []rune(text)
	if room <= 0 || fyne.MeasureText(text, size, style).Width <= room {
		return text
	}
	for len(letters) > 1 && fyne.MeasureText(string(letters)+"…", size, style).Width > room {
		letters = letters[:len(letters)-1]
	}
	return string(letters) + "…"
}
