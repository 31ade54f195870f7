package depthing

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// 150 seeded pairs at good and bad depths, either part driving: every figure is a
// number, a step's contact lies on the driver, and what does not jam touches.
func TestRandomPairsGiveNumbersThatTouch(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 5))
	meshed := 0
	for range 150 {
		count, leaves := 12+rng.IntN(110), 5+rng.IntN(16)
		wheel, pinion := practical(t, count, leaves)
		if rng.IntN(2) == 0 {
			wheel, pinion = theoretical(t, count, leaves, 6)
		}
		centres := float64(count+leaves)/2 + 1.5*(rng.Float64()-0.4)
		if rng.IntN(3) == 0 {
			wheel, pinion = pinion, wheel
		}
		turn, err := Mesh(wheel, pinion, centres, 16)
		if err != nil {
			require.ErrorAs(t, err, new(*geometry.Limit))
			continue
		}
		for _, v := range []float64{
			turn.WorstError, float64(turn.Fall), float64(turn.Lost), turn.Contact,
			float64(turn.Approach), float64(turn.Recess), float64(turn.Backlash), float64(turn.BacklashMost), turn.PitchPlay,
		} {
			require.False(t, math.IsNaN(v) || math.IsInf(v, 0), "%d/%d at %v: %+v", count, leaves, centres, turn)
		}
		if turn.Jams() {
			continue
		}
		meshed++
		w, p := whole(t, wheel), whole(t, pinion)
		for _, s := range turn.Steps {
			if s.Play < 1e-4 {
				continue
			}
			require.Greater(t, apart(w, p, s, centres, s.Play/2), 0.0, "%d/%d at %v driver %v", count, leaves, centres, s.Driver)
			require.Zero(t, apart(w, p, s, centres, -1e-6), "%d/%d at %v driver %v", count, leaves, centres, s.Driver)
		}
	}
	require.Greater(t, meshed, 50)
}

// Trundles stand alone: the nearest of them touches the wheel, to what the
// distance of circle and wheel says.
func TestTrundlesTouchTheWheel(t *testing.T) {
	wheel, _ := practical(t, 60, 8)
	lantern, err := Lantern(8, 4, 1.05)
	require.NoError(t, err)
	turn, err := Mesh(wheel, lantern, 34, 30)
	require.NoError(t, err)
	w := whole(t, wheel)
	for _, s := range turn.Steps {
		for more, least := range map[geometry.Angle]float64{0: 0, s.Play: 0, s.Play / 2: 1e-3} {
			nearest := math.Inf(1)
			for i := range 8 {
				on := geometry.Angle(math.Pi) + s.Follower - more + geometry.FullTurn*geometry.Angle(i)/8
				c := geometry.Point{Y: 4}.Rotate(on).Add(geometry.Point{Y: 34}).Rotate(-s.Driver)
				q, _ := w.Nearest(c)
				nearest = math.Min(nearest, q.Dist(c)-1.05/2)
			}
			if least == 0 {
				require.InDelta(t, 0, nearest, 1e-9)
			} else {
				require.Greater(t, nearest, least)
			}
		}
	}
}
