package cutter_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
)

func groundBit(t *testing.T, cut cutter.Cut, corners []cutter.Corner) cutter.Ground {
	t.Helper()
	edge, err := cutter.NewEdge(corners)
	require.NoError(t, err)
	g, err := cut.Ground(edge)
	require.NoError(t, err)
	return g
}

// The forms of train wheels and pinions, ground as they were drawn, cut what was
// wanted.
func TestSpaceBitAsDrawn(t *testing.T) {
	wheel := spaceCut(t, tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}, 3)
	driver, err := tooth.LanternDriver{Count: 80, Module: 1, Leaves: 8}.SpaceForm(0)
	require.NoError(t, err)
	for name, cut := range map[string]cutter.Cut{"wheel": wheel, "driver": driver} {
		t.Run(name, func(t *testing.T) {
			g := groundBit(t, cut, cut.Form.Corners())
			require.InDelta(t, cut.TouchHeight, g.Cut.TouchHeight, 1e-9)
			require.InDelta(t, cut.RootRadius, g.Cut.RootRadius, 1e-9)
			require.InDelta(t, cut.Land, g.Cut.Land, 2e-3)
			require.InDelta(t, 0, g.Worst.Off, 1e-7)
			require.Equal(t, cut.Infeed, g.Best)
			require.Empty(t, g.Undercut)
		})
	}
}

// A bit whose floor stands too far out touches that much earlier; fed that much
// more it cuts the flanks as wanted, to a root of its own.
func TestBestInfeedWithAnotherFloor(t *testing.T) {
	cut := spaceCut(t, tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}, 3)
	for _, deeper := range []float64{0.1, 0.05} {
		var corners []cutter.Corner
		for _, c := range cut.Form.Corners() {
			if c.Y < 0.05 {
				c.Y -= deeper
				c.Radius = 0
			}
			corners = append(corners, c)
		}
		g := groundBit(t, cut, corners)
		require.Greater(t, math.Abs(g.Worst.Off), 5*math.Abs(g.BestDeviation.Off), "deeper by %g", deeper)
		require.InDelta(t, cut.Infeed+deeper, g.Best, 0.02)
		require.InDelta(t, cut.Land, g.BestLand, 0.02)
	}
}

// A bit a tenth too wide leaves that much too little on both flanks, a bit too
// narrow too much.
func TestBitOfAnotherWidth(t *testing.T) {
	cut := spaceCut(t, tooth.Cycloidal{Count: 72, Module: 0.8, Leaves: 8}, 3)
	for _, wider := range []float64{0.02, -0.02} {
		corners := cut.Form.Corners()
		for i := range corners {
			corners[i].X += wider * math.Copysign(1, corners[i].X)
		}
		g := groundBit(t, cut, corners)
		front, back := 0, 0
		for _, d := range g.Along {
			if d.At.Y < 0.3*cut.Infeed {
				continue
			}
			require.Equal(t, wider > 0, d.Off < 0, "%v", d)
			require.LessOrEqual(t, math.Abs(d.Off), 0.021)
			if d.At.X < 0 {
				front++
			} else {
				back++
			}
		}
		require.Equal(t, front, back)
		require.NotZero(t, front)
		require.InDelta(t, 0.02, math.Abs(g.Worst.Off), 5e-3)
		require.Greater(t, wider*(cut.Land-g.Cut.Land), 0.0)
	}
}

// A bit ground from the form of a much larger wheel still has an answer.
func TestBitForAnotherWheel(t *testing.T) {
	small := spaceCut(t, tooth.Cycloidal{Count: 30, Module: 0.5, Leaves: 7}, 0)
	large := spaceCut(t, tooth.Cycloidal{Count: 96, Module: 1, Leaves: 8}, 0)
	g := groundBit(t, small, large.Form.Corners())
	require.Less(t, math.Abs(g.BestDeviation.Off), math.Abs(g.Worst.Off))
	edge, err := cutter.NewEdge(small.Form.Corners())
	require.NoError(t, err)
	_, err = large.Ground(edge)
	limit := &geometry.Limit{}
	require.ErrorAs(t, err, &limit, "the small form ends in the large blank")
	require.Equal(t, "cutter.bit-ends-in-the-blank", limit.Code)
}
