package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// single is one drawing with the layout and the tiles it takes.
type single struct {
	sheet  Sheet
	lying  lying
	layout layout
	tiles  []tile
	bounds geometry.Box // of the drawing as it is laid
	size   float64      // of a card that is reduced to fit, 1 for all else
}

// lying is a sheet of paper as it lies, and how it is stretched.
type lying struct {
	paper   Paper
	against render.Stretch
}

// ways returns the two ways in which paper lies: as it is named, and turned.
func (o Options) ways(paper Paper) [2]lying {
	return [2]lying{{paper, o.Profile.stretch(false)}, {paper.Turned(), o.Profile.stretch(true)}}
}

// page returns a page of the paper with that on it.
func (l lying) page(d *render.Drawing) render.Page {
	return render.Page{Width: l.paper.Width, Height: l.paper.Height, Drawing: d, Stretch: l.against}
}

// filled returns the title block with what it does not say itself.
func (o Options) filled(block TitleBlock, scale float64, s template.Style) TitleBlock {
	if block.Scale == "" {
		block.Scale = scaleText(scale)
	}
	if block.Profile == "" {
		block.Profile = o.Profile.said(s)
	}
	if block.Notes.Caution == "" {
		block.Notes.Caution = s.Words.Say("sheet.caution")
	}
	block.Notes.Caution = o.Profile.foot(block.Notes.Caution, s)
	return block
}

// plan chooses how the paper lies, as planWhole does. Where what stands beside the drawing
// takes so much room that the drawing needs more sheets, or has none, less stands there, and
// next to nothing where it then needs but one.
func (o Options) plan(sh Sheet, paper Paper, s template.Style) (single, error) {
	best, err := o.planWhole(sh, paper, s)
	if best.count() == 1 {
		return best, nil
	}
	if mute, e := o.planWhole(sh.mute(), paper, s); e == nil && (best.tiles == nil || mute.count() < best.count()) {
		best, err = mute, nil
	}
	if best.count() != 1 {
		if bare, e := o.planWhole(sh.bare(s), paper, s); best.tiles == nil || e == nil && bare.count() == 1 {
			return bare, e
		}
	}
	return best, err
}

// mute returns the sheet without the meaning of its lines.
func (sh Sheet) mute() Sheet {
	sh.Block.Notes.Legend = nil
	return sh
}

// bare returns the sheet without its figures and line, which other sheets of its part tell
// too, and with the first sentence alone of its own caution: that for the eyes, where what is
// done by it throws chips.
func (sh Sheet) bare(s template.Style) Sheet {
	drawing := *sh.Drawing
	drawing.Description = ""
	caution := append(sentencesOf(sh.Block.Notes.Caution), "")[0]
	if caution != "" {
		caution += " " + s.Words.Say("sheet.caution")
	}
	sh.Drawing, sh.Block.Notes, sh.Block.Material = &drawing, template.Notes{Caution: caution}, ""
	return sh
}

// planWhole chooses how the paper lies: upright if the drawing fits, else on its side if
// it fits, else the way that takes fewer tiles. A card is never tiled but reduced,
// the way that reduces it less.
func (o Options) planWhole(sh Sheet, paper Paper, s template.Style) (single, error) {
	sh.Block = o.filled(sh.Block, sh.Drawing.Scale, s)
	var best single
	reason := "paper.size"
	bounds := sh.Drawing.Bounds()
	for _, way := range o.ways(paper) {
		p := planOn(way, sh, bounds, s)
		switch {
		case p.layout.tooSmall():
			continue
		case p.tiles == nil:
			reason = "paper.tiles"
		case best.tiles == nil || len(p.tiles) < len(best.tiles) || p.size > best.size:
			best = p
		}
	}
	if best.tiles == nil {
		return best, &Refusal{paper.Name, reason}
	}
	if best.size < 1 {
		best.sheet.Drawing = reduced(sh.Drawing, best.size)
		best.bounds = geometry.Box{Min: bounds.Min.Times(best.size), Max: bounds.Max.Times(best.size)}
	}
	return best, nil
}

// planOn plans a sheet whose drawing has those bounds on paper that lies so.
func planOn(way lying, sh Sheet, bounds geometry.Box, s template.Style) single {
	p := single{sheet: sh, lying: way, size: 1, bounds: bounds}
	p.layout = plan(way, sh.Drawing, sh.Block, s)
	free := p.layout.free
	if sh.Drawing.Scale <= 0 {
		p.size = min(1, free.Width()/bounds.Width(), free.Height()/bounds.Height())
		bounds = geometry.Box{}
	}
	if bounds.Width() > free.Width() || bounds.Height() > free.Height() {
		whole := p.layout
		if p.layout = whole.keyed(sh.Drawing, keyHeight); p.layout.tooSmall() {
			p.layout = whole.keyed(sh.Drawing, keyHeight/2)
		}
		free = p.layout.free
	}
	if !p.layout.tooSmall() {
		p.tiles = cut(bounds, free.Width(), free.Height())
	}
	return p
}

// tooSmall reports whether no drawing and no tile has room on the sheet.
func (l layout) tooSmall() bool { return l.free.Width() < leastFree || l.free.Height() < leastFree }

// reduced returns a card made smaller, its lettering too. A card has no scale to
// keep.
func reduced(card *render.Drawing, size float64) *render.Drawing {
	small := card.Placed(geometry.Point{}, size, 0)
	for _, it := range small.Items {
		if it.Text != nil {
			it.Text.Height *= size
		}
	}
	return small
}

func (p single) count() int { return len(p.tiles) }

func (p single) places() []int { return []int{p.sheet.place} }

// page draws tile i of the plan.
func (p single) page(i int, number string, s template.Style) render.Page {
	b := template.NewBoard("", s)
	b.Drawing.Title, b.Drawing.Scale = p.sheet.Drawing.Title, p.sheet.Drawing.Scale
	block := p.sheet.Block
	if block.Sheet == "" {
		block.Sheet = number
	}
	p.layout.furnish(b, p.sheet.Drawing, block)
	if len(p.tiles) == 1 {
		at := p.layout.stand(p.sheet.Drawing.Scale, p.bounds)
		b.Drawing.Add(p.sheet.Drawing.Placed(at, 1, 0).Items...)
		return p.lying.page(b.Drawing)
	}
	at := p.layout.free.Centre().Sub(p.tiles[i].region.Centre())
	d := offSeams(p.sheet.Drawing, p.tiles)
	b.Drawing.Add(clipped(d, p.tiles[i].region).Placed(at, 1, 0).Items...)
	registerMarks(b, d, p.tiles, i, at)
	keyOf(p.tiles, p.layout.key).draw(b, p.sheet.Drawing, p.tiles, i)
	return p.lying.page(b.Drawing)
}
