package window

import (
	"context"
	"errors"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// working is a question that stands while sheets are written or printed: how far that
// is, and the way to stop it.
type working struct {
	*question
	bar    *widget.ProgressBar
	line   *flow
	stop   func()
	before bool // it was stopped before it is known how
}

// work shows what begin begins: that is given what tells how many sheets are drawn, on any
// goroutine, and returns what stops it. Whoever called it ends it when all is over.
func (w *Window) work(title string, begin func(*working) (stop func())) {
	v := &working{bar: widget.NewProgressBar(), line: newFlow(textSize, ink)}
	v.bar.TextFormatter = func() string { return "" }
	v.line.set(w.desk.Words().Say("working.begin"), ink)
	width := askWidth
	v.question = w.ask(title, box.New(layout.NewCustomPaddedVBoxLayout(6),
		box.New(layout.NewGridWrapLayout(fyne.NewSize(width, 26)), v.line.Container),
		box.New(layout.NewGridWrapLayout(fyne.NewSize(width, 14)), v.bar)))
	v.busy = true
	v.offerOpen("working.stop", v.halt)
	v.put()
	if v.stop = begin(v); v.before {
		v.stop()
	}
}

// halt stops the work; that it is over is told by the work itself.
func (v *working) halt() {
	v.answers[0].Disable()
	if v.before = true; v.stop != nil {
		v.stop()
	}
}

// told shows how many sheets are drawn, on any goroutine; 0 of 0 where the system has
// them.
func (v *working) told(done, total int) {
	fyne.Do(func() {
		say := v.window.desk.Words().Say
		if total == 0 {
			v.bar.SetValue(1)
			v.line.set(say("working.sent"), ink)
			return
		}
		v.bar.SetValue(float64(done) / float64(total))
		v.line.set(say("working.sheet", "n", done, "m", total), ink)
	})
}

// over ends it; what went wrong is told, but not that it was stopped.
func (v *working) over(err error) (ok bool) {
	v.Hide()
	if err != nil && !errors.Is(err, context.Canceled) {
		v.window.tell(err)
	}
	return err == nil
}
