package solve_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
)

// What is made of other parts is called by their names, in the packet as in the window.
func TestPartsOfPartsAreCalledByTheirNames(t *testing.T) {
	r := solve.Solve(context.Background(), sample(t))
	for _, p := range r.Parts() {
		require.Equal(t, r.Job.Called(p.ID()), p.Name())
	}
	require.Equal(t, "Hour wheel + Day driver", r.Part("hour-pipe").Name())
	require.Equal(t, "Great wheel – Escape wheel", r.Part("going").Name())
}
