package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
	"tipline/render"
)

// rail is the job's parts, one below the other, and the way to add one.
type rail struct {
	fyne.CanvasObject
	desk   *desk.Desk
	parts  []*part
	titles []string
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
	groups := r.desk.Groups()
	if !r.stands(groups) {
		r.rebuild(groups)
	}
	i := 0
	for _, g := range groups {
		for _, e := range g.Parts {
			chosen := e.ID == r.desk.Part()
			r.parts[i].show(e.Name, chosen, r.desk.Trouble(e.ID))
			r.parts[i].picture.show(r.desk.Pictured(e.ID), func() *render.Drawing { return r.desk.Picture(e.ID) }, chosen)
			i++
		}
	}
	r.reveal()
}

// rebuild makes the rail anew, a heading over each kind.
func (r *rail) rebuild(groups []desk.Group) {
	old := r.parts
	r.parts, r.titles, r.column.Objects = nil, nil, nil
	for _, g := range groups {
		title := written(g.Title, smallSize, faint, true)
		title.Alignment = fyne.TextAlignCenter
		r.titles = append(r.titles, g.Title)
		r.column.Add(title)
		for _, e := range g.Parts {
			p := r.partFor(e.ID, old)
			r.parts = append(r.parts, p)
			r.column.Add(p)
		}
	}
	r.seen = ""
	r.column.Refresh()
}

// partFor keeps the part that was there, with its picture.
func (r *rail) partFor(id string, old []*part) *part {
	for _, p := range old {
		if p.id == id {
			return p
		}
	}
	return newPart(id, func() { r.desk.Choose(id) })
}

// stands reports whether the rail has the job's parts already.
func (r *rail) stands(groups []desk.Group) bool {
	i := 0
	for n, g := range groups {
		if n >= len(r.titles) || r.titles[n] != g.Title {
			return false
		}
		for _, e := range g.Parts {
			if i >= len(r.parts) || r.parts[i].id != e.ID {
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
