package window

import (
	"path/filepath"
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"tipline/app/window/desk"
	"tipline/assets/samples"
)

// menu is the window's menu. Its shortcuts work while a field is being typed in
// too, which a canvas' own do not.
type menu struct {
	*fyne.MainMenu
	window               *Window
	undo, redo           *fyne.MenuItem
	save, quit           *fyne.MenuItem
	recent               *fyne.MenuItem
	onPart               []*fyne.MenuItem
	step                 *fyne.Menu
	units                *fyne.MenuItem
	steps                []desk.Step
	shownRecent          []string
	edited, redoable, of bool
}

func newMenu(w *Window) *menu {
	m := &menu{window: w}
	m.MainMenu = fyne.NewMainMenu(m.jobMenu(), m.editMenu(), m.partMenu(), m.stepMenu(), m.viewMenu(), m.helpMenu())
	return m
}

// item returns an item with the catalogue's text; while a question is open it does
// nothing.
func (m *menu) item(key string, action func()) *fyne.MenuItem {
	return fyne.NewMenuItem(m.window.desk.Words().Say("menu."+key), m.unasked(action))
}

func (m *menu) unasked(action func()) func() {
	return func() {
		if m.window.Canvas().Overlays().Top() == nil {
			action()
		}
	}
}

// keyed gives an item a key to be pressed with Ctrl.
func keyed(i *fyne.MenuItem, key fyne.KeyName, more ...fyne.KeyModifier) *fyne.MenuItem {
	modifier := fyne.KeyModifierShortcutDefault
	for _, k := range more {
		modifier |= k
	}
	i.Shortcut = &desktop.CustomShortcut{KeyName: key, Modifier: modifier}
	return i
}

func (m *menu) jobMenu() *fyne.Menu {
	w := m.window
	m.recent = m.item("recent", nil)
	m.recent.ChildMenu = fyne.NewMenu("")
	sample := m.item("sample", nil)
	sample.ChildMenu = m.sampleMenu()
	m.save = keyed(m.item("save", func() { w.save(func() {}) }), fyne.KeyS)
	m.quit = keyed(m.item("quit", w.all.quit), fyne.KeyQ)
	m.quit.IsQuit = true
	return fyne.NewMenu(w.desk.Words().Say("menu.job"),
		keyed(m.item("new", w.begin), fyne.KeyN),
		keyed(m.item("open", w.askOpen), fyne.KeyO),
		m.recent, sample, fyne.NewMenuItemSeparator(),
		m.save,
		keyed(m.item("save-as", func() { w.askSave(func() {}) }), fyne.KeyS, fyne.KeyModifierShift),
		fyne.NewMenuItemSeparator(),
		keyed(m.item("print", w.askPrint), fyne.KeyP),
		keyed(m.item("pdf", w.askPDF), fyne.KeyE),
		m.item("measure-printer", w.askMeasure),
		fyne.NewMenuItemSeparator(),
		keyed(m.item("close", w.leave), fyne.KeyW), m.quit)
}

func (m *menu) sampleMenu() *fyne.Menu {
	list, err := samples.List()
	if err != nil {
		return fyne.NewMenu("")
	}
	child := fyne.NewMenu("")
	for _, s := range list {
		child.Items = append(child.Items, fyne.NewMenuItem(s.Title, m.unasked(func() { m.window.openSample(s.Name) })))
	}
	return child
}

func (m *menu) editMenu() *fyne.Menu {
	d := m.window.desk
	m.undo, m.redo = m.item("undo", func() { m.window.back(d.Undo) }), m.item("redo", func() { m.window.back(d.Redo) })
	m.undo.Shortcut, m.redo.Shortcut = &fyne.ShortcutUndo{}, &fyne.ShortcutRedo{}
	m.window.Canvas().AddShortcut(redoAgain, func(fyne.Shortcut) { m.redo.Action() })
	w := m.window
	return fyne.NewMenu(d.Words().Say("menu.edit"), m.undo, m.redo,
		keyed(m.item("history", func() { w.column.history.open() }), fyne.KeyH),
		fyne.NewMenuItemSeparator(),
		keyed(m.item("find", func() { w.rail.sought.ask() }), fyne.KeyF))
}

func (m *menu) partMenu() *fyne.Menu {
	w, d := m.window, m.window.desk
	add := keyed(m.item("add", w.offerStarts), fyne.KeyA, fyne.KeyModifierShift)
	part := func(key string, do func() error) *fyne.MenuItem {
		i := m.item(key, func() { w.tell(do()) })
		m.onPart = append(m.onPart, i)
		return i
	}
	ask := func(key string, do func()) *fyne.MenuItem {
		i := m.item(key, do)
		m.onPart = append(m.onPart, i)
		return i
	}
	previous, next := m.item("previous-part", func() { d.Turn(-1) }), m.item("next-part", func() { d.Turn(1) })
	return fyne.NewMenu(d.Words().Say("menu.part"), add,
		keyed(part("duplicate", d.Duplicate), fyne.KeyD),
		keyed(ask("rename", w.askRename), fyne.KeyR), ask("delete", w.askDelete),
		fyne.NewMenuItemSeparator(),
		keyed(ask("copy-part", w.copyPart), fyne.KeyC, fyne.KeyModifierShift),
		keyed(m.item("paste-part", w.pastePart), fyne.KeyV, fyne.KeyModifierShift),
		fyne.NewMenuItemSeparator(),
		keyed(part("up", func() error { return d.Move(-1) }), fyne.KeyUp),
		keyed(part("down", func() error { return d.Move(1) }), fyne.KeyDown),
		fyne.NewMenuItemSeparator(),
		keyed(previous, fyne.KeyPageUp), keyed(next, fyne.KeyPageDown))
}

func (m *menu) helpMenu() *fyne.Menu {
	w := m.window
	guide := m.item("guide", w.help)
	guide.Shortcut = guideKey // shown only: a key by itself is none of the toolkit's shortcuts
	return fyne.NewMenu(w.desk.Words().Say("menu.help"), guide, keyed(m.item("keys", w.showKeys), fyne.KeySlash))
}

func (m *menu) viewMenu() *fyne.Menu {
	w := m.window
	return fyne.NewMenu(w.desk.Words().Say("menu.view"),
		keyed(m.item("fit", w.board.fitPart), fyne.Key0),
		keyed(m.item("fit-lit", w.board.fitLit), fyne.Key9),
		keyed(m.item("closer", func() { w.board.zoom(closer, w.board.middle()) }), fyne.KeyEqual),
		keyed(m.item("farther", func() { w.board.zoom(1/closer, w.board.middle()) }), fyne.KeyMinus),
		fyne.NewMenuItemSeparator(),
		keyed(m.item("stock", func() { w.column.stock.open() }), fyne.KeyG),
		keyed(m.item("rule", w.measure), fyne.KeyM),
		keyed(m.item("layers", w.chooseLayers), fyne.KeyL),
		fyne.NewMenuItemSeparator(), m.lengths(), m.shades(), m.sizes(), m.languages())
}

// stepMenu leads to the steps of the present part.
func (m *menu) stepMenu() *fyne.Menu {
	m.step = fyne.NewMenu(m.window.desk.Words().Say("menu.step"))
	m.listSteps()
	return m.step
}

func (m *menu) listSteps() {
	d := m.window.desk
	m.steps, m.step.Items = d.Steps(), nil
	for i, step := range m.steps {
		key := fyne.KeyName(rune('1' + i))
		m.step.Items = append(m.step.Items, keyed(fyne.NewMenuItem(d.Words().Say("step."+string(step)), m.unasked(func() { m.window.goTo(step) })), key))
	}
}

// show brings the menu in line with the desk. The toolkit builds a menu anew when
// it is refreshed, so that is done only where something changed.
func (m *menu) show() {
	d := m.window.desk
	recent := d.Recent()
	same := !m.tickUnit() && slices.Equal(recent, m.shownRecent) && slices.Equal(m.steps, d.Steps())
	if same && m.edited == d.CanUndo() && m.redoable == d.CanRedo() && m.of == (d.Part() != "") && len(m.recent.ChildMenu.Items) > 0 {
		return
	}
	m.edited, m.redoable, m.of, m.shownRecent = d.CanUndo(), d.CanRedo(), d.Part() != "", recent
	m.undo.Disabled, m.redo.Disabled = !m.edited, !m.redoable
	for _, i := range m.onPart {
		i.Disabled = !m.of
	}
	m.showRecent(recent)
	m.listSteps()
	m.MainMenu.Refresh()
}

func (m *menu) showRecent(files []string) {
	m.recent.ChildMenu.Items = nil
	for _, name := range files {
		m.recent.ChildMenu.Items = append(m.recent.ChildMenu.Items, fyne.NewMenuItem(filepath.Base(name), m.unasked(func() { m.window.open(name, func() {}) })))
	}
	if len(files) == 0 {
		none := m.item("no-recent", func() {})
		none.Disabled = true
		m.recent.ChildMenu.Items = append(m.recent.ChildMenu.Items, none)
	}
}
