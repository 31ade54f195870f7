//go:build outside

package render_test

import (
	"bytes"
	"math"
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

// laidSheet is the wheel and circle of the proof on a sheet of A4 as the packet
// lays it, with the sheet's own bars.
func laidSheet(t *testing.T) render.Page {
	d := proof(t)
	d.Items = d.Items[1:] // without the proof's own bars
	paper, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	style := template.Style{Words: words.English(), Units: measure.Units{Unit: measure.MM}}
	pages, err := sheet.Place(d, paper, sheet.TitleBlock{Job: "Proof"}, style)
	require.NoError(t, err)
	require.Len(t, pages, 1)
	return pages[0]
}

// ticks returns the end ticks of every bar of the sheet of that length.
func ticks(page render.Page, length float64) (found [][2]geometry.Segment) {
	var lines []geometry.Segment
	for _, it := range page.Drawing.Items {
		if it.Layer == render.LayerSheet {
			for _, c := range it.Chains {
				lines = append(lines, c.Segment(0))
			}
		}
	}
	for _, bar := range lines {
		if math.Abs(bar.Length()-length) > 1e-9 {
			continue
		}
		var ends [2]geometry.Segment
		for _, l := range lines {
			if square := math.Abs(l.To.Sub(l.From).Dot(bar.To.Sub(bar.From))) < 1e-6; square && l.Length() < 5 {
				if l.From.Dist(bar.From) < 1e-6 {
					ends[0] = l
				}
				if l.From.Dist(bar.To) < 1e-6 {
					ends[1] = l
				}
			}
		}
		found = append(found, ends)
	}
	return found
}

// bar measures from tick to tick.
func (p plate) bar(t *testing.T, ends [2]geometry.Segment) float64 {
	from, to := ends[0].From.Toward(ends[0].To, 0.6), ends[1].From.Toward(ends[1].To, 0.6)
	way := to.Sub(from).Times(0.5 / from.Dist(to)) // half a millimetre along the bar
	return from.Dist(to) + p.stroke(t, to.Sub(way), to.Add(way)) - p.stroke(t, from.Sub(way), from.Add(way))
}

func (p plate) measureSheet(t *testing.T, page render.Page) {
	for _, length := range []float64{100, 101.6} { // 100 mm and 4 in
		bars := ticks(page, length)
		require.Len(t, bars, 2, "a bar of %g mm each way", length)
		for _, ends := range bars {
			across := math.Abs(ends[1].From.X-ends[0].From.X) > 1
			shown := p.bar(t, ends)
			t.Logf("bar of %g mm, across %t: %.4f mm", length, across, shown)
			require.InDelta(t, length, shown, pixel)
		}
	}
	for _, it := range page.Drawing.Items {
		if it.Layer == render.LayerTeeth {
			centre := it.Outlines[0].Bounds().Centre()
			p.circle(t, centre)
			p.tips(t, centre)
			return
		}
	}
	require.Fail(t, "the sheet has lost its wheel")
}

func sheetPDF(t *testing.T, page render.Page) string {
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, render.Document{Title: "Proof", Pages: []render.Page{page}}))
	return kept(t, "sheet.pdf", b.Bytes())
}

func TestSheetIsFullScaleByPdftoppm(t *testing.T) {
	page := laidSheet(t)
	out := filepath.Join(t.TempDir(), "page")
	run(t, "pdftoppm", "-r", "1200", "-gray", "-singlefile", sheetPDF(t, page), out)
	plate{grey(t, out+".pgm"), point(0, 0)}.measureSheet(t, page)
}

func TestSheetIsFullScaleByMutool(t *testing.T) {
	page := laidSheet(t)
	out := filepath.Join(t.TempDir(), "page.pgm")
	run(t, "mutool", "draw", "-q", "-r", "1200", "-c", "gray", "-o", out, sheetPDF(t, page), "1")
	plate{grey(t, out), point(0, 0)}.measureSheet(t, page)
}
