package depthing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// A pair that jams is told the distance at which it no longer does: that one
// turns, and 2 µm closer jams.
func TestAJammingPairIsToldWhatWouldDo(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	tight, snug := theoretical(t, 30, 12, 40)
	for _, c := range []struct {
		name             string
		driver, follower Gear
		centres          float64
		code             string
	}{
		{"tip on floor", wheel, pinion, 43.4, "depthing.driver-tips"},
		{"no room", tight, snug, 20.6, "depthing.jams"},
	} {
		t.Run(c.name, func(t *testing.T) {
			turn, err := Mesh(c.driver, c.follower, c.centres, 200)
			require.NoError(t, err)
			closest := func() (float64, error) { return Closest(c.driver, c.follower) }
			limit := turn.Foul(closest)
			require.NotNil(t, limit)
			require.Equal(t, c.code, limit.Code)
			require.Equal(t, geometry.Quantity("centres"), limit.Quantity)
			at := func(centres float64) Turn {
				turn, err := Mesh(c.driver, c.follower, centres, 200)
				require.NoError(t, err)
				return turn
			}
			require.False(t, at(limit.Min+1e-9).Jams())
			require.Nil(t, at(limit.Min+1e-9).Foul(closest))
			require.True(t, at(limit.Min-2e-3).Jams())
		})
	}
}
