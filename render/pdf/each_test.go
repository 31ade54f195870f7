package pdf

import (
	"bytes"
	"errors"
	"io"
	"math"
	"runtime"
	"testing"
	"weak"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// What was written of a page keeps nothing of it alive.
func TestPagesThatAreWrittenAreLetGo(t *testing.T) {
	var drawings []weak.Pointer[render.Drawing]
	alive := func() (n int) {
		runtime.GC()
		for _, d := range drawings {
			if d.Value() != nil {
				n++
			}
		}
		return n
	}
	most := 0
	err := WriteEach(io.Discard, render.Document{}, func(yield func(render.Page, error) bool) {
		for range 20 {
			page := wheelPage(t)
			drawings = append(drawings, weak.Make(page.Drawing))
			if !yield(page, nil) {
				return
			}
			page = render.Page{}
			most = max(most, alive())
		}
	})
	require.NoError(t, err)
	require.Len(t, drawings, 20)
	require.LessOrEqual(t, most, 1, "no page is kept after the next was asked for")
}

func TestPagesOneAtATimeAreTheSameBytes(t *testing.T) {
	doc := wheelDocument(t)
	pages := doc.Pages
	doc.Pages = nil
	var b bytes.Buffer
	require.NoError(t, WriteEach(&b, doc, func(yield func(render.Page, error) bool) {
		for _, p := range pages {
			if !yield(p, nil) {
				return
			}
		}
	}))
	require.Equal(t, written(t, wheelDocument(t)), b.Bytes())
}

func TestAFaultyPageEndsTheWriting(t *testing.T) {
	stopped := errors.New("stopped")
	asked := 0
	err := WriteEach(io.Discard, render.Document{}, func(yield func(render.Page, error) bool) {
		for asked = 1; asked <= 5; asked++ {
			if asked == 3 && !yield(render.Page{}, stopped) || asked != 3 && !yield(wheelPage(t), nil) {
				return
			}
		}
	})
	require.ErrorIs(t, err, stopped)
	require.Equal(t, 3, asked)
}

// Layers that are met late are listed in the order they are drawn all the same.
func TestLayersAreListedInOrder(t *testing.T) {
	first, second := wheelPage(t), wheelPage(t)
	first.Drawing = &render.Drawing{Items: []render.Item{{Layer: render.LayerText, Text: &render.Text{Height: 5, String: "first"}}}}
	second.Drawing.Add(render.Item{Layer: "margin-notes", Text: &render.Text{Height: 5, String: "strange"}})
	file := string(written(t, render.Document{Pages: []render.Page{first, second}}))
	last := 0
	for _, layer := range []string{"teeth", "windows", "saw-line", "centre-lines", "dimensions", "text", "margin-notes"} {
		at := bytes.Index([]byte(file), []byte("/Name"+text(layer)))
		require.Greater(t, at, last, layer)
		last = at
	}
}

// Everything on a stretched page, text too, is longer in the file by the factors;
// the sheet is not.
func TestAStretchedPage(t *testing.T) {
	line := geometry.ChainOf(geometry.Segment{From: point(10, 20), To: point(110, 220)})
	doc := document(render.Item{Layer: render.LayerForm, Pen: render.Thin, Chains: []geometry.Chain{line}},
		render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Outlines: []geometry.Outline{circle(t, point(200, 200), 40)}})
	doc.Pages[0].Stretch = render.Stretch{X: 1 / 0.997, Y: 1 / 1.004}
	file := written(t, doc)
	require.Contains(t, string(file), "/MediaBox[0 0 1190.55118 1190.55118]") // 420·72/25.4
	lines, curves := readPaths(t, page(t, file))
	require.Len(t, lines, 1)
	require.InDelta(t, 100/0.997, lines[0].To.X-lines[0].From.X, 1e-4)
	require.InDelta(t, 200/1.004, lines[0].To.Y-lines[0].From.Y, 1e-4)
	require.InDelta(t, 10/0.997, lines[0].From.X, 1e-4)
	for _, c := range curves {
		p := point(c[0].X*0.997, c[0].Y*1.004)
		require.InDelta(t, 40, p.Dist(point(200, 200)), 1e-4)
	}
	for _, absurd := range []render.Stretch{{X: -1, Y: 1}, {X: 1, Y: math.NaN()}, {X: math.Inf(1), Y: 1}} {
		doc.Pages[0].Stretch = absurd
		require.ErrorContains(t, Write(io.Discard, doc), "cannot be stretched")
	}
}
