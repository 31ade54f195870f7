package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// question is something asked over the window. Escape is its first answer, Return
// its last unless the keyboard is on another.
type question struct {
	*dialog.CustomDialog
	window  *Window
	answers []*answer
	body    *box.Scroll // of what it shows
	scroll  *box.Scroll // what it shows is scrolled by; nil for nothing
	busy    bool        // it stands while something is done, which a stray key must not stop: Escape alone answers
}

// keys returns those of a question.
func (q *question) keys() keyTable {
	scroll := func(by float32) func() {
		return func() { q.scroll.ScrollToOffset(q.scroll.Offset.AddXY(0, by)) }
	}
	long := func() bool { return q.scroll != nil }
	last := named("keys.last-answer", func() { q.answers[len(q.answers)-1].OnTapped() }, fyne.KeyReturn, fyne.KeyEnter)
	last.when = func() bool { return !q.busy }
	return keyTable{
		named("keys.first-answer", func() { q.answers[0].OnTapped() }, fyne.KeyEscape),
		last,
		{says: "keys.scroll", names: []fyne.KeyName{fyne.KeyUp}, when: long, do: scroll(-scrollStep)},
		{says: "keys.scroll", names: []fyne.KeyName{fyne.KeyDown}, when: long, do: scroll(scrollStep)},
		{says: "keys.scroll", names: []fyne.KeyName{fyne.KeyPageUp}, when: long, do: scroll(-6 * scrollStep)},
		{says: "keys.scroll", names: []fyne.KeyName{fyne.KeyPageDown}, when: long, do: scroll(6 * scrollStep)},
	}
}

// scrollStep is how far an arrow key scrolls.
const scrollStep = 60

// answer is a button of a question.
type answer struct {
	pushButton
	of *question
}

// ask puts a question; answers are added before it is shown.
func (w *Window) ask(title string, content fyne.CanvasObject) *question {
	body := box.NewVScroll(content)
	held := box.New(&asTall{window: w, scroll: body}, body)
	return &question{CustomDialog: dialog.NewCustomWithoutButtons(w.desk.Words().Say(title), held, w.Window), window: w, body: body}
}

// asTall makes what a question shows as tall as it is, but no taller than the window has
// room for: then it is scrolled.
type asTall struct {
	window *Window
	scroll *box.Scroll
}

// roundAsked is what a question's title, its answers and the window's edge take, beside
// two lines as high as a box.
const roundAsked = 100

func (l *asTall) MinSize([]fyne.CanvasObject) fyne.Size {
	s := l.scroll.Content.MinSize()
	return fyne.NewSize(s.Width, min(s.Height, max(l.window.Canvas().Size().Height-2*inputHeight-roundAsked, 120)))
}

func (l *asTall) Layout(o []fyne.CanvasObject, s fyne.Size) { put(o[0], 0, 0, s.Width, s.Height) }

// offer adds an answer, which closes the question and then does something.
func (q *question) offer(key string, do func()) *answer {
	return q.offerOpen(key, func() { q.Hide(); do() })
}

// offerOpen adds an answer that leaves the question open.
func (q *question) offerOpen(key string, do func()) *answer {
	a := &answer{of: q}
	a.Text, a.OnTapped = q.window.desk.Words().Say(key), do
	a.ExtendBaseWidget(a)
	q.answers = append(q.answers, a)
	return a
}

// put shows the question, the keyboard on its last answer.
func (q *question) put() {
	last := q.answers[len(q.answers)-1]
	last.Importance = widget.HighImportance
	var shown []fyne.CanvasObject
	for _, a := range q.answers {
		shown = append(shown, a)
	}
	q.SetButtons(shown)
	w := q.window
	under := w.question
	w.question = q
	q.SetOnClosed(func() { w.question = under })
	q.Show()
	q.window.Canvas().Focus(last)
}

// typed does what a key does in a question; false where it does nothing.
func (q *question) typed(e *fyne.KeyEvent) bool { return q.keys().press(e.Name) }

func (a *answer) TypedKey(e *fyne.KeyEvent) {
	switch {
	case a.of.busy:
		a.of.typed(e)
	case e.Name == fyne.KeyReturn || e.Name == fyne.KeyEnter:
		a.OnTapped()
	case !a.of.typed(e):
		a.pushButton.TypedKey(e)
	}
}

// answerEntry is a box to type in that answers its question.
type answerEntry struct {
	widget.Entry
	ring ring
	of   *question
}

func newAnswerEntry() *answerEntry {
	e := &answerEntry{}
	e.Wrapping, e.Scroll = fyne.TextWrapOff, fyne.ScrollHorizontalOnly
	e.ExtendBaseWidget(e)
	return e
}

func (e *answerEntry) TypedKey(k *fyne.KeyEvent) {
	if !e.of.typed(k) {
		e.Entry.TypedKey(k)
	}
}

// mark marks the beginning of what stands there, so that it is typed over.
func (e *answerEntry) mark(beginning string) {
	e.CursorColumn = len([]rune(beginning))
	shift := &fyne.KeyEvent{Name: desktop.KeyShiftLeft}
	e.KeyDown(shift)
	e.Entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome})
	e.KeyUp(shift)
}

func (e *answerEntry) CreateRenderer() fyne.WidgetRenderer {
	return e.ring.round(e.Entry.CreateRenderer())
}

func (e *answerEntry) FocusGained() {
	e.Entry.FocusGained()
	e.ring.show(true)
	reveal(e)
}

func (e *answerEntry) FocusLost() {
	e.Entry.FocusLost()
	e.ring.show(false)
}
