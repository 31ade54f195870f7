package solve_test

import (
	"context"
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
)

// many is a job of 200 wheels: the sample's eight, over and over, each lot with its
// stack.
func many(t testing.TB) *job.Job {
	s := sample(t)
	j := *s
	j.Wheels, j.Stacks, j.Pinions, j.Arbors, j.Pairs, j.Trains = nil, nil, nil, nil, nil, nil
	for lot := range 25 {
		for _, w := range s.Wheels {
			c := *w
			c.ID = fmt.Sprintf("%s-%d", w.ID, lot)
			j.Wheels = append(j.Wheels, &c)
		}
		stack := *s.Stacks[0]
		stack.ID = fmt.Sprintf("%s-%d", stack.ID, lot)
		stack.Wheels = []string{fmt.Sprintf("hour-%d", lot), fmt.Sprintf("day-%d", lot)}
		j.Stacks = append(j.Stacks, &stack)
	}
	return &j
}

// One edit in a large job costs the wheel alone, and its stack where it has one.
func TestOneEditOfManyWheels(t *testing.T) {
	j := many(t)
	var s solve.Solver
	before := s.Solve(context.Background(), j)
	require.Len(t, before.Wheels, 200)
	for _, row := range []struct {
		wheel string
		fresh []string
	}{{"third-7", []string{"third-7"}}, {"day-7", []string{"hour-7", "day-7"}}} {
		after := s.Solve(context.Background(), set(t, j, row.wheel, "thickness", "1.7 mm"))
		var fresh []string
		for i, w := range after.Wheels {
			if w != before.Wheels[i] {
				fresh = append(fresh, w.ID())
			}
		}
		require.Equal(t, row.fresh, fresh)
		before = s.Solve(context.Background(), j)
	}
}

func BenchmarkSolve200Wheels(b *testing.B) {
	j := many(b)
	b.ReportAllocs()
	for b.Loop() {
		solve.Solve(context.Background(), j)
	}
}

func BenchmarkOneEditOf200Wheels(b *testing.B) {
	j := many(b)
	for _, wheel := range []string{"third-7", "day-7"} {
		b.Run(wheel, func(b *testing.B) {
			var s solve.Solver
			s.Solve(context.Background(), j)
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				s.Solve(context.Background(), set(b, j, wheel, "thickness", fmt.Sprintf("1.%d mm", 1+i%900)))
			}
		})
	}
}

func BenchmarkCompareArms360Teeth(b *testing.B) {
	w := solve.Solve(context.Background(), large(b)).Wheels[0]
	counts := []int{3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
	require.Len(b, solve.CompareArms(w, counts), len(counts))
	b.ReportAllocs()
	for b.Loop() {
		solve.CompareArms(w, counts)
	}
}
