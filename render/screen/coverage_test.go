package screen

import (
	"image"
	"image/color"
	"image/draw"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/image/vector"
	"pgregory.net/rapid"
)

// black on white, so that a pixel is 255 minus its coverage.
func painted(size image.Point, add func(*coverage)) *image.RGBA {
	dst := image.NewRGBA(image.Rectangle{Max: size})
	fill(dst.Pix, opaque(color.NRGBA{255, 255, 255, 255}))
	var c coverage
	c.begin(size)
	add(&c)
	c.paint(dst, plain(color.NRGBA{0, 0, 0, 255}))
	return dst
}

// The rasterizer of golang.org/x/image works the same coverage out in another
// way. A picture wider than 512 pixels has it work in floats; corners stand on 16ths
// of a pixel, for the other goes wrong next to coordinates of 1e-40.
func TestCoverageAgreesWithAnotherRasterizer(t *testing.T) {
	size := image.Pt(520, 60)
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 9).Draw(t, "corners")
		ps := make([]Pixel, n)
		for i := range ps {
			ps[i] = Pixel{
				float64(rapid.IntRange(-80*16, 600*16).Draw(t, "x")) / 16,
				float64(rapid.IntRange(-30*16, 90*16).Draw(t, "y")) / 16,
			}
		}
		ours := painted(size, func(c *coverage) { c.polygon(ps) })
		theirs := image.NewAlpha(image.Rectangle{Max: size})
		z := vector.NewRasterizer(size.X, size.Y)
		z.DrawOp = draw.Src
		z.MoveTo(float32(ps[0].X), float32(ps[0].Y))
		for _, p := range ps[1:] {
			z.LineTo(float32(p.X), float32(p.Y))
		}
		z.ClosePath()
		z.Draw(theirs, theirs.Rect, image.Opaque, image.Point{})
		for y := range size.Y {
			for x := range size.X {
				if off := 255 - int(theirs.Pix[y*theirs.Stride+x]) - int(ours.Pix[4*(y*size.X+x)]); off < -3 || off > 3 {
					t.Fatalf("pixel %d %d is off by %d", x, y, off)
				}
			}
		}
	})
}

func TestASquareCoversItsAreaExactly(t *testing.T) {
	dst := painted(image.Pt(40, 20), func(c *coverage) {
		c.polygon([]Pixel{{3.25, 2}, {30.5, 2}, {30.5, 9.5}, {3.25, 9.5}})
	})
	for _, row := range []struct {
		x, y int
		dark float64
	}{
		{2, 5, 0}, {3, 5, 0.75}, {4, 5, 1}, {29, 5, 1}, {30, 5, 0.5}, {31, 5, 0}, {10, 1, 0}, {10, 9, 0.5}, {30, 9, 0.25}, {10, 10, 0},
	} {
		require.InDelta(t, 255*(1-row.dark), float64(dst.RGBAAt(row.x, row.y).R), 2, "%d %d", row.x, row.y)
	}
}

func TestNothingIsLeftForTheNextShape(t *testing.T) {
	size := image.Pt(64, 32)
	dst := image.NewRGBA(image.Rectangle{Max: size})
	var c coverage
	for range 3 {
		c.begin(size)
		c.polygon([]Pixel{{-50, -10}, {200, 5}, {60, 70}, {10, 20}})
		c.paint(dst, plain(color.NRGBA{0, 0, 0, 255}))
	}
	for _, cell := range c.cells {
		require.Zero(t, cell)
	}
	for _, word := range c.touched {
		require.Zero(t, word)
	}
}

func TestMixGoesTheWholeWay(t *testing.T) {
	from, to := opaque(color.NRGBA{10, 200, 30, 255}), opaque(color.NRGBA{250, 0, 99, 255})
	require.Equal(t, from, mix(from, to, 0))
	require.Equal(t, to, mix(from, to, 256))
	half := mix(from, to, 128)
	require.InDelta(t, 130, float64(half&0xff), 1)
	require.InDelta(t, 100, float64(half>>8&0xff), 1)
	require.InDelta(t, 64, float64(half>>16&0xff), 1)
	require.Equal(t, uint32(0xff), half>>24)
}
