package solve_test

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
	"tipline/geometry"
)

// One hole of the maker's own, 1.2 mm wide and 38.4 mm out in brass 3/32 in thick,
// makes the other side heavy; the hole that is told, added, balances the wheel.
func TestHoleThatBalancesIsTold(t *testing.T) {
	j := set(t, sample(t), "great", "additions[0].repeat", "1")
	r := solve.Solve(context.Background(), j)
	l := r.Wheel("great").Crossing
	require.InDelta(t, 8490e-6*25.4*3/32*math.Pi/4*1.2*1.2*38.4, l.Unbalance, 1e-9)
	require.InDelta(t, 210, l.Heavy.Degrees(), 1e-6)
	told := map[string]string{}
	for _, f := range r.Wheel("great").Findings {
		for _, p := range f.Places {
			if f.Code == "crossing.balance-hole" {
				require.Equal(t, geometry.Quantity("additions[0].radius"), f.Field)
				told[p.Name] = p.In(solve.Units(j, english))
			}
		}
	}
	for field, text := range map[geometry.Quantity]string{
		"additions[2].kind": "hole", "additions[2].radius": told["radius"], "additions[2].diameter": told["diameter"],
		"additions[2].angle": told["heavy"],
	} {
		j = set(t, j, "great", field, text)
	}
	r = solve.Solve(context.Background(), j)
	require.Empty(t, errorsOf(r, "great"))
	require.Less(t, r.Wheel("great").Crossing.Unbalance, l.Unbalance/50, "but for the rounding of what is told")
}
