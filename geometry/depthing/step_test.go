package depthing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
)

// made returns a train wheel and its pinion as the program makes them.
func made(t testing.TB, count, leaves int, module float64) (wheel, pinion Gear) {
	w, err := tooth.Cycloidal{Count: count, Module: module, Leaves: leaves}.Wheel()
	require.NoError(t, err)
	p, err := tooth.Pinion{Leaves: leaves, Module: module, Ratio: float64(count) / float64(leaves)}.Wheel()
	require.NoError(t, err)
	wheel, err = Toothed(w.Outline, count, w.PitchRadius)
	require.NoError(t, err)
	pinion, err = Toothed(p.Outline, leaves, p.PitchRadius)
	require.NoError(t, err)
	return wheel, pinion
}

// The tooth and the leaf that a step names, each counted clockwise from the one at
// its own 12 o'clock, both run through the place of contact, the tooth with the
// side that leads when it turns anticlockwise.
func TestAStepNamesTheToothAndLeafThatTouch(t *testing.T) {
	others := 0
	for _, c := range [][2]int{{80, 8}, {60, 6}, {96, 12}, {30, 10}, {64, 16}} {
		wheel, pinion := made(t, c[0], c[1], 0.8)
		centres := wheel.PitchRadius + pinion.PitchRadius
		turn, err := Mesh(wheel, pinion, centres, 40)
		require.NoError(t, err)
		for i, s := range turn.Steps {
			own := s.At.Rotate(geometry.Angle(s.Tooth)*wheel.Pitch() - s.Driver)
			on, _ := wheel.Tooth.Nearest(own)
			require.InDelta(t, 0, on.Dist(own), 1e-9, "%v step %d", c, i)
			require.Less(t, own.X, 1e-9, "%v step %d", c, i)

			leaf := -s.Tooth
			of := s.At.Sub(geometry.Point{Y: centres}).Rotate(geometry.Angle(leaf)*pinion.Pitch() - s.Follower - math.Pi)
			on, _ = pinion.Tooth.Nearest(of)
			require.InDelta(t, 0, on.Dist(of), 1e-9, "%v step %d", c, i)
			if s.Tooth != 0 {
				others++
			}
		}
	}
	require.Greater(t, others, 20)
}

func BenchmarkMeshWhileTyping(b *testing.B) {
	wheel, pinion := made(b, 80, 8, 1)
	for b.Loop() {
		if _, err := Mesh(wheel, pinion, 44, 500); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkMesh80And8InFull(b *testing.B) {
	wheel, pinion := made(b, 80, 8, 1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Mesh(wheel, pinion, 44, 2000); err != nil {
			b.Fatal(err)
		}
	}
}

// A pinion's round top passes over the flank it drives in a moment; that is where
// the recess ends, in however many steps the pitch is looked at.
func TestTheRecessEndsAtARoundTop(t *testing.T) {
	minute, cannon := made(t, 45, 15, 0.8)
	var ends []geometry.Angle
	for _, steps := range []int{100, 500, 5000} {
		turn, err := Mesh(cannon, minute, 24, steps)
		require.NoError(t, err)
		ends = append(ends, turn.Recess)
	}
	require.InDelta(t, float64(ends[2]), float64(ends[0]), 1e-6)
	require.InDelta(t, float64(ends[2]), float64(ends[1]), 1e-6)
}

func BenchmarkClosest(b *testing.B) {
	wheel, pinion := made(b, 80, 8, 1)
	for b.Loop() {
		if _, err := Closest(wheel, pinion); err != nil {
			b.Fatal(err)
		}
	}
}
