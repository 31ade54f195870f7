package sheet

import (
	"fmt"
	"image"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
	"tipline/render/template"
)

// patchwork is a drawing larger than a sheet with something of every kind on it:
// brass, hatching, dashes, arcs, and short texts all over.
func patchwork(width, height, scale float64) *render.Drawing {
	b := template.NewBoard("patch", style)
	b.Drawing.Title, b.Drawing.Scale = "Patchwork", scale
	b.Rectangle(template.Stroke{Layer: render.LayerStock, Pen: render.Visible, Fill: render.Steel},
		geometry.Point{X: -width / 2, Y: -height / 2}, geometry.Point{X: width / 2, Y: height / 2})
	r := 0.45 * min(width, height)
	b.Circle(template.Stroke{Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Brass}, geometry.Point{X: 3, Y: -2}, r)
	b.Circle(template.Stroke{Layer: render.LayerWindows, Pen: render.Visible, Fill: render.Waste}, geometry.Point{X: 3, Y: -2}, r*0.7)
	b.Circle(template.Stroke{Layer: render.LayerSawLine, Pen: render.Thin}, geometry.Point{X: 3, Y: -2}, r*0.6)
	for i := range 36 {
		way := geometry.Polar(1, geometry.Degrees(float64(10*i)))
		b.Line(template.Stroke{Layer: render.LayerRelief, Pen: render.Thin, Ink: render.Blue}, geometry.Line{From: way.Times(5), To: way.Times(r * 1.05)})
		b.Write(template.Stroke{Layer: render.LayerText, Ink: render.Blue}, render.Text{At: way.Times(r * 0.85), Height: 3.5, Align: render.Middle, Centred: true, String: fmt.Sprint(i)})
	}
	b.Write(template.Stroke{Layer: render.LayerText}, render.Text{
		Height: 3.5, Align: render.Middle, Turn: 0.2,
		String: "a text so long that it lies across every seam of the sheets from the one side to the other side of them",
	})
	return b.Drawing
}

// density of the pictures, in pixels to a millimetre.
const density = 4.0

// painted paints a drawing with its place corner at the picture's lower left.
func painted(d *render.Drawing, corner geometry.Point, width, height float64) *image.RGBA {
	dst := image.NewRGBA(image.Rect(0, 0, int(width*density), int(height*density)))
	v := screen.View{Scale: density, Origin: screen.Pixel{X: -corner.X * density, Y: float64(dst.Rect.Dy()) + corner.Y*density}}
	p := screen.Painter{Theme: screen.Light(), Printed: true}
	p.Paint(dst, changed(d, ruled), v)
	return dst
}

// ruled hatches waste with the lines that files have: the screen's own hatching
// keeps to whole pixels.
func ruled(it render.Item) []render.Item {
	if it.Fill == render.Waste {
		return blackened(it)
	}
	return []render.Item{it}
}

// Each tile's own part, cut out of its page, is pixel for pixel what the drawing
// shows there when it is laid out whole, register marks apart.
func TestTilesRejoinedAreTheDrawing(t *testing.T) {
	for _, row := range []struct {
		paper         string
		width, height float64
		scale         float64
	}{{"a4", 330, 300, 1}, {"letter", 250, 520, 50}, {"a3", 560, 330, 10}} {
		t.Run(row.paper, func(t *testing.T) {
			paper, err := ParsePaper(row.paper)
			require.NoError(t, err)
			d := patchwork(row.width, row.height, row.scale)
			p, err := Options{}.plan(Sheet{Drawing: d, Block: block}, paper, style)
			require.NoError(t, err)
			require.Greater(t, p.count(), 1)
			first := p.layout.free.Min.Sub(p.tiles[0].region.Min)
			settled := offSeams(d, p.tiles)
			whole := settled.Placed(first, 1, 0)
			for i, tile := range p.tiles {
				at := p.layout.free.Min.Sub(tile.region.Min)
				own := tile.own()
				if tile.columns > 1 || tile.rows > 1 {
					own = own.Grow(-1) // the sheet's own thin edge
				}
				want := painted(whole, own.Min.Add(first), own.Width(), own.Height())
				got := painted(p.page(i, "1", style).Drawing, own.Min.Add(at), own.Width(), own.Height())
				same(t, want, got, own, marks(settled, p.tiles, i), tile.name())
			}
		})
	}
}

// nearly is the difference, of 255, by which a pixel counts as the same: a tenth of
// it covered, 25.5, and a little for a filling's edge that shows through under a line's.
// Arcs that are cut at a tile's edge are made straight, to a tenth of a pixel, from there on.
const nearly = 30

// same compares two pictures of a box, register marks left out.
func same(t *testing.T, want, got *image.RGBA, box geometry.Box, marks []geometry.Point, name string) {
	require.Equal(t, want.Rect, got.Rect)
	inked := 0
	for y := range want.Rect.Dy() {
		for x := range want.Rect.Dx() {
			at := box.Min.Add(geometry.Point{X: (float64(x) + 0.5) / density, Y: (float64(want.Rect.Dy()-y) - 0.5) / density})
			if near(at, marks) {
				continue
			}
			i := want.PixOffset(x, y)
			for k := range 3 {
				a, b := int(want.Pix[i+k]), int(got.Pix[i+k])
				if a != 255 {
					inked++
				}
				if math.Abs(float64(a-b)) > nearly {
					require.Fail(t, "a tile differs", "%s at %v: %d, not %d", name, at, b, a)
				}
			}
		}
	}
	require.Greater(t, inked, 1000, "%s shows something", name)
}

func near(p geometry.Point, marks []geometry.Point) bool {
	for _, m := range marks {
		if math.Abs(p.X-m.X) < 4.5 && math.Abs(p.Y-m.Y) < 4.5 {
			return true
		}
	}
	return false
}
