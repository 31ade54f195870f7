package pdf

import (
	"bytes"
	"compress/zlib"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// cubic is one curve read back from a page, in millimetres.
type cubic [4]geometry.Point

func (c cubic) at(t float64) geometry.Point {
	u := 1 - t
	return c[0].Times(u * u * u).Add(c[1].Times(3 * u * u * t)).Add(c[2].Times(3 * u * t * t)).Add(c[3].Times(t * t * t))
}

// page returns the first page's stream, decompressed.
func page(t *testing.T, file []byte) string {
	found := regexp.MustCompile(`(?s)<</Filter/FlateDecode/Length (\d+)>>\nstream\n`).FindSubmatchIndex(file)
	require.NotNil(t, found)
	length, err := strconv.Atoi(string(file[found[2]:found[3]]))
	require.NoError(t, err)
	z, err := zlib.NewReader(bytes.NewReader(file[found[1] : found[1]+length]))
	require.NoError(t, err)
	text, err := io.ReadAll(z)
	require.NoError(t, err)
	return string(text)
}

// readPaths reads the lines and curves of a page back, in millimetres.
func readPaths(t *testing.T, page string) (lines []geometry.Line, curves []cubic) {
	var stack []float64
	var scale geometry.Point
	var at, start geometry.Point
	pop := func(i int) geometry.Point {
		n := len(stack) - 2*i
		return geometry.Point{X: stack[n] * scale.X, Y: stack[n+1] * scale.Y}.Times(25.4 / 72)
	}
	for _, word := range strings.Fields(page) {
		if v, err := strconv.ParseFloat(word, 64); err == nil {
			stack = append(stack, v)
			continue
		}
		switch word {
		case "cm":
			scale = geometry.Point{X: stack[0], Y: stack[3]}
			require.Equal(t, []float64{scale.X, 0, 0, scale.Y, 0, 0}, stack[:6])
		case "m":
			at, start = pop(1), pop(1)
		case "l":
			lines = append(lines, geometry.Line{From: at, To: pop(1)})
			at = pop(1)
		case "c":
			curves = append(curves, cubic{at, pop(3), pop(2), pop(1)})
			at = pop(1)
		case "h":
			if at != start {
				lines = append(lines, geometry.Line{From: at, To: start})
			}
			at = start
		}
		stack = stack[:0]
	}
	return lines, curves
}

func document(items ...render.Item) render.Document {
	d := &render.Drawing{Scale: 1}
	d.Add(items...)
	return render.Document{Pages: []render.Page{{Width: 420, Height: 420, Drawing: d}}}
}

// The curves of a circle, read back, lie within 1 µm of the true one everywhere,
// and go round once.
func TestCirclesAreRound(t *testing.T) {
	for _, radius := range []float64{0.1, 1, 40, 200} {
		centre := point(210, 205)
		outline := render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Outlines: []geometry.Outline{circle(t, centre, radius)}}
		lines, curves := readPaths(t, page(t, written(t, document(outline))))
		require.Empty(t, lines)
		turned := 0.0
		for _, c := range curves {
			for i := range 101 {
				require.InDelta(t, radius, c.at(float64(i)/100).Dist(centre), 0.001)
			}
			a, b := c[0].Sub(centre), c[3].Sub(centre)
			turn := math.Atan2(a.Cross(b), a.Dot(b))
			require.LessOrEqual(t, turn, float64(render.LongestPiece)+1e-4)
			turned += turn
		}
		require.InDelta(t, 2*math.Pi, turned, 1e-4)
	}
}

// Arcs of every sweep, either way, end where they should and lie on their circle.
func TestArcs(t *testing.T) {
	for degrees := -359.0; degrees <= 359; degrees += 11 {
		arc := geometry.Arc{Centre: point(200, 190), Radius: 33, Start: 1, Sweep: geometry.Degrees(degrees)}
		item := render.Item{Layer: render.LayerForm, Pen: render.Thin, Chains: []geometry.Chain{geometry.ChainOf(arc.Segment())}}
		_, curves := readPaths(t, page(t, written(t, document(item))))
		require.InDelta(t, 0, curves[0][0].Dist(arc.From()), 1e-4)
		require.InDelta(t, 0, curves[len(curves)-1][3].Dist(arc.To()), 1e-4)
		for i, c := range curves {
			for k := range 21 {
				require.InDelta(t, arc.Radius, c.at(float64(k)/20).Dist(arc.Centre), 0.001)
			}
			middle := arc.At((float64(i) + 0.5) / float64(len(curves)))
			require.InDelta(t, 0, c.at(0.5).Dist(middle), 0.001)
		}
	}
}

// The corners of an outline come back to 0.1 µm, with its closing line once.
func TestCorners(t *testing.T) {
	corners := []geometry.Point{point(10.123456, 20), point(50, 20.654321), point(30, 61.1)}
	outline, err := geometry.NewOutline([]geometry.Vertex{{Point: corners[0]}, {Point: corners[1]}, {Point: corners[2]}})
	require.NoError(t, err)
	lines, curves := readPaths(t, page(t, written(t, document(
		render.Item{Layer: render.LayerForm, Pen: render.Visible, Outlines: []geometry.Outline{outline}}))))
	require.Empty(t, curves)
	require.Len(t, lines, 3)
	for i, l := range lines {
		require.InDelta(t, 0, l.From.Dist(corners[i]), 1e-4)
		require.InDelta(t, 0, l.To.Dist(corners[(i+1)%3]), 1e-4)
	}
}

// Each fill and pen ends its path with the operator that paints it.
func TestPainting(t *testing.T) {
	shape := []geometry.Outline{circle(t, point(100, 100), 10)}
	for _, row := range []struct {
		name string
		item render.Item
		want []string
		not  []string
	}{
		{"outline", render.Item{Pen: render.Visible}, []string{"h\nS", "0.35 w", "[] 0 d"}, []string{"B*", "f*"}},
		{"filled outline", render.Item{Pen: render.Visible, Fill: render.Brass}, []string{"h\nB*"}, []string{"f*\n"}},
		{"fill alone", render.Item{Fill: render.Solid, Ink: render.Blue}, []string{"h\nf*", "rg"}, []string{"S\n"}},
		{"waste", render.Item{Pen: render.Visible, Fill: render.Waste}, []string{"1 1 1 rg", "h\nf*", "l\nS", "h\nS"}, nil},
		{"dashed", render.Item{Pen: render.Hidden}, []string{"[1.5 0.75 ] 0 d", "0.18 w"}, nil},
		{"nothing", render.Item{}, nil, []string{"S\n", "f*", " m\n"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			row.item.Layer, row.item.Outlines = render.LayerForm, shape
			stream := page(t, written(t, document(row.item)))
			for _, mark := range row.want {
				require.Contains(t, stream, mark)
			}
			for _, mark := range row.not {
				require.NotContains(t, stream, mark)
			}
			require.Equal(t, 1, strings.Count(stream, "BDC"))
			require.Equal(t, 1, strings.Count(stream, "EMC"))
		})
	}
}

// An arc whose circle is beyond measure is drawn as straight as it is.
func TestAlmostStraight(t *testing.T) {
	s := geometry.Segment{From: point(10, 10), To: point(200, 10.5), Bulge: 1e-14}
	_, curves := readPaths(t, page(t, written(t, document(
		render.Item{Layer: render.LayerForm, Pen: render.Thin, Chains: []geometry.Chain{geometry.ChainOf(s)}}))))
	require.Len(t, curves, 1)
	for i := range 11 {
		require.InDelta(t, 0, curves[0].at(float64(i)/10).Dist(s.From.Toward(s.To, float64(i)/10)), 1e-4)
	}
}
