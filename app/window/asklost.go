package window

import "tipline/app/window/desk"

// asWritten is how a moment is written in a question.
const asWritten = "2 January 2006, 15:04"

// offerLost offers the jobs that a crash left, one after the other. Those that are left
// for later are offered at the next start.
func (w *Window) offerLost(list []*desk.Lost) {
	if len(list) == 0 {
		return
	}
	first := list[0]
	q := w.ask("ask.lost.title", message(w.lostLine(first)))
	q.offer("ask.lost.later", func() { w.offerLost(list[1:]) })
	q.offer("ask.lost.no", func() {
		w.desk.ThrowAway(first)
		w.offerLost(list[1:])
	})
	q.offer("ask.lost.yes", func() {
		w.takeUp(first, func() {
			if len(list) > 1 {
				w.raise()
				w.offerLost(list[1:])
			}
		})
	})
	q.put()
}

// takeUp puts a lost job on the desk where its file lies as it is, else where any other
// job would be laid, and then goes on.
func (w *Window) takeUp(l *desk.Lost, then func()) {
	w.desk.Bring(desk.FromLost(l), func(b *desk.Brought, err error) {
		switch {
		case err != nil:
			w.tell(err)
		case w.desk.Holds(l.File) && w.desk.Saved():
			w.desk.Put(b)
		default:
			w.receiveJob(b)
		}
		then()
	})
}

func (w *Window) lostLine(l *desk.Lost) string {
	return w.desk.Words().Say("ask.lost", "title", l.Title, "time", l.When.Local().Format(asWritten))
}
