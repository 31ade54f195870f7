package screen

import (
	"image"
	"image/color"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

var whole = geometry.Box{Min: geometry.Point{X: -46, Y: -46}, Max: geometry.Point{X: 46, Y: 46}}

func at(dst *image.RGBA, v View, p geometry.Point) color.NRGBA {
	q := v.ToPixel(p)
	return color.NRGBA(dst.RGBAAt(int(q.X), int(q.Y)))
}

func TestAWheelIsPaintedWhereItIs(t *testing.T) {
	dst := image.NewRGBA(image.Rect(0, 0, 900, 900))
	p, v := Painter{Theme: Light()}, Fit(whole, 900, 900, 10)
	p.Paint(dst, crossed(t, 60), v)
	require.Equal(t, p.Theme.Brass, at(dst, v, geometry.Polar(36, geometry.Degrees(33))), "rim")
	require.Equal(t, p.Theme.Brass, at(dst, v, geometry.Polar(9, geometry.Degrees(33))), "hub")
	require.Equal(t, p.Theme.Paper, at(dst, v, geometry.Polar(2, geometry.Degrees(33))), "bore")
	require.Equal(t, p.Theme.Paper, at(dst, v, geometry.Point{X: 45, Y: 45}), "beside the wheel")
	dark := at(dst, v, geometry.Polar(34, geometry.Degrees(33)))
	require.Less(t, int(dark.R), 120, "the rim's line")
	hatched, bare := 0, 0
	for i := range 100 {
		if at(dst, v, geometry.Polar(15+float64(i)*0.15, geometry.Degrees(30))) == p.Theme.Paper {
			bare++
		} else {
			hatched++
		}
	}
	require.Greater(t, hatched, 10)
	require.Greater(t, bare, 40)
}

func TestOutlinesWithinOutlinesAreHoles(t *testing.T) {
	var outlines []geometry.Outline
	for _, r := range []float64{40, 30, 20, 10} {
		o, err := geometry.Circle(geometry.Point{}, r, "")
		require.NoError(t, err)
		outlines = append(outlines, o)
	}
	outlines[2] = outlines[2].Reverse()
	d := &render.Drawing{Items: []render.Item{{Layer: render.LayerTeeth, Fill: render.Brass, Outlines: outlines}}}
	dst := image.NewRGBA(image.Rect(0, 0, 500, 500))
	p, v := Painter{Theme: Light()}, Fit(whole, 500, 500, 0)
	p.Paint(dst, d, v)
	for r, want := range map[float64]color.NRGBA{35: p.Theme.Brass, 25: p.Theme.Paper, 15: p.Theme.Brass, 5: p.Theme.Paper} {
		require.Equal(t, want, at(dst, v, geometry.Point{X: r}), "%v", r)
	}
}

func TestLitLinesAreHeavierAndOfTheirColour(t *testing.T) {
	dst := image.NewRGBA(image.Rect(0, 0, 900, 900))
	p, v := Painter{Theme: Light(), Lit: Lit{"wheel", "crossing.rim"}}, Fit(whole, 900, 900, 10)
	d := crossed(t, 60)
	p.Paint(dst, d, v)
	require.Equal(t, p.Theme.Lit, at(dst, v, geometry.Polar(34, geometry.Degrees(25))))
	require.NotEqual(t, p.Theme.Lit, at(dst, v, geometry.Polar(12, geometry.Degrees(25))), "the hub is not lit")
	p.Lit.Part = "other"
	p.Paint(dst, d, v)
	require.NotEqual(t, p.Theme.Lit, at(dst, v, geometry.Polar(34, geometry.Degrees(25))))
}

func TestLayersLieInTheirOrder(t *testing.T) {
	disc := func(layer render.Layer, fill render.Fill) render.Item {
		o, err := geometry.Circle(geometry.Point{}, 20, "")
		require.NoError(t, err)
		return render.Item{Layer: layer, Fill: fill, Outlines: []geometry.Outline{o}}
	}
	d := &render.Drawing{Items: []render.Item{disc(render.LayerBore, render.Steel), disc(render.LayerTeeth, render.Brass)}}
	dst := image.NewRGBA(image.Rect(0, 0, 200, 200))
	p, v := Painter{Theme: Light()}, Fit(whole, 200, 200, 0)
	p.Paint(dst, d, v)
	require.Equal(t, p.Theme.Steel, at(dst, v, geometry.Point{}))
}

func TestFarAndNearViewsArePainted(t *testing.T) {
	d := crossed(t, 60)
	dst := image.NewRGBA(image.Rect(0, 0, 300, 200))
	p := Painter{Theme: Light()}
	for _, scale := range []float64{widest, 1, closest} {
		p.Paint(dst, d, View{scale, Pixel{150, 100 + 36*scale}})
	}
	require.Equal(t, p.Theme.Brass, color.NRGBA(dst.RGBAAt(150, 60)), "within the rim, where a millimetre is wider than the picture")
	p.Paint(dst, d, View{4, Pixel{-5000, 40}})
	for i := range dst.Pix {
		require.Equal(t, uint8(255), dst.Pix[i])
	}
}

// What a small picture shows is what a large one shows there: leaving out what
// lies beside the picture leaves no trace.
func TestAPictureShowsWhatALargerOneShowsThere(t *testing.T) {
	d := crossed(t, 60)
	large, small := image.NewRGBA(image.Rect(0, 0, 900, 900)), image.NewRGBA(image.Rect(0, 0, 200, 150))
	p := Painter{Theme: Light(), Lit: Lit{"wheel", "crossing.rim"}}
	v := Fit(whole, 900, 900, 10)
	p.Paint(large, d, v)
	for _, corner := range []image.Point{{0, 0}, {350, 20}, {420, 400}, {620, 333}, {700, 750}, {111, 500}} {
		p.Paint(small, d, v.Pan(float64(-corner.X), float64(-corner.Y)))
		for y := range 150 {
			for x := range 200 {
				want, got := large.RGBAAt(x+corner.X, y+corner.Y), small.RGBAAt(x, y)
				if off(want.R, got.R)+off(want.B, got.B) > 8 {
					t.Fatalf("%v: pixel %d %d is %v, not %v", corner, x, y, got, want)
				}
			}
		}
	}
}

func off(a, b uint8) int { return max(int(a)-int(b), int(b)-int(a)) }

func TestTextIsWrittenAndHeldSmall(t *testing.T) {
	text := func(height float64) *render.Drawing {
		return &render.Drawing{Items: []render.Item{{Layer: render.LayerText, Text: &render.Text{Height: height, String: "I"}}}}
	}
	dst := image.NewRGBA(image.Rect(0, 0, 200, 200))
	v := View{10, Pixel{20, 180}}
	for _, row := range []struct {
		name    string
		height  float64
		printed bool
		rows    int
	}{
		{"small", 1, false, 10},
		{"large, held", 9, false, mostLetters},
		{"large, printed", 9, true, 90},
		{"too small to read", 0.2, false, 0},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := Painter{Theme: Light(), Printed: row.printed}
			p.Paint(dst, text(row.height), v)
			rows := 0
			for y := range 200 {
				for x := range 200 {
					if dst.RGBAAt(x, y).R < 128 {
						rows++
						break
					}
				}
			}
			require.InDelta(t, row.rows, rows, 1)
		})
	}
}

func TestASheetLiesOnATable(t *testing.T) {
	dst := image.NewRGBA(image.Rect(0, 0, 300, 300))
	sheet := geometry.Box{Max: geometry.Point{X: 100, Y: 50}}
	p, v := Painter{Theme: Light(), Sheet: sheet}, Fit(sheet, 300, 300, 20)
	p.Paint(dst, &render.Drawing{}, v)
	require.Equal(t, p.Theme.Table, color.NRGBA(dst.RGBAAt(150, 20)))
	require.Equal(t, p.Theme.Paper, color.NRGBA(dst.RGBAAt(150, 150)))
}

func TestDashesHaveGaps(t *testing.T) {
	line := geometry.Line{From: geometry.Point{X: -40}, To: geometry.Point{X: 40}}
	d := &render.Drawing{Items: []render.Item{{Layer: render.LayerSawLine, Pen: render.Hidden, Chains: []geometry.Chain{geometry.ChainOf(line.Segment())}}}}
	dst := image.NewRGBA(image.Rect(0, 0, 400, 21))
	p := Painter{Theme: Light()}
	p.Paint(dst, d, View{4, Pixel{200, 10.5}})
	changes, inked := 0, false
	for x := range 400 {
		if now := dst.RGBAAt(x, 10).R < 128; now != inked {
			changes, inked = changes+1, now
		}
	}
	width := p.penWidth(render.Hidden, 4)
	period := (1.5 + 0.75) * width / render.Hidden.Width()
	require.InDelta(t, 2*320/period, changes, 3)
}

// A broken line that is lit is broken where it was, on a halo without a gap.
func TestALitBrokenLineKeepsItsGaps(t *testing.T) {
	line := geometry.Line{From: geometry.Point{X: -40}, To: geometry.Point{X: 40}}
	d := &render.Drawing{Items: []render.Item{{
		Part: "wheel", Quantity: "infeed", Layer: render.LayerCentreLines, Pen: render.Centre, Ink: render.Blue,
		Chains: []geometry.Chain{geometry.ChainOf(line.Segment())},
	}}}
	dst, v := image.NewRGBA(image.Rect(0, 0, 400, 21)), View{4, Pixel{200, 10.5}}
	marks := func(p Painter) (at []bool) {
		p.Paint(dst, d, v)
		for x := 45; x < 355; x++ {
			at = append(at, dst.RGBAAt(x, 10).R < 128)
		}
		return at
	}
	plain := marks(Painter{Theme: Light()})
	lit := Painter{Theme: Light(), Lit: Lit{"wheel", "infeed"}}
	require.Contains(t, plain, false)
	shifted := 0
	for i, mark := range marks(lit) {
		if mark != plain[i] {
			shifted++
		}
		require.NotEqual(t, lit.Theme.Paper, color.NRGBA(dst.RGBAAt(45+i, 10)), "a gap in the halo")
	}
	require.Contains(t, marks(lit), false)
	require.Less(t, shifted, len(plain)/2)
}

func TestPaintingAgainAllocatesNothing(t *testing.T) {
	d, dst := crossed(t, 360), image.NewRGBA(image.Rect(0, 0, 800, 600))
	p, v := Painter{Theme: Light(), Lit: Lit{"wheel", "crossing.rim"}}, Fit(whole, 800, 600, 20)
	p.Paint(dst, d, v)
	require.LessOrEqual(t, testing.AllocsPerRun(3, func() { p.Paint(dst, d, v) }), 10.0)
}

func BenchmarkPaint360Teeth(b *testing.B) {
	d := crossed(b, 360)
	dst := image.NewRGBA(image.Rect(0, 0, 1600, 1000))
	p := Painter{Theme: Light(), Lit: Lit{"wheel", "crossing.rim"}}
	v := Fit(whole, 1600, 1000, 20)
	p.Paint(dst, d, v)
	b.ReportAllocs()
	for b.Loop() {
		p.Paint(dst, d, v)
	}
}
