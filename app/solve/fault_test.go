package solve

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/assets/words"
	"tipline/geometry/measure"
)

// A part on which the program itself fails, beside the others and on a goroutine of its
// own, says so, and the others stand.
func TestAFaultInOnePartIsItsFinding(t *testing.T) {
	parts := []*job.Wheel{{ID: "a"}, {ID: "b"}, {ID: "c"}}
	wheels, known, ok := each(context.Background(), parts, nil, func(w *job.Wheel) string { return w.ID }, func(w *job.Wheel) *Wheel {
		return soundly(w.ID, func() *Wheel {
			if w.ID == "b" {
				_ = w.Teeth.Count // there are none
			}
			return &Wheel{Part: w}
		}, func(fs []Finding) *Wheel { return &Wheel{Part: w, Findings: fs} })
	})
	require.True(t, ok)
	require.Len(t, known, 3)
	for i, w := range wheels {
		require.Same(t, parts[i], w.Part)
	}
	require.Empty(t, wheels[0].Findings)
	require.Empty(t, wheels[2].Findings)
	require.Len(t, wheels[1].Findings, 1)
	f := wheels[1].Findings[0]
	require.Equal(t, Error, f.Severity)
	require.Equal(t, "b", f.Part)
	require.Regexp(t, `^The program itself fails on this part, .*nil pointer.* Undo `, f.Sentence(words.English(), measure.Units{}))
	require.Nil(t, wheels[1].Template().Teeth)
}
