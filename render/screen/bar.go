package screen

import (
	"image"
	"image/color"
	"math"

	"tipline/geometry/measure"
	"tipline/render"
)

// ordinary is how many pixels of ordinary size stand on a millimetre of screen:
// 96 to the inch, the pixel of CSS Values and Units.
const ordinary = 96 / measure.MMPerInch

// Magnification returns how many times larger than the work a drawing is seen on a screen
// of ordinary pixels.
func (v View) Magnification(d *render.Drawing) float64 { return v.Scale / ordinary * scaleOf(d) }

func scaleOf(d *render.Drawing) float64 {
	if d == nil || !(d.Scale > 0) {
		return 1
	}
	return d.Scale
}

// under returns the colour that the drawing lies on.
func (p *Painter) under() color.NRGBA {
	if p.Sheet.Width() > 0 {
		return p.Theme.Table
	}
	return p.Theme.Paper
}

func corners(b box) []Pixel {
	return []Pixel{{b.x0, b.y0}, {b.x1, b.y0}, {b.x1, b.y1}, {b.x0, b.y1}}
}

// Bar is a bar that shows how long a length of the work is seen.
type Bar struct {
	Length float64 // of the work, in the unit it was asked for in
	Pixels float64
	Parts  int // how many parts it is ruled in
}

// BarOf returns the longest bar of a round length, 1, 2 or 5 times a power of ten
// of the unit, that is no longer than so many pixels. perUnit is the unit's length
// in millimetres.
func BarOf(d *render.Drawing, v View, perUnit, most float64) Bar {
	one := v.Scale * scaleOf(d) * perUnit
	if !(one > 0) {
		return Bar{}
	}
	decade := math.Pow(10, math.Floor(math.Log10(most/one)))
	bar := Bar{decade, decade * one, 10}
	for _, round := range []struct {
		length float64
		parts  int
	}{{2, 4}, {5, 5}} {
		if length := round.length * decade; length*one <= most {
			bar = Bar{length, length * one, round.parts}
		}
	}
	return bar
}

// Rule draws a bar from a pixel to the right, on a slip that reaches so many pixels past
// it for the bar's length.
func (p *Painter) Rule(dst *image.RGBA, b Bar, at Pixel, past float64) {
	if b.Parts == 0 {
		return
	}
	width, seen := 1.2*p.density(), boxOfPicture(dst)
	cover := &p.hand(0).coverage
	cover.begin(dst.Rect.Size())
	cover.polygon(corners(box{at.X, at.Y - 9*p.density(), at.X + b.Pixels + past, at.Y}.grow(6 * p.density())))
	cover.paint(dst, plain(p.under()))
	cover.begin(dst.Rect.Size())
	line := func(x0, y0, x1, y1 float64) {
		cover.stroke([]Pixel{{at.X + x0, at.Y + y0}, {at.X + x1, at.Y + y1}}, false, width, seen)
	}
	line(-width/2, 0, b.Pixels+width/2, 0)
	for i := range b.Parts + 1 {
		x, high := b.Pixels*float64(i)/float64(b.Parts), -5*p.density()
		if i == 0 || i == b.Parts {
			high *= 1.8
		}
		line(x, 0, x, high)
	}
	cover.paint(dst, plain(p.Theme.ink(render.Black)))
}
