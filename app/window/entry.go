package window

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"tipline/geometry"
)

// entry is a box to type in that tells when it is come to and left. What is
// undone is the job's, not the letters in the box.
type entry struct {
	widget.Entry
	ring       ring
	here       bool // has the keyboard
	reached    bool // by the press that is not yet let go
	came, left func()
	undo, redo func()
	escape     func()
	help       func()
	nudge      func(by int) // with the arrow keys, by steps
}

func newEntry() *entry {
	e := &entry{came: func() {}, left: func() {}, undo: func() {}, redo: func() {}, escape: func() {}, help: func() {}, nudge: func(int) {}}
	e.Wrapping, e.Scroll = fyne.TextWrapOff, fyne.ScrollHorizontalOnly
	e.ExtendBaseWidget(e)
	return e
}

func (e *entry) CreateRenderer() fyne.WidgetRenderer { return e.ring.round(e.Entry.CreateRenderer()) }

func (e *entry) FocusGained() {
	e.Entry.FocusGained()
	e.here = true
	e.ring.show(true)
	e.came()
}

func (e *entry) FocusLost() {
	e.Entry.FocusLost()
	e.here = false
	e.ring.show(false)
	e.left()
}

func (e *entry) MouseDown(m *desktop.MouseEvent) {
	e.reached = !e.here && m.Button == desktop.MouseButtonPrimary
	e.Entry.MouseDown(m)
}

// MouseUp marks all of a box that was come to by a click, unless a piece was marked.
func (e *entry) MouseUp(m *desktop.MouseEvent) {
	e.Entry.MouseUp(m)
	if e.reached && e.SelectedText() == "" {
		e.Entry.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	e.reached = false
}

// SetText takes off what is marked too: the mark is of the text before.
func (e *entry) SetText(text string) {
	if e.SelectedText() != "" {
		e.Entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	}
	e.Entry.SetText(text)
}

func (e *entry) TypedShortcut(s fyne.Shortcut) {
	switch s.ShortcutName() {
	case (&fyne.ShortcutUndo{}).ShortcutName():
		e.undo()
	case (&fyne.ShortcutRedo{}).ShortcutName(), redoAgain.ShortcutName():
		e.redo()
	default:
		e.Entry.TypedShortcut(s)
	}
}

// keys returns those of a box to type in, besides the toolkit's own.
func (e *entry) keys() keyTable {
	return keyTable{
		named("keys.more", func() { e.nudge(1) }, fyne.KeyUp),
		named("keys.less", func() { e.nudge(-1) }, fyne.KeyDown),
		named("keys.escape", func() { e.escape() }, fyne.KeyEscape),
		named("keys.guide", func() { e.help() }, fyne.KeyF1),
	}
}

func (e *entry) TypedKey(k *fyne.KeyEvent) {
	if !e.keys().press(k.Name) {
		e.Entry.TypedKey(k)
	}
}

// marks marks what stands in a box that is come to, so that what is typed replaces it;
// not when it is the window that is come back to. A second click takes the mark off.
func (w *Window) marks(e *entry) {
	if w.entered != e {
		w.entered = e
		e.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
}

// wire lets a box of the present part's field light its line, be nudged, and undo.
func (w *Window) wire(e *entry, path func() geometry.Quantity) {
	d := w.desk
	e.came = func() {
		d.Light(path())
		reveal(e)
		w.marks(e)
	}
	e.nudge = func(by int) { d.Nudge(d.Part(), path(), by) }
	e.undo, e.redo, e.escape, e.help = d.Undo, d.Redo, w.escape, w.help
}

// focusable is a thing that is seen and can have the keyboard.
type focusable interface {
	fyne.CanvasObject
	fyne.Focusable
}

// redoAgain is the other usual key for redoing.
var redoAgain = &desktop.CustomShortcut{KeyName: fyne.KeyZ, Modifier: fyne.KeyModifierShortcutDefault | fyne.KeyModifierShift}

// choice is a box to choose in that tells when it is come to.
type choice struct {
	widget.Select
	ring       ring
	came, help func()
}

func newChoice(changed func(string)) *choice {
	c := &choice{came: func() {}, help: func() {}}
	c.OnChanged = changed
	c.ExtendBaseWidget(c)
	return c
}

func (c *choice) CreateRenderer() fyne.WidgetRenderer { return c.ring.round(c.Select.CreateRenderer()) }

func (c *choice) FocusGained() {
	c.Select.FocusGained()
	c.ring.show(true)
	c.came()
}

func (c *choice) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeyF1 {
		c.help()
		return
	}
	c.Select.TypedKey(k)
}

// set sets what may be chosen, what is, and what stands there when nothing is.
func (c *choice) set(options []string, selected, empty string) {
	if c.Selected != selected || c.PlaceHolder != empty || !slices.Equal(c.Options, options) {
		c.Options, c.Selected, c.PlaceHolder = options, selected, empty
		c.Refresh()
	}
}

func (c *choice) FocusLost() {
	c.Select.FocusLost()
	c.ring.show(false)
}
