package solve_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry"
)

func set(t testing.TB, j *job.Job, part string, field geometry.Quantity, text string) *job.Job {
	next, err := j.Set(part, field, text)
	require.NoError(t, err)
	return next
}

// errorsOf returns the sentences of a part's error findings, each with its field.
func errorsOf(r *solve.Result, part string) []string {
	var s []string
	for _, f := range r.Findings {
		if f.Severity == solve.Error && f.Part == part {
			s = append(s, string(f.Field)+": "+f.Sentence(words.English(), solve.Units(r.Job, english)))
		}
	}
	return s
}

// Each bad value is said on its own field, in one sentence that names what would
// do, and leaves the steps that do not need it standing.
func TestBadValues(t *testing.T) {
	for _, row := range []struct {
		part        string
		field       geometry.Quantity
		text, says  string
		teethRemain bool
	}{
		{"third", "teeth.count", "seventy", "“seventy”", false},
		{"third", "teeth.count", "2", "from 3 to 2000", false},
		{"third", "teeth.count", "1000000000", "", false},
		{"third", "teeth.module", "-0.6 mm", "", false},
		{"third", "teeth.module", "", "still empty", false},
		{"third", "teeth.module", "NaN", "", false},
		{"third", "teeth.form", "involute", "cycloidal", false},
		{"third", "thickness", "1 furlong", "", true},
		{"third", "thickness", "1e9 mm", "", true},
		{"third", "material", "cheese", "brass", true},
		{"third", "hand", "widdershins", "anticlockwise", true},
		{"third", "crossing.arms", "13", "from 3 to 12", true},
		{"third", "crossing.hub", "50 mm", "at most", true},
		{"third", "crossing.rim", "30 mm", "at most", true},
		{"third", "crossing.fillet_at_rim", "40 mm", "at most", true},
		{"third", "crossing.blade", "9/0", "2/0", true},
		{"third", "crossing.style", "curly", "straight, swept, waisted", true},
		{"third", "crossing.sweep", "sideways", "“sideways”", true},
		{"third", "crossing.sweep", "120 deg", "from -90° to 90°", true},
		{"third", "crossing.sweep", "80 deg", "at most", true},
		{"third", "crossing.sweep", "", "still empty", true},
		{"third", "crossing.outer_radius", "0.5 mm", "at least", true},
		{"escape", "crossing.waist", "", "still empty", true},
		{"escape", "crossing.waist", "5 mm", "at most 1.60 mm", true},
		{"escape", "crossing.waist_at", "99 mm", "at most", true},
		{"escape", "crossing.waist_at", "at the middle", "“at the middle”", true},
		{"third", "mount.screws", "a few", "“a few”", true},
		{"third", "mount.screws", "25", "from 1 to 24", true},
		{"third", "mount.screws", "-2", "-2 is out of range: this takes from 1 to 24.", true},
		{"third", "mount.thread", "M99", "ISO metric coarse M1 – M5", true},
		{"third", "mount.thread", "", "still empty", true},
		{"third", "mount.screw_circle", "", "still empty", true},
		{"third", "mount.screw_circle", "5.2 mm", "At least 6.10 mm", true},
		{"third", "mount.screw_circle", "13 mm", "at most", true},
		{"third", "mount.start", "noon", "“noon”", true},
		{"great", "mount.collet.bore", "7.99 mm", "at most 7.98 mm", true},
		{"great", "mount.collet.register", "9 mm", "at most 8.00 mm", true},
		{"great", "mount.collet.flange", "8 mm", "at least 8.02 mm", true},
		{"great", "additions[0].kind", "slot", "hole, circle, line, note", true},
		{"great", "additions[0].radius", "", "still empty", true},
		{"great", "additions[0].radius", "10 feet", "“10 feet”", true},
		{"great", "additions[0].radius", "41 mm", "", true},
		{"great", "additions[0].diameter", "9 mm", "at most", true},
		{"great", "additions[0].repeat", "often", "“often”", true},
		{"great", "additions[0].angle", "9 o'clock", "“9 o'clock”", true},
		{"third", "dividing.ratio", "0", "from 1 to 1000", true},
		{"third", "cutter.clearance", "80 deg", "", true},
		{"third", "cutter.stock_width", "1 mm", "", true},
		{"escape", "teeth.undercut", "60 deg", "", false},
		{"escape", "teeth.back_radius", "0.001 mm", "", false},
		{"escape", "teeth.land", "9 mm", "", false},
		{"escape", "teeth.solve", "everything", "back_radius", false},
	} {
		t.Run(fmt.Sprintf("%s %s", row.field, row.text), func(t *testing.T) {
			r := solve.Solve(context.Background(), set(t, sample(t), row.part, row.field, row.text))
			says := errorsOf(r, row.part)
			require.NotEmpty(t, says)
			require.True(t, strings.HasPrefix(says[0], string(row.field)+": "), says[0])
			require.Contains(t, says[0], row.says)
			require.NotContains(t, says[0], "{", "an unfilled place: %s", says[0])
			require.NotContains(t, says[0], "‹", "no text: %s", says[0])
			require.Equal(t, row.teethRemain, r.Wheel(row.part).Teeth != nil)
			for _, other := range r.Wheels {
				if other.Part.ID != row.part {
					require.NotNil(t, other.Relief, "the other wheels stand")
				}
			}
			t.Log(says)
		})
	}
}

func TestOneEditSolvesOneWheel(t *testing.T) {
	j := sample(t)
	var s solve.Solver
	before := s.Solve(context.Background(), j)
	after := s.Solve(context.Background(), set(t, j, "third", "crossing.rim", "2.5 mm"))
	for i, w := range before.Wheels {
		if w.Part.ID == "third" {
			require.NotSame(t, w, after.Wheels[i])
			require.InDelta(t, w.Crossing.RimRadius-0.2, after.Wheels[i].Crossing.RimRadius, 1e-12)
			continue
		}
		require.Same(t, w, after.Wheels[i])
	}
	inches := s.Solve(context.Background(), set(t, j, "", "units", "in"))
	require.NotSame(t, before.Wheels[0], inches.Wheels[0], "inches are worked out and said anew")
}

func TestSolvingGivesWay(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	require.Nil(t, solve.Solve(ctx, sample(t)))
}

// A number without a unit is in the job's units.
func TestBareNumbers(t *testing.T) {
	j := set(t, sample(t), "third", "thickness", "1.5")
	require.InDelta(t, 1.5, solve.Solve(context.Background(), j).Wheel("third").Thickness, 1e-12)
	j = set(t, set(t, sample(t), "", "units", "in"), "third", "thickness", "0.0625")
	require.InDelta(t, 1.5875, solve.Solve(context.Background(), j).Wheel("third").Thickness, 1e-12)
}

// The value that a sentence says would do does, when it is typed back.
func TestWhatWouldDoDoes(t *testing.T) {
	for _, row := range []struct {
		field geometry.Quantity
		text  string
	}{
		{"crossing.hub", "60 mm"},
		{"crossing.rim", "30 mm"},
		{"crossing.fillet_at_rim", "40 mm"},
	} {
		t.Run(string(row.field), func(t *testing.T) {
			j := set(t, sample(t), "third", row.field, row.text)
			r := solve.Solve(context.Background(), j)
			best := ""
			for _, f := range r.Findings {
				for _, p := range f.Places {
					if f.Severity == solve.Error && f.Field == row.field && p.Name == "max" {
						best = solve.Units(j, english).Length(p.Value)
					}
				}
			}
			require.NotEmpty(t, best, errorsOf(r, "third"))
			r = solve.Solve(context.Background(), set(t, j, "third", row.field, best))
			for _, f := range r.Findings {
				require.False(t, f.Severity == solve.Error && f.Part == "third" && f.Field == row.field,
					"%s was said to do: %s", best, errorsOf(r, "third"))
			}
		})
	}
}

// A wheel for a lantern pinion has teeth, a cutter and a word on how it drives;
// trundles too thick for it are refused with the thickest that would do.
func TestLanternDriver(t *testing.T) {
	j := set(t, sample(t), "third", "teeth.form", "lantern driver")
	w := solve.Solve(context.Background(), j).Wheel("third")
	require.Equal(t, 80, w.Teeth.Count)
	require.NotNil(t, w.Cut)
	require.NotNil(t, w.Crossing)
	require.NoError(t, w.Teeth.CheckBore(w.Bore))
	require.True(t, w.Teeth.Outline.Simple())
	var said []string
	for _, f := range w.Findings {
		said = append(said, f.Code)
	}
	require.Contains(t, said, "teeth.lantern-contact")
	thick := solve.Solve(context.Background(), set(t, j, "third", "teeth.trundle", "1.7 mm"))
	require.Contains(t, errorsOf(thick, "third")[0], "teeth.trundle: ")
}

// A ratchet is a pointed wheel: the other hand is its mirror image.
func TestRatchetBothHands(t *testing.T) {
	j := set(t, sample(t), "escape", "teeth.form", "ratchet")
	one := solve.Solve(context.Background(), j).Wheel("escape").Teeth
	other := solve.Solve(context.Background(), set(t, j, "escape", "hand", "anticlockwise")).Wheel("escape").Teeth
	require.Equal(t, "ratchet", one.Form)
	require.InDelta(t, one.Outline.Area(), other.Outline.Area(), 1e-9)
	for i := range one.Outline.Len() {
		p, _ := other.Outline.Nearest(one.Outline.Vertex(i).Mirror())
		require.InDelta(t, 0, p.Dist(one.Outline.Vertex(i).Mirror()), 1e-9)
	}
}

// Teeth that no count of arms divides still get their deviation or unbalance said.
func TestTeethThatNothingDivides(t *testing.T) {
	for placing, code := range map[string]string{
		"on tips": "crossing.unbalanced-and-none", "equal": "crossing.off-tips-and-none",
	} {
		j := set(t, set(t, sample(t), "third", "teeth.count", "83"), "third", "crossing.placing", placing)
		var codes []string
		for _, f := range solve.Solve(context.Background(), j).Wheel("third").Findings {
			codes = append(codes, f.Code)
		}
		require.Contains(t, codes, code)
	}
}

var english = words.English()

func quantity(field string) geometry.Quantity { return geometry.Quantity(field) }
