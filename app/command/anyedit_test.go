package command

import (
	"bytes"
	"context"
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// typed is what a maker might type anywhere.
var typed = []string{
	"", "0", "1", "2", "3", "-1", "0.01", "0.5 mm", "1.3 mm", "2 mm", "7 mm", "40 mm", "1999 mm", "-3 mm", "3/8 in", "#60",
	"1 deg", "12 deg", "45 deg", "84 deg", "5", "8", "12", "31", "60", "200", "2000", "1e9", "NaN", "∞", "1/3", "99.9",
	"pointed", "ratchet", "cycloidal", "lantern driver", "lantern", "measured", "formed", "facets", "back", "equal",
	"on tips", "anticlockwise", "steel", "great", "centre", "escape-pinion", "cannon", "third-arbor", "nobody",
	"../bit.png", "great, escape, nobody", "15, 16, 49", "hole", "line",
	"swept", "waisted", "BA 10", "M1", "hour, third, escape", "day, great", "0, 3", "0 0, 100 0", "1 2, 1 2", "{value}",
}

// noNumber is how what is no number is written, before its unit.
const noNumber = "–( mm| in| µm| %| m | g|°)"

// anyField draws a field, of a list's first few items where it stands in one.
func anyField(t *rapid.T) geometry.Quantity {
	field := string(rapid.SampledFrom(job.Fields()).Draw(t, "field").Path)
	at := rapid.SampledFrom([]string{"[0]", "[1]", "[2]", "[3]", "[4]", "[5]"}).Draw(t, "item")
	for _, list := range []string{"chain", "additions"} {
		field = strings.Replace(field, list+".", list+at+".", 1)
	}
	return geometry.Quantity(field)
}

// Whatever is typed wherever, the job is worked out, every sentence is whole and
// every figure is a number.
func TestAnyEditIsWorkedOut(t *testing.T) {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	sample, err := job.Read(bytes.NewReader(data))
	require.NoError(t, err)
	parts := []string{
		"", "great", "third", "escape", "click", "centre-pinion", "third-pinion", "escape-pinion",
		"centre-arbor", "third-arbor", "great-centre", "third-escape", "minute-hour", "going", "motion", "hour", "day", "hour-pipe",
	}
	var solver solve.Solver
	rapid.Check(t, func(t *rapid.T) {
		j := sample
		for range rapid.IntRange(1, 4).Draw(t, "edits") {
			part := rapid.SampledFrom(parts).Draw(t, "part")
			if next, err := j.Set(part, anyField(t), rapid.SampledFrom(typed).Draw(t, "typed")); err == nil {
				j = next
			}
		}
		r := solver.Solve(context.Background(), j)
		figures := FiguresOf(r, words.English())
		for _, f := range figures.Findings {
			_, known := job.FieldAt(geometry.Quantity(f.Field))
			require.True(t, known || f.Field == "", "%s stands on %q, which is no field", f.Code, f.Field)
			text := strings.ReplaceAll(f.Text, "{value}", "")
			require.NotContains(t, text, "{", "%s", f.Code)
			require.NotContains(t, text, "‹", "%s", f.Code)
			require.NotRegexp(t, noNumber, text, f.Code)
		}
		_, err := json.Marshal(figures)
		require.NoError(t, err)
		var text bytes.Buffer
		require.NoError(t, printer{&text, words.English(), measure.Units{}}.figures(r, figures))
		for _, item := range solve.Stock(r) {
			text.WriteString(item.Describe(words.English(), measure.Units{}) + item.For(words.English()))
		}
		require.NotContains(t, text.String(), "‹")
	})
}
