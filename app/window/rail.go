package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
	"tipline/render"
)

// rail is the job's parts, one below the other, with the way to find one, to add one, and
// to see what all of them need.
type rail struct {
	fyne.CanvasObject
	desk   *desk.Desk
	window *Window
	tip    *tip
	sought *seeker
	parts  []*part
	titles []string
	column *fyne.Container
	scroll *box.Scroll
	add    *pushButton
	listed string // what was searched for when the parts were listed
	seen   string // the part last scrolled to
}

func newRail(w *Window) *rail {
	d := w.desk
	r := &rail{desk: d, window: w, tip: newTip(), column: box.New(layout.NewCustomPaddedVBoxLayout(4))}
	r.sought = newSeeker(w)
	r.add = newPushButton(d.Words().Say("window.add"), w.offerStarts)
	r.scroll = box.NewVScroll(box.New(layout.NewCustomPaddedLayout(0, 0, 0, 9), r.column))
	r.scroll.OnScrolled = func(fyne.Position) { r.tip.hide(r.tip.of) }
	head := box.New(layout.NewCustomPaddedLayout(0, 6, 0, 9), r.sought)
	stock := quiet(d.Words().Say("menu.stock"), func() { w.column.stock.open() })
	foot := box.New(layout.NewCustomPaddedVBoxLayout(2), stock, r.add)
	body := box.NewBorder(head, box.New(layout.NewCustomPaddedLayout(6, 5, 0, 8), foot), nil, nil, r.scroll)
	r.CanvasObject = box.NewStack(sheetOf(panel), box.New(layout.NewCustomPaddedLayout(8, 4, 9, 1), body))
	return r
}

func (r *rail) show() {
	r.sought.show()
	groups := r.desk.Groups()
	if !r.stands(groups) {
		r.rebuild(groups)
	}
	i, tall := 0, r.column.MinSize().Height
	for _, g := range groups {
		for _, e := range g.Parts {
			chosen := e.ID == r.desk.Part()
			r.parts[i].show(e, chosen, r.desk.Trouble(e.ID))
			r.parts[i].picture.show(r.desk.Pictured(e.ID), func() *render.Drawing { return r.desk.Picture(e.ID) }, chosen)
			i++
		}
	}
	if r.column.MinSize().Height != tall {
		r.column.Refresh() // a name or a note takes another line
	}
	r.reveal()
}

// about says of a part what its little room does not hold: its whole note, and that it
// has changed since it was printed.
func (r *rail) about(e desk.Entry) (note, reprint string) {
	if e.Reprint {
		reprint = r.desk.Words().Say("rail.reprint")
	}
	return e.Note, reprint
}

// rebuild makes the rail anew, a heading over each kind.
func (r *rail) rebuild(groups []desk.Group) {
	old := r.parts
	r.tip.hide(r.tip.of)
	r.parts, r.titles = nil, nil
	var listed []fyne.CanvasObject // the container sets all anew for each that it is given by itself
	for _, g := range groups {
		title := written(g.Title, smallSize, faint, true)
		title.Alignment = fyne.TextAlignCenter
		r.titles = append(r.titles, g.Title)
		listed = append(listed, title)
		for _, e := range g.Parts {
			p := r.partFor(e.ID, old)
			p.kind, p.Entry = g.Title, e
			r.parts = append(r.parts, p)
			listed = append(listed, p)
		}
	}
	if len(listed) == 0 && r.desk.Sought() != "" {
		none := written(r.desk.Words().Say("rail.none"), smallSize, faint, false)
		none.Alignment = fyne.TextAlignCenter
		listed = append(listed, none)
	}
	r.seen, r.column.Objects = "", listed
	r.column.Refresh()
	if r.listed != r.desk.Sought() {
		r.listed = r.desk.Sought()
		r.scroll.ScrollToTop()
	}
	r.scroll.Refresh()
}

// partFor keeps the part that was there, with its picture.
func (r *rail) partFor(id string, old []*part) *part {
	for _, p := range old {
		if p.ID == id {
			return p
		}
	}
	return r.newPart(id)
}

// stands reports whether the rail has the job's parts already.
func (r *rail) stands(groups []desk.Group) bool {
	i := 0
	for n, g := range groups {
		if n >= len(r.titles) || r.titles[n] != g.Title {
			return false
		}
		for _, e := range g.Parts {
			if i >= len(r.parts) || r.parts[i].ID != e.ID {
				return false
			}
			i++
		}
	}
	return i == len(r.parts) && len(groups) == len(r.titles)
}

// reveal scrolls to the chosen part when it has become another.
func (r *rail) reveal() {
	if r.seen == r.desk.Part() {
		return
	}
	r.seen = r.desk.Part()
	for _, p := range r.parts {
		top, bottom := p.Position().Y, p.Position().Y+p.Size().Height
		if p.ID != r.seen || p.Size().Height == 0 {
			continue
		}
		switch at, high := r.scroll.Offset.Y, r.scroll.Size().Height; {
		case top < at:
			r.scroll.ScrollToOffset(fyne.NewPos(0, max(0, top-headingHeight)))
		case bottom > at+high:
			r.scroll.ScrollToOffset(fyne.NewPos(0, bottom-high))
		}
	}
}
