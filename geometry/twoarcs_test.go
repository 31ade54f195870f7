package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestTwoArcsAreTangent(t *testing.T) {
	r := trial.Rand(t, 91)
	for range trial.Count(10_000) {
		from, to := Point{r.NormFloat64(), r.NormFloat64()}, Point{r.NormFloat64(), r.NormFloat64()}
		toward := to.Sub(from).Direction()
		out, in := Polar(1, toward+Angle(2.4*r.Float64()-1.2)), Polar(1, toward+Angle(2.4*r.Float64()-1.2))
		first, second := TwoArcs(from, out, to, in)
		require.Equal(t, from, first.From)
		require.Equal(t, to, second.To)
		require.Equal(t, first.To, second.From)
		for _, same := range [][2]Point{{out, first.Tangent(0)}, {first.Tangent(1), second.Tangent(0)}, {second.Tangent(1), in}} {
			require.InDelta(t, 0, same[0].Dist(same[1]), 1e-8, "%v %v %v %v", from, out, to, in)
		}
	}
}

// A circle's own directions give the circle back, and a line's the line.
func TestTwoArcsOfACircleAndOfALine(t *testing.T) {
	first, second := TwoArcs(Point{5, 0}, Point{0, 1}, Point{0, 5}, Point{-1, 0})
	for _, s := range []Segment{first, second} {
		arc, ok := s.Arc()
		require.True(t, ok)
		require.InDelta(t, 5, arc.Radius, 1e-12)
		require.InDelta(t, 0, arc.Centre.Norm(), 1e-12)
		require.InDelta(t, math.Pi/4, float64(arc.Sweep), 1e-12)
	}
	first, second = TwoArcs(Point{1, 1}, Point{1, 0}, Point{4, 1}, Point{1, 0})
	require.Equal(t, Segment{From: Point{1, 1}, To: Point{2.5, 1}}, first)
	require.Equal(t, Segment{From: Point{2.5, 1}, To: Point{4, 1}}, second)
}
