package window

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/appearance"
	"tipline/app/job"
	"tipline/app/window/desk"
	"tipline/assets/guide"
)

// read returns the guide's window, opened from the job's.
func guideOf(t *testing.T, w *Window) *guideWindow {
	w.help()
	require.NotNil(t, w.all.guide)
	return w.all.guide
}

// linksOn returns the links of the page that is read.
func (g *guideWindow) linksOn() (all []*link) {
	for _, o := range g.page.Objects {
		if l, ok := o.(*link); ok {
			all = append(all, l)
		}
	}
	return all
}

func TestF1OpensTheGuideWhereTheFieldIsExplained(t *testing.T) {
	w := opened(t)
	rim := w.column.row("crossing.rim").entry
	w.Canvas().Focus(rim)
	rim.TypedKey(pressedKey(fyne.KeyF1))
	g := w.all.guide
	require.NotNil(t, g)
	require.Equal(t, "step-crossing", g.at.page)
	require.Equal(t, "crossing.rim", g.page.field)
	require.Equal(t, blue, g.page.bar.FillColor)
	require.InDelta(t, g.page.bar.Position().Y-12, g.scroll.Offset.Y, 1)

	w.Canvas().Focus(w.column.row("crossing.style").choice)
	w.column.row("crossing.style").choice.TypedKey(pressedKey(fyne.KeyF1))
	require.Same(t, g, w.all.guide, "there is one guide")
	require.Equal(t, "crossing.style", g.page.field)
	g.close()
	require.Nil(t, w.all.guide)
}

// From whatever field of every step of every part F1 opens a page that explains it.
func TestEveryFieldOfTheWindowLeadsToItsPage(t *testing.T) {
	w := opened(t)
	tried := 0
	for _, p := range w.rail.parts {
		w.desk.Choose(p.ID)
		for _, step := range w.desk.Steps() {
			w.desk.Go(step)
			for _, f := range w.desk.Fields() {
				w.desk.Light(f.Path)
				_, field := w.explained()
				known, is := job.FieldAt(f.Path)
				if !is {
					known.Path = f.Path
				}
				require.Equal(t, string(known.Path), field, "%s of %s", f.Path, p.ID)
				tried++
			}
		}
	}
	require.Greater(t, tried, 100)
}

func TestWithoutAFieldTheGuideOpensAtTheStep(t *testing.T) {
	w := opened(t)
	for step, page := range map[desk.Step]string{desk.Cutter: "step-cutter", desk.Mounting: "step-mounting", desk.Paper: "step-paper"} {
		w.desk.Go(step)
		w.desk.Light("")
		g := guideOf(t, w)
		require.Equal(t, page, g.at.page)
		require.Zero(t, g.scroll.Offset.Y)
	}
	tab := w.strip.tabs[1]
	tab.TypedKey(pressedKey(fyne.KeyF1))
	require.NotNil(t, w.all.guide)
	item(t, w, "Guide").Action()
}

// Nor is a field needed to ask for it: F1 works with the keyboard on whatever can be pressed
// or ticked, and on nothing.
func TestF1OpensTheGuideFromAnything(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Cutter)
	for name, from := range map[string]interface{ TypedKey(*fyne.KeyEvent) }{
		"a button": w.rail.add, "a remark": w.remarks.list.Objects[0].(*remark), "a part": w.rail.parts[0], "the turner": w.turner.slider,
		"a layer": w.corner.newVeil(), "the list of steps": w.column.history.list, "the pages": w.pages,
	} {
		w.all.guide.close()
		w.all.guide = nil
		from.TypedKey(pressedKey(fyne.KeyF1))
		require.NotNil(t, w.all.guide, name)
		require.Equal(t, "step-cutter", w.all.guide.at.page, name)
	}
	w.all.guide.close()
	w.all.guide = nil
	w.Canvas().OnTypedKey()(pressedKey(fyne.KeyF1))
	require.NotNil(t, w.all.guide)
}

// Each page is laid with its pictures drawn and each of its links leads on.
func TestEveryPageIsShownWithItsPicturesAndLinks(t *testing.T) {
	w := opened(t)
	for _, language := range guide.Languages() {
		w.speak(language)
		g := guideOf(t, w)
		for _, p := range guide.In(language).Pages() {
			g.open(p.Name, "")
			g.requireShown(t, p)
		}
	}
}

func (g *guideWindow) requireShown(t *testing.T, p guide.Page) {
	written, plates := 0, 0
	for _, b := range p.Blocks {
		if b.Kind == guide.Picture {
			plates--
		}
		for _, r := range b.Runs {
			if r.To != "" {
				written++
			}
		}
	}
	require.Len(t, g.linksOn(), written, p.Name)
	require.Equal(t, p.Title, g.page.page.Title)
	row := newGuideRow()
	row.Resize(fyne.NewSize(g.list.Size().Width, 20))
	row.show(p.Title, p.Term, true, false)
	require.LessOrEqual(t, row.title.MinSize().Width, row.title.Size().Width, "%s: its title is cut in the list", p.Title)
	for _, b := range g.page.blocks {
		if plate, ok := b.(*plate); ok {
			plates++
			require.NotNil(t, plate.paint(200, 120), p.Name)
			require.NotNil(t, plate.pixels, "%s: %s is not drawn", p.Name, plate.name)
		}
	}
	require.Zero(t, plates, p.Name)
	for _, l := range g.linksOn() {
		require.LessOrEqual(t, l.Position().X+l.Size().Width, pageInset+measure()+1, "%s: %s runs out", p.Name, l.text)
	}
	require.GreaterOrEqual(t, g.page.MinSize().Height, float32(100), p.Name)
}

// Links and short things to type are kept whole, and what follows without a blank stays
// with them.
func TestProseIsBrokenAtBlanksOnly(t *testing.T) {
	w := opened(t)
	p := newProse(guideOf(t, w), []guide.Run{{Text: "Bore\u00a0: "}, {Text: "1 3/4 in", Style: guide.Typed}, {Text: ", see "}, {Text: "the first wheel", To: "first-wheel"}, {Text: "."}}, 12)
	var said []string
	for _, piece := range p.pieces {
		said = append(said, piece.Text)
	}
	require.Equal(t, []string{"Bore\u00a0:", "1 3/4 in", ",", "see", "the first wheel", "."}, said)
	page := newGuidePage(w.all.guide)
	page.Objects = nil
	high := p.lay(page, 0, 0, p.wide(p.pieces[4])+30)
	require.Greater(t, high, 1.5*p.size*leading)
	comma, after := page.Objects[2], page.Objects[5]
	require.Equal(t, page.Objects[1].Position().Y, comma.Position().Y)
	require.Equal(t, page.Objects[4].Position().Y, after.Position().Y)
}

func TestALinkIsFollowedAndGoneBackFrom(t *testing.T) {
	w := opened(t)
	g := guideOf(t, w)
	g.open(guide.Start, "")
	g.before = nil
	g.read(guide.Start, "")
	require.True(t, g.back.Disabled())
	g.scroll.ScrollToOffset(fyne.NewPos(0, 40))
	first := g.linksOn()[0]
	g.Canvas().Focus(first)
	g.scroll.ScrollToOffset(fyne.NewPos(0, 40))
	first.TypedKey(pressedKey(fyne.KeyReturn))
	require.Equal(t, first.to, g.at.page)
	require.Zero(t, g.scroll.Offset.Y)
	require.False(t, g.back.Disabled())
	test.Tap(g.back)
	require.Equal(t, guide.Start, g.at.page)
	require.Equal(t, float32(40), g.scroll.Offset.Y)
	test.Tap(g.linksOn()[1])
	require.NotEqual(t, guide.Start, g.at.page)
}

func TestPagesAreSought(t *testing.T) {
	w := opened(t)
	g := guideOf(t, w)
	all := len(g.list.pages)
	g.Canvas().Focus(g.sought)
	test.Type(g.sought, "heel")
	require.Less(t, len(g.list.pages), all)
	require.Equal(t, "heel", g.list.pages[0].Name)
	g.sought.TypedKey(pressedKey(fyne.KeyReturn))
	require.Equal(t, "heel", g.at.page)
	require.Equal(t, g.list, g.Canvas().Focused())
	g.sought.SetText("zeppelin")
	require.Empty(t, g.list.pages)
	require.Equal(t, "No page says this.", g.none.text)
	g.sought.TypedKey(pressedKey(fyne.KeyEscape))
	require.Len(t, g.list.pages, all)
	g.sought.TypedKey(pressedKey(fyne.KeyEscape))
	require.Nil(t, w.all.guide)
}

func TestEachKeyOfTheGuideWorks(t *testing.T) {
	w := opened(t)
	look := func(says string) any {
		if says != "" {
			g := guideOf(t, w)
			g.open("heel", "")
			g.open("step-crossing", "")
			g.scroll.ScrollToOffset(fyne.NewPos(0, 600))
			g.Canvas().Focus(g.list)
		}
		if w.all.guide == nil {
			return "closed"
		}
		g := w.all.guide
		return []any{g.at.page, g.scroll.Offset, g.Canvas().Focused() == g.sought}
	}
	look("open")
	tried{
		keys: func() keyTable { look("open"); return w.all.guide.keys() }, typed: func(e *fyne.KeyEvent) { w.all.guide.list.TypedKey(e) },
		short: func(s fyne.Shortcut) { w.all.guide.keys().cut(s) }, look: look,
	}.test(t)
}

// The guide is furnished anew with the windows, in their language, and says where a page is
// in English for want of another.
func TestTheGuideFollowsTheLanguageAndTheShade(t *testing.T) {
	w := opened(t)
	g := guideOf(t, w)
	g.open("heel", "")
	require.Empty(t, g.other.text)
	w.speak("de")
	require.Equal(t, "Anleitung – Tipline", g.Title())
	require.Equal(t, "heel", g.at.page)
	require.Equal(t, "Zurück", g.back.Text)
	german, _ := guide.In("de").Named("heel")
	require.Equal(t, german.Title, g.page.page.Title)
	require.Equal(t, german.Language == "de", g.other.text == "")
	g.book = guide.In(guide.First)
	g.read("heel", "")
	require.Equal(t, g.words.Say("guide.english"), g.other.text)
	w.all.redress(appearance.Looks{Shade: appearance.Dark, Percent: 200})
	t.Cleanup(func() { w.all.redress(appearance.Looks{Shade: appearance.Light, Percent: 100}) })
	require.Equal(t, "heel", g.at.page)
	for _, l := range g.linksOn() {
		require.InDelta(t, 2*15.4, l.size, 0.01)
	}
}
