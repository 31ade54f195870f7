package solve_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry/depthing"
)

// goingTrain is an eight-day train that beats half seconds: 84/12, 96/8, 80/8 and an
// escape wheel of 30.
const goingTrain = `{"tipline": 1, "units": "mm", "wheels": [
	{"id": "great", "teeth": {"form": "cycloidal", "count": 84, "module": "1 mm", "leaves": 12}},
	{"id": "centre", "name": "Centre wheel", "teeth": {"form": "cycloidal", "count": 96, "module": "0.7 mm", "leaves": 8}},
	{"id": "third", "teeth": {"form": "cycloidal", "count": 80, "module": "0.6 mm", "leaves": 8}},
	{"id": "escape", "name": "Escape wheel", "teeth": {"form": "pointed", "count": 30, "tip_diameter": "44 mm", "undercut": "10 deg",
		"floor": "0.4 mm", "floor_slope": "10 deg", "back_radius": "6 mm", "land": "0.2 mm"}}],
 "pinions": [
	{"id": "p1", "form": "cycloidal", "leaves": 12, "module": "1 mm"},
	{"id": "p2", "form": "cycloidal", "leaves": 8, "module": "0.7 mm"},
	{"id": "p3", "form": "cycloidal", "leaves": 8, "module": "0.6 mm"}],
 "arbors": [{"id": "a1", "parts": ["p1", "centre"]}, {"id": "a2", "parts": ["p2", "third"]}, {"id": "a3", "parts": ["p3", "escape"]}],
 "pairs": [{"id": "m1", "wheel": "great", "pinion": "p1"}, {"id": "m2", "wheel": "centre", "pinion": "p2"},
	{"id": "m3", "wheel": "third", "pinion": "p3"}],
 "trains": [{"id": "going", "from": "great", "to": "escape", "hour": "centre"}]}`

func jobOf(t testing.TB, text string) *job.Job {
	j, err := job.Read(strings.NewReader(text))
	require.NoError(t, err)
	return j
}

func codes(fs []solve.Finding) []string {
	var s []string
	for _, f := range fs {
		s = append(s, f.Code)
	}
	return s
}

func TestTrainIsCountedToTheBeat(t *testing.T) {
	r := solve.Solve(context.Background(), jobOf(t, goingTrain))
	going := r.Trains[0]
	require.Equal(t, "840", going.Way.Ratio.RatString(), "84/12 · 96/8 · 80/8")
	require.True(t, going.Way.Reverse, "three pairs turn the last against the first")
	require.Equal(t, []*solve.Pair{r.Pairs[0], r.Pairs[1], r.Pairs[2]}, going.Pairs)
	require.Equal(t, "120", going.PerHour.RatString())
	require.Equal(t, "7200", going.Beat.PerHour.RatString())
	require.InDelta(t, 0.5, going.Beat.Seconds, 1e-12)
	require.InDelta(t, 248.4, going.Beat.Length, 0.1, "g/4π², a quarter of the seconds pendulum's 993.6 mm")
	require.Equal(t, []string{"train.ratio-against", "train.beat"}, codes(going.Findings))
	require.Contains(t, sentence(t, r, "going", "train.beat"), fmt.Sprintf("standard gravity, %g m/s²", depthing.Gravity/1000))
}

func TestTrainsByOtherWays(t *testing.T) {
	for _, row := range []struct {
		name, from, to, hour, turns string
		ratio, perHour, beats       string
		codes                       []string
	}{
		{"from an arbor", "a1", "a3", "", "", "120", "120", "7200", []string{"train.ratio", "train.beat"}},
		{"upwards", "escape", "great", "centre", "", "1/840", "1/7", "", []string{"train.ratio-against"}},
		{"on one arbor", "p3", "escape", "centre", "1/2", "1", "60", "3600", []string{"train.ratio", "train.beat"}},
		{"no whole minute", "centre", "escape", "", "1.01", "120", "606/5", "7272", []string{"train.ratio", "train.beat", "train.no-whole-minute"}},
		{"no whole hour", "great", "escape", "", "1/11", "840", "840/11", "50400/11", []string{"train.ratio-against", "train.beat", "train.no-whole-hour"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			j := jobOf(t, goingTrain)
			for field, text := range map[string]string{"from": row.from, "to": row.to, "hour": row.hour, "turns": row.turns} {
				next, err := j.Set("going", quantity(field), text)
				require.NoError(t, err)
				j = next
			}
			going := solve.Solve(context.Background(), j).Trains[0]
			require.NotNil(t, going.Way)
			require.Equal(t, row.ratio, going.Way.Ratio.RatString())
			require.Equal(t, row.perHour, going.PerHour.RatString())
			require.Equal(t, row.codes, codes(going.Findings))
			if row.beats == "" {
				require.Nil(t, going.Beat)
				return
			}
			require.Equal(t, row.beats, going.Beat.PerHour.RatString())
		})
	}
}

func TestTrainsThatCannotBeCounted(t *testing.T) {
	for _, row := range []struct{ name, part, field, text, at, says string }{
		{"unknown part", "going", "to", "nobody", "to", "“nobody”"},
		{"nothing", "going", "from", "", "from", "still empty"},
		{"unknown hour", "going", "hour", "nobody", "hour", "“nobody”"},
		{"turns of nothing", "going", "turns", "0", "turns", "from 0.001 to 3600"},
		{"turns a fraction of a decimal", "going", "turns", "1/7.5", "turns", "“1/7.5”"},
		{"turns no number", "going", "turns", "often", "turns", "“often”"},
		{"no way", "m2", "pinion", "nobody", "to", "great to escape"},
		{"a part that cannot be built", "third", "teeth.count", "2", "to", "No pairs lead"},
		{"locks", "a3", "parts", "p3, escape, great", "to", "different speeds"},
	} {
		t.Run(row.name, func(t *testing.T) {
			j := set(t, jobOf(t, goingTrain), row.part, quantity(row.field), row.text)
			r := solve.Solve(context.Background(), j)
			says := errorsOf(r, "going")
			require.NotEmpty(t, says)
			require.True(t, strings.HasPrefix(says[0], row.at+": "), says[0])
			require.Contains(t, says[0], row.says)
			require.NotContains(t, says[0], "{")
			require.NotContains(t, says[0], "‹")
			require.Nil(t, r.Trains[0].Beat)
		})
	}
}

func TestArborsSayWhatIsWrongWithThem(t *testing.T) {
	j := set(t, jobOf(t, goingTrain), "a2", "parts", "p2, third, nobody, centre")
	r := solve.Solve(context.Background(), j)
	require.Contains(t, errorsOf(r, "a2")[0], "“nobody”")
	require.Contains(t, codes(r.Findings), "arbor.twice")
}

// A pair that cannot turn does not keep its train from being counted, which says
// so; two parts of a pair on one arbor are told.
func TestTrainThroughAStuckPair(t *testing.T) {
	r := solve.Solve(context.Background(), set(t, jobOf(t, goingTrain), "m2", "centres", "35.9 mm"))
	require.Equal(t, "840", r.Trains[0].Way.Ratio.RatString())
	require.Contains(t, codes(r.Trains[0].Findings), "train.stuck")
	r = solve.Solve(context.Background(), set(t, jobOf(t, goingTrain), "a1", "parts", "p1, centre, p2"))
	require.Contains(t, errorsOf(r, "m2")[0], "stand on one arbor")
}

// A train is counted from the counts that are typed, also where a tooth form cannot be
// built or an escape wheel cannot be cut.
func TestTrainIsCountedFromTheJobsCounts(t *testing.T) {
	for _, row := range []struct{ name, part, field, text string }{
		{"no module", "p3", "module", ""},
		{"an escape wheel that cannot be cut", "escape", "teeth.tip_diameter", ""},
		{"a wheel without leaves", "third", "teeth.leaves", ""},
	} {
		t.Run(row.name, func(t *testing.T) {
			r := solve.Solve(context.Background(), set(t, jobOf(t, goingTrain), row.part, quantity(row.field), row.text))
			require.NotEmpty(t, errorsOf(r, row.part))
			require.Empty(t, errorsOf(r, "going"))
			require.Equal(t, "840", r.Trains[0].Way.Ratio.RatString())
			require.Equal(t, "7200", r.Trains[0].Beat.PerHour.RatString())
		})
	}
}

// What is doubtful about pairs and trains is said where it can be put right.
func TestDoubtfulTrains(t *testing.T) {
	again := strings.Replace(goingTrain, `{"id": "m3",`, `{"id": "m4", "wheel": "p2", "pinion": "centre"}, {"id": "m3",`, 1)
	for _, row := range []struct {
		name, job, part, field, text string
		severity                     solve.Severity
		of, at, code, says           string
	}{
		{"to itself", goingTrain, "going", "to", "great", solve.Error, "going", "to", "train.itself", "from great to itself"},
		{"no hour", goingTrain, "going", "hour", "", solve.Note, "going", "hour", "train.usual-hour", "great is taken to"},
		{"twice on one arbor", goingTrain, "a2", "parts", "p2, third, p2", solve.Caution, "a2", "parts", "arbor.part-again", "listed twice"},
		{"twice in mesh", again, "", "title", "Again", solve.Note, "m4", "pinion", "pair.again", "“Centre wheel – p2”"},
		{"two distances", again, "m4", "centres", "36.5 mm", solve.Caution, "m4", "centres", "pair.other-centres", "36.400 mm apart, but this pair's centres are 36.500 mm"},
	} {
		t.Run(row.name, func(t *testing.T) {
			r := solve.Solve(context.Background(), set(t, jobOf(t, row.job), row.part, quantity(row.field), row.text))
			require.Contains(t, sentence(t, r, row.of, row.code), row.says)
			for _, f := range r.Findings {
				require.NotEqual(t, "arbor.twice", f.Code)
				if f.Code == row.code {
					require.Equal(t, row.severity, f.Severity)
					require.Equal(t, quantity(row.at), f.Field)
				}
			}
		})
	}
}

// A train without an hour whose beats are a clock's needs no more said of it, and
// neither do pairs at one distance.
func TestTrainsWithoutDoubt(t *testing.T) {
	r := solve.Solve(context.Background(), set(t, set(t, jobOf(t, goingTrain), "going", "hour", ""), "going", "from", "centre"))
	require.NotContains(t, codes(r.Findings), "train.usual-hour")
	r = solve.Solve(context.Background(), sample(t))
	for _, code := range []string{"train.usual-hour", "pair.again", "pair.other-centres", "arbor.part-again"} {
		require.NotContains(t, codes(r.Findings), code)
	}
}

// A train stays the same where nothing it is made of has changed.
func TestTrainsAreRemembered(t *testing.T) {
	j := sample(t)
	var s solve.Solver
	before := s.Solve(context.Background(), j)
	titled := s.Solve(context.Background(), set(t, j, "", "title", "Other"))
	require.Equal(t, before.Trains, titled.Trains)
	require.Same(t, before.Trains[0], titled.Trains[0])
	wider := s.Solve(context.Background(), set(t, j, "third", "thickness", "2 mm"))
	require.NotSame(t, before.Trains[0], wider.Trains[0], "one of its pairs is another")
	require.Same(t, wider.Pairs[2], wider.Trains[0].Pairs[2])
	require.Same(t, before.Trains[1], wider.Trains[1], "the motion work has no third wheel")
	again := s.Solve(context.Background(), set(t, j, "escape", "teeth.count", "32"))
	require.NotSame(t, before.Trains[0], again.Trains[0])
	require.Equal(t, "7680", again.Trains[0].Beat.PerHour.RatString())
	for i := range before.Pairs {
		require.Same(t, before.Pairs[i].Turn, again.Pairs[i].Turn, "the escape wheel stands in no pair")
	}
	apart := s.Solve(context.Background(), set(t, j, "third-arbor", "parts", "third"))
	require.Nil(t, apart.Trains[0].Way)
}
