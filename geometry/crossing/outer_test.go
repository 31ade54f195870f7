package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// outerEdge returns the arc that is the window's outer edge.
func outerEdge(t *testing.T, w Window) geometry.Arc {
	t.Helper()
	for i := range w.Outline.Len() {
		if a, ok := w.Outline.Segment(i).Arc(); ok && w.Outline.Segment(i).Quantity == ofOuterRadius {
			return a
		}
	}
	require.Fail(t, "no outer edge")
	return geometry.Arc{}
}

// A window's outer edge has the radius asked for. Rounder than the rim's circle it
// touches that on the window's axis; flatter, its circle meets the rim's on the lines
// of the arms' sides, (rim, ±ArmAtRim/2) drawn on to the circle. Either way the rim is
// nowhere narrower than asked, and on the axis of a flatter one wider.
func TestAnOuterEdgeHasItsOwnRadius(t *testing.T) {
	b, s := regulator()
	s.ArmAtRim, s.ArmAtHub = 2, 2
	for _, r := range []float64{14, 20, 25, 26, 40, 500} {
		s.OuterRadius = r
		l := laid(t, b, s)
		arc := outerEdge(t, l.Windows[0])
		axis := l.axis(0)
		require.InEpsilon(t, r, arc.Radius, 1e-9)
		require.InDelta(t, 0, arc.Centre.Rotate(-axis).Y, 1e-9*r)
		top := arc.Centre.Rotate(-axis).X + r
		if r < l.RimRadius {
			require.InDelta(t, l.RimRadius, top, 1e-9)
		} else {
			require.Less(t, top, l.RimRadius)
			corner := geometry.Point{X: math.Sqrt(l.RimRadius*l.RimRadius - 1), Y: -1}.Rotate(math.Pi / 6)
			require.InDelta(t, r, corner.Rotate(axis).Dist(arc.Centre), 1e-8)
		}
	}
	s.OuterRadius = 25.6 // the rim's own
	concentric := s
	concentric.OuterRadius = 0
	require.InDelta(t, laid(t, b, concentric).Area, laid(t, b, s).Area, 1e-9)
}

func TestTheSawGoesRoundTheSawLine(t *testing.T) {
	b, s := regulator()
	w := laid(t, b, s).Windows[0]
	require.InDelta(t, w.SawLine[0].Length(), w.Cut, 1e-9)
	require.Less(t, w.Cut, w.Outline.Length())
	s.Allowance = 0
	w = laid(t, b, s).Windows[0]
	require.InDelta(t, w.Outline.Length(), w.Cut, 1e-9)
}

// A swept arm's rim end stands on its tip, its hub end the sweep before it, clockwise
// being positive, and it leaves the hub along the radius.
func TestASweptArmLeavesTheHubRadiallyAndEndsOnItsTip(t *testing.T) {
	for _, sweep := range []geometry.Angle{0.3, -0.3, 0.02} {
		c := centreLine(7, 25.6, sweep)
		require.InDelta(t, 25.6, c.station(1).Norm(), 1e-12)
		require.InDelta(t, 0, float64(c.station(1).Direction()), 1e-12)
		require.InDelta(t, float64(sweep), float64(c.station(0).Direction()), 1e-12) // anticlockwise of the tip
		require.InDelta(t, 0, c.station(0).way.Cross(c.station(0).Point), 1e-12)
		middle := c.middle()
		for _, share := range []float64{0, 0.3, 0.7, 1} {
			require.InDelta(t, 1/math.Abs(c.bend), c.station(share).Dist(middle), 1e-9)
		}
	}
}
