package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// A form that is typed with its x measured from another place is moved back to its own,
// to the micrometre that an x is read to.
func TestAcrossFindsWhereXIsMeasuredFrom(t *testing.T) {
	eachForm(t, 91, func(i int, p Pointed, c Cut) {
		edge, err := NewEdge(c.Form.Corners())
		require.NoError(t, err)
		out := 0.3*c.TipRadius - c.TipRadius*0.6*float64(i%2)
		move, worst, ok := c.Across(edge.Move(geometry.Point{X: out, Y: 3}))
		require.True(t, ok, "form %d: %+v", i, p)
		require.InDelta(t, -out, move, 1e-3, "form %d: %+v", i, p)
		require.Less(t, math.Abs(worst.Off), 2e-3, "form %d: %+v", i, p)
	})
}

// A bit that strays comes no less near than where its middle lies over the form's, half
// way up, to what a step of the move changes.
func TestAcrossComesAsNearAsMiddleOverMiddle(t *testing.T) {
	eachBit(t, 92, 300, func(say string, c Cut, corners []Corner, g Ground) {
		move, worst, ok := c.Across(g.Form.Edge)
		front, back, wanted := c.Form.Width(c.Infeed / 2)
		bitFront, bitBack, has := g.Form.Width(c.Infeed / 2)
		if !ok || !wanted || !has {
			return
		}
		require.InDelta(t, math.Round(move*1000), move*1000, 1e-6)
		again, cuts := c.worstAcross(g.Form.Edge, move)
		require.True(t, cuts, say)
		require.InDelta(t, again.Off, worst.Off, 1e-9)
		over, cuts := c.worstAcross(g.Form.Edge, (front+back-bitFront-bitBack)/2)
		require.True(t, cuts, say)
		require.LessOrEqual(t, math.Abs(worst.Off), math.Abs(over.Off)+acrossStep, say)
	})
}

func TestAcrossOfAnEdgeThatMissesTheHeight(t *testing.T) {
	eachForm(t, 93, func(i int, p Pointed, c Cut) {
		low, err := NewEdge([]Corner{{X: 0, Y: 0.1 * c.Infeed}, {X: 1, Y: 0}, {X: 2, Y: 0.1 * c.Infeed}})
		require.NoError(t, err)
		_, _, ok := c.Across(low)
		require.False(t, ok)
	})
}
