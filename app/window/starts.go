package window

import (
	"sync"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
	"tipline/render"
)

// offerStarts offers the parts to start from, each with a line on what it is. The keyboard
// goes through them with the arrow keys, and Return adds one.
func (w *Window) offerStarts() {
	list := box.New(layout.NewCustomPaddedVBoxLayout(2))
	q := w.ask("starts.title", list)
	var offers []*offer
	for _, s := range w.desk.Starts() {
		o := newOffer(q, s, sync.OnceValue(func() *render.Drawing { return w.desk.Sketch(s.Kind) }), func() {
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
	cancel := q.offer("ask.cancel", func() {})
	q.put()
	cancel.Importance = widget.MediumImportance // one of the parts is what is wanted
	cancel.Refresh()
	w.Canvas().Focus(offers[0])
}

// sketchSize is the width and height of an offer's small picture.
const sketchSize = 40

// lines returns what an offer shows: its small picture, and beside it what it says.
func (o *offer) lines(s desk.Start) fyne.CanvasObject {
	text := box.New(layout.NewCustomPaddedVBoxLayout(0), written(s.Name, textSize, ink, true), written(s.Line, readSize, faint, false))
	sketch := box.NewCenter(box.New(layout.NewGridWrapLayout(fyne.NewSize(sketchSize, sketchSize)), o.sketch.Raster))
	return box.NewStack(o.ground, box.New(layout.NewCustomPaddedLayout(4, 5, 10, 12), box.New(layout.NewCustomPaddedHBoxLayout(12), sketch, text)))
}
