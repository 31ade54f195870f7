package pdf

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/internal/readback"
)

// Any numbers and any text make a page with the lines and arcs that went in, or are
// refused.
func FuzzWrite(f *testing.F) {
	f.Add(0.0, 0.0, 0.5, 40.0, 0.0, 0.0, 20.0, 30.0, -1.5, "Third wheel")
	f.Add(10.0, 10.0, 1e-9, 200.0, 10.5, 1e-14, -3.0, 1e-7, 40.0, "R < 40 & (up) >>\r\n")
	f.Add(math.NaN(), 0.0, 0.0, 1.0, 1.0, 0.0, 2.0, 0.0, 0.0, "\x00\xff\ufffe")
	f.Add(1e300, 0.0, 1e-300, -1e300, 1e300, 1e300, 0.0, 0.0, 5e-324, "5°30′ Ø8 激光 🕰")
	f.Add(0.0, 0.0, 1.0, 1e-6, 0.0, 1.0, 5e-7, 1e-9, -1.0, "")
	f.Fuzz(func(t *testing.T, ax, ay, ab, bx, by, bb, cx, cy, cb float64, said string) {
		outline, ok := readback.Triangle(ax, ay, ab, bx, by, bb, cx, cy, cb)
		if !ok {
			return
		}
		doc := document(
			render.Item{Layer: render.LayerForm, Pen: render.Visible, Outlines: []geometry.Outline{outline}},
			render.Item{Layer: render.LayerText, Text: &render.Text{At: point(ax, by), Height: 2.5, String: said}},
		)
		doc.Title = said
		segments := []geometry.Segment{outline.Segment(0), outline.Segment(1), outline.Segment(2)}
		within := readback.OnPaper(outline)
		var b bytes.Buffer
		if err := Write(&b, doc); err != nil {
			require.False(t, within, "refused: %v", err)
			return
		}
		require.True(t, strings.HasSuffix(b.String(), "%%EOF\n"))
		if within {
			comesBack(t, page(t, b.Bytes()), segments)
		}
	})
}

// comesBack checks a page's one path against the segments that it was written of. A
// closing line too short for the file's decimals is not there.
func comesBack(t *testing.T, page string, segments []geometry.Segment) {
	lines, curves := readPaths(t, page)
	for i, s := range segments {
		if s.IsLine() {
			if len(lines) == 0 && i == len(segments)-1 {
				require.InDelta(t, 0, s.Length(), 1e-4)
				continue
			}
			require.InDelta(t, 0, lines[0].From.Dist(s.From), 0.001)
			require.InDelta(t, 0, lines[0].To.Dist(s.To), 0.001)
			lines = lines[1:]
			continue
		}
		for piece := range render.Pieces(s) {
			require.InDelta(t, 0, curves[0][0].Dist(piece.From), 0.001)
			require.InDelta(t, 0, curves[0].at(0.5).Dist(piece.At(0.5)), 0.001)
			require.InDelta(t, 0, curves[0][3].Dist(piece.To), 0.001)
			curves = curves[1:]
		}
	}
	require.Empty(t, lines)
	require.Empty(t, curves)
}
