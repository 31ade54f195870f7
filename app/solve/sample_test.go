package solve_test

import (
	"bytes"
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
)

func sample(t testing.TB) *job.Job {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	j, err := job.Read(bytes.NewReader(data))
	require.NoError(t, err)
	return j
}

func TestSampleCanBeMade(t *testing.T) {
	r := solve.Solve(context.Background(), sample(t))
	require.GreaterOrEqual(t, len(r.Wheels), 5)
	for _, w := range r.Wheels {
		for _, f := range w.Findings {
			t.Logf("%s %s %s: %s", f.Severity, f.Part, f.Field, f.Sentence(words.English(), solve.Units(r.Job)))
			require.NotEqual(t, solve.Error, f.Severity)
		}
		require.NotNil(t, w.Teeth, w.Part.ID)
		require.NotNil(t, w.Cut, w.Part.ID)
		require.NotNil(t, w.Relief, w.Part.ID)
		require.NotNil(t, w.Crossing, w.Part.ID)
		require.NotNil(t, w.Dividing, w.Part.ID)
	}
}
