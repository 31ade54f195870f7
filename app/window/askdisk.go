package window

import (
	"path/filepath"

	"tipline/app/window/desk"
)

// look looks after the job's file and asks where it has become another. While another
// question is open it waits.
func (w *Window) look() {
	if !w.occupied() {
		w.desk.LookAside(w.askFate)
	}
}

// occupied reports whether a question is open or a job is being brought, which may be the
// file's.
func (w *Window) occupied() bool {
	_, bringing := w.desk.Bringing()
	return bringing || w.question != nil || w.asking != nil
}

// askFate says what has become of the job's file, and asks what to do about it.
func (w *Window) askFate(fate desk.Fate) {
	switch {
	case w.occupied():
	case fate == desk.Gone:
		w.desk.Leave()
		w.inform("told.gone.title", w.desk.Words().Say("told.gone", "file", w.desk.File()))
	case w.desk.Saved():
		q := w.ask("ask.altered.title", w.sentence("ask.altered", "file", filepath.Base(w.desk.File())))
		q.offer("ask.altered.leave", w.desk.Leave)
		q.offer("ask.altered.load", w.reload)
		q.put()
	default:
		q := w.ask("ask.altered.title", w.sentence("ask.altered.mine", "file", filepath.Base(w.desk.File())))
		q.offer("ask.altered.keep", w.desk.Leave)
		q.offer("ask.altered.theirs", w.reload)
		q.offer("ask.altered.save-as", func() { w.askSave(func() {}) })
		q.put()
	}
}

// reload takes the job as it stands in its file; where that cannot be read, ours stays
// and is not saved.
func (w *Window) reload() {
	w.desk.Reload(func(err error) {
		if err != nil {
			w.desk.Leave()
			w.tell(err)
		}
	})
}

// askOver asks before a job is saved over what another program has written, and then
// goes on.
func (w *Window) askOver(then func()) {
	q := w.ask("ask.altered.title", w.sentence("ask.altered.save", "file", filepath.Base(w.desk.File())))
	q.offer("ask.cancel", func() {})
	q.offer("ask.altered.theirs", w.reload)
	q.offer("ask.altered.over", func() { w.write(then) })
	q.offer("ask.altered.save-as", func() { w.askSave(then) })
	q.put()
}
