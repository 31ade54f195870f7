package solve_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
)

func TestLanternPinionSaysHowItIsDrilled(t *testing.T) {
	for _, row := range []struct {
		name, trundle string
		says          []string
	}{
		// Drill sizes: assets/tables/drills.csv.
		{"as a drill", "0.0292 in", []string{"pinion.drill", "pinion.shroud"}}, // #69
		{"a little thicker than #48", "1.95 mm", []string{"pinion.thin-shroud", "pinion.drill", "pinion.shroud"}},
		{"between #53 and 1/16 in", "1.54 mm", []string{"pinion.thin-shroud", "pinion.drill-small", "pinion.shroud"}},
		{"nearer 1/16 in", "1.56 mm", []string{"pinion.thin-shroud", "pinion.drill-large", "pinion.shroud"}},
		{"thinner than any drill", "0.05 mm", []string{"pinion.drill-large", "pinion.shroud"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := solve.Solve(context.Background(), set(t, jobOf(t, lanternPair), "p", "trundle", row.trundle)).Pinions[0]
			require.NotNil(t, p.Lantern)
			require.Equal(t, row.says, codes(p.Findings))
		})
	}
}

func TestPinionWithoutAWheelSaysWhatItIsMadeFor(t *testing.T) {
	j := jobOf(t, goingTrain)
	pinion := func(part, field, text string) *solve.Pinion {
		return solve.Solve(context.Background(), set(t, j, part, quantity(field), text)).Part("p2").(*solve.Pinion)
	}
	require.NotContains(t, codes(pinion("p2", "name", "Second").Findings), "pinion.usual-ratio")
	require.Contains(t, codes(pinion("m2", "pinion", "p3").Findings), "pinion.usual-ratio")
}
