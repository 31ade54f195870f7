package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
)

// offerStarts offers the parts to start from, each with a line on what it is. The keyboard
// goes through them with the arrow keys, and Return adds one.
func (w *Window) offerStarts() {
	list := box.New(layout.NewCustomPaddedVBoxLayout(2))
	q := w.ask("starts.title", list)
	var offers []*offer
	for _, s := range w.desk.Starts() {
		o := newOffer(q, s, func() {
			q.Hide()
			w.add(s.Kind)
		})
		o.step = func(by int) {
			for i := range offers {
				if to := i + by; offers[i] == o && to >= 0 && to < len(offers) {
					w.Canvas().Focus(offers[to])
				}
			}
		}
		offers = append(offers, o)
		list.Add(o)
	}
	q.offer("ask.cancel", func() {})
	q.put()
	w.Canvas().Focus(offers[0])
}

// lines returns what an offer says.
func (o *offer) lines(s desk.Start) fyne.CanvasObject {
	text := box.New(layout.NewCustomPaddedVBoxLayout(0), written(s.Name, textSize, ink, true), written(s.Line, readSize, faint, false))
	return box.NewStack(o.ground, box.New(layout.NewCustomPaddedLayout(4, 5, 12, 12), text))
}
