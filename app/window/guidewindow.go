package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"tipline/app/window/desk"
	"tipline/assets/guide"
	"tipline/assets/words"
)

// guideKey opens the guide.
var guideKey = &desktop.CustomShortcut{KeyName: fyne.KeyF1}

// guideWindow is the guide in a window of its own, so that it can lie beside the job: its
// pages, a box to find them with, and the page that is read.
type guideWindow struct {
	fyne.Window
	all    *windows
	from   *Window // that it was opened from, whose language it speaks
	words  words.Words
	book   *guide.Guide // in that language
	sought *guideSeeker
	list   *guideList
	back   *guideButton
	none   *flow // said where nothing is found
	other  *flow // said where the page is in another language
	page   *guidePage
	scroll *box.Scroll
	album  album
	at     bookmark
	before []bookmark // that can be gone back to
}

// bookmark is a page of the guide and how far it is scrolled.
type bookmark struct {
	page string
	down float32
}

// help opens the guide at the field that is lit, else at the step.
func (w *Window) help() {
	g := w.all.guide
	if g == nil {
		g = &guideWindow{Window: w.all.app.NewWindow(""), all: w.all, at: bookmark{page: guide.Start}}
		w.all.guide = g
		g.SetOnClosed(func() { w.all.guide = nil })
		g.Canvas().SetOnTypedKey(func(e *fyne.KeyEvent) { g.typed(e) })
		g.Canvas().AddShortcut(guideFind, func(fyne.Shortcut) { g.Canvas().Focus(g.sought) })
		g.Resize(fyne.NewSize(min(widened(920), opening.Width), opening.Height))
	}
	g.from = w
	g.furnish()
	page, field := w.explained()
	g.open(page, field)
	g.Show()
	g.RequestFocus()
	g.Canvas().Focus(g.list)
}

// guideFind goes to the box to find pages with.
var guideFind = &desktop.CustomShortcut{KeyName: fyne.KeyF, Modifier: fyne.KeyModifierShortcutDefault}

// explained returns the page about the field that is lit and the field, or else the page of
// the step.
func (w *Window) explained() (page, field string) {
	field = string(w.desk.LitField())
	book := guide.In(w.desk.Words().Language())
	if p, _, ok := book.For(field); ok {
		return p.Name, field
	}
	step := w.desk.Step()
	if step == desk.Shrouds {
		return "step-pinion", ""
	}
	if _, ok := book.Named("step-" + string(step)); ok && w.desk.Part() != "" {
		return "step-" + string(step), ""
	}
	return guide.Start, ""
}

// furnish puts everything into the window, in the language of the window that it was opened
// from; nothing while it is closed.
func (g *guideWindow) furnish() {
	if g == nil {
		return
	}
	g.words = g.from.desk.Words()
	g.book = guide.In(g.words.Language())
	say := g.words.Say
	g.SetTitle(say("guide.title"))
	g.album = newAlbum(g.words)
	g.sought, g.list = newGuideSeeker(g), newGuideList(g)
	g.back = newGuideButton(g, say("guide.back"), g.goBack)
	g.none = newFlow(readSize, faint)
	g.page = newGuidePage(g)
	g.scroll = box.NewVScroll(g.page.Container)
	g.other = newFlow(readSize, faint)
	g.SetContent(&fyne.Container{Layout: guidePlan{g}, Objects: []fyne.CanvasObject{
		g.sought, g.back, sheetOf(panel), g.list, g.none.Container, g.other.Container, sheetOf(well), g.scroll,
	}})
	g.find("")
	g.read(g.at.page, "")
	g.scroll.ScrollToOffset(fyne.NewPos(0, g.at.down))
}

// guidePlan sets the pages beside the page.
type guidePlan struct{ *guideWindow }

func (guidePlan) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(widened(560), 360) }

func (l guidePlan) Layout(o []fyne.CanvasObject, s fyne.Size) {
	const gap = 8
	side := widened(232)
	head, back := inputHeight, l.back.MinSize().Width+8
	put(o[0], gap, gap, side, head)
	put(o[1], side+2*gap, gap, back, head)
	top := head + 2*gap
	put(o[2], gap, top, side, s.Height-top-gap)
	put(o[3], gap+3, top+3, side-6, s.Height-top-gap-6)
	put(o[4], gap+14, top+12, side-28, s.Height-top-gap)
	room := s.Width - side - back - 5*gap
	put(o[5], side+back+4*gap, gap+(head-l.other.tall(room))/2, room, head)
	put(o[6], side+2*gap, top, s.Width-side-3*gap, s.Height-top-gap)
	put(o[7], side+2*gap+2, top+2, s.Width-side-3*gap-4, s.Height-top-gap-4)
}

// open goes to a page, or to where on it a field is explained; what was read can be gone
// back to.
func (g *guideWindow) open(page, field string) {
	if page != g.at.page {
		g.at.down = g.scroll.Offset.Y
		g.before = append(g.before, g.at)
	}
	g.read(page, field)
	if field == "" {
		g.scroll.ScrollToTop()
		return
	}
	g.scroll.ScrollToOffset(fyne.NewPos(0, max(0, g.page.downTo(field)-12)))
}

// read shows a page, from where it is scrolled to.
func (g *guideWindow) read(name, field string) {
	p, ok := g.book.Named(name)
	if !ok {
		return
	}
	g.at = bookmark{page: name}
	g.page.show(p, field)
	g.tellLanguage(p)
	g.scroll.Refresh()
	g.list.mark(name)
	g.back.enable(len(g.before) > 0)
}

// tellLanguage says so where a page is in another language than the window.
func (g *guideWindow) tellLanguage(p guide.Page) {
	said := ""
	if p.Language != g.words.Language() {
		said = g.words.Say("guide.english")
	}
	if g.other.text != said {
		g.other.set(said, faint)
		g.Content().Refresh()
	}
}

// goBack goes back to what was read before.
func (g *guideWindow) goBack() {
	last := len(g.before) - 1
	if last < 0 {
		return
	}
	to := g.before[last]
	g.before = g.before[:last]
	g.read(to.page, "")
	g.scroll.ScrollToOffset(fyne.NewPos(0, to.down))
}

// find lists the pages on which something is said.
func (g *guideWindow) find(sought string) {
	g.list.show(g.book.Find(sought))
	said := ""
	if len(g.list.pages) == 0 {
		said = g.words.Say("guide.none")
	}
	g.none.set(said, faint)
}

// close closes the guide, if it is open.
func (g *guideWindow) close() {
	if g != nil {
		g.Close()
	}
}

// turn goes so many pages on in the list.
func (g *guideWindow) turn(by int) {
	if to := g.list.beside(by); to != "" && to != g.at.page {
		g.open(to, "")
	}
}

// keys returns those of the guide.
func (g *guideWindow) keys() keyTable {
	scroll := func(by float32) func() {
		return func() {
			lowest := max(0, g.scroll.Content.MinSize().Height-g.scroll.Size().Height)
			g.scroll.ScrollToOffset(fyne.NewPos(0, min(lowest, max(0, g.scroll.Offset.Y+by))))
		}
	}
	return keyTable{
		named("keys.guide.close", g.close, fyne.KeyEscape),
		named("keys.guide.back", g.goBack, fyne.KeyBackspace, fyne.KeyLeft),
		named("keys.guide.first", func() { g.open(guide.Start, "") }, fyne.KeyHome),
		named("keys.guide.next", func() { g.turn(1) }, fyne.KeyDown),
		named("keys.guide.previous", func() { g.turn(-1) }, fyne.KeyUp),
		named("keys.scroll", scroll(-6*scrollStep), fyne.KeyPageUp),
		named("keys.scroll", scroll(6*scrollStep), fyne.KeyPageDown, fyne.KeySpace),
		{says: "keys.find", shortcut: guideFind, do: func() { g.Canvas().Focus(g.sought) }},
	}
}

func (g *guideWindow) typed(e *fyne.KeyEvent) { g.keys().press(e.Name) }
