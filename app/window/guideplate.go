package window

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2/canvas"

	drawings "tipline/app/guide"
	"tipline/assets/guide"
	"tipline/assets/words"
	"tipline/render/screen"
)

// album keeps the guide's pictures, each drawn when it is first seen.
type album struct {
	words words.Words
	drawn map[string]drawings.Picture
}

func newAlbum(w words.Words) album { return album{w, map[string]drawings.Picture{}} }

// of returns the picture of a name, false where it cannot be drawn.
func (a album) of(name string) (drawings.Picture, bool) {
	p, ok := a.drawn[name]
	if !ok {
		var err error
		if p, err = drawings.Draw(name, a.words); err != nil {
			return p, false
		}
		a.drawn[name] = p
	}
	return p, p.Drawing != nil
}

// plate is a picture on a page, with the words under it.
type plate struct {
	guide   *guideWindow
	name    string
	ground  *canvas.Rectangle
	raster  *canvas.Raster
	said    *prose
	painter screen.Painter
	pixels  *image.RGBA
}

func newPlate(g *guideWindow, b guide.Block) *plate {
	p := &plate{guide: g, name: b.Picture, ground: sheetOf(paper), said: newProse(g, b.Runs, readSize), painter: screen.Painter{Theme: screen.Light()}}
	p.ground.StrokeColor = edge
	p.raster = canvas.NewRaster(p.paint)
	return p
}

// plateInset is between a picture and its frame.
const plateInset = 8

// lay sets the picture as wide as the page, or as tall as can be seen at once.
func (p *plate) lay(on *guidePage, x, y, width float32) float32 {
	of, ok := p.guide.album.of(p.name)
	if !ok {
		return p.said.lay(on, x, y, width)
	}
	share := float32(of.Seen.Height() / of.Seen.Width())
	wide := width - 2*plateInset
	high := wide * share
	if most := float32(440); high > most {
		wide, high = most/share, most
	}
	put(p.ground, x, y, width, high+2*plateInset)
	put(p.raster, x+(width-wide)/2, y+plateInset, wide, high)
	on.Objects = append(on.Objects, p.ground, p.raster)
	under := high + 2*plateInset + 4
	return under + p.said.lay(on, x, y+under, width)
}

func (p *plate) paint(width, height int) image.Image {
	if p.pixels != nil && p.pixels.Rect.Dx() == width && p.pixels.Rect.Dy() == height {
		return p.pixels
	}
	of, ok := p.guide.album.of(p.name)
	if !ok || width <= 0 || height <= 0 {
		return image.NewUniform(color.Transparent)
	}
	p.painter.Density = float64(width) / float64(max(p.raster.Size().Width, 1))
	p.pixels = image.NewRGBA(image.Rect(0, 0, width, height))
	p.painter.Paint(p.pixels, of.Drawing, screen.Fit(of.Seen, float64(width), float64(height), 0))
	return p.pixels
}
