package sheet

import (
	"context"
	"fmt"
	"io"
	"runtime"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/template"
)

// busy returns sheets as a packet has them: wheels of many teeth with hatched
// windows, and cards full of lettering, by turns.
func busy(tb testing.TB, count int) []Sheet {
	sheets := make([]Sheet, count)
	for i := range sheets {
		b := template.NewBoard("wheel", style)
		b.Drawing.Title = fmt.Sprint("Sheet ", i)
		if i%2 == 0 {
			busyWheel(tb, b, 60+i)
		} else {
			busyCard(b)
		}
		sheets[i] = Sheet{Drawing: b.Drawing, Block: block}
	}
	return sheets
}

func busyWheel(tb testing.TB, b *template.Board, teeth int) {
	var rim []geometry.Vertex
	for i := range teeth {
		way := geometry.FullTurn * geometry.Angle(i) / geometry.Angle(teeth)
		step := geometry.FullTurn / geometry.Angle(teeth)
		rim = append(rim, geometry.Vertex{Point: geometry.Polar(60, way), Bulge: 0.12},
			geometry.Vertex{Point: geometry.Polar(57, way+step*0.2)}, geometry.Vertex{Point: geometry.Polar(55, way+step*0.3), Bulge: 0.02},
			geometry.Vertex{Point: geometry.Polar(55, way+step*0.7)}, geometry.Vertex{Point: geometry.Polar(57, way+step*0.8), Bulge: 0.12})
		b.Line(template.Stroke{Layer: render.LayerCentreLines, Pen: render.Hair, Ink: render.Blue}, geometry.Line{From: geometry.Polar(61, way), To: geometry.Polar(63, way)})
	}
	outline, err := geometry.NewOutline(rim)
	require.NoError(tb, err)
	b.Closed(template.Stroke{Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Brass}, outline)
	for i := range 6 {
		b.Circle(template.Stroke{Layer: render.LayerWindows, Pen: render.Visible, Fill: render.Waste}, geometry.Polar(34, geometry.Degrees(float64(60*i))), 15)
		b.Circle(template.Stroke{Layer: render.LayerSawLine, Pen: render.Hidden}, geometry.Polar(34, geometry.Degrees(float64(60*i))), 14.6)
	}
}

func busyCard(b *template.Board) {
	b.Drawing.Scale = 0
	for i := range 150 {
		at := geometry.Point{X: float64(i%5) * 34, Y: float64(i/5) * -4.5}
		b.Write(template.Stroke{Layer: render.LayerText}, render.Text{At: at, Height: 2.5, String: fmt.Sprintf("%d  %d° %02d′ 00″", i, i*3, i%60)})
	}
}

// BenchmarkTwelvePages lays out and writes a packet: BenchmarkWriterAlone is the
// same without the laying out.
func BenchmarkTwelvePages(b *testing.B) {
	sheets := busy(b, 12)
	for b.Loop() {
		pages, err := Lay(sheets, Papers()[0], style)
		require.NoError(b, err)
		require.NoError(b, pdf.Write(io.Discard, render.Document{Pages: pages}))
	}
}

func BenchmarkWriterAlone(b *testing.B) {
	pages, err := Lay(busy(b, 12), Papers()[0], style)
	require.NoError(b, err)
	for b.Loop() {
		require.NoError(b, pdf.Write(io.Discard, render.Document{Pages: pages}))
	}
}

// What is held while a page is written, most of it the drawings themselves, does
// not grow with the copies written before it.
func BenchmarkMemoryOf12Pages(b *testing.B)  { memory(b, 1) }
func BenchmarkMemoryOf120Pages(b *testing.B) { memory(b, 10) }

func memory(b *testing.B, copies int) {
	sheets := slices.Repeat(busy(b, 12), copies)
	most := uint64(0)
	for b.Loop() {
		run, err := Plan(context.Background(), sheets, Papers()[0], style, Options{Progress: func(done, total int) {
			if done != total {
				return
			}
			var m runtime.MemStats
			runtime.GC()
			runtime.ReadMemStats(&m)
			most = max(most, m.HeapAlloc)
		}})
		require.NoError(b, err)
		require.NoError(b, pdf.WriteEach(io.Discard, render.Document{}, run.Pages(context.Background())))
	}
	b.ReportMetric(float64(most)/1e6, "MB-held")
}

func BenchmarkTogether(b *testing.B) {
	var sheets []Sheet
	for i := range 40 {
		sheets = append(sheets, slices.Repeat([]Sheet{{Drawing: plate(float64(40+i), 40, 1), Block: block}}, 5)...)
	}
	for b.Loop() {
		_, err := LayContext(context.Background(), sheets, Papers()[0], style, Options{Together: true})
		require.NoError(b, err)
	}
}
