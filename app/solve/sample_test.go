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

// The sample job uses everything and can be made as it stands.
func TestSampleCanBeMade(t *testing.T) {
	r := solve.Solve(context.Background(), sample(t))
	for _, f := range r.Findings {
		require.NotEqual(t, solve.Error, f.Severity, "%s %s: %s", f.Part, f.Field, f.Sentence(words.English(), solve.Units(r.Job, english)))
	}
	require.Len(t, r.Wheels, 8)
	forms := map[string]bool{}
	for _, w := range r.Wheels {
		require.NotNil(t, w.Teeth, w.Part.ID)
		require.NotNil(t, w.Cut, w.Part.ID)
		require.NotNil(t, w.Relief, w.Part.ID)
		require.NotNil(t, w.Speed, w.Part.ID)
		require.NotNil(t, w.Dividing, w.Part.ID)
		require.Equal(t, w.Part.Crossing != nil, w.Crossing != nil, w.Part.ID)
		forms[w.Teeth.Form] = true
	}
	require.Len(t, forms, 4, "cycloidal, lantern driver, pointed, ratchet")
	require.NotNil(t, r.Wheel("escape").Ground)
}

func TestSamplesPinionsPairsAndTrains(t *testing.T) {
	r := solve.Solve(context.Background(), sample(t))
	require.Len(t, r.Pinions, 5)
	for _, p := range r.Pinions {
		require.NotNil(t, p.Dividing, p.ID())
		require.Equal(t, p.Part.Form.Text == "lantern", p.Lantern != nil, p.ID())
		require.Equal(t, p.Lantern == nil, p.Relief != nil, p.ID())
	}
	require.Len(t, r.Pairs, 5)
	for _, p := range r.Pairs {
		require.NotNil(t, p.Turn, p.ID())
		require.False(t, p.Turn.Jams(), p.ID())
		require.InDelta(t, p.Nominal, p.Turn.Centres, 1e-9, p.ID())
	}
	require.InDelta(t, r.Pairs[3].Nominal, r.Pairs[4].Nominal, 1e-9, "the motion work turns about one stud and one centre")
	require.True(t, r.Trains[0].Beat.Whole)
	require.Equal(t, "1/12", r.Trains[1].Way.Ratio.RatString(), "the hour hand's turns to the minute hand's")
}
