package render_test

import (
	"io"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/dxf"
	"tipline/render/pdf"
	"tipline/render/svg"
)

// busyWheel is a wheel of 360 teeth with six windows, hatched, its tips numbered
// and dimensioned: as much as a page ever carries.
func busyWheel(tb testing.TB) *render.Drawing {
	const teeth = 360
	d := &render.Drawing{Title: "Busy wheel", Scale: 1}
	var outline []geometry.Vertex
	step := geometry.FullTurn / teeth
	for i := range teeth {
		at := geometry.Angle(i) * step
		outline = append(outline,
			geometry.Vertex{Point: geometry.Polar(86, at-step*0.25)},
			geometry.Vertex{Point: geometry.Polar(87.2, at-step*0.22), Bulge: 0.12},
			geometry.Vertex{Point: geometry.Polar(88, at), Bulge: 0.12},
			geometry.Vertex{Point: geometry.Polar(87.2, at+step*0.22)},
			geometry.Vertex{Point: geometry.Polar(86, at+step*0.25), Bulge: math.Tan(float64(step) / 8)})
	}
	wheel, err := geometry.NewOutline(outline)
	require.NoError(tb, err)
	d.Add(render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Brass, Outlines: []geometry.Outline{wheel}})
	for i := range 6 {
		turn := geometry.Angle(i) * geometry.FullTurn / 6
		window, err := geometry.NewOutline([]geometry.Vertex{
			{Point: geometry.Polar(78, -0.45), Bulge: math.Tan(0.9 / 4)},
			{Point: geometry.Polar(78, 0.45), Bulge: 0.4},
			{Point: geometry.Polar(76, 0.48)},
			{Point: geometry.Polar(20, 0.35), Bulge: -0.1},
			{Point: geometry.Polar(20, -0.35)},
			{Point: geometry.Polar(76, -0.48), Bulge: 0.4},
		})
		require.NoError(tb, err)
		d.Add(render.Item{Layer: render.LayerWindows, Pen: render.Visible, Fill: render.Waste, Outlines: []geometry.Outline{window.Rotate(turn)}})
		d.Add(render.CentreLine(geometry.Polar(5, turn), geometry.Polar(95, turn)))
		d.Add(render.Radius(geometry.Point{}, 78, turn, "R 78.00 mm")...)
	}
	for i := range 36 {
		at := geometry.Angle(i) * geometry.FullTurn / 36
		d.Add(render.Item{Layer: render.LayerText, Ink: render.Blue, Text: &render.Text{
			At: geometry.Polar(95, at), Height: 2.5,
			Align: render.Middle, Centred: true, String: "tip 120",
		}})
	}
	return d
}

func BenchmarkPDFOfTwelvePages(b *testing.B) {
	page := render.Page{Width: 210, Height: 297, Drawing: busyWheel(b).Placed(geometry.Point{X: 105, Y: 150}, 1, 0)}
	document := render.Document{Title: "Packet"}
	for range 12 {
		document.Pages = append(document.Pages, page)
	}
	for b.Loop() {
		require.NoError(b, pdf.Write(io.Discard, document))
	}
}

func BenchmarkSVG(b *testing.B) {
	d := busyWheel(b)
	for b.Loop() {
		require.NoError(b, svg.Write(io.Discard, d))
	}
}

func BenchmarkDXF(b *testing.B) {
	d := busyWheel(b)
	for b.Loop() {
		require.NoError(b, dxf.Write(io.Discard, d))
	}
}

func BenchmarkHatch(b *testing.B) {
	d := busyWheel(b)
	for b.Loop() {
		for i := range d.Items {
			d.Items[i].WasteLines()
		}
	}
}

func BenchmarkGlyphs(b *testing.B) {
	text := render.Text{Height: 2.5, Align: render.Middle, Centred: true, Turn: 0.3, String: "Third wheel, 84 teeth"}
	for b.Loop() {
		text.Glyphs()
	}
}

func BenchmarkTextWidth(b *testing.B) {
	text := render.Text{Height: 2.5, String: "Third wheel, 84 teeth"}
	for b.Loop() {
		text.Width()
	}
}

func BenchmarkBounds(b *testing.B) {
	d := busyWheel(b)
	for b.Loop() {
		d.Bounds()
	}
}
