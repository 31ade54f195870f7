package packet

import (
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// scales are the enlargements of ISO 5455, the greatest first.
var scales = []float64{50, 20, 10, 5, 2, 1}

// enlarged returns a grinding template at the greatest scale that fits on one sheet, on
// small paper with less beside it. Where no scale at which it is lettered does, it is tiled
// at the least of those: a form without its angles and radii is no use at the grinder.
func enlarged(r *solve.Result, p solve.Part, k Kind, o Options) (sheet.Sheet, error) {
	lettered := k.lettered(p)
	for _, fits := range []func(*render.Drawing, sheet.Paper, sheet.TitleBlock, template.Style) bool{o.Printing.Fits, o.Printing.FitsBare} {
		for _, scale := range lettered {
			sh, err := Sheet(r, p, k, scale, o.Style)
			if err != nil || fits(sh.Drawing, o.Paper, sh.Block, o.Style) {
				return sh, err
			}
		}
	}
	return Sheet(r, p, k, lettered[len(lettered)-1], o.Style)
}

// lettered returns the scales at which a part's grinding template is large enough to be
// lettered, or the greatest of all.
func (k Kind) lettered(p solve.Part) []float64 {
	side, n := template.RakeFace, 1
	if k == Clearance {
		side = template.ClearanceFace
	}
	if m, ok := p.(solve.Made); ok {
		for n < len(scales) && template.Lettered(m.Template(), side, scales[n]) {
			n++
		}
	}
	return scales[:n]
}
