package solve_test

import (
	"context"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
)

// However long what was typed, what is shown of it is a line or two; the job keeps it all.
func TestEndlessTextsAreShownInPart(t *testing.T) {
	endless := strings.Repeat("Großbodenrad ", 1<<16)
	j, err := job.Read(strings.NewReader(`{"tipline": 1, "title": "` + endless + `", "wheels": [{"id": "w", "name": "` + endless + `",
		"material": "` + endless + `", "teeth": {"form": "` + endless + `", "count": 60, "module": "` + endless + `"},
		"additions": [{"kind": "note", "radius": "10 mm", "text": "` + endless + `"}]}]}`))
	require.NoError(t, err)
	r := solve.Solve(context.Background(), j)
	w := r.Wheels[0]
	for _, text := range []string{r.Title(), w.Name(), w.Template().Name} {
		require.True(t, strings.HasPrefix(endless, strings.TrimSuffix(text, "…")))
		require.Equal(t, 201, utf8.RuneCountInString(text))
	}
	require.NotEmpty(t, r.Findings)
	for _, f := range r.Findings {
		for _, p := range f.Places {
			require.LessOrEqual(t, utf8.RuneCountInString(p.Text), 201, f.Code)
		}
	}
	require.Equal(t, endless, j.Title)
	require.Equal(t, "short", solve.Shown("short"))
}
