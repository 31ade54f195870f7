package screen

import (
	"encoding/binary"
	"image/color"
)

// paint is what covers a pixel: an opaque colour, and over it, where ruled is
// given, hatching that runs up to the right. ruled holds one period of the
// hatching along a row, in 256ths, and from is the x at which it begins on the
// row 0.
type paint struct {
	ink, lead uint32
	ruled     []uint16
	from      int
}

// rowPaint is the paint on one row.
type rowPaint struct {
	paint
	shift int // to be added to x for the place in the period
}

func plain(c color.NRGBA) paint { return paint{ink: opaque(c)} }

func opaque(c color.NRGBA) uint32 {
	return uint32(c.R) | uint32(c.G)<<8 | uint32(c.B)<<16 | 0xff<<24
}

func (p paint) row(y int) rowPaint {
	r := rowPaint{paint: p}
	if n := len(p.ruled); n > 0 {
		r.shift = ((y-p.from)%n + n) % n
	}
	return r
}

// one paints one pixel as far as it is covered, in 256ths.
func (r *rowPaint) one(pix []uint8, x int, cover uint32) {
	if cover == 0 {
		return
	}
	p := pix[4*x : 4*x+4]
	ink := r.ink
	if len(r.ruled) > 0 {
		ink = mix(ink, r.lead, uint32(r.ruled[(x+r.shift)%len(r.ruled)]))
	}
	if cover < 256 {
		ink = mix(binary.LittleEndian.Uint32(p), ink, cover)
	}
	binary.LittleEndian.PutUint32(p, ink)
}

// cells paints a pixel for each cell, from x on, sums the cells up from a sum and
// leaves them 0.
func (r *rowPaint) cells(pix []uint8, x int, cells []float32, sum float32) float32 {
	if len(r.ruled) > 0 {
		return r.ruledCells(pix, x, cells, sum)
	}
	cover, ink := shade(sum), r.ink
	pix = pix[4*x:][:4*len(cells)]
	for i, cell := range cells {
		if cell != 0 {
			sum += cell
			cover = shade(sum)
			cells[i] = 0
		}
		switch cover {
		case 0:
		case 256:
			binary.LittleEndian.PutUint32(pix[4*i:4*i+4], ink)
		default:
			p := pix[4*i : 4*i+4]
			binary.LittleEndian.PutUint32(p, mix(binary.LittleEndian.Uint32(p), ink, cover))
		}
	}
	return sum
}

func (r *rowPaint) ruledCells(pix []uint8, x int, cells []float32, sum float32) float32 {
	for i, cell := range cells {
		sum += cell
		cells[i] = 0
		r.one(pix, x+i, shade(sum))
	}
	return sum
}

// run paints pixels that are all equally covered.
func (r *rowPaint) run(pix []uint8, from, to int, cover uint32) {
	switch {
	case cover == 0 || from >= to:
	case cover < 256:
		for x := from; x < to; x++ {
			r.one(pix, x, cover)
		}
	default:
		fill(pix[4*from:4*to], r.ink)
		r.rule(pix, from, to)
	}
}

// rule draws the hatching over pixels that have the ink already: each line's own
// pixels at the two ends of the period, and none between.
func (r *rowPaint) rule(pix []uint8, from, to int) {
	n := len(r.ruled)
	for i, a := range r.ruled {
		if a == 0 {
			continue
		}
		colour := mix(r.ink, r.lead, uint32(a))
		first := from + ((i-from-r.shift)%n+n)%n
		for x := first; x < to; x += n {
			binary.LittleEndian.PutUint32(pix[4*x:4*x+4], colour)
		}
	}
}

// mix returns the colour a/256 of the way from one opaque pixel to another. Red
// and blue, and green and alpha, are worked out together in the two halves of a
// word.
func mix(from, to, a uint32) uint32 {
	const odd = 0x00ff00ff
	b := 256 - a
	low := ((from&odd)*b + (to&odd)*a) >> 8 & odd
	high := (from>>8&odd)*b + (to>>8&odd)*a
	return low | high&^odd
}

// fill sets pixels to one colour.
func fill(pix []uint8, ink uint32) {
	if len(pix) < 4 {
		return
	}
	binary.LittleEndian.PutUint32(pix, ink)
	for done := 4; done < len(pix); done *= 2 {
		copy(pix[done:], pix[:done])
	}
}
