package svg

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

// titleAsRead is how XML gives a title back.
func titleAsRead(said string) string {
	said = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
			return '\uFFFD'
		}
		return r
	}, said)
	return strings.NewReplacer("\r\n", "\n", "\r", "\n").Replace(said)
}

// Any numbers and any text make a file that XML reads, with the lines and arcs that
// went in, or are refused.
func FuzzWrite(f *testing.F) {
	f.Add(0.0, 0.0, 0.5, 40.0, 0.0, 0.0, 20.0, 30.0, -1.5, "Third wheel")
	f.Add(10.0, 10.0, 1e-9, 200.0, 10.5, 1e-14, -3.0, 1e-7, 40.0, "R < 40 & \"up\"\r\n")
	f.Add(math.NaN(), 0.0, 0.0, 1.0, 1.0, 0.0, 2.0, 0.0, 0.0, "\x00\xff\ufffe")
	f.Add(1e300, 0.0, 1e-300, -1e300, 1e300, 1e300, 0.0, 0.0, 5e-324, "5°30′ Ø8 激光 🕰")
	f.Add(0.0, 0.0, 1.0, 1e-6, 0.0, 1.0, 5e-7, 1e-9, -1.0, "")
	f.Fuzz(func(t *testing.T, ax, ay, ab, bx, by, bb, cx, cy, cb float64, said string) {
		outline, ok := readback.Triangle(ax, ay, ab, bx, by, bb, cx, cy, cb)
		if !ok {
			return
		}
		chain, err := geometry.NewChain(outline.Vertices())
		require.NoError(t, err)
		d := drawing(
			render.Item{Layer: render.LayerForm, Pen: render.Visible, Outlines: []geometry.Outline{outline}},
			render.Item{Layer: render.LayerRelief, Pen: render.Hidden, Chains: []geometry.Chain{chain}},
			render.Item{Layer: render.LayerText, Text: &render.Text{At: point(ax, by), Height: 2.5, String: said}},
		)
		d.Title = said
		within := readback.OnPaper(outline)
		var b bytes.Buffer
		if err := Write(&b, d); err != nil {
			require.False(t, within, "refused: %v", err)
			return
		}
		root := read(t, b.String())
		if said != "" {
			require.Equal(t, titleAsRead(said), root.all("title")[0].Text)
		}
		if within {
			comesBack(t, root.all("path")[0].attr("d"), true, outline.Segment(0), outline.Segment(1), outline.Segment(2))
			comesBack(t, root.all("path")[1].attr("d"), false, chain.Segment(0), chain.Segment(1))
		}
	})
}

// comesBack checks the one line of a path against the segments that it was written of.
func comesBack(t *testing.T, data string, isClosed bool, segments ...geometry.Segment) {
	paths, closed := readPath(t, data)
	require.Equal(t, []bool{isClosed}, closed)
	pieces := paths[0]
	for _, s := range segments {
		pieces = compareSegment(t, s, pieces)
	}
	require.Empty(t, pieces)
}
