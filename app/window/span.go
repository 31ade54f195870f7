package window

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/render/screen"
)

// The length and half the width of the arrowheads of a dimension on the drawing, and how
// long it must be to have any, in pixels.
const (
	arrowLong   = 8
	arrowWide   = 3
	leastArrows = 26
)

// spanOf returns a dimension line between two pixels, with an arrowhead at either end
// where there is room.
func spanOf(from, to screen.Pixel) []fyne.CanvasObject {
	long := apart(from, to)
	if long < 1 {
		return nil
	}
	lines := []fyne.CanvasObject{stroked(from, to, paper, 3.4), stroked(from, to, light.blue, 1.3)}
	if long < leastArrows {
		return lines
	}
	ux, uy := (to.X-from.X)/long, (to.Y-from.Y)/long
	for _, end := range []struct {
		at  screen.Pixel
		way float64 // from the end back along the line
	}{{from, 1}, {to, -1}} {
		for _, side := range []float64{arrowWide, -arrowWide} {
			back := screen.Pixel{
				X: end.at.X + end.way*arrowLong*ux - side*uy,
				Y: end.at.Y + end.way*arrowLong*uy + side*ux,
			}
			lines = append(lines, stroked(end.at, back, light.blue, 1.3))
		}
	}
	return lines
}

// stroked returns a line between two pixels.
func stroked(from, to screen.Pixel, c color.Color, width float32) *canvas.Line {
	l := canvas.NewLine(c)
	l.StrokeWidth = width
	l.Position1, l.Position2 = fyne.NewPos(float32(from.X), float32(from.Y)), fyne.NewPos(float32(to.X), float32(to.Y))
	return l
}

// apart returns how far two pixels are from each other.
func apart(p, q screen.Pixel) float64 { return math.Hypot(p.X-q.X, p.Y-q.Y) }
