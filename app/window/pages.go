package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
	"tipline/render"
)

// pages is the list of the packet's pages beside the one that is looked at; it is seen on
// paper only. Only what is seen of it is made, however many pages there are.
type pages struct {
	widget.List
	desk   *desk.Desk
	thumbs *thumbs
	leaves map[fyne.CanvasObject]*pageLeaf
	others func(*fyne.KeyEvent) // takes the keys that are not the list's
	first  *render.Drawing      // of the packet that the pictures are of
	seen   int                  // the page last scrolled to
	named  bool                 // there is room for the pages' names
	focus  bool
}

func newPages(d *desk.Desk, others func(*fyne.KeyEvent)) *pages {
	p := &pages{desk: d, leaves: map[fyne.CanvasObject]*pageLeaf{}, others: others, seen: -1}
	p.thumbs = newThumbs(d, p.repaint)
	p.HideSeparators = true
	p.Hidden = true
	p.Length = p.length
	p.CreateItem = func() fyne.CanvasObject {
		l := newPageLeaf(p)
		p.leaves[l.Container] = l
		return l.Container
	}
	p.UpdateItem = func(i widget.ListItemID, o fyne.CanvasObject) {
		if count, page := d.Pages(); i < count {
			p.leaves[o].show(i, d.Leaf(i), i == page, p.focus)
		}
	}
	p.OnSelected = func(i widget.ListItemID) {
		p.UnselectAll()
		if c := fyne.CurrentApp().Driver().CanvasForObject(p); c != nil {
			c.Focus(p)
		}
		d.TurnTo(i)
	}
	p.ExtendBaseWidget(p)
	return p
}

// length returns how many pages there are; elsewhere than on paper nothing is laid out.
func (p *pages) length() int {
	if p.Hidden {
		return 0
	}
	count, _ := p.desk.Pages()
	return count
}

// shown reports whether the list is seen, and brings it in line with the desk.
func (p *pages) show() (shown bool) {
	if p.Hidden = p.desk.Step() != desk.Paper; p.Hidden {
		return false
	}
	count, page := p.desk.Pages()
	var first *render.Drawing
	if count > 0 {
		first = p.desk.Leaf(0).Drawing
	}
	if first != p.first {
		p.first = first
		p.thumbs.forget()
	}
	p.Refresh()
	if page != p.seen && count > 0 {
		p.seen = page
		p.ScrollTo(page)
	}
	return true
}

// repaint shows the pictures that came; each that is seen asks for its own.
func (p *pages) repaint() {
	for _, l := range p.leaves {
		if l.page >= 0 && p.thumbs.kept[l.of.Drawing] != l.shown {
			l.picture.Refresh()
		}
	}
}

func (p *pages) FocusGained() { p.focus = true; p.Refresh() }
func (p *pages) FocusLost()   { p.focus = false; p.Refresh() }

// keys returns those of the list.
func (p *pages) keys() keyTable {
	turn := func(by int) func() {
		return func() {
			_, page := p.desk.Pages()
			p.desk.TurnTo(page + by)
		}
	}
	return keyTable{
		named("keys.page", turn(-1), fyne.KeyUp), named("keys.page", turn(1), fyne.KeyDown),
		named("keys.tick", p.tickPage, fyne.KeySpace),
	}
}

// tickPage ticks the present page or takes its tick off.
func (p *pages) tickPage() {
	if count, page := p.desk.Pages(); count > 0 {
		p.desk.TickPage(page, !p.desk.Leaf(page).Printed)
	}
}

func (p *pages) TypedKey(e *fyne.KeyEvent) {
	if !p.keys().press(e.Name) {
		p.others(e)
	}
}

// tinted returns an icon of the toolkit in blue, or faint.
func tinted(name fyne.ThemeIconName, on bool) fyne.Resource {
	icon := theme.DefaultTheme().Icon(name)
	if on {
		return theme.NewPrimaryThemedResource(icon)
	}
	return theme.NewColoredResource(icon, theme.ColorNamePlaceHolder)
}

// besidePages sets the pages, on a ground of their own, on the left of what shows one of
// them.
type besidePages struct{ *pages }

func (besidePages) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, 160) }

func (l besidePages) Layout(o []fyne.CanvasObject, s fyne.Size) {
	left := float32(0)
	if !l.Hidden {
		was := l.named
		if left, l.named = leavesFor(s.Width); l.named != was {
			l.Refresh()
		}
		put(o[1], 4, 6, left-6, s.Height-12)
	}
	o[0].(*canvas.Rectangle).Hidden = l.Hidden
	put(o[0], 0, 0, left, s.Height)
	put(o[2], left, 0, s.Width-left, s.Height)
}
