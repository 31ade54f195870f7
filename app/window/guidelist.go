package window

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"tipline/assets/guide"
)

// guideList is the list of the guide's pages, the words of the trade set in.
type guideList struct {
	widget.List
	guide *guideWindow
	pages []guide.Page
	focus bool
}

func newGuideList(g *guideWindow) *guideList {
	l := &guideList{guide: g}
	l.Length = func() int { return len(l.pages) }
	l.CreateItem = func() fyne.CanvasObject { return newGuideRow().Container }
	l.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) {
		p := l.pages[i]
		rowOf(o).show(p.Title, p.Term, p.Name == g.at.page, l.focus)
	}
	l.OnSelected = func(i widget.ListItemID) {
		l.UnselectAll()
		g.open(l.pages[i].Name, "")
	}
	l.HideSeparators = true
	l.ExtendBaseWidget(l)
	return l
}

// show shows pages.
func (l *guideList) show(pages []guide.Page) {
	l.pages = pages
	l.Refresh()
	l.mark(l.guide.at.page)
}

// mark shows which page is read.
func (l *guideList) mark(name string) {
	if i := l.place(name); i >= 0 {
		l.ScrollTo(i)
	}
	l.Refresh()
}

func (l *guideList) place(name string) int {
	return slices.IndexFunc(l.pages, func(p guide.Page) bool { return p.Name == name })
}

// beside returns the page so many on from the one that is read, the first where that is
// not listed, nothing past the ends.
func (l *guideList) beside(by int) string {
	i := l.place(l.guide.at.page)
	if i < 0 {
		i, by = 0, 0
	}
	if i += by; i < 0 || i >= len(l.pages) {
		return ""
	}
	return l.pages[i].Name
}

func (l *guideList) FocusGained() { l.focus = true; l.Refresh() }
func (l *guideList) FocusLost()   { l.focus = false; l.Refresh() }

func (l *guideList) TypedKey(e *fyne.KeyEvent) { l.guide.typed(e) }

// guideRow is a page in the list.
type guideRow struct {
	*fyne.Container
	ground *canvas.Rectangle
	title  *canvas.Text
	in     float32
}

func newGuideRow() *guideRow {
	r := &guideRow{ground: canvas.NewRectangle(color.Transparent), title: written("", readSize, ink, false)}
	r.ground.CornerRadius = 5
	r.Container = &fyne.Container{Layout: guideRowLayout{r}, Objects: []fyne.CanvasObject{r.ground, r.title}}
	return r
}

func rowOf(o fyne.CanvasObject) *guideRow {
	return o.(*fyne.Container).Layout.(guideRowLayout).guideRow
}

func (r *guideRow) show(title string, set, read, focus bool) {
	r.title.Text, r.title.Color, r.title.TextSize, r.title.TextStyle.Bold = title, ink, readSize, read
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth = color.Transparent, blue, 0
	if read {
		r.ground.FillColor, r.ground.StrokeWidth = well, 1
	}
	if read && focus {
		r.ground.StrokeWidth = 2
	}
	r.in = 0
	if set {
		r.in = 14
	}
	r.Layout.Layout(nil, r.Size())
	r.Refresh()
}

type guideRowLayout struct{ *guideRow }

func (guideRowLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(60, grown(19)) }

func (l guideRowLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	put(l.ground, 1, 0, s.Width-4, s.Height)
	high := l.title.MinSize().Height
	put(l.title, 8+l.in, (s.Height-high)/2, s.Width-l.in-14, high)
}

// guideSeeker is the box in which pages are sought.
type guideSeeker struct {
	entry
	guide *guideWindow
}

func newGuideSeeker(g *guideWindow) *guideSeeker {
	idle := func() {}
	s := &guideSeeker{guide: g, entry: entry{came: idle, left: idle, escape: idle, help: idle, nudge: func(int) {}, undo: idle, redo: idle}}
	s.Wrapping, s.Scroll = fyne.TextWrapOff, fyne.ScrollHorizontalOnly
	s.ExtendBaseWidget(s)
	s.SetPlaceHolder(g.words.Say("guide.find"))
	s.OnChanged = g.find
	return s
}

// TypedKey opens the first page found with Return, and with Escape seeks no longer, or
// closes the guide where nothing was sought.
func (s *guideSeeker) TypedKey(k *fyne.KeyEvent) {
	g := s.guide
	switch k.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyDown:
		if len(g.list.pages) > 0 {
			g.open(g.list.pages[0].Name, "")
			g.Canvas().Focus(g.list)
		}
	case fyne.KeyEscape:
		if s.Text == "" {
			g.close()
			return
		}
		s.SetText("")
		g.Canvas().Focus(g.list)
	default:
		s.entry.TypedKey(k)
	}
}
