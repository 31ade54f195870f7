package window

import (
	"tipline/app/window/desk"
	"tipline/assets/samples"
)

// receive shows a newcomer the sample job, with three sentences on what the program is,
// where to begin and what to print. They are shown until they are answered once.
func (w *Window) receive() {
	if !w.desk.Untouched() || !w.desk.Newcomer() {
		return
	}
	w.tell(w.desk.Take(desk.FromSample(samples.First)))
	q := w.ask("ask.round.title", w.sentences("ask.round.what", "ask.round.where", "ask.round.print"))
	q.offer("ask.round.sample", w.desk.Welcome)
	q.offer("ask.round.own", func() {
		w.desk.Welcome()
		w.tell(w.desk.Take(desk.FromNothing()))
		w.Canvas().Focus(w.welcome.add)
	})
	q.put()
}
