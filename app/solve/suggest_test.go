package solve_test

import (
	"context"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
)

// What is suggested for any of the sample's wheels, in either unit, can be made as
// it is typed, without a caution, and on wheels of many sizes.
func TestSuggestedCrossingsCanBeMade(t *testing.T) {
	for _, units := range []string{"mm", "in"} {
		for _, teeth := range []string{"12", "30", "45", "83", "96", "360"} {
			for _, module := range []string{"0.15 mm", "0.3 mm", "0.6 mm", "1.2 mm"} {
				t.Run(units+" "+teeth+" of "+module, func(t *testing.T) {
					j := set(t, set(t, set(t, sample(t), "", "units", units), "third", "teeth.count", teeth), "third", "teeth.module", module)
					j = alone(t, set(t, j, "third", "bore", "0.3 mm"), "third")
					w := solve.Solve(context.Background(), j).Wheel("third")
					list, ok := solve.SuggestCrossing(w, unitOf(units))
					require.True(t, ok)
					for _, v := range list {
						j = set(t, j, "third", v.Field, v.Text)
					}
					r := solve.Solve(context.Background(), j)
					require.Empty(t, errorsOf(r, "third"), list)
					require.NotNil(t, r.Wheel("third").Crossing)
				})
			}
		}
	}
}

// alone returns the job with one wheel alone, which is not mounted and has nothing of
// the maker's own.
func alone(t testing.TB, j *job.Job, id string) *job.Job {
	next, err := j.Clear(id, "mount")
	require.NoError(t, err)
	for len(next.Wheel(id).Additions) > 0 {
		next, err = next.Remove(id, "additions[0]")
		require.NoError(t, err)
	}
	only := *next
	only.Wheels, only.Pinions, only.Arbors, only.Pairs, only.Trains, only.Stacks =
		[]*job.Wheel{next.Wheel(id)}, nil, nil, nil, nil, nil
	return &only
}

func TestSuggestedLengthsAreTidy(t *testing.T) {
	for _, units := range []string{"mm", "in"} {
		j := set(t, sample(t), "", "units", units)
		list, ok := solve.SuggestCrossing(solve.Solve(context.Background(), j).Wheel("great"), unitOf(units))
		require.True(t, ok)
		for _, v := range list {
			if v.Field == "crossing.rim" {
				require.Equal(t, map[string]string{"mm": "3.3 mm", "in": "1/8 in"}[units], v.Text, "a tooth is 3.28 mm deep")
			}
		}
	}
}

func TestNothingIsSuggestedWithoutRoom(t *testing.T) {
	j := set(t, alone(t, sample(t), "third"), "third", "teeth.count", "many")
	_, ok := solve.SuggestCrossing(solve.Solve(context.Background(), j).Wheels[0], measure.MM)
	require.False(t, ok)
}

// The table of arms agrees with the crossing laid out with so many.
func TestCompareArms(t *testing.T) {
	j := sample(t)
	rows := solve.CompareArms(solve.Solve(context.Background(), j).Wheel("centre"), []int{4, 5, 6})
	require.Len(t, rows, 3)
	for _, row := range rows {
		l := solve.Solve(context.Background(), set(t, j, "centre", "crossing.arms", strconv.Itoa(row.Arms))).Wheel("centre").Crossing
		require.InDelta(t, l.Mass, row.Mass, 1e-9)
		require.InDelta(t, l.WindUp, row.WindUp, 1e-9)
		require.Equal(t, 96%row.Arms == 0, row.Divides)
	}
	require.Nil(t, solve.CompareArms(solve.Solve(context.Background(), j).Wheel("click"), []int{4}))
	var none []crossing.Row
	require.Equal(t, none, solve.CompareArms(&solve.Wheel{}, []int{4}))
}

func unitOf(units string) measure.Unit {
	if units == "in" {
		return measure.Inch
	}
	return measure.MM
}
