package screen

import (
	"image"
	"image/color"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// Lit names the lines that are lit: those that one field of one part made.
type Lit struct {
	Part     string
	Quantity geometry.Quantity
}

// Painter paints drawings into pictures. It keeps its memory and what it knows of
// the last drawing from frame to frame, so a drawing must not be changed once it
// was painted. It is not safe for use by two goroutines at once.
type Painter struct {
	Theme   Theme
	Density float64      // screen pixels to a pixel of ordinary size; 1 when not positive
	Lit     Lit          // drawn over the rest in Theme.Lit; nothing when zero
	Bare    bool         // leave out texts, dimensions and centre lines, as for a small picture
	Printed bool         // texts keep their printed size, as on a page
	Sheet   geometry.Box // of a printed page, which is then shown lying on a table; none when zero

	plan   plan
	photos photos
	hands  []*hand
}

// Paint fills the picture with the drawing as the view shows it.
func (p *Painter) Paint(dst *image.RGBA, d *render.Drawing, v View) {
	if d == nil || v.Blank() {
		fill(dst.Pix, opaque(p.Theme.Paper))
		return
	}
	p.plan.of(d, p.Bare)
	if !p.Bare {
		p.photos.of(d)
	}
	p.share(dst, d, v)
}

// ground paints what the drawing lies on: paper all over, or a sheet on a table.
func (p *hand) ground(dst *image.RGBA, v View) {
	fill(dst.Pix, opaque(p.under()))
	if p.Sheet.Width() <= 0 {
		return
	}
	low, high := v.ToPixel(p.Sheet.Min), v.ToPixel(p.Sheet.Max)
	rim := corners(box{low.X, high.Y, high.X, low.Y})
	p.coverage.begin(dst.Rect.Size())
	p.coverage.polygon(rim)
	p.coverage.paint(dst, plain(p.Theme.Paper))
	p.coverage.begin(dst.Rect.Size())
	p.coverage.stroke(rim, true, p.density(), boxOfPicture(dst))
	p.coverage.paint(dst, plain(p.Theme.Lead))
}

func (p *Painter) density() float64 {
	if p.Density <= 0 {
		return 1
	}
	return p.Density
}

func (p *Painter) leftOut(it *render.Item) bool {
	if !p.Bare {
		return false
	}
	switch it.Layer {
	case render.LayerPhotograph, render.LayerText, render.LayerDimensions, render.LayerCentreLines, render.LayerSawLine,
		render.LayerStartHoles, render.LayerPitchCircle, render.LayerSheet:
		return true
	}
	return it.Text != nil || it.Pen == render.Hair
}

func (p *hand) item(dst *image.RGBA, it *render.Item, v View) {
	if it.Picture != nil {
		p.photograph(dst, it.Picture, v)
	}
	if it.Text != nil {
		p.text(dst, it, v)
	}
	if len(it.Outlines)+len(it.Chains) == 0 {
		return
	}
	p.trace.item(*it, v)
	if it.Fill != render.NoFill {
		p.fill(dst, it, v)
	}
	if width := p.penWidth(it.Pen, v.Scale); width > 0 {
		p.line(dst, it.Pen, p.Theme.ink(it.Ink), width)
	}
}

// fill fills the traced outlines by the even-odd rule.
func (p *hand) fill(dst *image.RGBA, it *render.Item, v View) {
	p.trace.nest()
	p.coverage.begin(dst.Rect.Size())
	for _, r := range p.trace.runs {
		if r.closed {
			p.coverage.polygon(p.trace.of(r))
		}
	}
	with := plain(p.fillColour(it))
	if it.Fill == render.Waste {
		with.lead, with.ruled = opaque(p.Theme.Lead), p.ruled
		with.from = int(math.Round(math.Mod(v.Origin.X+v.Origin.Y, float64(len(p.ruled)))))
	}
	p.coverage.paint(dst, with)
}

func (p *Painter) fillColour(it *render.Item) color.NRGBA {
	switch it.Fill {
	case render.Brass:
		return p.Theme.Brass
	case render.Steel:
		return p.Theme.Steel
	case render.Solid:
		return p.Theme.ink(it.Ink)
	}
	return p.Theme.Paper
}

// line strokes the traced outlines and chains.
func (p *hand) line(dst *image.RGBA, pen render.Pen, c color.NRGBA, width float64) {
	seen := boxOfPicture(dst)
	p.coverage.begin(dst.Rect.Size())
	pattern := p.dashes(pen, width)
	for _, r := range p.trace.runs {
		if r.box.grow(width).meet(seen).empty() {
			continue
		}
		if len(pattern) > 0 {
			p.coverage.dashed(p.trace.of(r), r.closed, width, pattern, seen)
		} else {
			p.coverage.stroke(p.trace.of(r), r.closed, width, seen)
		}
	}
	p.coverage.paint(dst, plain(c))
}

func boxOfPicture(dst *image.RGBA) box {
	r := dst.Rect
	return box{float64(r.Min.X), float64(r.Min.Y), float64(r.Max.X), float64(r.Max.Y)}
}

// Bounds returns the box of what the painter would paint of a drawing.
func (p *Painter) Bounds(d *render.Drawing) geometry.Box {
	shown := render.Drawing{}
	for i := range d.Items {
		if !p.leftOut(&d.Items[i]) {
			shown.Items = append(shown.Items, d.Items[i])
		}
	}
	return shown.Bounds()
}
