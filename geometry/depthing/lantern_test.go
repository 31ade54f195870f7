package depthing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/tooth"
)

// A wheel made for a lantern pinion, turned with it from the outlines alone, keeps
// the ratio of the counts, drives each trundle through the contact ratio that it
// was made with, and only after the line of centres.
func TestALanternPinionIsDrivenAsItsWheelSays(t *testing.T) {
	for _, d := range []tooth.LanternDriver{
		{Count: 80, Module: 1, Leaves: 8},
		{Count: 60, Module: 0.8, Leaves: 6},
		{Count: 96, Module: 0.7, Leaves: 8},
		{Count: 96, Module: 0.8, Leaves: 12},
		{Count: 30, Module: 2, Leaves: 10, Trundle: 2.5, Play: 0.3},
	} {
		w, err := d.Drive()
		require.NoError(t, err)
		wheel, err := Toothed(w.Wheel.Outline, d.Count, w.Wheel.PitchRadius)
		require.NoError(t, err)
		lantern, err := Lantern(d.Leaves, d.Module*float64(d.Leaves)/2, d.TrundleDiameter())
		require.NoError(t, err)
		turn, err := Mesh(wheel, lantern, wheel.PitchRadius+lantern.PitchRadius, 2000)
		require.NoError(t, err)
		require.False(t, turn.Jams(), "%+v", d)

		// The arcs lie within 1 µm of the curve and so does the follower's place; the
		// speed changes where arcs join, and one pair takes over from another unfelt.
		require.Less(t, float64(turn.Lost)*lantern.PitchRadius, 1.1e-3, "%+v", d)
		require.Less(t, float64(turn.Fall)*lantern.PitchRadius, 1.1e-3, "%+v", d)
		require.Less(t, turn.WorstError, 0.005, "%+v", d)

		// A tooth drives from where its flank begins, or while the straight side below
		// it is within a µm of a trundle, to its tip. The trundle's middle is then past
		// the line of centres; where it touches is not quite.
		require.InDelta(t, w.Contact, turn.Contact, 0.03, "%+v", d)
		require.Less(t, float64(turn.Approach/wheel.Pitch()), 0.1, "%+v", d)
		for _, s := range turn.Steps {
			// How far the trundle's middle is past the line of centres: the middle of the
			// space before the tooth that pushes, and half the play behind it.
			past := float64(s.Driver) - (float64(s.Tooth)-0.5)*float64(wheel.Pitch()) - d.SidePlay()/2/wheel.PitchRadius
			require.Greater(t, past, 0.0, "%+v", d)
			require.Less(t, past, float64(w.Ends)+1e-3, "%+v", d)
		}
	}
}
