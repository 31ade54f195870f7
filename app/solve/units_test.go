package solve_test

import (
	"context"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
)

// withoutUnit strips a unit behind a number in a job's text.
var withoutUnit = map[string]*regexp.Regexp{"mm": regexp.MustCompile(`"([0-9./ ]+) mm"`), "in": regexp.MustCompile(`"([0-9./ ]+) in"`)}

// A job whose lengths stand bare is the same wheels, pinions, pairs and stacks in inches,
// and in millimetres again.
func TestAnotherUnitChangesNoGeometry(t *testing.T) {
	all, err := samples.List()
	require.NoError(t, err)
	for _, s := range all {
		data, err := samples.Read(s.Name)
		require.NoError(t, err)
		for unit, behind := range withoutUnit {
			j, err := job.Read(strings.NewReader(behind.ReplaceAllString(string(data), `"$1"`)))
			require.NoError(t, err)
			j.Units = unit
			there := set(t, j, "", "units", map[string]string{"mm": "in", "in": "mm"}[unit])
			back := set(t, there, "", "units", unit)
			first := solve.Solve(context.Background(), j)
			for _, other := range []*job.Job{there, back} {
				sameGeometry(t, s.Name, first, solve.Solve(context.Background(), other))
			}
		}
	}
}

func sameGeometry(t *testing.T, name string, a, b *solve.Result) {
	for i, w := range a.Wheels {
		o := b.Wheels[i]
		require.Equal(t, w.Teeth, o.Teeth, "%s %s", name, w.ID())
		require.Equal(t, w.Crossing, o.Crossing, "%s %s", name, w.ID())
		require.Equal(t, w.Cut, o.Cut, "%s %s", name, w.ID())
		require.Equal(t, w.Mounting, o.Mounting, "%s %s", name, w.ID())
		require.Equal(t, []float64{w.Bore, w.Thickness, w.Oversize}, []float64{o.Bore, o.Thickness, o.Oversize}, "%s %s", name, w.ID())
	}
	for i, p := range a.Pinions {
		require.Equal(t, p.Leaves, b.Pinions[i].Leaves, "%s %s", name, p.ID())
		require.Equal(t, p.Lantern, b.Pinions[i].Lantern, "%s %s", name, p.ID())
	}
	for i, p := range a.Pairs {
		require.Equal(t, p.Nominal, b.Pairs[i].Nominal)
		require.Equal(t, p.Turn == nil, b.Pairs[i].Turn == nil)
		if p.Turn != nil {
			require.Equal(t, p.Turn.Centres, b.Pairs[i].Turn.Centres)
		}
	}
	for i, s := range a.Stacks {
		require.Equal(t, s.Stacked, b.Stacks[i].Stacked)
	}
}
