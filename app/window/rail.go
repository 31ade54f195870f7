package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// rail is the job's parts, one below the other, and the way to add one.
type rail struct {
	fyne.CanvasObject
	desk   *desk.Desk
	parts  []*part
	column *fyne.Container
	scroll *box.Scroll
	add    *widget.Button
	seen   string // the part last scrolled to
}

// newRail returns the rail; add is called to offer the kinds of part beside the
// button.
func newRail(d *desk.Desk, add func(beside fyne.CanvasObject)) *rail {
	r := &rail{desk: d, column: box.New(layout.NewCustomPaddedVBoxLayout(4))}
	r.add = widget.NewButton(d.Words().Say("window.add"), nil)
	r.add.OnTapped = func() { add(r.add) }
	r.scroll = box.NewVScroll(box.New(layout.NewCustomPaddedLayout(0, 0, 0, 9), r.column))
	body := box.NewBorder(nil, box.New(layout.NewCustomPaddedLayout(6, 5, 0, 8), r.add), nil, nil, r.scroll)
	r.CanvasObject = box.NewStack(sheetOf(panel), box.New(layout.NewCustomPaddedLayout(8, 4, 9, 1), body))
	return r
}

func (r *rail) show() {
	wheels := r.desk.Job().Wheels
	if !r.stands() {
		r.parts, r.column.Objects = nil, nil
		for _, w := range wheels {
			p := newPart(w.ID, func() { r.desk.Choose(w.ID) })
			r.parts = append(r.parts, p)
			r.column.Add(p)
		}
		r.column.Refresh()
	}
	for i, w := range wheels {
		r.parts[i].show(w.Name, w.ID == r.desk.Part(), r.desk.Trouble(w.ID), r.desk.Picture(w.ID))
	}
	r.reveal()
}

// stands reports whether the rail has the job's parts already.
func (r *rail) stands() bool {
	wheels := r.desk.Job().Wheels
	if len(wheels) != len(r.parts) {
		return false
	}
	for i, w := range wheels {
		if r.parts[i].id != w.ID {
			return false
		}
	}
	return true
}

// reveal scrolls to the chosen part when it has become another.
func (r *rail) reveal() {
	if r.seen == r.desk.Part() {
		return
	}
	r.seen = r.desk.Part()
	for _, p := range r.parts {
		top, bottom := p.Position().Y, p.Position().Y+p.Size().Height
		if p.id != r.seen || p.Size().Height == 0 {
			continue
		}
		switch at, high := r.scroll.Offset.Y, r.scroll.Size().Height; {
		case top < at:
			r.scroll.ScrollToOffset(fyne.NewPos(0, top))
		case bottom > at+high:
			r.scroll.ScrollToOffset(fyne.NewPos(0, bottom-high))
		}
	}
}
