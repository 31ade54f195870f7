package dxf

import (
	"bytes"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/internal/readback"
)

// Any numbers and any text make a file of whole pairs, with the lines and arcs that
// went in, or are refused.
func FuzzWrite(f *testing.F) {
	f.Add(0.0, 0.0, 0.5, 40.0, 0.0, 0.0, 20.0, 30.0, -1.5, "Third wheel")
	f.Add(10.0, 10.0, 1e-9, 200.0, 10.5, 1e-14, -3.0, 1e-7, 40.0, "R < 40 & \"up\"\r\n")
	f.Add(math.NaN(), 0.0, 0.0, 1.0, 1.0, 0.0, 2.0, 0.0, 0.0, "\x00\xff\ufffe\u2028")
	f.Add(1e300, 0.0, 1e-300, -1e300, 1e300, 1e300, 0.0, 0.0, 5e-324, "5°30′ Ø8 激光 🕰")
	f.Add(0.0, 0.0, 1.0, 1e-6, 0.0, 1.0, 5e-7, 1e-9, -1.0, "  0\nEOF\n")
	f.Fuzz(func(t *testing.T, ax, ay, ab, bx, by, bb, cx, cy, cb float64, said string) {
		outline, ok := readback.Triangle(ax, ay, ab, bx, by, bb, cx, cy, cb)
		if !ok {
			return
		}
		d := drawing(
			render.Item{Layer: render.LayerForm, Pen: render.Visible, Outlines: []geometry.Outline{outline}},
			render.Item{Layer: render.LayerRelief, Pen: render.Hidden, Chains: []geometry.Chain{geometry.ChainOf(outline.Segment(0))}},
			render.Item{Layer: render.LayerText, Text: &render.Text{At: point(ax, by), Height: 2.5, String: said}},
		)
		d.Title = said
		within := readback.OnPaper(outline)
		if err := Write(&bytes.Buffer{}, d); err != nil {
			require.False(t, within, "refused: %v", err)
			return
		}
		records := read(t, d)
		require.Equal(t, "EOF", records[len(records)-1].kind)
		require.Len(t, kinds(records, "EOF"), 1)
		corners := kinds(records, "VERTEX")
		require.Len(t, corners, 3)
		if within {
			for i := range 3 {
				compareSegment(t, outline.Segment(i), corners[i], corners[(i+1)%3])
			}
			comesBack(t, outline.Segment(0), records)
		}
	})
}

// comesBack checks the one segment that is alone, a LINE or an ARC.
func comesBack(t *testing.T, s geometry.Segment, records []record) {
	if lines := kinds(records, "LINE"); len(lines) > 0 {
		require.Len(t, lines, 1)
		require.InDelta(t, 0, lines[0].point(t, 10).Dist(s.From), 0.001)
		require.InDelta(t, 0, lines[0].point(t, 11).Dist(s.To), 0.001)
		return
	}
	arcs := kinds(records, "ARC")
	require.Len(t, arcs, 1)
	centre, radius := arcs[0].point(t, 10), arcs[0].number(t, 40)
	from, to := geometry.Degrees(arcs[0].number(t, 50)), geometry.Degrees(arcs[0].number(t, 51))
	if s.Bulge < 0 {
		from, to = to, from
	}
	require.InDelta(t, 0, centre.Add(geometry.Polar(radius, from)).Dist(s.From), 0.001)
	require.InDelta(t, 0, centre.Add(geometry.Polar(radius, to)).Dist(s.To), 0.001)
	require.InDelta(t, radius, centre.Dist(s.At(0.5)), 0.001)
}
