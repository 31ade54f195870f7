package screen

import (
	"image"
	"image/color"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// quartered is a photograph whose quarters are white, red, green and black, clockwise
// from the upper left.
func quartered(width, height int) *image.RGBA {
	img := image.NewRGBA(image.Rect(0, 0, width, height))
	colours := [2][2]color.RGBA{{{255, 255, 255, 255}, {255, 0, 0, 255}}, {{0, 0, 0, 255}, {0, 255, 0, 255}}}
	for y := range height {
		for x := range width {
			img.SetRGBA(x, y, colours[2*y/height][2*x/width])
		}
	}
	return img
}

func photographed(img image.Image, s render.Similarity) *render.Drawing {
	return &render.Drawing{Scale: 1, Items: []render.Item{{Layer: render.LayerPhotograph, Picture: &render.Picture{Image: img, Transform: s}}}}
}

// fadedTo is a brightness of the photograph as it is seen.
func fadedTo(c int) int { return (c*(256-pale) + 255*pale) / 256 }

func TestAPhotographIsSeenWhereItLies(t *testing.T) {
	const white, red, green, black = 0, 1, 2, 3
	want := [4]int{255, 77, 150, 0} // red and green by ITU-R BT.601: 0.299 and 0.587 of white
	for _, row := range []struct {
		name          string
		width, height int
		turn          float64
		upperLeft     int
		zoom          float64
	}{
		{"as it is", 200, 200, 0, white, 1},
		{"turned a quarter anticlockwise", 200, 200, 90, red, 1},
		{"turned over", 200, 200, 180, green, 1},
		{"large and seen small", 3000, 3000, 0, white, 1},
		{"small and seen large", 20, 20, -90, black, 3},
	} {
		t.Run(row.name, func(t *testing.T) {
			scale := 40 / float64(row.width) // the photograph is 40 mm wide
			d := photographed(quartered(row.width, row.height), render.Similarity{
				Scale: scale, Turn: geometry.Degrees(row.turn), Pixel: geometry.Point{X: float64(row.width) / 2, Y: float64(row.height) / 2},
			})
			dst := image.NewRGBA(image.Rect(0, 0, 400, 420))
			p, v := Painter{Theme: Light()}, View{4 * row.zoom, Pixel{200, 210}}
			p.Paint(dst, d, v)
			for i, corner := range []geometry.Point{{X: -8, Y: 8}, {X: 8, Y: 8}, {X: 8, Y: -8}, {X: -8, Y: -8}} {
				c := at(dst, v, corner.Times(1/row.zoom))
				require.InDelta(t, fadedTo(want[(row.upperLeft+i)%4]), int(c.R), 2, "corner %d", i)
				require.Equal(t, [2]uint8{c.R, c.R}, [2]uint8{c.G, c.B}, "grey")
			}
			if row.zoom == 1 {
				require.Equal(t, p.Theme.Paper, at(dst, v, geometry.Point{X: 30}), "beside it there is paper")
			}
		})
	}
}

// The edge between two halves of a photograph is seen to a fraction of a pixel
// where it lies, however small the photograph is seen.
func TestAPhotographDoesNotShiftAsItIsSeenSmaller(t *testing.T) {
	d := photographed(quartered(2048, 2048), render.Similarity{Scale: 0.01, Pixel: geometry.Point{X: 1024, Y: 1024}})
	for _, zoom := range []float64{200, 100, 50, 23, 11} {
		dst := image.NewRGBA(image.Rect(0, 0, 100, 60))
		p, v := Painter{Theme: Light()}, View{zoom, Pixel{50, 70}}
		p.Paint(dst, d, v)
		white := 0.0
		for x := 45; x < 55; x++ {
			white += (float64(dst.RGBAAt(x, 45).R) - float64(fadedTo(77))) / float64(fadedTo(255)-fadedTo(77))
		}
		require.InDelta(t, 5, white, 0.15, "%v pixels to the millimetre", zoom)
	}
}

func TestLinesLieOnThePhotographAndClicksPassIt(t *testing.T) {
	d := photographed(quartered(100, 100), render.Similarity{Scale: 1, Pixel: geometry.Point{X: 50, Y: 50}})
	disc, err := geometry.Circle(geometry.Point{}, 10, "")
	require.NoError(t, err)
	d.Items = append([]render.Item{{Layer: render.LayerStock, Fill: render.Steel, Outlines: []geometry.Outline{disc}}}, d.Items...)
	dst := image.NewRGBA(image.Rect(0, 0, 200, 200))
	p, v := Painter{Theme: Light()}, View{2, Pixel{100, 100}}
	p.Paint(dst, d, v)
	require.Equal(t, p.Theme.Steel, at(dst, v, geometry.Point{}))
	_, found := Find(d, v, Pixel{30, 30}, 1000)
	require.False(t, found)
	bare := Painter{Theme: Light(), Bare: true}
	bare.Paint(dst, d, v)
	require.Equal(t, p.Theme.Paper, at(dst, v, geometry.Point{X: 30, Y: 30}), "a small picture leaves it out")
}

// What is odd in size, a line of pixels, or see-through is painted without harm.
func TestOddPhotographs(t *testing.T) {
	for _, size := range []image.Point{{1, 1}, {1, 50}, {50, 1}, {2, 2}, {65, 129}} {
		d := photographed(image.NewRGBA(image.Rectangle{Max: size}), render.Similarity{Scale: 1})
		for _, zoom := range []float64{widest, 1, closest} {
			dst := image.NewRGBA(image.Rect(0, 0, 64, 64))
			p := Painter{Theme: Light()}
			p.Paint(dst, d, View{zoom, Pixel{20, 20}})
			require.Equal(t, p.Theme.Paper, color.NRGBA(dst.RGBAAt(40, 40)), "see-through is paper")
		}
	}
}

func TestAPhotographIsReadOnce(t *testing.T) {
	img := quartered(300, 300)
	dst := image.NewRGBA(image.Rect(0, 0, 100, 100))
	p := Painter{Theme: Light()}
	p.Paint(dst, photographed(img, render.Similarity{Scale: 0.1}), View{2, Pixel{}})
	known := p.photos.find(img)
	p.Paint(dst, photographed(img, render.Similarity{Scale: 0.2}), View{2, Pixel{}})
	require.Same(t, known, p.photos.find(img), "though the drawing is another")
	p.Paint(dst, &render.Drawing{}, View{2, Pixel{}})
	require.Nil(t, p.photos.find(img), "and forgotten when no drawing has it")
}

func BenchmarkPhotographOf12Megapixels(b *testing.B) {
	d := photographed(quartered(4000, 3000), render.Similarity{Scale: 0.01, Turn: 0.1, Pixel: geometry.Point{X: 2000, Y: 1500}})
	dst := image.NewRGBA(image.Rect(0, 0, 1600, 1000))
	p, v := Painter{Theme: Light()}, View{50, Pixel{800, 500}}
	p.Paint(dst, d, v)
	for b.Loop() {
		v = v.Zoom(1.001, Pixel{700, 400}).Pan(1, 0)
		p.Paint(dst, d, v)
	}
}

func BenchmarkReading12Megapixels(b *testing.B) {
	img := image.NewYCbCr(image.Rect(0, 0, 4000, 3000), image.YCbCrSubsampleRatio420)
	for b.Loop() {
		newPhoto(img)
	}
}
