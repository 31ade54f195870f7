//go:build outside

package render_test

import (
	"bytes"
	"fmt"
	"image"
	"image/color"
	"image/png"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/svg"
)

// The drawing that is measured, in millimetres: two bars of 100 mm, a circle of
// 80 mm, and in it a wheel of 60 pointed teeth, 60 mm from tip to tip.
const (
	side      = 124.0 // of the sheet
	barFrom   = 12.0
	barTo     = 112.0
	barAt     = 6.0
	middle    = 68.0
	radius    = 40.0
	tipRadius = 30.0
	dpi       = 1200.0
	pixel     = 25.4 / dpi // millimetres
)

func point(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }

func proof(t *testing.T) *render.Drawing {
	d := &render.Drawing{Title: "Proof", Scale: 1}
	line := func(a, b geometry.Point) geometry.Chain {
		return geometry.ChainOf(geometry.Segment{From: a, To: b})
	}
	d.Add(render.Item{Layer: render.LayerSheet, Pen: render.Thin, Chains: []geometry.Chain{
		line(point(barFrom, barAt-3), point(barFrom, barAt+3)), line(point(barTo, barAt-3), point(barTo, barAt+3)),
		line(point(barAt-3, barFrom), point(barAt+3, barFrom)), line(point(barAt-3, barTo), point(barAt+3, barTo)),
	}})
	circle, err := geometry.Circle(point(middle, middle), radius, "")
	require.NoError(t, err)
	var star []geometry.Vertex
	for i := range 60 {
		at := geometry.Clock(geometry.Angle(i) * geometry.FullTurn / 60)
		star = append(star, geometry.Vertex{Point: geometry.Polar(tipRadius, at)},
			geometry.Vertex{Point: geometry.Polar(tipRadius-3, at-geometry.FullTurn/120)})
	}
	wheel, err := geometry.NewOutline(star)
	require.NoError(t, err)
	d.Add(render.Item{
		Layer: render.LayerTeeth, Pen: render.Visible,
		Outlines: []geometry.Outline{circle, wheel.Move(point(middle, middle))},
	})
	return d
}

// run runs a program from outside. One that is not there fails the test, because
// then nothing has been checked.
func run(t *testing.T, name string, arguments ...string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	require.NoError(t, err, "the check of full scale needs the program %s; install poppler-utils, mupdf-tools, librsvg2-bin and qpdf", name)
	var faults bytes.Buffer
	command := exec.Command(path, arguments...)
	command.Stderr = &faults
	out, err := command.Output()
	require.NoError(t, err, "%s: %s", name, faults.String())
	return string(out)
}

func proofPDF(t *testing.T) string {
	d := proof(t)
	d.Add(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(44, 66), Height: 3.5, String: "Zähne 5°30′ Ø 8"}})
	d.Add(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(44, 60), Height: 3.5, Bold: true, String: "Third wheel"}})
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, render.Document{
		Title: "Proof", Language: "en",
		Pages: []render.Page{{Width: side, Height: side, Drawing: d}},
	}))
	return kept(t, "proof.pdf", b.Bytes())
}

func kept(t *testing.T, name string, data []byte) string {
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, data, 0o600))
	return path
}

// grey reads a binary PGM.
func grey(t *testing.T, path string) *image.Gray {
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	var width, height, most int
	_, err = fmt.Sscanf(string(data[:min(len(data), 60)]), "P5\n%d %d\n%d\n", &width, &height, &most)
	require.NoError(t, err)
	require.Equal(t, 255, most)
	require.Greater(t, len(data), width*height)
	return &image.Gray{Pix: data[len(data)-width*height:], Stride: width, Rect: image.Rect(0, 0, width, height)}
}

// plate is a picture of the drawing at 1200 dpi with the place of its lower left
// corner on the drawing.
type plate struct {
	image.Image
	corner geometry.Point
}

// dark returns how much ink lies at a place of the drawing, 0 to 1, between the
// pixels' middles.
func (p plate) dark(at geometry.Point) float64 {
	x := (at.X-p.corner.X)/pixel - 0.5
	y := float64(p.Bounds().Dy()) - (at.Y-p.corner.Y)/pixel - 0.5
	i, j := int(math.Floor(x)), int(math.Floor(y))
	fx, fy := x-float64(i), y-float64(j)
	ink := func(i, j int) float64 {
		return 1 - float64(color.GrayModel.Convert(p.At(i, j)).(color.Gray).Y)/255
	}
	return (ink(i, j)*(1-fx)+ink(i+1, j)*fx)*(1-fy) + (ink(i, j+1)*(1-fx)+ink(i+1, j+1)*fx)*fy
}

// stroke returns where the middle of a line lies on the way from one place to
// another that crosses it, in millimetres from the first.
func (p plate) stroke(t *testing.T, from, to geometry.Point) float64 {
	const steps = 8 // in a pixel
	length := from.Dist(to)
	count := math.Ceil(length / pixel * steps)
	ink, moment := 0.0, 0.0
	for i := 0.0; i <= count; i++ {
		dark := p.dark(from.Toward(to, i/count))
		ink += dark
		moment += dark * i / count * length
	}
	require.Greater(t, ink, float64(steps), "no line between %v and %v", from, to)
	return moment / ink
}

// edge returns where the ink begins on the way, in millimetres from its start.
func (p plate) edge(t *testing.T, from, to geometry.Point) float64 {
	length := from.Dist(to)
	count := math.Ceil(length / pixel * 8)
	for i := 0.0; i <= count; i++ {
		if p.dark(from.Toward(to, i/count)) >= 0.5 {
			return i / count * length
		}
	}
	require.Fail(t, "no ink", "between %v and %v", from, to)
	return 0
}

// measure checks bars, circle and tips to one pixel.
func (p plate) measure(t *testing.T) {
	p.bars(t)
	p.circle(t, point(middle, middle))
	p.tips(t, point(middle, middle))
}

func (p plate) bars(t *testing.T) {
	at := func(x, y float64) (across, up float64) {
		across = p.stroke(t, point(x-0.5, y), point(x+0.5, y)) + x - 0.5
		up = p.stroke(t, point(y, x-0.5), point(y, x+0.5)) + x - 0.5
		return across, up
	}
	left, low := at(barFrom, barAt)
	right, high := at(barTo, barAt)
	t.Logf("bars: %.4f mm across, %.4f mm up", right-left, high-low)
	require.InDelta(t, barTo-barFrom, right-left, pixel)
	require.InDelta(t, barTo-barFrom, high-low, pixel)
}

// circle measures the circle at every second degree: across, up, and how far from
// round.
func (p plate) circle(t *testing.T, centre geometry.Point) {
	var at [180]geometry.Point
	for i := range at {
		way := geometry.Degrees(float64(2 * i))
		from := centre.Add(geometry.Polar(radius-0.5, way))
		at[i] = geometry.Polar(radius-0.5+p.stroke(t, from, centre.Add(geometry.Polar(radius+0.5, way))), way)
	}
	across, up := at[0].Dist(at[90]), at[45].Dist(at[135])
	least, most := math.Inf(1), 0.0
	for i := range 90 {
		diameter := at[i].Dist(at[i+90])
		least, most = min(least, diameter), max(most, diameter)
	}
	t.Logf("circle: %.4f mm across, %.4f mm up, %.4f to %.4f mm every way", across, up, least, most)
	require.InDelta(t, 2*radius, across, pixel)
	require.InDelta(t, 2*radius, up, pixel)
	require.InDelta(t, 2*radius, least, pixel)
	require.InDelta(t, 2*radius, most, pixel)
}

// tips measures over opposite tips, whose ink stands half a pen proud.
func (p plate) tips(t *testing.T, centre geometry.Point) {
	pen := render.Visible.Width()
	for _, tip := range []int{0, 7, 15, 22} {
		way := geometry.Clock(geometry.Angle(tip) * geometry.FullTurn / 60)
		out := geometry.Polar(1, way)
		over := 2 * (tipRadius + 2)
		over -= p.edge(t, centre.Add(out.Times(tipRadius+2)), centre)
		over -= p.edge(t, centre.Sub(out.Times(tipRadius+2)), centre)
		t.Logf("tip %d to %d: %.4f mm", tip, tip+30, over-pen)
		require.InDelta(t, 2*tipRadius, over-pen, pixel)
	}
}

func TestFullScaleByPdftoppm(t *testing.T) {
	out := filepath.Join(t.TempDir(), "page")
	run(t, "pdftoppm", "-r", "1200", "-gray", "-singlefile", proofPDF(t), out)
	plate{grey(t, out+".pgm"), point(0, 0)}.measure(t)
}

func TestFullScaleByMutool(t *testing.T) {
	out := filepath.Join(t.TempDir(), "page.pgm")
	run(t, "mutool", "draw", "-q", "-r", "1200", "-c", "gray", "-o", out, proofPDF(t), "1")
	plate{grey(t, out), point(0, 0)}.measure(t)
}

// Letters are as tall and as wide on the page as the drawing takes them to be. Not
// by pdftoppm, which sets letters on whole pixels.
func TestLettersAreFullScale(t *testing.T) {
	text := render.Text{At: point(10, 20), Height: 20, Bold: true, String: "HAVAH"}
	d := &render.Drawing{Scale: 1}
	d.Add(render.Item{Layer: render.LayerText, Text: &text})
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, render.Document{Pages: []render.Page{{Width: side, Height: 60, Drawing: d}}}))
	out := filepath.Join(t.TempDir(), "page.pgm")
	run(t, "mutool", "draw", "-q", "-r", "1200", "-c", "gray", "-o", out, kept(t, "letters.pdf", b.Bytes()), "1")
	p, ink := plate{grey(t, out), point(0, 0)}, text.Bounds()
	row := func(from, to float64) float64 { return p.edge(t, point(from, 22), point(to, 22)) }
	require.InDelta(t, ink.Min.X, 5+row(5, 60), pixel)
	require.InDelta(t, ink.Max.X, 120-row(120, 60), pixel)
	stem := ink.Min.X + 1
	require.InDelta(t, 20, 10+p.edge(t, point(stem, 10), point(stem, 30)), pixel)
	require.InDelta(t, 40, 50-p.edge(t, point(stem, 50), point(stem, 30)), pixel)
}

func TestFullScaleByRsvg(t *testing.T) { picture(t, proof(t)).measure(t) }

// picture draws a drawing by way of SVG.
func picture(t *testing.T, d *render.Drawing) plate {
	var b bytes.Buffer
	require.NoError(t, svg.Write(&b, d))
	out := filepath.Join(t.TempDir(), "drawing.png")
	run(t, "rsvg-convert", "-d", "1200", "-p", "1200", "-b", "white", "-o", out, kept(t, "drawing.svg", b.Bytes()))
	file, err := os.Open(out)
	require.NoError(t, err)
	drawn, err := png.Decode(file)
	require.NoError(t, err)
	require.NoError(t, file.Close())
	return plate{drawn, d.Bounds().Min.Sub(point(1, 1))} // the margin of a file
}

// The pattern that hatches waste in SVG has its lines where the PDF and the screen
// draw them.
func TestHatchingByRsvg(t *testing.T) {
	circle, err := geometry.Circle(point(7, 3), 10, "")
	require.NoError(t, err)
	waste := render.Item{Layer: render.LayerWindows, Fill: render.Waste, Outlines: []geometry.Outline{circle}}
	d := &render.Drawing{Scale: 1}
	d.Add(waste)
	p := picture(t, d)
	lines := waste.WasteLines()
	require.Greater(t, len(lines), 10)
	across := geometry.Polar(render.WasteSpacing/2, render.WasteAngle).Left()
	for _, l := range lines[1 : len(lines)-1] {
		middle := l.From.Toward(l.To, 0.5)
		require.Greater(t, p.dark(middle), 0.15)
		require.Less(t, p.dark(middle.Add(across)), 0.02)
	}
}
