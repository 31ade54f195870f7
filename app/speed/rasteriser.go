//go:build geos

package main

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"math"

	"golang.org/x/image/vector"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

// flat is how far a chord may lie from its arc on the screen, in pixels, as it may for
// the program's own painter.
const flat = 0.1

// rasteriser paints the outlines of a drawing and does nothing else: one mask for all
// that is filled and one for all that is drawn in ink, letters with it, in two colours,
// without dashes or hatching. It keeps its memory from frame to frame.
type rasteriser struct {
	*vector.Rasterizer
	drawing *render.Drawing
	view    screen.View
	mask    *image.Alpha
	dst     *image.RGBA
	points  []screen.Pixel
	blank   []uint8
	count   int
}

func newRasteriser(d *render.Drawing, v screen.View) *rasteriser {
	size := image.Rect(0, 0, wide, high)
	return &rasteriser{
		Rasterizer: vector.NewRasterizer(wide, high), drawing: d, view: v,
		mask: image.NewAlpha(size), dst: image.NewRGBA(size), blank: bytes.Repeat([]uint8{255}, 4*wide*high),
	}
}

// outlines returns how many outlines, lines and letters' contours are painted.
func (r *rasteriser) outlines() int {
	r.paint()
	return r.count
}

func (r *rasteriser) paint() {
	r.count = 0
	copy(r.dst.Pix, r.blank)
	r.over(color.RGBA{R: 220, G: 180, B: 90, A: 255}, r.filled)
	r.over(color.RGBA{B: 90, A: 255}, r.inked)
}

// over adds every item to the mask and paints a colour through it.
func (r *rasteriser) over(c color.RGBA, add func(*render.Item)) {
	r.Reset(wide, high)
	r.DrawOp = draw.Src
	for i := range r.drawing.Items {
		add(&r.drawing.Items[i])
	}
	r.Draw(r.mask, r.mask.Rect, image.Opaque, image.Point{})
	for i, a := range r.mask.Pix {
		switch a {
		case 0:
		case 255:
			r.dst.Pix[4*i], r.dst.Pix[4*i+1], r.dst.Pix[4*i+2] = c.R, c.G, c.B
		default:
			blend(r.dst.Pix[4*i:4*i+4], c, uint32(a))
		}
	}
}

func blend(pix []uint8, c color.RGBA, a uint32) {
	pix[0] = uint8((uint32(pix[0])*(255-a) + uint32(c.R)*a) / 255)
	pix[1] = uint8((uint32(pix[1])*(255-a) + uint32(c.G)*a) / 255)
	pix[2] = uint8((uint32(pix[2])*(255-a) + uint32(c.B)*a) / 255)
}

func (r *rasteriser) filled(it *render.Item) {
	if it.Fill == render.NoFill {
		return
	}
	for _, o := range it.Outlines {
		r.polygon(r.pixels(o.Flatten(flat / r.view.Scale)))
	}
}

// inked adds an item's lines, each edge a rectangle, and its letters.
func (r *rasteriser) inked(it *render.Item) {
	if it.Text != nil {
		r.letters(it.Text)
	}
	if it.Pen == render.NoPen {
		return
	}
	half := max(0.5, 0.75*it.Pen.Width()/render.Visible.Width())
	for _, o := range it.Outlines {
		ps := r.pixels(o.Flatten(flat / r.view.Scale))
		r.lines(ps, half)
		r.bar(ps[len(ps)-1], ps[0], half)
	}
	for _, c := range it.Chains {
		r.lines(r.pixels(c.Flatten(flat/r.view.Scale)), half)
	}
}

// pixels returns corners on the screen; they hold until it is called again.
func (r *rasteriser) pixels(ps []geometry.Point) []screen.Pixel {
	r.count++
	r.points = r.points[:0]
	for _, p := range ps {
		r.points = append(r.points, r.view.ToPixel(p))
	}
	return r.points
}

func (r *rasteriser) polygon(ps []screen.Pixel) {
	r.MoveTo(float32(ps[0].X), float32(ps[0].Y))
	for _, p := range ps[1:] {
		r.LineTo(float32(p.X), float32(p.Y))
	}
	r.ClosePath()
}

func (r *rasteriser) lines(ps []screen.Pixel, half float64) {
	for i := 1; i < len(ps); i++ {
		r.bar(ps[i-1], ps[i], half)
	}
}

func (r *rasteriser) bar(p, q screen.Pixel, half float64) {
	dx, dy := q.X-p.X, q.Y-p.Y
	length := math.Hypot(dx, dy)
	if length == 0 {
		return
	}
	dx, dy = dx*half/length, dy*half/length
	r.MoveTo(float32(p.X-dy), float32(p.Y+dx))
	r.LineTo(float32(q.X-dy), float32(q.Y+dx))
	r.LineTo(float32(q.X+dy), float32(q.Y-dx))
	r.LineTo(float32(p.X+dy), float32(p.Y-dx))
	r.ClosePath()
}

func (r *rasteriser) letters(t *render.Text) {
	at := func(p geometry.Point) (x, y float32) {
		pixel := r.view.ToPixel(p)
		return float32(pixel.X), float32(pixel.Y)
	}
	for _, c := range t.Glyphs() {
		r.count++
		r.MoveTo(at(c.Start))
		for _, curve := range c.Curves {
			x, y := at(curve.To)
			if curve.Straight {
				r.LineTo(x, y)
				continue
			}
			cx, cy := at(curve.Control)
			r.QuadTo(cx, cy, x, y)
		}
		r.ClosePath()
	}
}
