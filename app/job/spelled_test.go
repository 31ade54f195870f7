package job

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Another unit of the job gives every bare length the unit it was read in, and leaves all
// else as it stands.
func TestAnotherUnitSpellsBareLengthsOut(t *testing.T) {
	for _, row := range []struct{ text, metric, inches string }{
		{"6", "6 mm", "6 in"},
		{" 1 3/8 ", "1 3/8 mm", "1 3/8 in"},
		{"⅜", "⅜ mm", "⅜ in"},
		{"0,5", "0,5 mm", "0,5 in"},
		{"−2", "−2 mm", "−2 in"},
		{"50000", "50000 mm", "50000 in"},
		{"0", "0", "0"},
		{"#60", "#60", "#60"},
		{"F", "F", "F"},
		{"3/8 in", "3/8 in", "3/8 in"},
		{"5 thou", "5 thou", "5 thou"},
		{"wide", "wide", "wide"},
		{"1,234.5", "1,234.5", "1,234.5"},
		{"", "", ""},
	} {
		for from, want := range map[string]string{"mm": row.metric, "in": row.inches, "": row.metric} {
			j, to := New(from), "in"
			if from == "in" {
				to = "mm"
			}
			j.Wheels = []*Wheel{{ID: "a", Thickness: Typed(row.text), Teeth: &Teeth{Count: Counted("30"), Undercut: Typed("10")}}}
			next, err := j.Set("", "units", to)
			require.NoError(t, err)
			require.Equal(t, to, next.Units)
			require.Equal(t, want, next.Wheels[0].Thickness.Text, "%q from %q", row.text, from)
			require.Equal(t, row.text, j.Wheels[0].Thickness.Text, "the job before is as it was")
			require.Equal(t, j.Wheels[0].Teeth, next.Wheels[0].Teeth)
			if want == row.text {
				require.Same(t, j.Wheels[0], next.Wheels[0], "a part without bare lengths is shared")
			}
			same, err := j.Set("", "units", map[string]string{"": "mm", "mm": "", "in": "in"}[from])
			require.NoError(t, err)
			require.Equal(t, row.text, same.Wheels[0].Thickness.Text, "the same unit by another name")
		}
	}
}

// Every field that takes a length is given its unit, wherever it stands.
func TestAnotherUnitReachesEveryLength(t *testing.T) {
	j := read(t, `{"tipline": 1, "units": "mm", "wheels": [{"id": "w"}], "pinions": [{"id": "p"}], "pairs": [{"id": "pair"}], "stacks": [{"id": "s"}]}`)
	parts := []string{"w", "p", "pair", "s"}
	inItem := map[string]string{"cutter.bit.chain": "cutter.bit.chain[0]", "additions": "additions[0]"}
	set := func(part string, f Field, text string) (string, bool) {
		path := string(f.Path)
		for bare, item := range inItem {
			if len(path) > len(bare) && path[:len(bare)+1] == bare+"." {
				path = item + path[len(bare):]
			}
		}
		next, err := j.Set(part, geometry.Quantity(path), text)
		if err != nil {
			return path, false
		}
		j = next
		return path, true
	}
	type place struct{ part, path string }
	lengths, others := []place{}, []place{}
	for _, f := range Fields() {
		for _, part := range parts {
			if f.Path == "id" || f.Path == "wheels" || f.Kind == Text {
				continue
			}
			if path, ok := set(part, f, "3"); ok && f.Kind == Length {
				lengths = append(lengths, place{part, path})
			} else if ok {
				others = append(others, place{part, path})
			}
		}
	}
	require.Greater(t, len(lengths), 40)
	require.NotEmpty(t, others)
	next, err := j.Set("", "units", "in")
	require.NoError(t, err)
	for _, p := range lengths {
		text, _ := next.Text(p.part, geometry.Quantity(p.path))
		require.Equal(t, "3 mm", text, "%v", p)
	}
	for _, p := range others {
		text, _ := next.Text(p.part, geometry.Quantity(p.path))
		require.Equal(t, "3", text, "%v", p)
	}
}
