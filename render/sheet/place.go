package sheet

import (
	"context"
	"strconv"

	"tipline/render"
	"tipline/render/template"
)

// Sheet is one drawing with what its title block says.
type Sheet struct {
	Drawing *render.Drawing
	Block   TitleBlock
	With    string // the sheets next to it that say the same may share paper with it; none where empty

	place int // among those planned, from 0
}

// Place lays one drawing out on paper, in its own scale: upright, or on its side
// if it only fits so, or tiled over as many sheets as it takes. A card, which has
// no scale, is made smaller instead. It refuses paper on which no part of the
// drawing fits.
func Place(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) ([]render.Page, error) {
	return Lay([]Sheet{{Drawing: d, Block: block}}, paper, s)
}

// Lay lays sheets out one after the other, as LayContext does with the zero
// Options.
func Lay(sheets []Sheet, paper Paper, s template.Style) ([]render.Page, error) {
	return LayContext(context.Background(), sheets, paper, s, Options{})
}

// LayContext lays sheets out in their order and numbers them through where their
// title block says no number. It gives way when ctx is done.
func LayContext(ctx context.Context, sheets []Sheet, paper Paper, s template.Style, o Options) ([]render.Page, error) {
	run, err := Plan(ctx, sheets, paper, s, o)
	if err != nil {
		return nil, err
	}
	pages := make([]render.Page, 0, run.Len())
	for page, err := range run.Pages(ctx) {
		if err != nil {
			return nil, err
		}
		pages = append(pages, page)
	}
	return pages, nil
}

// Fits reports whether a drawing fits on one sheet of the paper, upright or on
// its side.
func Fits(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) bool {
	return Options{}.Fits(d, paper, block, s)
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
