package window

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/app/solve"
	"tipline/app/window/desk"
)

// part is one part on the rail: its picture, its name and its note.
type part struct {
	widget.BaseWidget
	desk.Entry
	chosen         bool
	trouble        solve.Severity // empty for none
	picture        *picture
	rail           *rail
	ring           ring
	kind           string // the heading it stands under
	hovered, focus bool
	pulled         float32 // how far down it has been dragged
}

func (r *rail) newPart(id string) *part {
	p := &part{Entry: desk.Entry{ID: id}, picture: newPicture(), rail: r}
	p.ExtendBaseWidget(p)
	return p
}

func (p *part) show(e desk.Entry, chosen bool, trouble solve.Severity) {
	if p.Entry != e || p.chosen != chosen || p.trouble != trouble {
		p.Entry, p.chosen, p.trouble = e, chosen, trouble
		p.Refresh()
	}
}

func (p *part) Tapped(*fyne.PointEvent) { p.rail.desk.Choose(p.ID) }

func (p *part) MouseMoved(*desktop.MouseEvent) {}
func (p *part) TypedRune(rune)                 {}

func (p *part) MouseIn(*desktop.MouseEvent) { p.hovered = true; p.told() }
func (p *part) MouseOut()                   { p.hovered = false; p.told() }
func (p *part) FocusGained()                { p.focus = true; p.ring.show(true); reveal(p); p.told() }
func (p *part) FocusLost()                  { p.focus = false; p.ring.show(false); p.told() }

// told shows the part as it is come to or left, and what there is to say of it beside it.
func (p *part) told() {
	p.Refresh()
	if p.hovered || p.focus {
		said, more := p.rail.about(p.Entry)
		p.rail.tip.show(p, said, more)
	} else {
		p.rail.tip.hide(p)
	}
}

func (p *part) CreateRenderer() fyne.WidgetRenderer {
	r := &partRenderer{
		part: p, ground: sheetOf(panel), mark: canvas.NewRectangle(blue), name: written("", readSize, ink, false),
		more: written("", readSize, ink, false), note: written("", smallSize, faint, false),
	}
	for _, t := range []*canvas.Text{r.name, r.more, r.note} {
		t.Alignment = fyne.TextAlignCenter
	}
	r.Refresh()
	return p.ring.round(r)
}

type partRenderer struct {
	part   *part
	ground *canvas.Rectangle
	mark   *canvas.Rectangle // of the part that is looked at; that which has the keyboard wears a ring
	name   *canvas.Text
	more   *canvas.Text // the second line of a long name
	note   *canvas.Text
	badge  fyne.CanvasObject
	again  fyne.CanvasObject // the mark of a part to be printed again
	broken broken
}

// broken is a name as it was last broken into lines.
type broken struct {
	name  string
	bold  bool
	lines []string
}

// named returns the lines of the part's name.
func (r *partRenderer) named() []string {
	if b := &r.broken; b.lines == nil || b.name != r.part.Name || b.bold != r.part.chosen {
		*b = broken{r.part.Name, r.part.chosen, namedIn(r.part.Name, r.part.chosen)}
	}
	return r.broken.lines
}

// markWidth is how wide the mark of the part that is looked at is.
const markWidth = 4

// pictureSize is the width and height of a part's picture.
const pictureSize = 64

// underPicture is where its name begins.
const underPicture = 9 + pictureSize + 3

func (r *partRenderer) MinSize() fyne.Size {
	line := r.name.MinSize().Height
	high := underPicture + line + 6
	if len(r.named()) > 1 {
		high += line - 1
	}
	if r.part.Note != "" {
		high += noteHeight
	}
	return fyne.NewSize(partWidth, high)
}
func (r *partRenderer) Destroy() {}

func (r *partRenderer) Layout(s fyne.Size) {
	put(r.ground, 0, 0, s.Width, s.Height)
	put(r.mark, 4, 8, markWidth, s.Height-16)
	put(r.part.picture.Raster, (s.Width-pictureSize)/2, 9, pictureSize, pictureSize)
	high := r.name.MinSize().Height
	put(r.name, 2, underPicture, s.Width-4, high)
	put(r.more, 2, underPicture+high-1, s.Width-4, high)
	put(r.note, 2, s.Height-noteHeight-5, s.Width-4, noteHeight)
	if r.badge != nil {
		r.badge.Move(fyne.NewPos(s.Width-badgeSize-5, 5))
	}
	if r.again != nil {
		r.again.Move(fyne.NewPos(6, 5))
	}
}

func (r *partRenderer) Objects() []fyne.CanvasObject {
	objects := []fyne.CanvasObject{r.ground, r.mark, r.part.picture.Raster, r.name, r.more, r.note}
	for _, mark := range []fyne.CanvasObject{r.badge, r.again} {
		if mark != nil {
			objects = append(objects, mark)
		}
	}
	return objects
}

func (r *partRenderer) Refresh() {
	p := r.part
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = panel, panel, 1
	r.mark.Hidden, r.mark.CornerRadius = !p.chosen, markWidth/2
	switch {
	case p.chosen:
		r.ground.FillColor, r.ground.StrokeColor = well, edge
	case p.hovered:
		r.ground.StrokeColor = edge
	}
	r.name.TextStyle.Bold, r.more.TextStyle.Bold = p.chosen, p.chosen
	r.name.Text, r.more.Text = r.named()[0], ""
	if lines := r.named(); len(lines) > 1 {
		r.more.Text = lines[1]
	}
	first, _, _ := strings.Cut(p.Note, "\n")
	r.note.Text = shortened(first, smallSize, fyne.TextStyle{}, partWidth-8)
	r.badge, r.again = nil, nil
	if p.trouble != "" {
		r.badge = badge(p.trouble, 0)
	}
	if p.Reprint {
		r.again = delta()
	}
	r.Layout(p.Size())
	canvas.Refresh(p)
}

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

// shortenedTo cuts a text that takes more lines than there is room for.
func shortenedTo(lines int, text string, size float32, room float32) string {
	broken := wrapped(text, size, fyne.TextStyle{}, room)
	if len(broken) > lines {
		broken[lines-1] = shortened(broken[lines-1]+" "+broken[lines], size, fyne.TextStyle{}, room)
		broken = broken[:lines]
	}
	return strings.Join(broken, " ")
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
