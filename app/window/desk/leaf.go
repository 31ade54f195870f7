package desk

import (
	"strings"

	"tipline/geometry"
	"tipline/render"
)

// leaf is a page of the packet as it was laid out, with what it is known by when the
// packet is laid out anew.
type leaf struct {
	page render.Page
	name leafName
}

// leafName is a page's title, and how many pages before it bear the same.
type leafName struct {
	title string
	nth   int
}

// naming gives the pages of a packet their names, in their order.
type naming map[string]int

func (n naming) of(p render.Page) leafName {
	title := p.Drawing.Title
	n[title]++
	return leafName{title, n[title] - 1}
}

// Leaf is a page as it is listed.
type Leaf struct {
	Title   string
	Printed bool // it is among those that are printed
	Drawing *render.Drawing
	Sheet   geometry.Box
}

// Leaf returns a page of the packet, from 0.
func (d *Desk) Leaf(page int) Leaf {
	l := d.packet.leaves[page]
	title := l.name.title
	if title == d.Title() { // the cover bears the job's
		title = d.words.Say("template.kind.cover")
	}
	title = strings.ReplaceAll(title, "\n", " · ") // those of what shares the page
	return Leaf{title, !d.packet.chosen.off[l.name], l.page.Drawing, l.sheet()}
}

func (l leaf) sheet() geometry.Box {
	return geometry.Box{Max: geometry.Point{X: l.page.Width, Y: l.page.Height}}
}

// Pages returns how many pages the packet has and which is looked at, from 0.
func (d *Desk) Pages() (count, page int) {
	d.layOut()
	p := &d.packet
	p.page = min(max(p.page, 0), max(len(p.leaves)-1, 0))
	return len(p.leaves), p.page
}

// TurnTo looks at another page.
func (d *Desk) TurnTo(page int) {
	d.packet.page = page
	d.Pages()
	d.Changed()
}

// Page returns the sheet that is looked at, the zero box on other steps and when
// there is none.
func (d *Desk) Page() geometry.Box {
	if d.at() != Paper {
		return geometry.Box{}
	}
	count, page := d.Pages()
	if count == 0 {
		return geometry.Box{}
	}
	return d.packet.leaves[page].sheet()
}

func (d *Desk) pageDrawing() (drawing *render.Drawing, stale bool) {
	count, page := d.Pages()
	if count == 0 {
		return nil, false
	}
	return d.packet.leaves[page].page.Drawing, d.packet.err != nil
}
