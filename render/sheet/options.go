package sheet

import (
	"tipline/render"
	"tipline/render/template"
)

// Options say how sheets are printed; the zero Options print each drawing as it is, on
// a sheet of its own or tiled, or together with those it may share one with, for a
// printer that does not err.
type Options struct {
	Profile  Profile
	Look     Look                  // of the templates; cards keep theirs
	Apart    bool                  // every drawing on a sheet of its own, whatever it may share one with
	Together bool                  // templates of one scale share sheets where they fit, of whatever part
	Progress func(done, total int) // called when a sheet is drawn; nil for no one
}

// Fits reports whether a drawing, printed so, fits on one sheet of the paper,
// upright or on its side, with all that stands beside it.
func (o Options) Fits(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) bool {
	p, err := o.planWhole(Sheet{Drawing: o.Look.of(d, s), Block: block}, paper, s)
	return err == nil && p.count() == 1
}

// FitsBare reports whether a drawing fits so on one sheet of the paper if less stands
// beside it.
func (o Options) FitsBare(d *render.Drawing, paper Paper, block TitleBlock, s template.Style) bool {
	p, err := o.plan(Sheet{Drawing: o.Look.of(d, s), Block: block}, paper, s)
	return err == nil && p.count() == 1
}

// Room returns how high a card of a width may be to stand on one sheet of the paper, which
// lies as it then holds most.
func (o Options) Room(card *render.Drawing, width float64, paper Paper, block TitleBlock, s template.Style) float64 {
	block = o.filled(block, 0, s)
	most := 0.0
	for _, way := range o.ways(paper) {
		free := plan(way, card, block, s).free
		most = max(most, free.Height()*max(1, width/free.Width()))
	}
	return most
}
