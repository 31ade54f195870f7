package dxf

import (
	"bytes"
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
	"tipline/render"
)

func point(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }

func circleOf(t require.TestingT, at geometry.Point, r float64) geometry.Outline {
	o, err := geometry.Circle(at, r, "")
	require.NoError(t, err)
	return o
}

func drawing(items ...render.Item) *render.Drawing {
	d := &render.Drawing{Title: "Third wheel", Scale: 1}
	d.Add(items...)
	return d
}

// record is one entity, table row or vertex: its pairs up to the next code 0.
type record struct {
	kind  string
	pairs map[int]string
}

func (r record) number(t require.TestingT, code int) float64 {
	v, err := strconv.ParseFloat(r.pairs[code], 64)
	require.NoError(t, err, "code %d of %s", code, r.kind)
	return v
}

func (r record) point(t require.TestingT, code int) geometry.Point {
	return point(r.number(t, code), r.number(t, code+10))
}

// read takes a file apart into its records.
func read(t require.TestingT, d *render.Drawing) (records []record) {
	var b bytes.Buffer
	require.NoError(t, Write(&b, d))
	for _, letter := range b.Bytes() {
		require.Less(t, letter, byte(0x7F), "release 12 has ASCII alone")
	}
	lines := strings.Split(strings.TrimSuffix(b.String(), "\n"), "\n")
	require.Zero(t, len(lines)%2)
	records = append(records, record{"", map[int]string{}})
	for i := 0; i < len(lines); i += 2 {
		code, err := strconv.Atoi(strings.TrimSpace(lines[i]))
		require.NoError(t, err)
		if code == 0 {
			records = append(records, record{lines[i+1], map[int]string{}})
			continue
		}
		records[len(records)-1].pairs[code] = lines[i+1]
	}
	return records
}

func kinds(records []record, kind string) (found []record) {
	for _, r := range records {
		if r.kind == kind {
			found = append(found, r)
		}
	}
	return found
}

// Any outline and chain comes back to 1 µm, corners and the middle of arcs, as one
// closed and one open entity.
func TestPolylinesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 9).Draw(t, "corners")
		vertices := make([]geometry.Vertex, n)
		for i := range vertices {
			r := rapid.Float64Range(1, 500).Draw(t, "radius")
			vertices[i] = geometry.Vertex{
				Point: geometry.Polar(r, geometry.Angle(2*math.Pi*float64(i)/float64(n))),
				Bulge: float64(rapid.IntRange(-40, 40).Draw(t, "bulge")) / 20,
			}
		}
		outline, err := geometry.NewOutline(vertices)
		require.NoError(t, err)
		chain, err := geometry.NewChain(vertices)
		require.NoError(t, err)
		records := read(t, drawing(render.Item{
			Layer: render.LayerForm, Pen: render.Visible,
			Outlines: []geometry.Outline{outline}, Chains: []geometry.Chain{chain},
		}))
		polylines, corners := kinds(records, "POLYLINE"), kinds(records, "VERTEX")
		require.Len(t, polylines, 2)
		require.Len(t, kinds(records, "SEQEND"), 2)
		require.Equal(t, "1", polylines[0].pairs[70])
		require.Equal(t, "0", polylines[1].pairs[70])
		require.Len(t, corners, 2*n)
		for i := range n {
			compareSegment(t, outline.Segment(i), corners[i], corners[(i+1)%n])
		}
		for i := range n - 1 {
			compareSegment(t, chain.Segment(i), corners[n+i], corners[n+i+1])
		}
		require.NotContains(t, corners[2*n-1].pairs, 42)
	})
}

func compareSegment(t require.TestingT, want geometry.Segment, from, to record) {
	got := geometry.Segment{From: from.point(t, 10), To: to.point(t, 10)}
	if from.pairs[42] != "" {
		got.Bulge = from.number(t, 42)
	}
	require.InDelta(t, 0, got.From.Dist(want.From)+got.To.Dist(want.To), 0.001)
	require.InDelta(t, 0, want.At(0.5).Dist(got.At(0.5)), 0.001)
}

// Each simple shape is the one entity that means it.
func TestEntities(t *testing.T) {
	chain := func(s geometry.Segment) []geometry.Chain { return []geometry.Chain{geometry.ChainOf(s)} }
	ccw := geometry.Arc{Centre: point(1, 2), Radius: 10, Start: geometry.Degrees(20), Sweep: geometry.Degrees(300)}
	cw := geometry.Arc{Centre: point(1, 2), Radius: 10, Start: geometry.Degrees(320), Sweep: geometry.Degrees(-300)}
	for _, row := range []struct {
		name, kind string
		item       render.Item
		numbers    map[int]float64
	}{
		{"circle", "CIRCLE", render.Item{Outlines: []geometry.Outline{circleOf(t, point(3, -4), 40)}}, map[int]float64{10: 3, 20: -4, 40: 40}},
		{"turned circle", "CIRCLE", render.Item{Outlines: []geometry.Outline{circleOf(t, point(0, 0), 40).Rotate(1).Mirror()}}, map[int]float64{10: 0, 20: 0, 40: 40}},
		{"line", "LINE", render.Item{Chains: chain(geometry.Segment{From: point(1, 2), To: point(3, 4)})}, map[int]float64{10: 1, 20: 2, 11: 3, 21: 4}},
		{"arc", "ARC", render.Item{Chains: chain(ccw.Segment())}, map[int]float64{10: 1, 20: 2, 40: 10, 50: 20, 51: 320}},
		{"arc clockwise", "ARC", render.Item{Chains: chain(cw.Segment())}, map[int]float64{10: 1, 20: 2, 40: 10, 50: 20, 51: 320}},
		{"text", "TEXT", render.Item{Text: &render.Text{At: point(5, 6), Height: 2.5, Turn: -math.Pi / 2, String: "x"}}, map[int]float64{10: 5, 20: 6, 40: 2.5, 50: 270}},
		{
			"centred text", "TEXT",
			render.Item{Text: &render.Text{At: point(5, 6), Height: 2.5, Align: render.Middle, Centred: true, String: "x"}},
			map[int]float64{11: 5, 21: 6, 72: 1, 73: 2},
		},
	} {
		t.Run(row.name, func(t *testing.T) {
			row.item.Layer = render.LayerSawLine
			row.item.Pen, row.item.Ink = render.Hidden, render.Blue
			found := kinds(read(t, drawing(row.item)), row.kind)
			require.Len(t, found, 1)
			for code, want := range row.numbers {
				require.InDelta(t, want, found[0].number(t, code), 1e-6, "code %d", code)
			}
			require.Equal(t, "saw-line", found[0].pairs[8])
			require.Equal(t, "DASHED", found[0].pairs[6])
			require.Equal(t, "5", found[0].pairs[62])
		})
	}
}

// Two half arcs that bulge opposite ways are no circle.
func TestLens(t *testing.T) {
	lens, err := geometry.NewOutline([]geometry.Vertex{{Point: point(0, 0), Bulge: 1}, {Point: point(2, 0), Bulge: 0.5}})
	require.NoError(t, err)
	records := read(t, drawing(render.Item{Layer: render.LayerForm, Pen: render.Thin, Outlines: []geometry.Outline{lens}}))
	require.Empty(t, kinds(records, "CIRCLE"))
	require.Len(t, kinds(records, "POLYLINE"), 1)
}

// A fill alone is no line; an arrowhead, which is one, is.
func TestFillsAreLeftOut(t *testing.T) {
	shape := []geometry.Outline{circleOf(t, point(0, 0), 4)}
	for fill, want := range map[render.Fill]int{render.Paper: 0, render.Waste: 0, render.Brass: 0, render.Solid: 1} {
		records := read(t, drawing(render.Item{Layer: render.LayerWindows, Fill: fill, Outlines: shape}))
		require.Len(t, kinds(records, "CIRCLE"), want, "%v", fill)
	}
}

func TestTables(t *testing.T) {
	records := read(t, drawing(render.CentreLine(point(0, 0), point(9, 0)),
		render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Outlines: []geometry.Outline{circleOf(t, point(0, 0), 4)}}))
	require.Contains(t, records[0].pairs[999], "Third wheel")
	var layers []string
	for _, r := range kinds(records, "LAYER") {
		layers = append(layers, r.pairs[2])
	}
	require.Equal(t, []string{"0", "teeth", "centre-lines"}, layers)
	require.Len(t, kinds(records, "LTYPE"), 3)
	require.Len(t, kinds(records, "STYLE"), 1)
	sections := kinds(records, "SECTION")
	require.Len(t, sections, 3)
	require.Len(t, kinds(records, "ENDSEC"), 3)
	require.Equal(t, "AC1009", sections[0].pairs[1])
	require.Equal(t, "EOF", records[len(records)-1].kind)
}

func TestLettersOfReleaseTwelve(t *testing.T) {
	require.Equal(t, `5%%d30' %%c8 %%p0.1 \U+00BD`, ascii("5°30' Ø8 ±0.1 ½"))
	require.Equal(t, `\U+D83D\U+DD70 a b`, ascii("🕰 a\nb"))
}

func TestUnsoundDrawings(t *testing.T) {
	require.ErrorContains(t, Write(&bytes.Buffer{}, &render.Drawing{}), "empty")
	require.ErrorContains(t, Write(&bytes.Buffer{}, nil), "empty")
	stray := drawing(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(math.NaN(), 0), Height: 5, String: "x"}})
	require.ErrorContains(t, Write(&bytes.Buffer{}, stray), "no number")
}

// full is a writer without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestDiskFull(t *testing.T) {
	require.ErrorContains(t, Write(full{}, drawing(render.CentreLine(point(0, 0), point(1, 0)))), "disk full")
}
