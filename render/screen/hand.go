package screen

import (
	"image"
	"runtime"

	"tipline/geometry/fault"
	"tipline/render"
)

// hand paints one band of a picture. A painter has several, which paint at the
// same time and share what they only read.
type hand struct {
	*Painter
	trace    trace
	coverage coverage
	pattern  []float64
	ruled    []uint16
}

// leastBand is the least height in pixels of a band, and mostHands how many bands
// there are at most: every hand looks at every line.
const (
	leastBand = 200
	mostHands = 4
)

// hand returns the painter's hand i.
func (p *Painter) hand(i int) *hand {
	for len(p.hands) <= i {
		p.hands = append(p.hands, &hand{})
	}
	p.hands[i].Painter = p
	return p.hands[i]
}

// share has the picture painted in bands, one by each hand.
func (p *Painter) share(dst *image.RGBA, d *render.Drawing, v View) {
	high := dst.Rect.Dy()
	n := max(1, min(runtime.GOMAXPROCS(0), mostHands, high/leastBand))
	p.hand(n - 1) // all are there before any paints
	fault.Each(n, func(i int) {
		top, bottom := high*i/n, high*(i+1)/n
		p.hand(i).paint(band(dst, top, bottom), d, v.Pan(0, -float64(top)))
	})
}

// band returns some rows of a picture as a picture of its own.
func band(dst *image.RGBA, top, bottom int) *image.RGBA {
	from := dst.PixOffset(dst.Rect.Min.X, dst.Rect.Min.Y+top)
	to := from + (bottom-top)*dst.Stride
	return &image.RGBA{Pix: dst.Pix[from:min(to, len(dst.Pix))], Stride: dst.Stride, Rect: image.Rect(0, 0, dst.Rect.Dx(), bottom-top)}
}

// paint paints a band.
func (p *hand) paint(dst *image.RGBA, d *render.Drawing, v View) {
	p.ground(dst, v)
	p.rule(v.Scale)
	for _, i := range p.plan.order {
		if it := &d.Items[i]; !p.leftOut(it) {
			p.item(dst, it, v)
		}
	}
	p.light(dst, d, v)
}
