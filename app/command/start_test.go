package command

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
)

// What a new wheel starts with can be built as it stands, every step of it.
func TestStartingWheelsCanBeBuilt(t *testing.T) {
	for _, kind := range []string{"cycloidal", "pointed", "measured"} {
		j, id, err := job.New("mm").AddWheel(kind, "New wheel")
		require.NoError(t, err)
		r := solve.Solve(context.Background(), j)
		for _, f := range r.Findings {
			require.Equal(t, solve.Note, f.Severity, "%s: %s", kind, f.Sentence(words.English(), solve.Units(j)))
		}
		w := r.Wheel(id)
		require.NotNil(t, w.Teeth)
		require.NotNil(t, w.Crossing)
		require.NotNil(t, w.Dividing)
		require.Equal(t, kind != "measured", w.Cut != nil)
		require.Equal(t, kind != "measured", w.Relief != nil)
	}
}
