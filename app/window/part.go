package window

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/solve"
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

func (p *part) show(name string, chosen bool, trouble solve.Severity) {
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
	r := &partRenderer{part: p, ground: sheetOf(panel), name: written("", readSize, ink, false), more: written("", readSize, ink, false)}
	r.name.Alignment, r.more.Alignment = fyne.TextAlignCenter, fyne.TextAlignCenter
	r.Refresh()
	return r
}

type partRenderer struct {
	part   *part
	ground *canvas.Rectangle
	name   *canvas.Text
	more   *canvas.Text // the second line of a long name
	badge  fyne.CanvasObject
}

// pictureSize is the width and height of a part's picture.
const pictureSize = 64

func (r *partRenderer) MinSize() fyne.Size {
	if len(namedIn(r.part.name, r.part.chosen)) > 1 {
		return fyne.NewSize(partWidth, 118)
	}
	return fyne.NewSize(partWidth, 100)
}
func (r *partRenderer) Destroy() {}

func (r *partRenderer) Layout(s fyne.Size) {
	put(r.ground, 0, 0, s.Width, s.Height)
	put(r.part.picture.Raster, (s.Width-pictureSize)/2, 9, pictureSize, pictureSize)
	high := r.name.MinSize().Height
	put(r.name, 2, 76, s.Width-4, high)
	put(r.more, 2, 76+high-1, s.Width-4, high)
	if r.badge != nil {
		r.badge.Move(fyne.NewPos(s.Width-badgeSize-5, 5))
	}
}

func (r *partRenderer) Objects() []fyne.CanvasObject {
	objects := []fyne.CanvasObject{r.ground, r.part.picture.Raster, r.name, r.more}
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
	r.name.TextStyle.Bold, r.more.TextStyle.Bold = p.chosen, p.chosen
	lines := append(namedIn(p.name, p.chosen), "")
	r.name.Text, r.more.Text = lines[0], lines[1]
	r.badge = nil
	if p.trouble != "" {
		r.badge = badge(p.trouble, 0)
	}
	r.Layout(p.Size())
	canvas.Refresh(p)
}

// partWidth is how wide a part is on the rail.
const partWidth = 124

// namedIn breaks a part's name into two lines at most.
func namedIn(name string, bold bool) []string {
	style := fyne.TextStyle{Bold: bold}
	lines := wrapped(name, readSize, style, partWidth-8)
	if len(lines) > 2 {
		lines = []string{lines[0], strings.Join(lines[1:], " ")}
	}
	for i, line := range lines {
		lines[i] = shortened(line, readSize, style, partWidth-6)
	}
	return lines
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
