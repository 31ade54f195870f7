package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/assets/guide"
)

// guidePage is a page of the guide as it is read: its blocks below each other, as wide as
// can be read well.
type guidePage struct {
	*fyne.Container
	guide  *guideWindow
	page   guide.Page
	field  string // that it was opened at
	bar    *canvas.Rectangle
	blocks []pageBlock
	width  float32 // it was last laid for
	high   float32
}

// pageBlock is something set on the page.
type pageBlock interface {
	// lay sets it at a place in a width, on the page, and returns how tall it is.
	lay(on *guidePage, x, y, width float32) float32
}

// The measures of a page.
const (
	pageInset = 26
	blockGap  = 10
)

// measure is the longest line.
func measure() float32 { return widened(600) }

func newGuidePage(g *guideWindow) *guidePage {
	p := &guidePage{guide: g, bar: canvas.NewRectangle(color.Transparent)}
	p.Container = &fyne.Container{Layout: guidePageLayout{p}}
	return p
}

// show shows a page, marking where a field is explained.
func (p *guidePage) show(page guide.Page, field string) {
	p.page, p.field = page, field
	p.blocks = []pageBlock{newProse(p.guide, []guide.Run{{Text: page.Title, Style: guide.Strong}}, headSize)}
	for _, b := range page.Blocks {
		p.blocks = append(p.blocks, p.block(b))
	}
	width := p.width
	p.width = 0
	p.lay(width)
	p.Refresh()
}

func (p *guidePage) block(b guide.Block) pageBlock {
	switch b.Kind {
	case guide.Picture:
		return newPlate(p.guide, b)
	case guide.Heading:
		size := grown(18)
		if b.Level > 2 {
			size = textSize
		}
		return newProse(p.guide, strong(b.Runs), size)
	case guide.Item:
		return pageItem{mark: written(b.Mark, textSize, faint, false), said: newProse(p.guide, b.Runs, textSize)}
	}
	return newProse(p.guide, b.Runs, textSize)
}

// strong returns runs in strong type.
func strong(runs []guide.Run) []guide.Run {
	all := append([]guide.Run(nil), runs...)
	for i := range all {
		all[i].Style = guide.Strong
	}
	return all
}

// lay sets the blocks for a width.
func (p *guidePage) lay(width float32) {
	if width <= 0 || width == p.width {
		return
	}
	p.width, p.Objects = width, []fyne.CanvasObject{p.bar}
	wide := min(measure(), width-2*pageInset)
	p.bar.FillColor = color.Transparent
	y := float32(pageInset - 8)
	for i, b := range p.blocks {
		y += p.above(i)
		high := b.lay(p, pageInset, y, wide)
		if i > 0 && p.field != "" && p.page.Blocks[i-1].Field == p.field {
			p.bar.FillColor = blue
			put(p.bar, pageInset-14, y, 3, high)
		}
		y += high
	}
	p.high = y + pageInset
}

// above returns what is left free above a block.
func (p *guidePage) above(i int) float32 {
	if i == 0 {
		return 0
	}
	b := p.page.Blocks[i-1]
	item := func(k int) bool { return k >= 0 && p.page.Blocks[k].Kind == guide.Item }
	switch {
	case b.Kind == guide.Heading && b.Level == 2:
		return grown(22)
	case b.Kind == guide.Heading:
		return grown(14)
	case i > 1 && p.page.Blocks[i-2].Kind == guide.Heading:
		return 3
	case item(i-1) && item(i-2):
		return 4
	}
	return blockGap
}

// downTo returns how far down a field is explained.
func (p *guidePage) downTo(field string) float32 {
	p.lay(p.guide.scroll.Size().Width)
	if p.field == field && p.bar.FillColor != color.Transparent {
		return p.bar.Position().Y
	}
	return 0
}

type guidePageLayout struct{ *guidePage }

func (l guidePageLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, l.high) }

func (l guidePageLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	was := l.high
	l.lay(s.Width)
	if l.high != was {
		l.guide.scroll.Refresh()
	}
}

// pageItem is an item of a list, behind its mark.
type pageItem struct {
	mark *canvas.Text
	said *prose
}

func (i pageItem) lay(on *guidePage, x, y, width float32) float32 {
	in := grown(22)
	put(i.mark, x+2, y, in, textSize*leading)
	on.Objects = append(on.Objects, i.mark)
	return i.said.lay(on, x+in, y, width-in)
}
