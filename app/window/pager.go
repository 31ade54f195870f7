package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// pager turns the packet's pages; it is seen on paper only.
type pager struct {
	*fyne.Container
	desk           *desk.Desk
	previous, next *widget.Button
	page           *canvas.Text
}

func newPager(d *desk.Desk) *pager {
	p := &pager{desk: d, page: written("", readSize, light.ink, false)}
	p.page.Alignment = fyne.TextAlignCenter
	p.previous = widget.NewButton(d.Words().Say("window.previous"), func() { p.turn(-1) })
	p.next = widget.NewButton(d.Words().Say("window.next"), func() { p.turn(1) })
	p.Container = &fyne.Container{Layout: pagerLayout{p}, Objects: []fyne.CanvasObject{p.previous, p.page, p.next}}
	return p
}

func (p *pager) turn(by int) {
	_, page := p.desk.Pages()
	p.desk.TurnTo(page + by)
}

func (p *pager) show() {
	was := p.Hidden
	if p.Hidden = p.desk.Step() != desk.Paper; p.Hidden {
		if !was {
			p.Refresh()
		}
		return
	}
	count, page := p.desk.Pages()
	say(p.page, p.desk.Words().Say("window.page", "page", min(page+1, count), "pages", count))
	able(p.previous, page > 0)
	able(p.next, page+1 < count)
	p.Refresh()
}

func able(b *widget.Button, can bool) {
	if can {
		b.Enable()
	} else {
		b.Disable()
	}
}

// The widths of a button, of the count between the two, and of all.
const (
	turnWidth  = 92
	countWidth = 120
	pagerWidth = 2*turnWidth + countWidth
)

type pagerLayout struct{ *pager }

func (pagerLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l pagerLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	const high = 30
	x, y := (s.Width-pagerWidth)/2, s.Height-high-10
	put(l.previous, x, y, turnWidth, high)
	put(l.page, x+turnWidth, y+6, countWidth, 18)
	put(l.next, x+turnWidth+countWidth, y, turnWidth, high)
}
