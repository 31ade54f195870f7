package seek

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestLastClosesInFromEitherSide(t *testing.T) {
	r := trial.Rand(t, 1)
	for range trial.Count(10_000) {
		from, to := r.NormFloat64()*100, r.NormFloat64()*100
		edge := from + (to-from)*r.Float64()
		before := func(v float64) bool { return (v-edge)*(to-from) <= 0 }

		near := Last(from, to, 1e-3, before)
		require.True(t, before(near))
		require.LessOrEqual(t, math.Abs(edge-near), 1e-3)
		require.Equal(t, edge, Last(from, to, 0, before))
	}
}

func TestEndsOfASpan(t *testing.T) {
	for _, row := range []struct {
		name         string
		holds, fails float64
	}{
		{"one place", 3, 3},
		{"neighbours", 1, math.Nextafter(1, 2)},
		{"nowhere to look", 1, math.NaN()},
		{"endless", 1, math.Inf(1)},
		{"near already", 1, 1.5},
	} {
		t.Run(row.name, func(t *testing.T) {
			require.Equal(t, row.holds, Last(row.holds, row.fails, 0.5, func(float64) bool {
				require.Fail(t, "asked in vain")
				return true
			}))
		})
	}
	require.True(t, math.IsNaN(Last(math.NaN(), 1, 0, func(float64) bool { return false })))
	require.Less(t, Last(1, 0, 0, func(float64) bool { return true }), 1e-60)
}

func TestTopIsWhereItIsGreatest(t *testing.T) {
	r := trial.Rand(t, 2)
	for range trial.Count(10_000) {
		from := r.NormFloat64() * 100
		to := from + 100*r.Float64() + 1
		top := from + (to-from)*r.Float64()
		steep := 1 + 5*r.Float64()
		peak := func(v float64) float64 {
			if v < top {
				return v - top
			}
			return steep * (top - v)
		}
		require.InDelta(t, top, Top(from, to, 1e-9, peak), 1e-9)
		require.InDelta(t, top, Top(from, to, 1e-6, func(v float64) float64 { return -(v - top) * (v - top) }), 2e-6)
	}
	require.InDelta(t, 5, Top(0, 5, 1e-9, func(v float64) float64 { return v }), 1e-9)
	require.InDelta(t, 0, Top(0, 5, 1e-9, func(v float64) float64 { return -v }), 1e-9)
}
