package screen

import (
	"image"
	"image/draw"

	"tipline/render"
)

// pale is how far, in 256ths, a photograph is faded into the paper, so that lines
// stand out on it; mostTexels how many pixels of a photograph are kept at most.
const (
	pale       = 144
	mostTexels = 32_000_000
)

// photo is a photograph at half its size again and again, so that however small it
// is seen no more than a few pixels of it go into one of the screen.
type photo struct {
	from   image.Image
	levels []level
	halved int // how often the first level is already halved
}

// level is a photograph at one size, its pixels' greys row by row.
type level struct {
	width, height int
	greys         []uint8
}

// photos are the photographs of the drawing last painted.
type photos []*photo

// of makes ready the photographs of a drawing and forgets others.
func (all *photos) of(d *render.Drawing) {
	var kept photos
	for i := range d.Items {
		p := d.Items[i].Picture
		if p == nil || p.Image == nil || kept.find(p.Image) != nil {
			continue
		}
		known := all.find(p.Image)
		if known == nil {
			known = newPhoto(p.Image)
		}
		kept = append(kept, known)
	}
	*all = kept
}

func (all photos) find(img image.Image) *photo {
	for _, p := range all {
		if p.from == img {
			return p
		}
	}
	return nil
}

func newPhoto(img image.Image) *photo {
	p := &photo{from: img}
	at := faded(img)
	for ; len(at.greys) > mostTexels; at = at.half() {
		p.halved++
	}
	for {
		p.levels = append(p.levels, at)
		if at.width < 64 || at.height < 64 {
			return p
		}
		at = at.half()
	}
}

// faded returns a photograph in greys, laid on white and faded into it, band by
// band so that it is never held twice.
func faded(img image.Image) level {
	const rows = 64
	box := img.Bounds()
	out := level{box.Dx(), box.Dy(), make([]uint8, box.Dx()*box.Dy())}
	band := image.NewRGBA(image.Rect(0, 0, out.width, min(rows, out.height)))
	for y := 0; y < out.height; y += rows {
		draw.Draw(band, band.Rect, image.White, image.Point{}, draw.Src)
		draw.Draw(band, band.Rect, img, box.Min.Add(image.Pt(0, y)), draw.Over)
		greys := out.greys[y*out.width : min(y+rows, out.height)*out.width]
		for i := range greys {
			p := band.Pix[4*i : 4*i+3]
			greys[i] = uint8((brightness(p[0], p[1], p[2])*(256-pale) + 255*pale) >> 8)
		}
	}
	return out
}

// brightness returns the luma of a colour, 0 to 255 (ITU-R BT.601).
func brightness(r, g, b uint8) uint32 {
	return (77*uint32(r) + 150*uint32(g) + 29*uint32(b)) >> 8
}

// half returns the level at half its size, each pixel the mean of four; an odd row
// or column at the end is left out.
func (l level) half() level {
	out := level{max(l.width/2, 1), max(l.height/2, 1), nil}
	out.greys = make([]uint8, out.width*out.height)
	for y := range out.height {
		upper, lower := l.row(2*y), l.row(min(2*y+1, l.height-1))
		for x := range out.width {
			a, b := 2*x, min(2*x+1, l.width-1)
			sum := int(upper[a]) + int(upper[b]) + int(lower[a]) + int(lower[b])
			out.greys[y*out.width+x] = uint8((sum + 2) >> 2)
		}
	}
	return out
}

func (l level) row(y int) []uint8 { return l.greys[y*l.width : (y+1)*l.width] }
