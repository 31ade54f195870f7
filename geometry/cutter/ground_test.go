package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// A bit that is ground as the form was drawn cuts what the form cuts, deviates
// nowhere, and needs no other infeed.
func TestBitAsDrawn(t *testing.T) {
	eachForm(t, 73, func(i int, p Pointed, c Cut) {
		edge, err := NewEdge(c.Form.Corners())
		require.NoError(t, err, "form %d: %+v", i, p)
		g, err := c.Ground(edge)
		require.NoError(t, err, "form %d: %+v", i, p)
		slack := 1e-7 * c.TipRadius
		require.InDelta(t, c.TouchHeight, g.Cut.TouchHeight, slack, "form %d: %+v", i, p)
		require.InDelta(t, c.RootRadius, g.Cut.RootRadius, slack, "form %d: %+v", i, p)
		require.InDelta(t, c.Land, g.Cut.Land, noLand, "form %d: %+v", i, p)
		require.InDelta(t, 0, g.Lift, slack)
		require.InDelta(t, 0, g.Worst.Off, 10*slack, "form %d: %+v", i, p)
		require.Equal(t, c.Infeed, g.Best)
		require.Empty(t, g.Undercut, "form %d: %+v", i, p)
		require.NotEmpty(t, g.Along)
		for _, d := range g.Along {
			require.False(t, math.IsNaN(d.Off))
		}
	})
}

// No infeed of a hundred comes nearer than the best by more than the places that
// are looked at while it is sought may hide.
func TestBestInfeed(t *testing.T) {
	eachBit(t, 76, 300, func(say string, c Cut, corners []Corner, g Ground) {
		k := newComparison(c, g.Cut)
		require.LessOrEqual(t, math.Abs(g.BestDeviation.Off), math.Abs(g.Worst.Off), say)
		require.InDelta(t, g.BestDeviation.Off, k.worst(g.Best).Off, 1e-12)
		require.InDelta(t, g.BestLand, g.Cut.LandAt(g.Best), 1e-12)
		for i := range 100 {
			d := c.Infeed * (0.5 + float64(i)/100)
			if g.Cut.TouchHeight-d < g.Cut.edge().touch(c.SetOver, g.Cut.leastRoot()) {
				continue
			}
			off := math.Abs(k.worst(d).Off)
			require.GreaterOrEqual(t, off, 0.85*math.Abs(g.BestDeviation.Off)-asGood, "infeed %g of %g, best %g: %s", d, c.Infeed, g.Best, say)
		}
	})
}
