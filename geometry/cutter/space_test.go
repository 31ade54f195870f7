package cutter_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
)

func spaceCut(t *testing.T, c tooth.Cycloidal, stock float64) cutter.Cut {
	t.Helper()
	cut, err := c.SpaceForm(stock)
	require.NoError(t, err)
	return cut
}

func TestSpaceIsTheSameAnyWayRound(t *testing.T) {
	w, err := tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}.Wheel()
	require.NoError(t, err)
	one, err := cutter.Space(w.Space, 72, w.TipRadius, 6)
	require.NoError(t, err)
	for _, chain := range []geometry.Chain{w.Space.Reverse(), w.Space.Rotate(2), w.Space.Mirror(), w.Space.Reverse().Rotate(-3)} {
		other, err := cutter.Space(chain, 72, w.TipRadius, 6)
		require.NoError(t, err)
		require.InDelta(t, one.Infeed, other.Infeed, 1e-9)
		require.InDelta(t, one.RootRadius, other.RootRadius, 1e-9)
		require.Equal(t, one.Form.Edge.Len(), other.Form.Edge.Len())
		for i := range one.Form.Edge.Len() + 1 {
			require.Less(t, one.Form.Edge.Vertex(i).Dist(other.Form.Edge.Vertex(i).Point), 1e-8)
		}
	}
}

// The form lies on both sides of x = 0, stands on y = 0, is cut off at the stock
// and the top, and has the wheel's hollows as its own.
func TestSpaceForm(t *testing.T) {
	c := tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}
	cut := spaceCut(t, c, 3)
	outline, err := cut.Form.Outline()
	require.NoError(t, err)
	require.True(t, outline.Simple())
	require.Greater(t, outline.Area(), 0.0)
	box := outline.Bounds()
	require.InDelta(t, -1.5, box.Min.X, 1e-9)
	require.InDelta(t, 1.5, box.Max.X, 1e-9)
	require.InDelta(t, 0, box.Min.Y, 1e-9)
	require.InDelta(t, cut.Form.Top, box.Max.Y, 1e-9)
	require.InDelta(t, c.RootRadius(), cut.RootRadius, 1e-9)
	require.InDelta(t, c.RootRadius()*math.Cos(math.Pi/144), cut.Height(), 1e-9, "space and tooth alike at the root")
	// The tooth's tip arc, 1.40 f·m, is the form's least hollow; the root arc
	// the other one.
	f := c.AddendumFactor() / 0.95
	require.InDelta(t, 1.40*f*0.8, cut.Form.SmallestConcave(), 1e-9)
	front, back, ok := cut.Form.Width(cut.Infeed / 2)
	require.True(t, ok)
	require.InDelta(t, 0, front+back, 1e-9)
	for _, corner := range cut.Form.ConcaveCorners() {
		require.Greater(t, corner.Y, 0.1, "no hollow corner at the root")
	}
}

func TestSpaceLandNarrowsToNothing(t *testing.T) {
	cut := spaceCut(t, tooth.Cycloidal{Count: 60, Module: 0.6, Leaves: 7}, 0)
	last := math.Inf(1)
	for i := range 101 {
		land := cut.LandAt(cut.Infeed * float64(i) / 100)
		require.LessOrEqual(t, land, last+1e-12)
		last = land
	}
	require.InDelta(t, 0, last, 1e-9)
	// Both corners of the floor touch at once, so that the land starts from what
	// lies outside them.
	corner, _, _ := cut.Form.Width(0)
	outside := cut.TipRadius * (2*math.Pi/60 - 2*math.Asin(-corner/cut.TipRadius))
	require.InDelta(t, outside, cut.LandAt(1e-9), 1e-6)
	require.Less(t, cut.LandAt(cut.Infeed*1.01), -1e-3, "fed past depth the teeth grow shorter")
}

// The heel of a symmetrical form is symmetrical, and a section of it is never
// wider than the form.
func TestSpaceRelief(t *testing.T) {
	cut := spaceCut(t, tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}, 3)
	clearance := geometry.Degrees(8)
	r, err := cut.Relieve(clearance, 2, 20)
	require.NoError(t, err)
	require.Positive(t, r.UsableThickness)
	require.NotEmpty(t, r.Heel)
	form, err := cut.Form.Outline()
	require.NoError(t, err)
	for _, h := range r.Heel {
		require.True(t, h.Simple())
		box := h.Bounds()
		require.InDelta(t, 0, box.Min.X+box.Max.X, 1e-6)
		require.InDelta(t, 3, box.Width(), 1e-6, "the stock's sides are not inset")
		for i := range h.Len() {
			p := h.Segment(i).At(0.5)
			require.True(t, form.Contains(p) || p.Y > cut.Form.Top-1e-6 || math.Abs(p.X) > 1.5-1e-6)
		}
	}
	swung, err := cut.Relieve(clearance, r.UsableThickness, r.LeastSwing+1e-6)
	require.NoError(t, err)
	require.True(t, swung.HeelLimit == 0 || swung.HeelLimit >= r.UsableThickness-1e-4)
}

func TestSpaceRefusals(t *testing.T) {
	line, err := geometry.NewChain([]geometry.Vertex{{Point: geometry.Point{X: -1, Y: -5}}, {Point: geometry.Point{X: 1, Y: -5}}})
	require.NoError(t, err)
	for _, bad := range []struct {
		chain geometry.Chain
		count int
		r     float64
		stock float64
	}{
		{geometry.Chain{}, 30, 10, 5},
		{line, 2, 10, 5},
		{line, 30, math.NaN(), 5},
		{line, 30, 4, 5},
		{line, 30, 10, -1},
	} {
		_, err := cutter.Space(bad.chain, bad.count, bad.r, bad.stock)
		require.Error(t, err)
	}
}
