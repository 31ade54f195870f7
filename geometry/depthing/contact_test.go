package depthing

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
)

// whole returns the outline of all of a gear's teeth that have a floor.
func whole(t testing.TB, g Gear) geometry.Outline {
	var vs []geometry.Vertex
	for i := range g.Count {
		c := g.Tooth.Rotate(geometry.FullTurn * geometry.Angle(i) / geometry.Angle(g.Count))
		for k := range c.Len() + 1 {
			v := c.Vertex(k)
			if n := len(vs); n > 0 && vs[n-1].Dist(v.Point) < 1e-9 {
				vs[n-1] = v
				continue
			}
			vs = append(vs, v)
		}
	}
	if vs[0].Dist(vs[len(vs)-1].Point) < 1e-9 {
		vs = vs[:len(vs)-1]
	}
	o, err := geometry.NewOutline(vs)
	require.NoError(t, err)
	return o
}

// apart reports the least distance of the two outlines with the follower turned
// on by more than a step's place, 0 where they overlap.
func apart(wheel, pinion geometry.Outline, s Step, centres float64, more geometry.Angle) float64 {
	d, _, _ := wheel.Rotate(s.Driver).Distance(
		pinion.Rotate(math.Pi + s.Follower - more).Move(geometry.Point{Y: centres}))
	return d
}

// In every step the outlines, as the distance of whole wheels sees them, touch at
// one place: turned on a little they stand clear, turned back a little they
// overlap, and the same at the far end of the play.
func TestTouchesAgreeWithTheDistanceOfWholeOutlines(t *testing.T) {
	const little = 1e-6
	for _, c := range []struct {
		count, leaves int
		deeper        float64
	}{{80, 8, 0}, {80, 8, -0.1}, {80, 8, 0.15}, {60, 6, 0}, {30, 10, 0}} {
		wheel, pinion := practical(t, c.count, c.leaves)
		centres := float64(c.count+c.leaves)/2 - c.deeper
		turn, err := Mesh(wheel, pinion, centres, 24)
		require.NoError(t, err)
		require.False(t, turn.Jams())
		w, p := whole(t, wheel), whole(t, pinion)
		for i, s := range turn.Steps {
			require.Greater(t, apart(w, p, s, centres, little), 0.0, "%v step %d", c, i)
			require.Zero(t, apart(w, p, s, centres, -little), "%v step %d", c, i)
			require.Less(t, apart(w, p, s, centres, little), 10*little)
			require.Greater(t, apart(w, p, s, centres, s.Play-little), 0.0, "%v step %d", c, i)
			require.Zero(t, apart(w, p, s, centres, s.Play+little), "%v step %d", c, i)
			at, _ := w.Rotate(s.Driver).Nearest(s.At)
			require.InDelta(t, 0, at.Dist(s.At), 1e-9, "%v step %d", c, i)
		}
	}
}

// The speed told from the normal is what the follower does from step to step.
func TestSpeedIsTheFollowersMotion(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	turn, err := Mesh(wheel, pinion, 44, 20_000)
	require.NoError(t, err)
	rough := 0
	for i := 1; i+1 < len(turn.Steps); i++ {
		before, s, after := turn.Steps[i-1], turn.Steps[i], turn.Steps[i+1]
		moved := -float64(after.Follower-before.Follower) / float64(after.Driver-before.Driver)
		if math.Abs(moved-s.Speed) > 1e-3 {
			rough++ // where contact passes from piece to piece the speed steps
		}
	}
	require.Less(t, rough, 10)
}

func TestAPairDrivenTheOtherWayIsThePairMirrored(t *testing.T) {
	wheel, pinion := practical(t, 60, 8)
	one, err := Mesh(wheel, pinion, 34, 50)
	require.NoError(t, err)
	other, err := Mesh(wheel.Mirror(), pinion.Mirror(), 34, 50)
	require.NoError(t, err)
	require.InDelta(t, one.WorstError, other.WorstError, 1e-9)
	require.InDelta(t, float64(one.Backlash), float64(other.Backlash), 1e-9)
}

// A pinion may drive, as in winding work, and trundles may follow.
func TestPinionsDriveAndTrundlesFollow(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	turn, err := Mesh(pinion, wheel, 44, 200)
	require.NoError(t, err)
	require.InDelta(t, 0.1, turn.Mean, 1e-15)
	require.False(t, turn.Jams())

	lantern, err := Lantern(8, 4, 1.05)
	require.NoError(t, err)
	turn, err = Mesh(wheel, lantern, 44, 200)
	require.NoError(t, err)
	require.InDelta(t, 44-wheel.TipRadius(), turn.DriverClearance, 1e-12)
	require.Greater(t, turn.PitchPlay, 0.2)
}

func TestTooDeepJamsAndTooFarLetsGo(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	turn, err := Mesh(wheel, pinion, 43.2, 100)
	require.NoError(t, err)
	require.True(t, turn.Jams())
	require.Less(t, turn.DriverClearance, 0.0)

	most := farthest(wheel, pinion)
	_, err = Mesh(wheel, pinion, most-1e-3, 100)
	require.NoError(t, err)
	_, err = Mesh(wheel, pinion, most+1e-3, 100)
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, "depthing.centres", limit.Code)
	require.InDelta(t, most, limit.Max, 1e-12)
}

func TestWhatCannotMeshIsRefused(t *testing.T) {
	wheel, pinion := practical(t, 80, 8)
	w, err := tooth.Cycloidal{Count: 80, Module: 1, Leaves: 8}.Wheel()
	require.NoError(t, err)
	refused := func(code string, _ any, err error) {
		t.Helper()
		var limit *geometry.Limit
		require.True(t, errors.As(err, &limit), "%v", err)
		require.Equal(t, code, limit.Code)
		require.False(t, math.IsNaN(limit.Value) || math.IsNaN(limit.Min) || math.IsNaN(limit.Max))
	}
	try := func(code string) func(any, error) {
		return func(v any, err error) { t.Helper(); refused(code, v, err) }
	}
	for _, centres := range []float64{math.NaN(), math.Inf(1), 0, -1, 1e300} {
		turn, err := Mesh(wheel, pinion, centres, 100)
		refused("depthing.centres", turn, err)
	}
	turn, err := Mesh(wheel, pinion, 44, 0)
	refused("depthing.steps", turn, err)
	turn, err = Mesh(wheel, Gear{}, 44, 100)
	refused("depthing.count", turn, err)
	turn, err = Mesh(wheel, Gear{Count: 8, PitchRadius: 4}, 44, 100)
	refused("depthing.no-tooth", turn, err)
	g, err := Toothed(w.Outline, 79, 40)
	try("depthing.uneven")(g, err)
	g, err = Toothed(w.Outline, 80, math.NaN())
	try("depthing.pitch-radius")(g, err)
	g, err = Toothed(geometry.Outline{}, 80, 40)
	try("depthing.uneven")(g, err)
	g, err = Lantern(8, 4, 5)
	try("depthing.trundle")(g, err)
	g, err = Lantern(8, math.NaN(), 1)
	try("depthing.pitch-radius")(g, err)
}
