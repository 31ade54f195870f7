package window

import "tipline/app/window/desk"

// asWritten is how a moment is written in a question.
const asWritten = "2 January 2006, 15:04"

// offerLost offers the first of the jobs that a crash left, then the next where that is
// thrown away. Those that are left for later are offered at the next start.
func (w *Window) offerLost(list []*desk.Lost) {
	if len(list) == 0 {
		return
	}
	first := list[0]
	text := newFlow(textSize, ink)
	text.set(w.lostLine(first), ink)
	q := w.ask("ask.lost.title", message(text))
	q.offer("ask.lost.later", func() {})
	q.offer("ask.lost.no", func() {
		w.desk.ThrowAway(first)
		w.offerLost(list[1:])
	})
	q.offer("ask.lost.yes", func() { w.desk.TakeUp(first) })
	q.put()
}

func (w *Window) lostLine(l *desk.Lost) string {
	return w.desk.Words().Say("ask.lost", "title", l.Title, "time", l.When.Local().Format(asWritten))
}
