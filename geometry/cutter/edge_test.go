package cutter

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// plainBit is a bit that can be measured, for rows that spoil one corner: straight
// front, floor, a rounded shoulder and a leaning back.
func plainBit() []Corner {
	return []Corner{{0, 5, 0}, {0, 0, 0}, {1, 0, 0}, {1.5, 0.5, 0.5}, {3, 5, 0}}
}

func TestEdgesThatNoBitHas(t *testing.T) {
	const x, y, radius = "cutter.bit.chain[2].x", "cutter.bit.chain[2].y", "cutter.bit.chain[3].radius"
	inf := math.Inf(1)
	for _, row := range []struct {
		name, code string
		field      geometry.Quantity
		min, max   float64
		spoil      func(c []Corner) []Corner
	}{
		{"none", "cutter.bit-too-few-corners", "cutter.bit.chain[0].x", 3, inf, func(c []Corner) []Corner { return nil }},
		{"one too many", "cutter.bit-too-many-corners", "cutter.bit.chain[400].x", -inf, 400, func(c []Corner) []Corner { return slices.Repeat(c[:1], 401) }},
		{"two", "cutter.bit-too-few-corners", x, 3, inf, func(c []Corner) []Corner { return c[:2] }},
		{"no number", "cutter.bit-corner", y, -2000, 2000, func(c []Corner) []Corner { c[2].Y = math.NaN(); return c }},
		{"endless", "cutter.bit-corner", x, -2000, 2000, func(c []Corner) []Corner { c[2].X = math.Inf(-1); return c }},
		{"huge arc", "cutter.bit-corner", radius, -2000, 2000, func(c []Corner) []Corner { c[3].Radius = 2001; return c }},
		{"twice the same", "cutter.bit-corners-coincide", x, -inf, inf, func(c []Corner) []Corner { c[2] = c[1]; return c }},
		{
			"convex arc too small", "cutter.bit-radius-too-small", radius, math.Sqrt(0.5) / 2, inf,
			func(c []Corner) []Corner { c[3].Radius = 0.3; return c },
		},
		{
			"hollow arc too small", "cutter.bit-hollow-too-small", radius, -inf, -math.Sqrt(0.5) / 2,
			func(c []Corner) []Corner { c[3].Radius = -0.3; return c },
		},
		{
			"back through the floor", "cutter.bit-crosses-itself", "cutter.bit.chain[4].x", -inf, inf,
			func(c []Corner) []Corner { c[4] = Corner{0.5, -1, 0}; return c },
		},
		{
			"back to the front", "cutter.bit-crosses-itself", "cutter.bit.chain[4].x", -inf, inf,
			func(c []Corner) []Corner { c[4] = c[0]; return c },
		},
		{
			"back to front", "cutter.bit-runs-backwards", "cutter.bit.chain[4].x", -inf, inf,
			func(c []Corner) []Corner {
				for i := range c {
					c[i].X *= -1
				}
				return c
			},
		},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := NewEdge(plainBit())
			require.NoError(t, err)
			_, err = NewEdge(row.spoil(plainBit()))
			limit := &geometry.Limit{}
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.code, limit.Code, limit.Error())
			require.Equal(t, row.field, limit.Quantity)
			require.InDelta(t, row.min, limit.Min, 1e-12)
			require.InDelta(t, row.max, limit.Max, 1e-12)
			require.True(t, words.English().Has(limit.Code))
		})
	}
}

// Convex arcs bulge out of the bit, hollow ones into it, and both are the shorter
// of the two there are.
func TestSignOfARadius(t *testing.T) {
	for _, radius := range []float64{0.5, -0.5, 2, -2, math.Sqrt(0.5) / 2} {
		c := plainBit()
		c[3].Radius = radius
		edge, err := NewEdge(c)
		require.NoError(t, err)
		g := edge.Segment(2)
		a, ok := g.Arc()
		require.True(t, ok)
		require.InDelta(t, math.Abs(radius), a.Radius, 1e-12)
		require.LessOrEqual(t, math.Abs(float64(a.Sweep)), math.Pi+1e-9)
		// From (1, 0) to (1.5, 0.5) the bit lies to the left, up; out of it is down
		// to the right.
		out := g.At(0.5).Sub(g.From.Toward(g.To, 0.5)).Dot(geometry.Point{X: 1, Y: -1})
		require.Equal(t, radius > 0, out > 0)
		require.Equal(t, geometry.Quantity("cutter.bit.chain[3].x"), g.Quantity)
	}
	c := plainBit()
	c[3].Radius = 0.3535 // typed to 0.0001 for half of √½
	edge, err := NewEdge(c)
	require.NoError(t, err)
	require.InDelta(t, 1, edge.Segment(2).Bulge, 1e-12)
}

// A form's corners, typed, are its edge again; an arc of more than half a circle
// is typed as two.
func TestCornersAreTheEdge(t *testing.T) {
	eachForm(t, 77, func(i int, p Pointed, c Cut) {
		edge, err := NewEdge(c.Form.Corners())
		require.NoError(t, err, "form %d: %+v", i, p)
		require.Equal(t, c.Form.Edge.Len(), edge.Len())
		for k := range edge.Len() {
			require.Less(t, edge.Segment(k).At(0.5).Dist(c.Form.Edge.Segment(k).At(0.5)), 1e-7*c.TipRadius, "form %d: %+v", i, p)
		}
	})
	chain, err := geometry.NewChain([]geometry.Vertex{
		{Point: geometry.Point{X: -0.5, Y: 3}}, {Point: geometry.Point{X: -0.5, Y: 2}, Bulge: 2}, {Point: geometry.Point{X: 0.5, Y: 2}}, {Point: geometry.Point{X: 0.5, Y: 3}},
	})
	require.NoError(t, err)
	corners := Form{Edge: chain}.Corners()
	require.Len(t, corners, 5)
	edge, err := NewEdge(corners)
	require.NoError(t, err)
	require.InDelta(t, chain.Length(), edge.Length(), 1e-9)
	require.InDelta(t, 0.625, corners[2].Radius, 1e-12)
	require.Empty(t, Form{}.Corners())
}

// Whatever corners are typed, an edge is built or a corner is named, with words.
func TestAnyCorners(t *testing.T) {
	r := trial.Rand(t, 78)
	built := 0
	for range trial.Count(20000) {
		corners := make([]Corner, r.IntN(7))
		for i := range corners {
			corners[i] = Corner{float64(r.IntN(7)), float64(r.IntN(7)), float64(r.IntN(9) - 4)}
		}
		edge, err := NewEdge(corners)
		if err == nil {
			built++
			outline, err := geometry.NewOutline(edge.Vertices())
			require.NoError(t, err, "%+v", corners)
			require.True(t, outline.Simple(), "%+v", corners)
			require.Positive(t, outline.Area())
			continue
		}
		limit := &geometry.Limit{}
		require.ErrorAs(t, err, &limit, "%+v", corners)
		require.True(t, words.English().Has(limit.Code), limit.Code)
		require.True(t, strings.HasPrefix(string(limit.Quantity), "cutter.bit.chain["), limit.Quantity)
		require.False(t, math.IsNaN(limit.Value))
	}
	require.Greater(t, built, trial.Count(20000)/50)
}
