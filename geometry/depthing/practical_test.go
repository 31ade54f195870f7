package depthing

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
)

// practical returns a train wheel of module 1 and a pinion of leaves 1.05 m thick
// with radial flanks and a round top of half that, for tests alone.
func practical(t testing.TB, count, leaves int) (wheel, pinion Gear) {
	w, err := tooth.Cycloidal{Count: count, Module: 1, Leaves: leaves}.Wheel()
	require.NoError(t, err)
	wheel, err = Toothed(w.Outline, count, w.PitchRadius)
	require.NoError(t, err)
	pitch := float64(leaves) / 2
	half := geometry.Angle(1.05 / 2 / pitch)
	floor := pitch - 0.95*float64(2)
	at := func(r float64, a geometry.Angle, bulge float64) geometry.Vertex {
		return geometry.Vertex{Point: geometry.Polar(r, geometry.Clock(0)+a), Bulge: bulge}
	}
	leaf, err := geometry.NewChain([]geometry.Vertex{at(floor, -half, 0), at(pitch, -half, 1), at(pitch, half, 0), at(floor, half, 0)})
	require.NoError(t, err)
	return wheel, Gear{leaf, leaves, pitch, floor}
}

func BenchmarkMesh80And8(b *testing.B) {
	wheel, pinion := practical(b, 80, 8)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Mesh(wheel, pinion, 44, 2000); err != nil {
			b.Fatal(err)
		}
	}
}

func TestAPracticalPairTurns(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	turn, err := Mesh(wheel, pinion, 44, 200)
	require.NoError(t, err)
	s := turn.Steps
	turn.Steps = nil
	t.Logf("%+v", turn)
	require.Len(t, s, 200)
	require.InDelta(t, 10, turn.Mean, 0)
	require.False(t, turn.Jams())
	require.Greater(t, turn.Contact, 1.0)
	// A tooth π/2, a leaf 1.05, a pitch π: what is left at the pitch circle.
	require.InDelta(t, 3.14159265/2-1.05, turn.PitchPlay, 0.06)
}
