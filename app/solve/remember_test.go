package solve_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/app/job"
	"tipline/app/solve"
)

// An edit of the crossing leaves the teeth and all that is said of cutting them; one
// of the teeth, the cutter or the hand does not.
func TestTeethAreRemembered(t *testing.T) {
	var s solve.Solver
	j := sample(t)
	before := s.Solve(context.Background(), j).Wheel("escape")
	for _, row := range []struct {
		field, text string
		same        bool
	}{
		{"crossing.rim", "2.1 mm", true},
		{"thickness", "1.8 mm", true},
		{"mount.screws", "", true},
		{"bore", "4 mm", true},
		{"teeth.land", "0.15 mm", false},
		{"cutter.clearance", "9 deg", false},
		{"hand", "anticlockwise", false},
		{"material", "steel", false},
	} {
		edited := set(t, j, "escape", quantity(row.field), row.text)
		after := s.Solve(context.Background(), edited).Wheel("escape")
		require.Equal(t, row.same, before.Teeth == after.Teeth, row.field)
		require.Equal(t, row.same, before.Relief == after.Relief, row.field)
		require.Equal(t, solve.Solve(context.Background(), edited).Wheel("escape").Findings, after.Findings, row.field)
		before = s.Solve(context.Background(), j).Wheel("escape")
	}
}

// Whatever is edited in whatever order, what is remembered says the same as what is
// worked out from nothing.
func TestWhatIsRememberedIsWhatItWouldBe(t *testing.T) {
	start := read(t, collets)
	edits := []struct{ part, field, text string }{
		{"large", "thickness", "2"},
		{"large", "thickness", ""},
		{"large", "teeth.count", "90"},
		{"large", "crossing.arms", "5"},
		{"large", "dividing.ratio", "40"},
		{"small", "bore", "5"},
		{"small", "mount.screws", "4"},
		{"small", "teeth.count", "none"},
		{"single", "mount.screw_circle", "13"},
		{"single", "hand", "anticlockwise"},
		{"single", "material", "steel"},
		{"two", "tips", "1, 2"},
		{"two", "wheels", "large, single"},
		{"two", "wheels", "large, small"},
		{"two", "mount.screws", "6"},
		{"two", "misplacement", "0.1"},
		{"", "units", "in"},
		{"", "units", "mm"},
		{"lantern", "leaves", "7"},
	}
	rapid.Check(t, func(t *rapid.T) {
		var s solve.Solver
		j := start
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			e := rapid.SampledFrom(edits).Draw(t, "edit")
			next, err := j.Set(e.part, quantity(e.field), e.text)
			require.NoError(t, err)
			j = next
			remembered, fresh := s.Solve(context.Background(), j), solve.Solve(context.Background(), j)
			require.Equal(t, fresh.Findings, remembered.Findings)
			require.Equal(t, weights(fresh, j), weights(remembered, j))
		}
	})
}

// weights returns what each wheel weighs; 0 where it cannot be told.
func weights(r *solve.Result, j *job.Job) []float64 {
	var all []float64
	for _, part := range j.Wheels {
		switch w := r.Wheel(part.ID); {
		case w.Crossing != nil:
			all = append(all, w.Crossing.Mass)
		case w.Uncrossed != nil:
			all = append(all, w.Uncrossed.Mass)
		default:
			all = append(all, 0)
		}
	}
	return all
}

// What was worked out in one unit is known still when the job has been in the other.
func TestUndoingAnotherUnitSolvesNothing(t *testing.T) {
	j := sample(t)
	var s solve.Solver
	before := s.Solve(context.Background(), j)
	s.Solve(context.Background(), set(t, j, "", "units", "in"))
	after := s.Solve(context.Background(), j)
	for i, w := range before.Wheels {
		require.Same(t, w, after.Wheels[i])
	}
	for i, p := range before.Pairs {
		require.Same(t, p, after.Pairs[i])
	}
}
