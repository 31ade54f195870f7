package window

import (
	"image"

	"fyne.io/fyne/v2/canvas"

	"tipline/render"
	"tipline/render/screen"
)

// picture is a small painting of a drawing, which is asked for only when it is
// seen.
type picture struct {
	*canvas.Raster
	painter screen.Painter
	draw    func() *render.Drawing
	of      any  // what the drawing is made from
	stale   bool // it has changed since the drawing was asked for
	drawing *render.Drawing
	pixels  *image.RGBA
}

func newPicture() *picture {
	p := &picture{painter: screen.Painter{Theme: screen.Light(), Bare: true}}
	p.painter.Theme.Paper = panel
	p.Raster = canvas.NewRaster(p.paint)
	return p
}

// show sets what the drawing is made from and how it is come by.
func (p *picture) show(of any, draw func() *render.Drawing, onPaper bool) {
	ground := panel
	if onPaper {
		ground = well
	}
	p.draw = draw
	if p.of != of || p.painter.Theme.Paper != ground {
		if p.painter.Theme.Paper != ground {
			p.pixels = nil
		}
		p.of, p.stale, p.painter.Theme.Paper = of, true, ground
		p.Raster.Refresh()
	}
}

func (p *picture) paint(width, height int) image.Image {
	fresh := p.pixels == nil || p.pixels.Rect.Dx() != width || p.pixels.Rect.Dy() != height
	if fresh {
		p.pixels = image.NewRGBA(image.Rect(0, 0, width, height))
	}
	if p.stale {
		was := p.drawing
		p.stale, p.drawing = false, p.draw()
		fresh = fresh || p.drawing != was
	}
	if fresh {
		view := screen.View{}
		if p.drawing != nil {
			view = screen.Fit(p.painter.Bounds(p.drawing), float64(width), float64(height), 1)
		}
		p.painter.Paint(p.pixels, p.drawing, view)
	}
	return p.pixels
}
