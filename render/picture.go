package render

import (
	"image"

	"tipline/geometry"
)

// Picture is a photograph that lies under a drawing, on the screen only: files
// leave it out, a drawing's bounds do not count it and no click finds it.
type Picture struct {
	// Image holds the pixels. It must be a pointer, as the images of the standard
	// library are, and must not be changed once it was painted.
	Image     image.Image
	Transform Similarity
}

// Similarity says how a photograph's pixels lie on a drawing. Pixels count from
// the photograph's upper left corner, x to the right and y down; untwisted, its
// top lies up.
type Similarity struct {
	Scale float64        // millimetres to a pixel, more than 0
	Turn  geometry.Angle // of the photograph, anticlockwise
	Pixel geometry.Point // the place on the photograph
	At    geometry.Point // that lies here on the drawing
}

// Place returns where a pixel lies on the drawing. Here, and in PixelAt, the
// photograph's y down becomes the drawing's y up.
func (s Similarity) Place(pixel geometry.Point) geometry.Point {
	off := geometry.Point{X: pixel.X - s.Pixel.X, Y: s.Pixel.Y - pixel.Y}
	return s.At.Add(off.Times(s.Scale).Rotate(s.Turn))
}

// PixelAt returns the pixel that lies at a place of the drawing.
func (s Similarity) PixelAt(p geometry.Point) geometry.Point {
	off := p.Sub(s.At).Rotate(-s.Turn).Times(1 / s.Scale)
	return geometry.Point{X: s.Pixel.X + off.X, Y: s.Pixel.Y - off.Y}
}

// Placed returns the picture enlarged scale > 0 times about the drawing's origin,
// turned anticlockwise by turn, and moved so that the origin stands at at.
func (p Picture) Placed(at geometry.Point, scale float64, turn geometry.Angle) Picture {
	p.Transform.Scale *= scale
	p.Transform.Turn += turn
	p.Transform.At = p.Transform.At.Scale(scale).Rotate(turn).Move(at)
	return p
}
