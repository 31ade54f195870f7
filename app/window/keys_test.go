package window

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
)

// listed returns all lines of the page of keys.
func listed(w *Window) map[string]string {
	all := map[string]string{}
	for _, g := range w.keyGroups() {
		for _, l := range g.lines {
			all[g.title+": "+l.does] = l.pressed
		}
	}
	return all
}

func TestEveryShortcutOfTheMenusIsListed(t *testing.T) {
	w := opened(t)
	lines, n, seen := listed(w), 0, map[string]string{}
	for _, m := range w.menu.Items {
		for _, i := range m.Items {
			if i.Shortcut == nil {
				continue
			}
			n++
			require.NotNil(t, i.Action, i.Label)
			require.Empty(t, seen[i.Shortcut.ShortcutName()], "%s has the key of another", i.Label)
			seen[i.Shortcut.ShortcutName()] = i.Label
			found := false
			for does, pressed := range lines {
				found = found || does == m.Label+": "+strings.TrimSuffix(i.Label, "…") && pressed != ""
			}
			require.True(t, found, i.Label)
		}
	}
	require.Greater(t, n, 20)
	require.Equal(t, "Ctrl+S", lines["Job: Save"])
	require.Equal(t, "Ctrl+Y  Ctrl+Shift+Z", lines["Edit: Redo"])
	require.Equal(t, "Ctrl+/", lines["Help: Keys"])
	require.Equal(t, "Space", lines["In the list of layers: show the layer, or not"])
	require.Equal(t, "Return  ↓", lines["Where parts are searched: the first part found"])
	require.Equal(t, "Space  Return", lines["In the history: go back to it, or forward"])
	require.Equal(t, "← → ↑ ↓", strings.Join(strings.Fields(lines["On the drawing: move the drawing"]), " "))
}

// tried presses each key of a table, and requires that what is looked at becomes another.
// look sets up what the key works on, when it is told which, and tells how that stands.
type tried struct {
	keys  func() keyTable
	typed func(*fyne.KeyEvent)
	sign  func(rune)
	short func(fyne.Shortcut)
	look  func(says string) any
}

func (of tried) test(t *testing.T) {
	for i, k := range of.keys() {
		changes := func(press func(), name string) {
			before := of.look(k.says)
			if now := of.keys()[i]; now.when == nil || now.when() {
				press()
				require.NotEqual(t, before, of.look(""), "%s: %s", k.says, name)
			}
		}
		for _, name := range k.names {
			changes(func() { of.typed(pressedKey(name)) }, string(name))
		}
		for _, r := range k.runes {
			changes(func() { of.sign(r) }, string(r))
		}
		if k.shortcut != nil {
			changes(func() { of.short(k.shortcut) }, k.shortcut.ShortcutName())
		}
	}
}

func TestEachKeyOfTheDrawingWorks(t *testing.T) {
	w := opened(t)
	b := w.board
	tried{keys: b.keys, typed: b.TypedKey, sign: b.TypedRune, look: func(says string) any {
		switch says {
		case "keys.fit":
			b.set(b.view.Pan(7, 9))
		case "keys.rule":
			w.desk.TakeRule(false)
		case "keys.fit-lit":
			w.desk.Light("crossing.fillet_at_hub")
			b.fitPart()
		}
		return []any{b.view, w.desk.Measuring()}
	}}.test(t)
	w.desk.TakeRule(true)
	b.ruler.move(b.view, 0, 0)
	tried{keys: b.ruleKeys, typed: b.TypedKey, look: func(says string) any {
		if says == "keys.lay" {
			b.ruler.move(b.view, 20, 9)
		}
		return []any{b.ruler.hair, w.desk.Ruled(), w.desk.RuleOpen()}
	}}.test(t)
}

func TestEachKeyOfAFieldWorks(t *testing.T) {
	w := opened(t)
	rim := w.column.row("crossing.rim").entry
	tried{keys: rim.keys, typed: rim.TypedKey, look: func(says string) any {
		if says == "keys.escape" {
			w.desk.TakeRule(true)
		}
		return []any{rim.Text, w.desk.Measuring(), w.all.guide != nil}
	}}.test(t)
}

func TestEachKeyOfAPartWorks(t *testing.T) {
	w := opened(t)
	part := func() *part { return w.rail.parts[2] }
	tried{
		keys: func() keyTable { return part().keys() }, typed: func(e *fyne.KeyEvent) { part().TypedKey(e) },
		short: func(s fyne.Shortcut) { part().TypedShortcut(s) }, look: func(says string) any {
			if says != "" {
				w.unask()
				w.desk.Choose(w.rail.parts[0].ID)
			}
			if says == "keys.copy" {
				fyne.CurrentApp().Clipboard().SetContent("")
			}
			return []any{w.desk.Part(), w.question != nil, len(w.rail.parts), fyne.CurrentApp().Clipboard().Content()}
		},
	}.test(t)
}

// unask puts a question away.
func (w *Window) unask() {
	if w.question != nil {
		w.question.typed(pressedKey(fyne.KeyEscape))
	}
}

func TestEachKeyThatWorksEverywhereDoes(t *testing.T) {
	w := opened(t)
	for _, step := range []desk.Step{desk.Crossing, desk.Paper} {
		w.desk.Go(step)
		tried{keys: w.keys, typed: w.turn, look: func(says string) any {
			if says != "" {
				w.unask()
				w.all.guide.close()
				w.desk.TurnTo(1)
				w.desk.Choose(w.rail.parts[1].ID)
				w.desk.TakeRule(says == "keys.escape")
			}
			_, page := w.desk.Pages()
			return []any{w.desk.Part(), page, w.all.guide != nil, w.desk.Measuring()}
		}}.test(t)
	}
	w.unask()
	w.desk.TurnTo(1)
	tried{keys: w.pages.keys, typed: w.pages.TypedKey, look: func(string) any {
		_, page := w.desk.Pages()
		return []any{page, w.desk.Leaf(page).Printed}
	}}.test(t)
}

func TestEachKeyOfAListWorks(t *testing.T) {
	w := opened(t)
	w.chooseLayers()
	tried{
		keys: func() keyTable { return w.corner.veils[0].keys() }, typed: func(e *fyne.KeyEvent) { w.corner.veils[0].TypedKey(e) },
		sign: func(r rune) { w.corner.veils[0].TypedRune(r) }, look: func(string) any {
			return []any{w.desk.Veils()[0].Hidden, w.corner.open}
		},
	}.test(t)
	seeker := w.rail.sought
	tried{keys: seeker.keys, typed: seeker.TypedKey, look: func(says string) any {
		if says != "" {
			w.desk.Choose(w.rail.parts[0].ID)
			w.desk.Search("")
			seeker.ask()
			seeker.SetText("escape")
		}
		return []any{w.Canvas().Focused() == fyne.Focusable(seeker), w.desk.Sought()}
	}}.test(t)
	w.desk.Search("")
	w.desk.Choose("great")
	w.desk.Go(desk.Crossing)
	retype(t, w, "crossing.rim", "3 mm")
	retype(t, w, "crossing.hub", "12 mm")
	h := w.column.history
	typed := func(e *fyne.KeyEvent) {
		if h.list.TypedKey(e); e.Name == fyne.KeyUp || e.Name == fyne.KeyDown {
			h.list.TypedKey(pressedKey(fyne.KeySpace)) // what it went to is not to be seen otherwise
		}
	}
	tried{keys: h.list.keys, typed: typed, look: func(says string) any {
		if says != "" {
			h.close()
			w.desk.GoTo(1)
			h.open()
		}
		if says == "keys.go" {
			h.list.List.TypedKey(pressedKey(fyne.KeyUp))
		}
		_, stand := w.desk.Stages()
		return []any{stand, h.Visible()}
	}}.test(t)
}

func TestEachKeyOfWhatIsPressedOrAskedWorks(t *testing.T) {
	w := opened(t)
	pressed := 0
	tab := newTab("", func() { pressed++ })
	tried{keys: func() keyTable { return pressing(nil) }, typed: tab.TypedKey, look: func(string) any { return pressed }}.test(t)
	tried{keys: (&question{scroll: box.NewVScroll(box.NewVBox())}).keys, typed: func(e *fyne.KeyEvent) { w.question.typed(e) }, look: func(says string) any {
		if says != "" {
			w.unask()
			w.showKeys()
			w.question.scroll.ScrollToOffset(fyne.NewPos(0, 20))
		}
		if w.question == nil {
			return "answered"
		}
		return w.question.scroll.Offset
	}}.test(t)
}

func TestThePageOfKeysIsOpenedAndClosed(t *testing.T) {
	w := opened(t)
	item(t, w, "Keys…").Action()
	require.NotNil(t, w.question)
	w.question.typed(pressedKey(fyne.KeyEscape))
	require.Nil(t, w.question)
}
