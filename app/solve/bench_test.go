package solve_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// large is a wheel of 360 teeth with six filleted windows.
func large(t testing.TB) *job.Job {
	j := sample(t)
	for field, text := range map[geometry.Quantity]string{
		"teeth.count": "360", "crossing.arms": "6", "crossing.rim": "6 mm", "crossing.hub": "40 mm",
		"crossing.arm_at_rim": "6 mm", "crossing.arm_at_hub": "9 mm", "crossing.fillet_at_rim": "3 mm",
		"crossing.fillet_at_hub": "4 mm",
	} {
		j = set(t, j, "third", field, text)
	}
	k := *j
	k.Wheels = []*job.Wheel{j.Wheel("third")}
	k.Pinions, k.Arbors, k.Pairs, k.Trains = nil, nil, nil, nil
	return &k
}

func BenchmarkSolve360Teeth(b *testing.B) {
	j := large(b)
	r := solve.Solve(context.Background(), j)
	require.Empty(b, errorsOf(r, "third"))
	require.Len(b, r.Wheels[0].Crossing.Windows, 6)
	b.ReportAllocs()
	for b.Loop() {
		solve.Solve(context.Background(), j)
	}
}

func BenchmarkSolveSample(b *testing.B) {
	j := sample(b)
	b.ReportAllocs()
	for b.Loop() {
		solve.Solve(context.Background(), j)
	}
}

// BenchmarkOneEdit is what a keystroke costs in the sample job: a field of each kind
// goes back and forth between two values.
func BenchmarkOneEdit(b *testing.B) {
	for _, edit := range []struct{ name, part, field, one, other string }{
		{"teeth of a wheel in a pair", "third", "teeth.module", "0.6 mm", "0.601 mm"},
		{"crossing of a wheel in a pair", "third", "crossing.rim", "2.3 mm", "2.4 mm"},
		{"leaves of a pinion", "escape-pinion", "module", "0.6 mm", "0.601 mm"},
		{"centres of a pair", "third-escape", "centres", "26.4 mm", "26.45 mm"},
		{"centres that jam", "third-escape", "centres", "26.1 mm", "26.12 mm"},
		{"corner of a bit", "escape", "cutter.bit.chain[3].x", "0.4 mm", "0.41 mm"},
		{"turns of a train", "going", "turns", "1", "2"},
	} {
		b.Run(edit.name, func(b *testing.B) {
			var s solve.Solver
			j := sample(b)
			jobs := [2]*job.Job{set(b, j, edit.part, quantity(edit.field), edit.one), set(b, j, edit.part, quantity(edit.field), edit.other)}
			s.Solve(context.Background(), jobs[0])
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				// The two must not be remembered from the time before: an edit makes a new part.
				next := set(b, jobs[(i+1)%2], edit.part, quantity(edit.field), edit.one+" ")
				s.Solve(context.Background(), set(b, next, edit.part, quantity(edit.field), []string{edit.one, edit.other}[i%2]))
			}
		})
	}
}
