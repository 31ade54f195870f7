package depthing

import (
	"fmt"
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/geometry/trial"
)

// Random wheels and pinions as the program makes them, at random depths. What
// turns touches and never overlaps, by the distance of the whole outlines; what the
// surfaces' normals say of the speed adds up, over a pitch, to the ratio of the
// counts and what the follower falls back; and the mirrored pair does the same.
func TestLawsOfRandomPairs(t *testing.T) {
	r := trial.Rand(t, 17)
	meshed := 0
	for range trial.Count(1_000) {
		count, leaves, module := 20+r.IntN(110), 6+r.IntN(15), math.Exp(3*r.Float64()-2)
		wheel, pinion := made(t, count, leaves, module)
		centres := module * (float64(count+leaves)/2 + 0.6*(r.Float64()-0.35))
		about := fmt.Sprintf("%d/%d, module %v, centres %v", count, leaves, module, centres)
		turn, err := Mesh(wheel, pinion, centres, 400)
		require.NoError(t, err, about)
		require.InDelta(t, float64(count)/float64(leaves), turn.Mean, 1e-14*turn.Mean, about)
		mirrored, err := Mesh(wheel.Mirror(), pinion.Mirror(), centres, 400)
		require.NoError(t, err)
		sameTurn(t, turn, mirrored, about)
		if turn.Jams() {
			continue
		}
		meshed++
		require.InEpsilon(t, turn.Mean, averageSpeed(turn, wheel), 0.004, about)
		neverOverlap(t, wheel, pinion, turn, about)
	}
	require.Positive(t, meshed)
}

// averageSpeed returns the mean speed less what the follower falls back.
func averageSpeed(turn Turn, driver Gear) float64 {
	sum := 0.0
	for i, s := range turn.Steps {
		sum += s.Speed / float64(len(turn.Steps))
		next := turn.Steps[0].Follower - driver.Pitch()*geometry.Angle(turn.Mean)
		if i+1 < len(turn.Steps) {
			next = turn.Steps[i+1].Follower
		}
		stepped := float64(driver.Pitch()) / float64(len(turn.Steps)) * s.Speed
		if fell := stepped + float64(next-s.Follower); fell > 0.3*stepped {
			sum -= fell / float64(driver.Pitch())
		}
	}
	return sum
}

func neverOverlap(t *testing.T, wheel, pinion Gear, turn Turn, about string) {
	t.Helper()
	w, p := whole(t, wheel), whole(t, pinion)
	little := geometry.Angle(1e-6)
	for i := 0; i < len(turn.Steps); i += 29 {
		s := turn.Steps[i]
		require.Greater(t, apart(w, p, s, turn.Centres, min(little, s.Play/2)), 0.0, "%s step %d", about, i)
		require.Zero(t, apart(w, p, s, turn.Centres, -little), "%s step %d", about, i)
		require.InDelta(t, 0, apart(w, p, s, turn.Centres, 0), 1e-9*turn.Centres, "%s step %d", about, i)
	}
}

// sameTurn holds two turns to each other: symmetrical teeth are their own mirror
// image.
func sameTurn(t *testing.T, one, other Turn, about string) {
	t.Helper()
	for i := range one.Steps {
		require.InDelta(t, float64(one.Steps[i].Follower), float64(other.Steps[i].Follower), 1e-9, about)
		require.InDelta(t, float64(one.Steps[i].Play), float64(other.Steps[i].Play), 1e-9, about)
	}
	require.InDelta(t, one.WorstError, other.WorstError, 1e-6*(1+one.WorstError), about)
	require.InDelta(t, float64(one.Approach), float64(other.Approach), 1e-6, about)
	require.InDelta(t, float64(one.Recess), float64(other.Recess), 1e-6, about)
	require.InDelta(t, one.Contact, other.Contact, 1e-6, about)
}

// absurd are values that no maker means.
var absurd = []float64{0, -1, 1e-300, 1e-9, 1e9, 1e300, math.NaN(), math.Inf(1), math.Inf(-1)}

// Numbers that are none, and whatever a slip of the hand types, are refused with
// figures that are numbers, or built; nothing panics.
func TestAbsurdPairsAreRefused(t *testing.T) {
	wheel, pinion := made(t, 60, 8, 1)
	counts := []int{math.MinInt, -1, 0, 1, 2, 3, 2000, 2001, math.MaxInt}
	refused := 0
	held := func(err error, about ...any) {
		if err == nil {
			return
		}
		refused++
		what := fmt.Sprint(about...)
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit, what)
		require.False(t, math.IsNaN(limit.Value) || math.IsInf(limit.Value, 0), what)
		require.False(t, math.IsNaN(limit.Min) || math.IsNaN(limit.Max), what)
	}
	w, err := tooth.Cycloidal{Count: 60, Module: 1, Leaves: 8}.Wheel()
	require.NoError(t, err)
	for _, v := range absurd {
		_, err := Mesh(wheel, pinion, v, 100)
		held(err, "centres ", v)
		require.Error(t, err, "centres %v", v)
		for _, n := range counts {
			_, err := Mesh(wheel, pinion, 34, n)
			held(err, "steps ", n)
			_, err = Mesh(wheel, Gear{pinion.Tooth, n, v, v}, 34, 50)
			held(err, n, v)
			_, err = Closest(Gear{wheel.Tooth, n, v, v}, pinion)
			held(err, n, v)
			_, err = Toothed(w.Outline, n, v)
			held(err, n, v)
			for _, d := range absurd {
				_, err = Lantern(n, v, d)
				held(err, n, v, d)
			}
		}
	}
	for _, n := range counts {
		_, err := Beats(big.NewRat(1, 1), big.NewRat(60, 1), n)
		held(err, n)
	}
	_, err = Beats(nil, nil, 30)
	held(err)
	require.Greater(t, refused, 500)
}
