package solve_test

import (
	"context"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/depthing"
	"tipline/geometry/tooth"
)

// lanternPair is a wheel for a lantern pinion and that pinion.
const lanternPair = `{"tipline": 1, "units": "mm",
 "wheels": [{"id": "w", "teeth": {"form": "lantern driver", "count": 96, "module": "0.7 mm", "leaves": 8},
	"thickness": "1.5 mm", "crossing": {"arms": 6, "rim": "3 mm", "hub": "16 mm", "arm_at_rim": "2 mm", "arm_at_hub": "3 mm"}}],
 "pinions": [{"id": "p", "form": "lantern", "leaves": 8, "module": "0.7 mm", "dividing": {"ratio": 60}}],
 "pairs": [{"id": "pair", "wheel": "w", "pinion": "p"}]}`

// A pair is turned as its parts stand: what the solver says is what depthing says
// of the same two gears.
func TestPairIsTurned(t *testing.T) {
	r := solve.Solve(context.Background(), jobOf(t, goingTrain))
	p := r.Pairs[1]
	wheel, err := tooth.Cycloidal{Count: 96, Module: 0.7, Leaves: 8}.Wheel()
	require.NoError(t, err)
	pinion, err := tooth.Pinion{Leaves: 8, Module: 0.7, Ratio: 12}.Wheel()
	require.NoError(t, err)
	driver, err := depthing.Toothed(wheel.Outline, 96, wheel.PitchRadius)
	require.NoError(t, err)
	follower, err := depthing.Toothed(pinion.Outline, 8, pinion.PitchRadius)
	require.NoError(t, err)
	want, err := depthing.Mesh(driver, follower, 36.4, len(p.Turn.Steps))
	require.NoError(t, err)
	require.InDelta(t, 36.4, p.Nominal, 1e-12, "0.7 mm · (96 + 8)/2")
	require.InDelta(t, 12, p.Turn.Mean, 1e-12)
	require.InDelta(t, want.WorstError, p.Turn.WorstError, 1e-9)
	require.InDelta(t, want.PitchPlay, p.Turn.PitchPlay, 1e-9)
	require.Equal(t, []string{"pair.figures", "pair.approach"}, codes(p.Findings))
	require.Equal(t, []string{"pair.figures", "pair.after"}, codes(r.Pairs[0].Findings), "twelve leaves")
}

func TestLanternPairMeshes(t *testing.T) {
	p := solve.Solve(context.Background(), jobOf(t, lanternPair)).Pairs[0]
	require.Equal(t, []string{"pair.figures", "pair.approach"}, codes(p.Findings))
	require.Less(t, p.Turn.WorstError, 0.01, "the flank is the trundle's own path")
}

// Where the theory says that a trundle is taken hold of, and where teeth are found to
// meet, are told as the two places that they are: of its middle, and of the contact.
func TestLanternFindingsTellPlacesApart(t *testing.T) {
	r := solve.Solve(context.Background(), jobOf(t, lanternPair))
	require.Contains(t, sentence(t, r, "w", "teeth.lantern-contact"), "the trundle's middle stands")
	require.Contains(t, sentence(t, r, "w", "teeth.lantern-contact"), "Trundles 0.735 mm thick", "1.05 · 0.7 mm")
	require.Contains(t, sentence(t, r, "p", "pinion.drill"), "Trundles 0.735 mm thick")
	require.Contains(t, sentence(t, r, "pair", "pair.approach"), "Teeth meet")
}

// sentence returns what is said of a part under a code.
func sentence(t *testing.T, r *solve.Result, part, code string) string {
	for _, f := range r.Findings {
		if f.Part == part && f.Code == code {
			return f.Sentence(english, solve.Units(r.Job, english))
		}
	}
	require.Fail(t, "not said", "%s of %s", code, part)
	return ""
}

// What the solver looks at is enough: twenty times the places of a pitch find an
// error of speed at most a hundredth greater.
func TestPlacesOfAPitchAreEnough(t *testing.T) {
	for _, p := range solve.Solve(context.Background(), sample(t)).Pairs {
		finer, err := depthing.Mesh(p.Driver, p.Follower, p.Turn.Centres, 20*len(p.Turn.Steps))
		require.NoError(t, err)
		require.InEpsilon(t, finer.WorstError, p.Turn.WorstError, 0.01, p.ID())
		require.InDelta(t, finer.PitchPlay, p.Turn.PitchPlay, 1e-4, p.ID())
	}
}

// Each thing that is wrong with a pair is said on its own field.
func TestWhatIsWrongWithAPair(t *testing.T) {
	for _, row := range []struct {
		name, job, part, field, text string
		severity                     solve.Severity
		at, code                     string
	}{
		{"other module", goingTrain, "p2", "module", "0.72 mm", solve.Caution, "pinion", "pair.modules-differ"},
		{"other leaves", goingTrain, "centre", "teeth.leaves", "10", solve.Caution, "wheel", "pair.other-leaves"},
		{"other ratio", goingTrain, "p2", "ratio", "3", solve.Caution, "pinion", "pair.other-ratio"},
		{"trundles for leaves", goingTrain, "p2", "form", "lantern", solve.Caution, "wheel", "pair.leaves-meet-trundles"},
		{"leaves for trundles", lanternPair, "p", "form", "cycloidal", solve.Caution, "wheel", "pair.trundles-meet-leaves"},
		{"other trundles", lanternPair, "p", "trundle", "0.7 mm", solve.Caution, "wheel", "pair.other-trundles"},
		{"wide", goingTrain, "m2", "centres", "36.5 mm", solve.Note, "centres", "pair.centres-wide"},
		{"deep", goingTrain, "m2", "centres", "36.3 mm", solve.Note, "centres", "pair.centres-deep"},
		{"too few leaves", goingTrain, "p2", "leaves", "4", solve.Caution, "centres", "pair.lets-go"},
		{"rough", goingTrain, "p2", "leaves", "4", solve.Caution, "centres", "pair.rough"},
		{"rough for its centres", goingTrain, "m2", "centres", "37.3 mm", solve.Caution, "centres", "pair.rough-off-centres"},
		{"jams", goingTrain, "m2", "centres", "35.9 mm", solve.Error, "centres", "depthing.driver-tips"},
		{"apart", goingTrain, "m2", "centres", "50 mm", solve.Error, "centres", "depthing.centres"},
		{"no length", goingTrain, "m2", "centres", "near", solve.Error, "centres", "measure.not-a-value"},
		{"no pitch", goingTrain, "m2", "wheel", "escape", solve.Error, "wheel", "pair.no-pitch"},
		{"nobody", goingTrain, "m2", "pinion", "nobody", solve.Error, "pinion", "pair.no-such-part"},
		{"nothing", goingTrain, "m2", "pinion", "", solve.Error, "pinion", "finding.missing"},
		{"with itself", goingTrain, "m2", "pinion", "centre", solve.Error, "pinion", "pair.itself"},
		{"unbuilt", goingTrain, "p2", "leaves", "2", solve.Error, "pinion", "pair.unbuilt"},
	} {
		t.Run(row.name, func(t *testing.T) {
			pair := "m2"
			if row.job == lanternPair {
				pair = "pair"
			}
			r := solve.Solve(context.Background(), set(t, jobOf(t, row.job), row.part, quantity(row.field), row.text))
			p := r.Part(pair).(*solve.Pair)
			for _, f := range p.Findings {
				says := f.Sentence(english, solve.Units(r.Job, english))
				require.NotContains(t, says, "{")
				require.NotContains(t, says, "‹")
				if f.Code == row.code {
					require.Equal(t, row.severity, f.Severity)
					require.Equal(t, geometry.Quantity(row.at), f.Field)
					return
				}
			}
			require.Fail(t, "not said", "%v", codes(p.Findings))
		})
	}
}

// The distance that a jamming pair is told does not jam when it is typed back.
func TestCentresThatWouldDoDo(t *testing.T) {
	j := set(t, jobOf(t, goingTrain), "m2", "centres", "35.9 mm")
	r := solve.Solve(context.Background(), j)
	require.True(t, r.Pairs[1].Turn.Jams())
	for _, p := range r.Pairs[1].Findings[0].Places {
		if p.Name == "min" {
			next := set(t, j, "m2", "centres", solve.Units(j, english).Length(p.Value))
			require.Empty(t, errorsOf(solve.Solve(context.Background(), next), "m2"))
			return
		}
	}
	require.Fail(t, "nothing is said that would do")
}

// A pinion that says no ratio is made for the wheel it is paired with.
func TestPinionTakesThePairsRatio(t *testing.T) {
	j := jobOf(t, goingTrain)
	pinion := func(j *job.Job) *solve.Pinion {
		return solve.Solve(context.Background(), j).Part("p2").(*solve.Pinion)
	}
	require.InDelta(t, 12, pinion(j).Ratio, 1e-12)
	require.InDelta(t, 10, pinion(set(t, j, "centre", "teeth.count", "80")).Ratio, 1e-12)
	require.InDelta(t, 9, pinion(set(t, j, "p2", "ratio", "9")).Ratio, 1e-12)
	require.InDelta(t, 7.5, pinion(set(t, j, "m3", "pinion", "p2")).Ratio, 1e-12, "two wheels drive it")
	require.InDelta(t, 7.5, pinion(set(t, j, "m2", "pinion", "p3")).Ratio, 1e-12, "none does")
}

// One edit costs the parts it touches: a crossing leaves the mesh as it was turned,
// a wheel's teeth turn its own pairs alone.
func TestOneEditTurnsItsOwnPairs(t *testing.T) {
	j := jobOf(t, goingTrain)
	var s solve.Solver
	before := s.Solve(context.Background(), j)
	crossed := s.Solve(context.Background(), set(t, j, "centre", "thickness", "2 mm"))
	require.NotSame(t, before.Pairs[1], crossed.Pairs[1])
	require.Same(t, crossed.Wheels[1], crossed.Pairs[1].Wheel)
	require.Same(t, before.Pairs[1].Turn, crossed.Pairs[1].Turn)
	require.Same(t, before.Pairs[0], crossed.Pairs[0])
	require.Same(t, before.Pinions[1], crossed.Pinions[1])
	other := s.Solve(context.Background(), set(t, j, "centre", "teeth.count", "95"))
	require.NotSame(t, before.Pairs[1].Turn, other.Pairs[1].Turn)
	require.NotSame(t, before.Pinions[1], other.Pinions[1], "its ratio is the pair's")
	require.Same(t, before.Pinions[0], other.Pinions[0])
	require.Same(t, before.Pairs[0], other.Pairs[0])
	require.Same(t, before.Wheels[0], other.Wheels[0])
}

func TestBadPinions(t *testing.T) {
	for _, row := range []struct{ field, text, says string }{
		{"leaves", "2", "from 3 to 2000"},
		{"leaves", "eight", "“eight”"},
		{"leaves", "", "still empty"},
		{"module", "", "still empty"},
		{"module", "-1 mm", "from 0.01 mm"},
		{"module", "NaN", "“NaN”"},
		{"form", "", "still empty"},
		{"form", "involute", "cycloidal, lantern"},
		{"ratio", "0", "from 0.1 to 100"},
		{"ratio", "much", "“much”"},
		{"bore", "40 mm", "at most"},
		{"bore", "-1 mm", "out of range"},
		{"thickness", "thick", "“thick”"},
		{"dividing.ratio", "0", "from 1 to 1000"},
	} {
		for _, form := range []string{"cycloidal", "lantern"} {
			t.Run(form+" "+row.field+" "+row.text, func(t *testing.T) {
				j := set(t, jobOf(t, goingTrain), "p2", "form", form)
				r := solve.Solve(context.Background(), set(t, j, "p2", quantity(row.field), row.text))
				says := errorsOf(r, "p2")
				require.NotEmpty(t, says)
				require.True(t, strings.HasPrefix(says[0], row.field+": "), says[0])
				require.Contains(t, says[0], row.says)
				require.NotContains(t, says[0], "{")
			})
		}
	}
	r := solve.Solve(context.Background(), set(t, jobOf(t, lanternPair), "p", "trundle", "9 mm"))
	require.Contains(t, errorsOf(r, "p")[0], "trundle: ")
}

// What a pair that jams is told would do is remembered while its centres are typed, and
// found anew for other teeth.
func TestWhatWouldDoIsThatOfTheTeeth(t *testing.T) {
	j := jobOf(t, goingTrain)
	var s solve.Solver
	told := map[string]bool{}
	for _, edit := range []struct{ part, field, text string }{
		{"m2", "centres", "35.9 mm"},
		{"m2", "centres", "36.5 mm"},
		{"m2", "centres", "35.8 mm"},
		{"centre", "teeth.count", "97"},
		{"centre", "teeth.count", "98"},
		{"p2", "leaves", "9"},
		{"p2", "form", "lantern"},
		{"", "units", "in"},
	} {
		j = set(t, j, edit.part, quantity(edit.field), edit.text)
		r, fresh := s.Solve(context.Background(), j), solve.Solve(context.Background(), j)
		require.Equal(t, fresh.Pairs[1].Findings, r.Pairs[1].Findings, "%v", edit)
		if r.Pairs[1].Turn.Jams() {
			told[r.Pairs[1].Findings[0].Sentence(english, solve.Units(j, english))] = true
		}
	}
	require.GreaterOrEqual(t, len(told), 5, "%v", told)
}
