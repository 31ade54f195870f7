package screen

import (
	"image"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// The heights of capitals in pixels: smaller ones cannot be read and are left
// out, larger ones are drawn smaller unless they are printed.
const (
	leastLetters = 2.5
	mostLetters  = 12
)

// text writes an item's text.
func (p *hand) text(dst *image.RGBA, it *render.Item, v View) {
	scale, ok := p.letterScale(it.Text, v)
	if !ok {
		return
	}
	contours := p.plan.letters[it.Text]
	at := v.ToPixel(it.Text.At)
	p.coverage.begin(dst.Rect.Size())
	for _, c := range contours {
		p.letter(c, at, scale)
	}
	p.coverage.paint(dst, plain(p.Theme.ink(it.Ink)))
}

// letterScale returns the pixels to a millimetre of the text, false when it is
// too small to read.
func (p *Painter) letterScale(t *render.Text, v View) (float64, bool) {
	height := t.Height * v.Scale
	if !(height >= leastLetters*p.density()) {
		return 0, false
	}
	if p.Printed {
		return v.Scale, true
	}
	return v.Scale * math.Min(1, mostLetters*p.density()/height), true
}

func (p *hand) letter(c render.Contour, at Pixel, scale float64) {
	p.coverage.moveTo(letterPixel(at, scale, c.Start))
	for _, curve := range c.Curves {
		to := letterPixel(at, scale, curve.To)
		if curve.Straight {
			p.coverage.lineTo(to)
		} else {
			p.coverage.quadTo(letterPixel(at, scale, curve.Control), to)
		}
	}
	p.coverage.close()
}

// letterPixel returns where a place about a text's own is seen.
func letterPixel(at Pixel, scale float64, p geometry.Point) Pixel {
	v := View{scale, at}
	return v.ToPixel(p)
}
