package window

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// history is the list of what was done to the job since it was opened, in the place of the
// fields while it is asked for. A step that is clicked is gone back to, or forward.
type history struct {
	fyne.CanvasObject
	window *Window
	list   *steps
	shown  []desk.Stage
	stand  int
}

// steps is the list itself.
type steps struct {
	widget.List
	escape func()
}

// keys returns those of the list, the toolkit's own among them.
func (s *steps) keys() keyTable {
	of := func(name fyne.KeyName) func() { return func() { s.List.TypedKey(&fyne.KeyEvent{Name: name}) } }
	return keyTable{
		named("keys.step", of(fyne.KeyUp), fyne.KeyUp),
		named("keys.step", of(fyne.KeyDown), fyne.KeyDown),
		named("keys.go", of(fyne.KeySpace), fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter),
		named("keys.put-away", func() { s.escape() }, fyne.KeyEscape),
	}
}

func (s *steps) TypedKey(e *fyne.KeyEvent) {
	if !s.keys().press(e.Name) {
		pass(s, e)
	}
}

func newHistory(w *Window) *history {
	say := w.desk.Words().Say
	h := &history{window: w, list: &steps{}}
	h.list.escape = h.close
	h.list.Length = func() int { return len(h.shown) + 1 }
	h.list.CreateItem = func() fyne.CanvasObject {
		return box.New(stepLayout{}, canvas.NewCircle(blue), written("", readSize, ink, false))
	}
	h.list.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) { h.line(i, o.(*fyne.Container)) }
	h.list.OnSelected = func(i widget.ListItemID) {
		h.list.UnselectAll()
		w.desk.GoTo(i)
	}
	h.list.HideSeparators = true
	h.list.ExtendBaseWidget(h.list)
	h.CanvasObject = leaf(say("history.title"), say("history.line"), h.list, h.close)
	h.CanvasObject.Hide()
	return h
}

// line shows one step: a disc at the last that stands, and what is undone faint.
func (h *history) line(i int, o *fyne.Container) {
	disc, text := o.Objects[0].(*canvas.Circle), o.Objects[1].(*canvas.Text)
	said, undone := h.window.desk.Words().Say("history.opened"), false
	if i > 0 {
		said, undone = h.shown[i-1].Sentence, h.shown[i-1].Undone
	}
	disc.Hidden = i != h.stand
	text.TextStyle.Bold = i == h.stand
	text.Color = ink
	if undone {
		text.Color = faint
	}
	text.Text = shortened(said, readSize, text.TextStyle, columnWidth+2)
	o.Refresh()
}

// show brings the list in line with the desk while it is seen.
func (h *history) show() {
	if !h.Visible() {
		return
	}
	list, stand := h.window.desk.Stages()
	if slices.Equal(list, h.shown) && stand == h.stand {
		return
	}
	h.shown, h.stand = list, stand
	h.list.Refresh()
	h.list.ScrollTo(stand)
}

// open shows the list and gives it the keyboard, or puts it away.
func (h *history) open() {
	if h.Visible() {
		h.close()
		return
	}
	h.window.column.stock.close()
	h.window.column.fields.Hide()
	h.Show()
	h.show()
	h.list.Refresh()
	h.list.ScrollTo(h.stand)
	h.window.Canvas().Focus(h.list)
	for range h.list.Length() { // the keyboard is where it was left
		h.list.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	}
	for range h.stand {
		h.list.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	}
}

func (h *history) close() {
	if h.Visible() {
		h.window.Canvas().Unfocus()
		h.Hide()
		h.window.column.fields.Show()
	}
}

// back undoes or does again, and has the field seen in which that changed something.
func (w *Window) back(do func()) {
	do()
	if field := w.desk.LitField(); field != "" {
		if r := w.column.row(field); r != nil {
			reveal(r.Container)
		}
	}
}

// stepLayout sets a disc before a line of type.
type stepLayout struct{}

func (stepLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, o[1].MinSize().Height+8)
}

func (stepLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	high := o[1].MinSize().Height
	put(o[0], 8, s.Height/2-3.5, 7, 7)
	put(o[1], 22, (s.Height-high)/2, s.Width-24, high)
}
