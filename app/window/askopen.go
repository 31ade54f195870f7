package window

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/window/desk"
)

// lay puts another job on the window's desk if nothing has been done to what is there,
// else on the desk of a new window.
func (w *Window) lay(put func(d *desk.Desk) error) error {
	if w.desk.Untouched() {
		return put(w.desk)
	}
	d := w.desk.Another()
	if err := put(d); err != nil {
		return err
	}
	w.all.add(d).Show()
	return nil
}

// begin lays an empty job.
func (w *Window) begin() {
	w.tell(w.lay(func(d *desk.Desk) error { d.Begin(); return nil }))
}

// openSample lays a sample job.
func (w *Window) openSample(name string) {
	w.tell(w.lay(func(d *desk.Desk) error { return d.OpenSample(name) }))
}

// open lays the job in a file, or shows the window that has it already; where another
// program has it, it asks.
func (w *Window) open(name string) error {
	if other := w.all.of(name); other != nil {
		other.raise()
		return nil
	}
	err := w.lay(func(d *desk.Desk) error { return d.Open(name) })
	if errors.Is(err, desk.ErrElsewhere) {
		w.askElsewhere(name)
		return nil
	}
	return err
}

// askElsewhere asks what to do about a job that another program has open.
func (w *Window) askElsewhere(name string) {
	q := w.ask("ask.elsewhere.title", w.sentence("ask.elsewhere", "file", filepath.Base(name)))
	q.offer("ask.cancel", func() {})
	q.offer("ask.elsewhere.anyway", func() {
		w.tell(w.lay(func(d *desk.Desk) error { return d.OpenAnyway(name) }))
	})
	q.offer("ask.elsewhere.copy", func() {
		w.tell(w.lay(func(d *desk.Desk) error { return d.OpenCopy(name) }))
	})
	q.put()
}

// pictures are the endings of files that may be photographs of a bit.
var pictures = []string{".png", ".jpg", ".jpeg"}

// dropped takes files that were dropped on the window: jobs are opened, and a picture
// is laid under the bit that is looked at. While a question is open nothing is taken.
func (w *Window) dropped(names []string) {
	for _, name := range names {
		if w.question != nil || w.asking != nil {
			return
		}
		switch ending := strings.ToLower(filepath.Ext(name)); {
		case ending == desk.Extension:
			w.tell(w.open(name))
		case !slices.Contains(pictures, ending):
			w.inform("told.dropped.title", w.desk.Words().Say("told.dropped", "file", filepath.Base(name)))
		case w.desk.Step() != desk.Cutter || !w.desk.HasBit():
			w.inform("told.dropped.title", w.desk.Words().Say("told.dropped.picture"))
		default:
			w.tell(w.desk.UsePhotograph(name))
		}
	}
}
