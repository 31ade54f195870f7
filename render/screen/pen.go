package screen

import (
	"math"

	"tipline/render"
)

// Lines keep their printed width only while that is a sensible number of pixels:
// seen from afar they stay visible, from near they stay fine.
var penPixels = map[render.Pen]struct{ least, most float64 }{
	render.Visible: {0.9, 2},
	render.Thin:    {0.7, 1.1},
	render.Hidden:  {0.8, 1.2},
	render.Centre:  {0.7, 1.1},
	render.Hair:    {0.6, 0.9},
}

// litWidth is how wide, in pixels, a lit line is drawn.
const litWidth = 3

// litDash is how wide at least those of a broken line are drawn on its halo.
const litDash = 1.5

// penWidth returns how wide a pen draws in pixels, 0 for no pen.
func (p *Painter) penWidth(pen render.Pen, scale float64) float64 {
	limits, ok := penPixels[pen]
	if !ok {
		return 0
	}
	density := p.density()
	return math.Min(math.Max(pen.Width()*scale, limits.least*density), limits.most*density)
}

// dashes returns the pen's marks and gaps in pixels, in proportion to the width it
// draws; nil for a continuous line. It uses the hand's memory.
func (p *hand) dashes(pen render.Pen, width float64) []float64 {
	p.pattern = p.pattern[:0]
	for _, l := range pen.Dashes() {
		p.pattern = append(p.pattern, l*width/pen.Width())
	}
	return p.pattern
}

// The distance of hatching lines in pixels.
const (
	leastHatch = 5
	mostHatch  = 11
)

// rule makes the hatching's period: how much of each pixel of a row a line covers.
func (p *hand) rule(scale float64) {
	density := p.density()
	apart := math.Min(math.Max(render.WasteSpacing*scale, leastHatch*density), mostHatch*density)
	n := max(int(math.Round(apart*math.Sqrt2)), 2)
	width := p.penWidth(render.WastePen, scale)
	p.ruled = p.ruled[:0]
	for i := range n {
		far := math.Min(float64(i), float64(n-i)) / math.Sqrt2
		p.ruled = append(p.ruled, uint16(256*math.Min(math.Max(width/2+0.5-far, 0), math.Min(width, 1))))
	}
}
