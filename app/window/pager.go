package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
)

// pager turns the packet's pages; it is seen on paper only.
type pager struct {
	*fyne.Container
	desk           *desk.Desk
	previous, next *pushButton
	page           *canvas.Text
}

func newPager(d *desk.Desk) *pager {
	p := &pager{desk: d, page: written("", readSize, light.ink, false)}
	p.page.Alignment = fyne.TextAlignCenter
	p.previous = newPushButton(d.Words().Say("window.previous"), func() { p.turn(-1) })
	p.next = newPushButton(d.Words().Say("window.next"), func() { p.turn(1) })
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
	p.Layout.Layout(nil, p.Size())
	p.Refresh()
}

func able(b *pushButton, can bool) {
	if can {
		b.Enable()
	} else {
		b.Disable()
	}
}

// aside is between the count and the buttons on either side of it.
const aside = 12

// wide returns how wide the pager is, and each of its buttons.
func (p *pager) wide() (all, button float32) {
	button = max(p.previous.MinSize().Width, p.next.MinSize().Width)
	return 2*(button+aside) + p.page.MinSize().Width, button
}

// name names the buttons, by arrows where there is no room for words.
func (p *pager) name(room float32) {
	say := p.desk.Words().Say
	p.previous.SetText(say("window.previous"))
	p.next.SetText(say("window.next"))
	if all, _ := p.wide(); all > room {
		p.previous.SetText("‹")
		p.next.SetText("›")
	}
}

type pagerLayout struct{ *pager }

func (pagerLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l pagerLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	l.name(s.Width - 2*cornerGap)
	all, button := l.wide()
	high := cornerHigh
	x, y := (s.Width-all)/2, s.Height-high-10
	put(l.previous, x, y, button, high)
	put(l.page, x+button, y, all-2*button, high)
	put(l.next, x+all-button, y, button, high)
}
