package solve_test

import (
	"context"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// told returns the values that an error on a field says would do, as they are shown.
func told(r *solve.Result, part string, field geometry.Quantity) []string {
	var values []string
	u := solve.Units(r.Job, english)
	for _, f := range r.Findings {
		if f.Severity != solve.Error || f.Part != part || f.Field != field {
			continue
		}
		for _, p := range f.Places {
			if p.Name == "thread" || (p.Name == "min" || p.Name == "max") && !math.IsInf(p.Value, 0) {
				values = append(values, p.In(u))
			}
		}
	}
	return values
}

// errorOn returns the code of the error on a field; nothing where there is none.
func errorOn(r *solve.Result, part string, field geometry.Quantity) string {
	for _, f := range r.Findings {
		if f.Severity == solve.Error && f.Part == part && f.Field == field {
			return f.Code
		}
	}
	return ""
}

// dressed is the job of collets with arms and mounts of every kind.
func dressed(t testing.TB, style string) *job.Job {
	j := read(t, collets)
	for field, text := range map[geometry.Quantity]string{
		"crossing.style": style, "crossing.sweep": "20 deg", "crossing.waist": "1.6", "crossing.waist_at": "20",
	} {
		j = set(t, j, "large", field, text)
	}
	require.Empty(t, errorsOf(solve.Solve(context.Background(), j), "large"))
	return j
}

// Of each field of a crossing, a mount, a stack and an addition: a value that cannot
// be is said on that field, and what it is told would do does, when it is typed back.
func TestWhatIsToldWouldDo(t *testing.T) {
	for _, row := range []struct {
		style, part string
		field       geometry.Quantity
		text        string
		tells       int // values
	}{
		{"straight", "large", "crossing.arms", "2", 2},
		{"straight", "large", "crossing.rim", "40 mm", 1},
		{"straight", "large", "crossing.hub", "5 mm", 1},
		{"straight", "large", "crossing.hub", "64 mm", 1},
		{"straight", "large", "crossing.arm_at_rim", "60 mm", 1},
		{"straight", "large", "crossing.arm_at_hub", "70 mm", 1},
		{"straight", "large", "crossing.fillet_at_rim", "20 mm", 1},
		{"straight", "large", "crossing.fillet_at_hub", "20 mm", 1},
		{"straight", "large", "crossing.outer_radius", "1 mm", 1},
		{"straight", "large", "crossing.allowance", "-1 mm", 2},
		{"straight", "large", "crossing.start_hole", "0", 2},
		{"swept", "large", "crossing.sweep", "85 deg", 1},
		{"swept", "large", "crossing.sweep", "-85 deg", 1},
		{"swept", "large", "crossing.sweep", "200 deg", 2},
		{"waisted", "large", "crossing.waist", "4 mm", 1},
		{"waisted", "large", "crossing.waist_at", "40 mm", 1},
		{"waisted", "large", "crossing.waist_at", "2 mm", 1},
		{"straight", "single", "mount.screws", "25", 2},
		{"straight", "single", "mount.screw_circle", "6 mm", 1},
		{"straight", "single", "mount.screw_circle", "36 mm", 1},
		{"straight", "single", "mount.start", "400 deg", 2},
		{"straight", "single", "mount.collet.bore", "5.999 mm", 1},
		{"straight", "single", "mount.collet.register", "7 mm", 1},
		{"straight", "single", "mount.collet.flange", "5 mm", 1},
		{"straight", "single", "additions[0].radius", "1 mm", 1},
		{"straight", "single", "additions[0].radius", "19 mm", 1},
		{"straight", "single", "additions[0].diameter", "15 mm", 1},
		{"straight", "single", "additions[0].diameter", "0", 2},
		{"straight", "single", "additions[0].repeat", "1000", 2},
		{"straight", "single", "additions[0].angle", "500 deg", 2},
		{"straight", "single", "dividing.ratio", "0", 2},
		{"straight", "two", "mount.screws", "0", 2},
		{"straight", "two", "mount.screw_circle", "7 mm", 1},
		{"straight", "two", "mount.screw_circle", "39 mm", 1},
		{"straight", "two", "mount.collet.register", "6.5 mm", 1},
		{"straight", "two", "misplacement", "30 mm", 2},
	} {
		for _, units := range []string{"mm", "in"} {
			t.Run(fmt.Sprintf("%s %s %s in %s", row.part, row.field, row.text, units), func(t *testing.T) {
				j := metric(t, dressed(t, row.style), units)
				bad := set(t, j, row.part, row.field, row.text)
				r := solve.Solve(context.Background(), bad)
				values := told(r, row.part, row.field)
				require.Len(t, values, row.tells, errorsOf(r, row.part))
				for _, v := range values {
					after := solve.Solve(context.Background(), set(t, bad, row.part, row.field, v))
					code := errorOn(after, row.part, row.field)
					if errorOn(r, row.part, row.field) == "finding.out-of-range" {
						require.NotEqual(t, "finding.out-of-range", code, "%s is in the range of the field", v)
						continue
					}
					require.Empty(t, code, "%s was told to do: %s", v, errorsOf(after, row.part))
				}
			})
		}
	}
}

// metric returns a job typed in bare millimetres with its units written out, and its
// sentences in the units.
func metric(t testing.TB, j *job.Job, units string) *job.Job {
	for _, w := range j.Wheels {
		for _, f := range job.Fields() {
			if f.Kind != job.Length {
				continue
			}
			for i := range 2 {
				field := indexed(f.Path, i)
				if text, ok := j.Text(w.ID, field); ok && text != "" && text[len(text)-1] != 'm' {
					j = set(t, j, w.ID, field, text+" mm")
				}
				if field == f.Path {
					break
				}
			}
		}
	}
	j = set(t, j, "two", "mount.screw_circle", "12 mm")
	j = set(t, j, "lantern", "module", "0.7 mm")
	return set(t, j, "", "units", units)
}

// indexed returns the field of an item of a list of groups.
func indexed(field geometry.Quantity, i int) geometry.Quantity {
	if rest, ok := strings.CutPrefix(string(field), "additions."); ok {
		return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, rest))
	}
	return field
}

// A thread too thick for any circle is told the coarsest of its kind that would do,
// and too many screws how many.
func TestThreadThatWouldDoDoes(t *testing.T) {
	j := set(t, read(t, collets), "single", "mount.thread", "M5")
	for field, text := range map[geometry.Quantity]string{"bore": "28 mm", "mount.collet.register": "", "mount.collet.flange": ""} {
		j = set(t, j, "single", field, text)
	}
	j, err := j.Remove("single", "additions[0]")
	require.NoError(t, err)
	j = set(t, j, "single", "mount.screws", "1")
	r := solve.Solve(context.Background(), j)
	values := told(r, "single", "mount.thread")
	require.Len(t, values, 1, errorsOf(r, "single"))
	r = solve.Solve(context.Background(), set(t, j, "single", "mount.thread", values[0]))
	require.Empty(t, errorOn(r, "single", "mount.thread"), errorsOf(r, "single"))
	circle := told(r, "single", "mount.screw_circle")
	require.Len(t, circle, 1)
	r = solve.Solve(context.Background(), set(t, set(t, j, "single", "mount.thread", values[0]), "single", "mount.screw_circle", circle[0]))
	require.Empty(t, errorsOf(r, "single"))
	require.NotNil(t, r.Wheel("single").Mounting)
}
