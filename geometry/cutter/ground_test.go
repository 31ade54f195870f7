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
