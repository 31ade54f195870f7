//go:build outside

package render_test

import (
	"bytes"
	"context"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

// squeezed is a picture of a page with what a printer of the profile makes of it:
// a place is looked up where the stretched file has it.
type squeezed struct {
	plate
	x, y float64
}

func (s squeezed) file(p geometry.Point) geometry.Point {
	return geometry.Point{X: p.X * s.x, Y: p.Y * s.y}
}

// Of a corrected sheet, as poppler and MuPDF draw it, bars and circle are
// longer by what the printer takes off, each to one pixel.
func TestACorrectedSheetByPdftoppm(t *testing.T) {
	corrected(t, func(file, out string) {
		run(t, "pdftoppm", "-r", "1200", "-gray", "-singlefile", file, out[:len(out)-len(".pgm")])
	})
}

func TestACorrectedSheetByMutool(t *testing.T) {
	corrected(t, func(file, out string) {
		run(t, "mutool", "draw", "-q", "-r", "1200", "-c", "gray", "-o", out, file, "1")
	})
}

func corrected(t *testing.T, draw func(file, out string)) {
	paper, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	style := template.Style{Words: words.English(), Units: measure.Units{Unit: measure.MM}}
	profile, err := sheet.FromBars("Proof", "a4", sheet.BarMillimetres, 99.3, 100.9)
	require.NoError(t, err)
	pages, err := sheet.LayContext(context.Background(), []sheet.Sheet{sheet.TestSheet(paper, style)}, paper, style, sheet.Options{Profile: profile})
	require.NoError(t, err)
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, render.Document{Pages: pages}))
	out := filepath.Join(t.TempDir(), "page.pgm")
	draw(kept(t, "corrected.pdf", b.Bytes()), out)
	p := squeezed{plate{grey(t, out), point(0, 0)}, 1 / 0.993, 1 / 1.009}
	for _, length := range []float64{100, 101.6} {
		bars := ticks(pages[0], length)
		require.Len(t, bars, 2)
		for _, ends := range bars {
			by := p.y
			if ends[1].From.X-ends[0].From.X > 1 {
				by = p.x
			}
			for i := range ends {
				ends[i].From, ends[i].To = p.file(ends[i].From), p.file(ends[i].To)
			}
			shown := p.bar(t, ends)
			t.Logf("bar of %g mm: %.4f mm in the file", length, shown)
			require.InDelta(t, length*by, shown, pixel)
		}
	}
	p.round(t, pages[0])
}

// round measures the test sheet's circle across and up.
func (p squeezed) round(t *testing.T, page render.Page) {
	for _, it := range page.Drawing.Items {
		if it.Quantity != "sheet.test" {
			continue
		}
		box := it.Outlines[0].Bounds()
		centre, r := p.file(box.Centre()), box.Width()/2
		over := func(way geometry.Point, r float64) float64 {
			end := func(way geometry.Point) float64 {
				return r - 0.5 + p.stroke(t, centre.Add(way.Times(r-0.5)), centre.Add(way.Times(r+0.5)))
			}
			return end(way) + end(way.Times(-1))
		}
		across, up := over(point(1, 0), r*p.x), over(point(0, 1), r*p.y)
		t.Logf("circle of %g mm: %.4f mm across, %.4f mm up", 2*r, across, up)
		require.InDelta(t, 2*r*p.x, across, pixel)
		require.InDelta(t, 2*r*p.y, up, pixel)
		return
	}
	require.Fail(t, "the test sheet has no circle")
}
