package screen

import (
	"encoding/binary"
	"image"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// photograph paints a photograph as the view shows it, in greys, each pixel mixed
// from the four of the photograph nearest to it, at the size at which about one of them
// falls on a pixel.
func (p *hand) photograph(dst *image.RGBA, pic *render.Picture, v View) {
	photo := p.photos.find(pic.Image)
	if photo == nil || !(pic.Transform.Scale > 0) {
		return
	}
	n, size := photo.levelFor(1 / (v.Scale * pic.Transform.Scale))
	l := photo.levels[n]
	origin := v.texel(pic.Transform, Pixel{0.5, 0.5}, size)
	right := v.texel(pic.Transform, Pixel{1.5, 0.5}, size).Sub(origin)
	down := v.texel(pic.Transform, Pixel{0.5, 1.5}, size).Sub(origin)
	for y := range dst.Rect.Dy() {
		row := dst.Pix[y*dst.Stride : y*dst.Stride+4*dst.Rect.Dx()]
		l.sample(row, origin.Add(down.Times(float64(y))), right)
	}
}

// levelFor returns the level to be sampled where so many pixels of the photograph
// fall on one of the screen, and how many times smaller than the photograph it is.
func (p *photo) levelFor(density float64) (n int, size float64) {
	n = int(math.Round(math.Log2(max(density, 1)))) - p.halved
	n = min(max(n, 0), len(p.levels)-1)
	return n, math.Ldexp(1, n+p.halved)
}

// texel returns the place on a level, size times smaller than the photograph, that
// is seen at a pixel, counted from the middle of the level's first pixel.
func (v View) texel(s render.Similarity, at Pixel, size float64) geometry.Point {
	p := s.PixelAt(v.ToDrawing(at))
	return geometry.Point{X: p.X/size - 0.5, Y: p.Y/size - 0.5}
}

// one is a texel's width in the whole numbers that a row is sampled by.
const one = 1 << 24

// sample paints one row whose first pixel shows the place at, and each next one a
// place further by step, as far as the level reaches.
func (l level) sample(row []uint8, at, step geometry.Point) {
	from, to := 0.0, float64(len(row)/4)
	from, to = reach(from, to, at.X, step.X, float64(l.width-1))
	from, to = reach(from, to, at.Y, step.Y, float64(l.height-1))
	first, last := int(math.Ceil(from)), int(math.Ceil(to))
	if first >= last {
		return
	}
	start := at.Add(step.Times(float64(first)))
	x, y := int64(start.X*one), int64(start.Y*one)
	dx, dy := int64(step.X*one), int64(step.Y*one)
	wide := l.width
	for p := row[4*first : 4*last]; len(p) >= 4; p = p[4:] {
		k := int(y>>24)*wide + int(x>>24)
		upper, lower := l.greys[k:k+2], l.greys[k+wide:k+wide+2]
		fx, fy := int(x>>16)&0xff, int(y>>16)&0xff
		a := int(upper[0])<<8 + (int(upper[1])-int(upper[0]))*fx
		b := int(lower[0])<<8 + (int(lower[1])-int(lower[0]))*fx
		grey := uint32(a<<8+(b-a)*fy) >> 16
		binary.LittleEndian.PutUint32(p, grey*0x010101|0xff000000)
		x, y = x+dx, y+dy
	}
}

// reach narrows the run of pixels from to to those whose place, at + i·step, lies
// on the level, a hair within its last pixel's middle: what the whole numbers stray
// by over a row.
func reach(from, to, at, step, most float64) (float64, float64) {
	const hair = 1e-3
	if step == 0 {
		if at < hair || at > most-hair {
			return 0, 0
		}
		return from, to
	}
	a, b := (hair-at)/step, (most-hair-at)/step
	return max(from, min(a, b)), min(to, max(a, b))
}
