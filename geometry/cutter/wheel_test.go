package cutter_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
	"tipline/geometry/trial"
)

// Every form that is built leaves a whole wheel: a simple outline within the tip
// circle and without the root circle, the same size either hand.
func TestEveryFormLeavesAWheel(t *testing.T) {
	r := trial.Rand(t, 63)
	wheels := 0
	for i := range trial.Count(10_000) {
		p := cutter.RandomPointed(r)
		c, err := p.Cut()
		if err != nil {
			continue
		}
		wheels++
		w, err := tooth.Pointed(c, tooth.Clockwise)
		require.NoError(t, err, "wheel %d: %+v", i, p)
		require.True(t, w.Outline.Simple(), "wheel %d: %+v", i, p)
		area := w.Outline.Area()
		require.Less(t, area, math.Pi*w.TipRadius*w.TipRadius, "wheel %d: %+v", i, p)
		require.Greater(t, area, math.Pi*w.RootRadius*w.RootRadius, "wheel %d: %+v", i, p)
		other, err := tooth.Pointed(c, tooth.Anticlockwise)
		require.NoError(t, err)
		require.InDelta(t, area, other.Outline.Area(), 1e-9*area, "wheel %d: %+v", i, p)
	}
	require.Greater(t, wheels, trial.Count(10_000)/4)
}
