package window

import (
	"image"

	"fyne.io/fyne/v2/canvas"

	"tipline/render"
	"tipline/render/screen"
)

// picture is a small painting of a drawing.
type picture struct {
	*canvas.Raster
	painter screen.Painter
	drawing *render.Drawing
	painted *render.Drawing
	pixels  *image.RGBA
}

func newPicture() *picture {
	p := &picture{painter: screen.Painter{Theme: screen.Light(), Bare: true}}
	p.painter.Theme.Paper = panel
	p.Raster = canvas.NewRaster(p.paint)
	return p
}

func (p *picture) show(d *render.Drawing, onPaper bool) {
	ground := panel
	if onPaper {
		ground = paper
	}
	if p.drawing != d || p.painter.Theme.Paper != ground {
		p.drawing, p.painted, p.painter.Theme.Paper = d, nil, ground
		p.Raster.Refresh()
	}
}

func (p *picture) paint(width, height int) image.Image {
	if p.pixels == nil || p.pixels.Rect.Dx() != width || p.pixels.Rect.Dy() != height {
		p.pixels, p.painted = image.NewRGBA(image.Rect(0, 0, width, height)), nil
	}
	if p.painted == nil || p.painted != p.drawing {
		view := screen.View{}
		if p.drawing != nil {
			view = screen.Fit(p.painter.Bounds(p.drawing), float64(width), float64(height), 1)
		}
		p.painter.Paint(p.pixels, p.drawing, view)
		p.painted = p.drawing
	}
	return p.pixels
}
