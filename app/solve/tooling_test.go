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
	"tipline/geometry/cutter"
)

// place returns a number that stands in a part's finding.
func place(t *testing.T, fs []solve.Finding, code, name string) float64 {
	for _, f := range fs {
		for _, p := range f.Places {
			if f.Code == code && p.Name == name {
				return p.Value
			}
		}
	}
	require.Fail(t, "not said", "%s {%s} in %v", code, name, codes(fs))
	return 0
}

// The clearance that a rubbing heel is told clears when it is typed back, and so
// does the swing.
func TestClearanceThatWouldDoDoes(t *testing.T) {
	j := set(t, sample(t), "escape", "cutter.swing", "12 mm")
	w := solve.Solve(context.Background(), j).Wheel("escape")
	clears := geometry.Angle(place(t, w.Findings, "cutter.heel-rubs", "clears"))
	require.GreaterOrEqual(t, clears, w.Clears)
	for field, text := range map[string]string{
		"cutter.clearance": fmt.Sprintf("%.1f deg", clears.Degrees()),
		"cutter.swing":     fmt.Sprintf("%.2f mm", place(t, w.Findings, "cutter.heel-rubs", "least")),
	} {
		again := solve.Solve(context.Background(), set(t, j, "escape", quantity(field), text)).Wheel("escape")
		require.NotContains(t, codes(again.Findings), "cutter.heel-rubs", "%s %s was said to do", field, text)
	}
	tiny := solve.Solve(context.Background(), set(t, j, "escape", "cutter.swing", "3 mm")).Wheel("escape")
	require.Contains(t, codes(tiny.Findings), "cutter.heel-rubs-at-any")
}

func TestGrindingWheelsEdge(t *testing.T) {
	j := sample(t)
	w := solve.Solve(context.Background(), j).Wheel("great")
	require.Contains(t, codes(w.Findings), "cutter.hollow-corners")
	round := solve.Solve(context.Background(), set(t, j, "great", "cutter.wheel_edge", "9 mm")).Wheel("great")
	most := place(t, round.Findings, "cutter.edge-too-round", "max")
	require.InDelta(t, w.Relief.SmallestConcave, most, 0.01)
	fits := set(t, j, "great", "cutter.wheel_edge", fmt.Sprintf("%.2f mm", most))
	w = solve.Solve(context.Background(), fits).Wheel("great")
	require.NotContains(t, codes(w.Findings), "cutter.edge-too-round")
	require.Contains(t, codes(w.Findings), "cutter.hollow-corners-rounded")
}

// A formed wheel leaves the walls of a space, which run nearly along the infeed,
// little clearance; edge by edge they have all of it.
func TestSideClearanceOfAFormedWheel(t *testing.T) {
	j := set(t, sample(t), "great", "cutter.ground", "formed")
	w := solve.Solve(context.Background(), j).Wheel("great")
	require.True(t, w.Formed)
	require.Less(t, w.Relief.LeastClearance, geometry.Degrees(1))
	require.InDelta(t, float64(w.Relief.LeastClearance), place(t, w.Findings, "cutter.side-rubs", "side"), 1e-12)
	facets := solve.Solve(context.Background(), sample(t)).Wheel("great")
	require.NotContains(t, codes(facets.Findings), "cutter.side-rubs")
}

// At depth the maker is told what is left of the land, and how far on it is gone:
// fed so far the land is nothing, a little further it is less.
func TestFeedingPastDepth(t *testing.T) {
	w := solve.Solve(context.Background(), sample(t)).Wheel("escape")
	require.InDelta(t, 0.2, place(t, w.Findings, "cutter.past-depth", "land"), 1e-9)
	past := place(t, w.Findings, "cutter.past-depth", "past")
	require.InDelta(t, 0, w.Cut.LandAt(w.Cut.Infeed+past), 1e-9)
	require.Negative(t, w.Cut.LandAt(w.Cut.Infeed+past+0.01))
	fall := w.Cut.LandAt(w.Cut.Infeed) - w.Cut.LandAt(w.Cut.Infeed+0.01)
	require.InDelta(t, 1000*fall, place(t, w.Findings, "cutter.past-depth", "fall"), 1e-6)
	sharp := solve.Solve(context.Background(), set(t, sample(t), "escape", "teeth.land", "0")).Wheel("escape")
	require.Positive(t, place(t, sharp.Findings, "cutter.no-land", "fall"))
	require.NotContains(t, codes(solve.Solve(context.Background(), sample(t)).Wheel("great").Findings), "cutter.no-land",
		"a train wheel's tip is a point by design")
}

func TestSpindleSpeed(t *testing.T) {
	w := solve.Solve(context.Background(), sample(t)).Wheel("great")
	// 46 to 137 m/min: milling brass with HSS, docslib.org/doc/5103932 (assets/tables/speeds.csv).
	require.InDelta(t, 46_000/(2*math.Pi*24), w.Speed.Slow, 1e-9, "24 mm swing")
	require.InDelta(t, 137_000/(2*math.Pi*24), w.Speed.Fast, 1e-9)
	still := set(t, sample(t), "great", "cutter.swing", "")
	require.Nil(t, solve.Solve(context.Background(), still).Wheel("great").Speed)
}

// typedBit types the corners of a form as a maker would, to 0.001 mm, into a
// wheel's measured bit, instead of what stands there.
func typedBit(t *testing.T, j *job.Job, wheel string, corners []cutter.Corner) *job.Job {
	for j.Wheel(wheel).Cutter.Bit != nil {
		next, err := j.Remove(wheel, "cutter.bit.chain[0]")
		require.NoError(t, err)
		j = next
	}
	for i, c := range corners {
		for name, v := range map[string]float64{"x": c.X, "y": c.Y, "radius": c.Radius} {
			text := fmt.Sprintf("%.3f mm", v)
			if v == 0 && name == "radius" {
				text = ""
			}
			j = set(t, j, wheel, geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].%s", i, name)), text)
		}
	}
	return j
}

// A bit measured just as it should be cuts what it should, to what was typed.
func TestBitAsItShouldBe(t *testing.T) {
	j := sample(t)
	for _, id := range []string{"great", "escape"} {
		wanted := solve.Solve(context.Background(), j).Wheel(id)
		w := solve.Solve(context.Background(), typedBit(t, j, id, wanted.Cut.Form.Corners())).Wheel(id)
		require.NotNil(t, w.Ground, "%s %v", id, codes(w.Findings))
		require.Less(t, math.Abs(w.Ground.Worst.Off), 2e-3, id)
		require.InDelta(t, wanted.Cut.RootRadius, w.Ground.Cut.RootRadius, 2e-3)
		require.Equal(t, solve.Note, worst(t, w.Findings, "bit."))
	}
}

// A bit within what a sentence can tell is said to be right, and no other infeed is
// named; settings are told as finely as they are set.
func TestBitIsToldAsFinelyAsItIsSet(t *testing.T) {
	square := []cutter.Corner{{X: 0, Y: 5}, {X: 0, Y: 0}, {X: 0.4, Y: 0}, {X: 5, Y: 5}}
	j := sample(t)
	r := solve.Solve(context.Background(), typedBit(t, j, "escape", square))
	require.Regexp(t, `^Fed \d\.\d{3} mm instead of \d\.\d{3} mm, `, sentence(t, r, "escape", "bit.nearest"))
	require.Regexp(t, `a land of \d\.\d{3} mm; .*, \d\.\d{3} mm\.$`, sentence(t, r, "escape", "bit.land"))
	form := r.Wheel("great").Cut.Form.Corners()
	r = solve.Solve(context.Background(), typedBit(t, j, "great", form))
	require.Contains(t, sentence(t, r, "great", "bit.right"), "to within 1 µm")
	require.NotContains(t, codes(r.Wheel("great").Findings), "bit.nearest")
}

// worst returns the gravest severity among findings whose code begins so.
func worst(t *testing.T, fs []solve.Finding, begins string) solve.Severity {
	var some []solve.Finding
	for _, f := range fs {
		if strings.HasPrefix(f.Code, begins) {
			some = append(some, f)
		}
	}
	s, ok := solve.Worst(some)
	require.True(t, ok, "nothing said of %s", begins)
	return s
}

// A bit whose floor is ground wider takes metal, leaves less land and is told so;
// one that turns back under itself has the corner named.
func TestBitThatStrays(t *testing.T) {
	j := sample(t)
	form := solve.Solve(context.Background(), j).Wheel("escape").Cut.Form
	wide := form.Corners()
	for i := range wide {
		if wide[i].X > 0.3 {
			wide[i].X += 0.05
		}
	}
	w := solve.Solve(context.Background(), typedBit(t, j, "escape", wide)).Wheel("escape")
	require.Less(t, w.Ground.Cut.Land, w.Cut.Land)
	require.Equal(t, solve.Caution, worst(t, w.Findings, "bit.takes-metal"))
	require.Contains(t, codes(w.Findings), "bit.nearest")
	hooked := []cutter.Corner{{X: 0.3, Y: 4}, {X: 0.3, Y: 0.5}, {X: 0, Y: 0}, {X: 0.6, Y: 0}, {X: 4, Y: 4}}
	w = solve.Solve(context.Background(), typedBit(t, set(t, j, "escape", "teeth.undercut", "0 deg"), "escape", hooked)).Wheel("escape")
	require.NotNil(t, w.Ground, "%v", codes(w.Findings))
	require.Len(t, w.Ground.Undercut, 1)
	require.InDelta(t, 0, place(t, w.Findings, "bit.undercut", "y"), 1e-9)
	for _, f := range w.Findings {
		require.True(t, f.Code != "bit.undercut" || f.Field == "cutter.bit.chain[2].x", "%s", f.Field)
	}
}

// A bit whose x was measured from another place than the form's is told which, and by how
// much; typed so, it is right.
func TestBitMeasuredFromElsewhere(t *testing.T) {
	for _, row := range []struct {
		wheel, code, says string
		by                float64
	}{
		{"escape", "bit.x-from-the-front", "smaller", 5},
		{"escape", "bit.x-from-the-front-more", "greater", -1.25},
		{"great", "bit.x-from-the-middle", "smaller", 3.97},
		{"great", "bit.x-from-the-middle-more", "greater", -0.1},
		{"escape", "bit.x-from-the-front", "smaller", 30}, // so far aside that it misses the blank
	} {
		t.Run(fmt.Sprint(row.wheel, row.by), func(t *testing.T) {
			j := sample(t)
			corners := solve.Solve(context.Background(), j).Wheel(row.wheel).Cut.Form.Corners()
			for i := range corners {
				corners[i].X += row.by
			}
			r := solve.Solve(context.Background(), typedBit(t, j, row.wheel, corners))
			require.Contains(t, sentence(t, r, row.wheel, row.code), row.says)
			require.InDelta(t, math.Abs(row.by), place(t, r.Findings, row.code, "by"), 1.1e-3, "corners are typed to 1 µm")
			require.LessOrEqual(t, place(t, r.Findings, row.code, "off"), 2.0, "µm: corners are typed to one")
			for i := range corners {
				corners[i].X -= row.by
			}
			for _, code := range codes(solve.Solve(context.Background(), typedBit(t, j, row.wheel, corners)).Findings) {
				require.NotContains(t, code, "bit.x-from")
			}
		})
	}
}

func TestBadBits(t *testing.T) {
	sound := []cutter.Corner{{X: 0, Y: 5}, {X: 0, Y: 0}, {X: 0.4, Y: 0}, {X: 5, Y: 5}}
	for _, row := range []struct{ name, field, text, at, says string }{
		{"no x", "cutter.bit.chain[1].x", "", "cutter.bit.chain[1].x", "still empty"},
		{"no number", "cutter.bit.chain[2].y", "low", "cutter.bit.chain[2].y", "“low”"},
		{"too far", "cutter.bit.chain[2].y", "9 m", "cutter.bit.chain[2].y", ""},
		{"radius too small", "cutter.bit.chain[3].radius", "1 mm", "cutter.bit.chain[3].radius", "at least 3.40 mm"}, // half of √(4.6² + 5²)
		{"corners coincide", "cutter.bit.chain[2].x", "0", "cutter.bit.chain[2].x", "Take one of them out"},
		{"crosses itself", "cutter.bit.chain[0].x", "90 mm", "cutter.bit.chain[3].x", "crosses itself"},
		{"ends in the blank", "cutter.bit.chain[3].y", "0.1 mm", "cutter.bit.chain[3].y", "further up"},
	} {
		t.Run(row.name, func(t *testing.T) {
			j := typedBit(t, sample(t), "escape", sound)
			j = set(t, j, "escape", quantity(row.field), row.text)
			r := solve.Solve(context.Background(), j)
			says := errorsOf(r, "escape")
			require.NotEmpty(t, says)
			require.True(t, strings.HasPrefix(says[0], row.at+": "), says[0])
			require.Contains(t, says[0], row.says)
			require.NotContains(t, says[0], "{")
			require.Nil(t, r.Wheel("escape").Ground)
			require.NotNil(t, r.Wheel("escape").Relief, "the rest stands")
		})
	}
}

func TestPhotographLiesUnderTheForm(t *testing.T) {
	type at = geometry.Point
	for _, row := range []struct {
		name, points, edge, origin string
		pixel, lies                at
	}{
		{"upright", "0 0, 100 0", "50 80, 50 20", "", at{X: 50, Y: 80}, at{}},
		{"across", "0 0, 100 0", "50 80, 50 20", "", at{X: 150, Y: 80}, at{X: 2}},
		{"up", "0 0, 100 0", "50 80, 50 20", "", at{X: 50, Y: 30}, at{Y: 1}},
		{"another origin", "0 0, 100 0", "50 80, 50 20", "60 80", at{X: 110, Y: 80}, at{X: 1}},
		{"on its side", "0 0, 0 50", "10 10, 40 10", "", at{X: 35, Y: 10}, at{Y: 1}},
		{"on its side, across", "0 0, 0 50", "10 10, 40 10", "", at{X: 10, Y: 35}, at{X: 1}},
		{"upside down", "0 0, 30 40", "0 0, 0 10", "", at{X: 25, Y: 0}, at{X: -1}},
	} {
		t.Run(row.name, func(t *testing.T) {
			j := sample(t)
			for field, text := range map[string]string{
				"file": "bit.png", "points": row.points, "distance": "2 mm", "edge": row.edge, "origin": row.origin,
			} {
				j = set(t, j, "escape", quantity("cutter.bit.photograph."+field), text)
			}
			p := solve.Solve(context.Background(), j).Wheel("escape").Photograph
			require.Equal(t, "bit.png", p.File)
			got := p.Lies.Place(row.pixel)
			require.InDelta(t, 0, got.Dist(row.lies), 1e-9, "%v", got)
		})
	}
}

func TestPhotographOfAnotherFolder(t *testing.T) {
	r := solve.Solve(context.Background(), set(t, sample(t), "escape", "cutter.bit.photograph.file", "../bit.png"))
	require.Contains(t, errorsOf(r, "escape")[0], `cutter.bit.photograph.file: "../bit.png" is no name`)
	require.Nil(t, r.Wheel("escape").Photograph)
}

func TestPhotographsThatCannotBePlaced(t *testing.T) {
	for _, row := range []struct {
		points, distance, edge, code string
		severity                     solve.Severity
		placed                       bool
	}{
		{"", "2 mm", "0 0, 0 1", "photograph.no-scale", solve.Note, false},
		{"0 0, 9 0", "", "0 0, 0 1", "photograph.no-scale", solve.Note, false},
		{"0 0, 9 0, 4 4", "2 mm", "0 0, 0 1", "photograph.no-scale", solve.Note, false},
		{"0 0, 9 0", "2 mm", "", "photograph.no-edge", solve.Note, true},
		{"5 5, 5 5", "2 mm", "0 0, 0 1", "photograph.points-coincide", solve.Error, false},
		{"0 0, 9 0", "2 mm", "3 3, 3 3", "photograph.points-coincide", solve.Error, false},
		{"0 0, 9 0", "far", "0 0, 0 1", "measure.not-a-value", solve.Error, false},
		{"0 0, 9 0", "0 mm", "0 0, 0 1", "finding.out-of-range", solve.Error, false},
		{"by eye", "2 mm", "0 0, 0 1", "", "", false},
	} {
		t.Run(row.points+" "+row.distance+" "+row.edge, func(t *testing.T) {
			j := set(t, sample(t), "escape", "cutter.bit.photograph.file", "bit.png")
			for field, text := range map[string]string{"points": row.points, "distance": row.distance, "edge": row.edge} {
				j = set(t, j, "escape", quantity("cutter.bit.photograph."+field), text)
			}
			r := solve.Solve(context.Background(), j)
			require.Equal(t, row.placed, r.Wheel("escape").Photograph != nil)
			if row.code == "" {
				require.Contains(t, codes(r.Findings), "job.unknown-field")
				return
			}
			for _, f := range r.Findings {
				if f.Code == row.code {
					require.Equal(t, row.severity, f.Severity)
					return
				}
			}
			require.Fail(t, "not said", "%v", codes(r.Findings))
		})
	}
}
