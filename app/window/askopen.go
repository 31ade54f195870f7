package window

import (
	"errors"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/window/desk"
)

// lay puts another job on the window's desk if nothing has been done to what is there
// by then, else on the desk of a new window, and then goes on. Until it comes the window
// can be worked on.
func (w *Window) lay(s desk.Source, then func(error)) {
	w.desk.Bring(s, func(b *desk.Brought, err error) {
		if err == nil {
			w.receiveJob(b)
		}
		then(err)
	})
}

// receiveJob puts a job that was brought on a desk.
func (w *Window) receiveJob(b *desk.Brought) {
	if w.desk.Untouched() && w.question == nil && w.asking == nil {
		w.desk.Put(b)
		return
	}
	d := w.desk.Another()
	d.Put(b)
	w.all.add(d).Show()
}

// begin lays an empty job.
func (w *Window) begin() { w.lay(desk.FromNothing(), w.tell) }

// openSample lays a sample job.
func (w *Window) openSample(name string) { w.lay(desk.FromSample(name), w.tell) }

// open lays the job in a file, or shows the window that has it already, and then goes on;
// where another program has it, it asks.
func (w *Window) open(name string, then func()) {
	if other := w.all.of(name); other != nil {
		other.raise()
		then()
		return
	}
	w.lay(desk.FromFile(name), func(err error) {
		if errors.Is(err, desk.ErrElsewhere) {
			w.askElsewhere(name)
		} else {
			w.tell(err)
		}
		then()
	})
}

// askElsewhere asks what to do about a job that another program has open.
func (w *Window) askElsewhere(name string) {
	q := w.ask("ask.elsewhere.title", w.sentence("ask.elsewhere", "file", filepath.Base(name)))
	q.offer("ask.cancel", func() {})
	q.offer("ask.elsewhere.anyway", func() { w.lay(desk.FromFileAnyway(name), w.tell) })
	q.offer("ask.elsewhere.copy", func() { w.lay(desk.FromCopy(name), w.tell) })
	q.put()
}

// pictures are the endings of files that may be photographs of a bit.
var pictures = []string{".png", ".jpg", ".jpeg"}

// dropped takes files that were dropped on the window: jobs are opened, and a picture
// is laid under the bit that is looked at. While a question is open nothing is taken.
func (w *Window) dropped(names []string) {
	if len(names) == 0 || w.question != nil || w.asking != nil {
		return
	}
	name, rest := names[0], func() { w.dropped(names[1:]) }
	switch ending := strings.ToLower(filepath.Ext(name)); {
	case ending == desk.Extension:
		w.open(name, rest)
		return
	case !slices.Contains(pictures, ending):
		w.inform("told.dropped.title", w.desk.Words().Say("told.dropped", "file", filepath.Base(name)))
	case w.desk.Step() != desk.Cutter || !w.desk.HasBit():
		w.inform("told.dropped.title", w.desk.Words().Say("told.dropped.picture"))
	default:
		w.tell(w.desk.UsePhotograph(name))
	}
	rest()
}
