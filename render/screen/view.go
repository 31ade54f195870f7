// Package screen paints drawings in pixels: it owns the view (pan and zoom), the
// painter with its light and dark colours, and finding what lies under the
// pointer.
package screen

import (
	"math"

	"tipline/geometry"
)

// Pixel is a place on the screen in pixels: x to the right, y down, from the
// picture's upper left corner.
type Pixel struct{ X, Y float64 }

// View says how a drawing is seen: Scale pixels to a millimetre, and the pixel on
// which the drawing's origin stands. The zero View shows nothing.
type View struct {
	Scale  float64
	Origin Pixel
}

// The closest and the widest view, in pixels to a millimetre: at the closest a
// micrometre is two pixels, at the widest the longest allowed length is forty.
const (
	closest = 2000
	widest  = 0.02
)

// Fit returns the view that shows the whole box in the middle of a picture of
// width × height pixels with a margin round it. A box without size is shown at
// ten pixels to the millimetre.
func Fit(box geometry.Box, width, height, margin float64) View {
	scale := math.Min(share(width-2*margin, box.Width()), share(height-2*margin, box.Height()))
	if math.IsInf(scale, 1) {
		scale = 10
	}
	v := View{Scale: bounded(scale)}
	centre := v.ToPixel(box.Centre())
	v.Origin = Pixel{width/2 - centre.X, height/2 - centre.Y}
	return v
}

func share(room, size float64) float64 {
	if size <= 0 {
		return math.Inf(1)
	}
	return math.Max(room, 1) / size
}

func bounded(scale float64) float64 { return math.Min(math.Max(scale, widest), closest) }

// ToPixel returns where a place on the drawing is seen. Here, and in ToDrawing,
// the drawing's y up becomes the screen's y down.
func (v View) ToPixel(p geometry.Point) Pixel {
	return Pixel{v.Origin.X + v.Scale*p.X, v.Origin.Y - v.Scale*p.Y}
}

// ToDrawing returns the place on the drawing that is seen at a pixel.
func (v View) ToDrawing(at Pixel) geometry.Point {
	return geometry.Point{X: (at.X - v.Origin.X) / v.Scale, Y: (v.Origin.Y - at.Y) / v.Scale}
}

// Pan returns the view with the drawing moved by so many pixels.
func (v View) Pan(dx, dy float64) View {
	v.Origin.X += dx
	v.Origin.Y += dy
	return v
}

// Zoom returns the view enlarged about a pixel, which keeps showing the same
// place of the drawing. It stops at the closest and at the widest view.
func (v View) Zoom(factor float64, about Pixel) View {
	scale := bounded(v.Scale * factor)
	k := scale / v.Scale
	return View{scale, Pixel{about.X + k*(v.Origin.X-about.X), about.Y + k*(v.Origin.Y-about.Y)}}
}

// Enlarged returns the view on a screen of density times as many pixels.
func (v View) Enlarged(density float64) View {
	return View{v.Scale * density, Pixel{v.Origin.X * density, v.Origin.Y * density}}
}

// Blank reports whether the view shows nothing yet.
func (v View) Blank() bool { return v.Scale == 0 }
