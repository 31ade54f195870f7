package sheet

import (
	"fmt"
	"strconv"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Sheet is one drawing with what its title block says.
type Sheet struct {
	Drawing *render.Drawing
	Block   TitleBlock
}

// Place lays one drawing out on paper, in its own scale: upright, or on its side
// if it only fits so, or tiled over as many sheets as it takes. A card, which has
// no scale, is made smaller instead. It refuses paper on which no part of the
// drawing fits.
func Place(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) ([]render.Page, error) {
	return Lay([]Sheet{{d, block}}, paper, s)
}

// Lay lays sheets out one after the other and numbers them through where their
// title block says no number.
func Lay(sheets []Sheet, paper Paper, s template.Style) ([]render.Page, error) {
	plans := make([]sheetPlan, len(sheets))
	total := 0
	for i, sh := range sheets {
		p, err := planSheet(sh, paper, s)
		if err != nil {
			return nil, fmt.Errorf("sheet of %s: %w", sh.Drawing.Title, err)
		}
		plans[i] = p
		total += len(p.tiles)
	}
	pages := make([]render.Page, 0, total)
	for _, p := range plans {
		for i := range p.tiles {
			number := s.Words.Say("sheet.number-of", "n", len(pages)+1, "m", total)
			pages = append(pages, p.page(i, number, s))
		}
	}
	return pages, nil
}

// sheetPlan is a drawing with the layout and the tiles it takes.
type sheetPlan struct {
	sheet  Sheet
	layout layout
	tiles  []tile
	size   float64 // of a card that is reduced to fit, 1 for all else
}

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

// planSheet chooses how the paper lies: upright if the drawing fits, else on its
// side if it fits, else the way that takes fewer tiles. A card is never tiled but
// reduced, the way that reduces it less.
func planSheet(sh Sheet, paper Paper, s template.Style) (sheetPlan, error) {
	block := sh.Block
	if block.Scale == "" {
		block.Scale = scaleText(sh.Drawing.Scale)
	}
	if block.Profile == "" {
		block.Profile = s.Words.Say("sheet.profile.none")
	}
	if block.Notes.Caution == "" {
		block.Notes.Caution = s.Words.Say("sheet.caution")
	}
	sh.Block = block
	var best sheetPlan
	for _, p := range []Paper{paper, paper.Turned()} {
		l := plan(p, sh.Drawing, block, s)
		if l.free.Width() < leastFree || l.free.Height() < leastFree {
			continue
		}
		p := sheetPlan{sheet: sh, layout: l, size: 1}
		if bounds := sh.Drawing.Bounds(); sh.Drawing.Scale > 0 {
			p.tiles = cut(bounds, l.free.Width(), l.free.Height())
		} else {
			p.size = min(1, l.free.Width()/bounds.Width(), l.free.Height()/bounds.Height())
			p.tiles = cut(geometry.Box{}, l.free.Width(), l.free.Height())
		}
		if best.tiles == nil || len(p.tiles) < len(best.tiles) || p.size > best.size {
			best = p
		}
	}
	if best.tiles == nil {
		return best, &Refusal{paper.Name, "paper.size"}
	}
	if best.size < 1 {
		best.sheet.Drawing = reduced(sh.Drawing, best.size)
	}
	return best, nil
}

// Fits reports whether a drawing fits on one sheet of the paper, upright or on
// its side.
func Fits(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) bool {
	p, err := planSheet(Sheet{d, block}, paper, s)
	return err == nil && len(p.tiles) == 1
}

// page draws tile i of the plan.
func (p sheetPlan) page(i int, number string, s template.Style) render.Page {
	b := template.NewBoard("", s)
	b.Drawing.Title, b.Drawing.Scale = p.sheet.Drawing.Title, p.sheet.Drawing.Scale
	block := p.sheet.Block
	if block.Sheet == "" {
		block.Sheet = number
	}
	p.layout.furnish(b, p.sheet.Drawing, block)
	t := p.tiles[i]
	if len(p.tiles) == 1 {
		at := p.layout.stand(p.sheet.Drawing)
		b.Drawing.Add(p.sheet.Drawing.Placed(at, 1, 0).Items...)
	} else {
		at := p.layout.free.Centre().Sub(t.region.Centre())
		b.Drawing.Add(clipped(p.sheet.Drawing, p.tiles, i).Placed(at, 1, 0).Items...)
		registerMarks(b, p.tiles, i, at)
	}
	return render.Page{Width: p.layout.paper.Width, Height: p.layout.paper.Height, Drawing: b.Drawing}
}

// scaleText writes a scale as ISO 5455 does, 10 : 1 or 1 : 2; a drawing with no
// scale of its own, such as a card, has none.
func scaleText(scale float64) string {
	number := func(v float64) string { return strconv.FormatFloat(v, 'g', 6, 64) }
	switch {
	case scale <= 0:
		return ""
	case scale < 1:
		return "1 : " + number(1/scale)
	}
	return number(scale) + " : 1"
}
