package command

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
)

// started works out what a new part of a kind starts with, which can be built as it
// stands.
func started(t *testing.T, kind string) solve.Part {
	j, id, err := job.New("mm").Add(kind, "New part")
	require.NoError(t, err)
	r := solve.Solve(context.Background(), j)
	for _, f := range r.Findings {
		require.Equal(t, solve.Note, f.Severity, "%s: %s", kind, f.Sentence(words.English(), solve.Units(j, words.English())))
	}
	return r.Part(id)
}

func TestStartingWheelsCanBeBuilt(t *testing.T) {
	for _, kind := range []string{"cycloidal", "pointed", "ratchet", "lantern driver", "measured"} {
		w := started(t, kind).(*solve.Wheel)
		require.NotNil(t, w.Teeth, kind)
		require.NotNil(t, w.Crossing, kind)
		require.NotNil(t, w.Dividing, kind)
		require.Equal(t, kind != "measured", w.Cut != nil, kind)
		require.Equal(t, kind != "measured", w.Relief != nil, kind)
	}
}

func TestStartingPinionsCanBeBuilt(t *testing.T) {
	cut := started(t, "pinion").(*solve.Pinion)
	require.NotNil(t, cut.Leaves)
	require.NotNil(t, cut.Relief)
	require.NotNil(t, cut.Dividing)
	lantern := started(t, "lantern pinion").(*solve.Pinion)
	require.NotNil(t, lantern.Lantern)
	require.NotNil(t, lantern.Dividing)
}

// A pair of what a job starts with meshes.
func TestAStartingPairMeshes(t *testing.T) {
	j := job.New("mm")
	for _, kind := range []string{"cycloidal", "pinion", "pair"} {
		next, _, err := j.Add(kind, kind)
		require.NoError(t, err)
		j = next
	}
	r := solve.Solve(context.Background(), j)
	require.NotNil(t, r.Pairs[0].Turn)
	for _, f := range r.Findings {
		require.Equal(t, solve.Note, f.Severity, "%s", f.Sentence(words.English(), solve.Units(j, words.English())))
	}
}
