package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// What the form leaves is the space it was made from.
func TestSpaceFormLeavesTheSpace(t *testing.T) {
	for _, c := range []Cycloidal{{72, 0.8, 8}, {60, 0.6, 6}, {96, 0.5, 12}, {8, 1, 7}, {360, 0.3, 10}} {
		w, err := c.Wheel()
		require.NoError(t, err)
		cut, err := c.SpaceForm(0)
		require.NoError(t, err)
		require.Zero(t, cut.SetOver)
		require.Zero(t, cut.Land, "the tips are points")
		require.InDelta(t, c.RootRadius(), cut.RootRadius, 1e-6, "%+v", c)
		// The floor being hollow, its corners touch the blank first.
		corner := c.RootRadius() * math.Sin(math.Pi/2/float64(c.Count))
		across := func(r float64) float64 { return math.Sqrt(r*r - corner*corner) }
		require.InDelta(t, across(c.TipRadius())-across(c.RootRadius()), cut.Infeed, 1e-8, "%+v", c)
		left, err := cut.Space()
		require.NoError(t, err)
		require.Equal(t, w.Space.Len(), left.Len())
		for i := range left.Len() {
			require.Less(t, w.Space.Segment(i).From.Dist(left.Segment(i).From), 1e-8, "%+v %d", c, i)
			require.Less(t, w.Space.Segment(i).To.Dist(left.Segment(i).To), 1e-8, "%+v %d", c, i)
			require.InDelta(t, w.Space.Segment(i).Bulge, left.Segment(i).Bulge, 1e-8)
		}
	}
}

func TestBitNarrowerThanTheSpaceIsRefused(t *testing.T) {
	c := Cycloidal{72, 0.8, 8}
	_, err := c.SpaceForm(0.5)
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, geometry.Quantity("cutter.stock_width"), limit.Quantity)
	// At the tips the space is a whole pitch wide.
	require.InDelta(t, 2*c.TipRadius()*math.Sin(math.Pi/72), limit.Min, 1e-9)
	_, err = c.SpaceForm(limit.Min + near)
	require.NoError(t, err)
	_, err = Cycloidal{}.SpaceForm(5)
	require.ErrorAs(t, err, &limit)
	require.Equal(t, geometry.Quantity("teeth.count"), limit.Quantity)
}
