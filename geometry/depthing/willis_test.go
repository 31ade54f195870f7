package depthing

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// drawn is how far, in pitches, an arc of recess may fall short of one where the
// limit was found on drawings or models, as Willis' were. It is set by his 30
// teeth for 12 leaves, the row that falls shortest.
const drawn = 0.0065

// Beckett (1903), pp. 276-281, gives the lowest numbers that drive wholly after
// the line of centres. Where the table's note tells an arc of recess worked out
// from the theory, the simulation's is that arc to its four digits. Willis'
// numbers reach a whole pitch, or fall short by less than can be drawn; a tooth
// fewer falls short in every row. Printed 32 leaves for 7 teeth is out of
// sequence and falls short by far: it cannot be reproduced, while 52, from memory
// of Willis, does it. His 176 leaves for 6 teeth do it, but 150 would as well.
func TestWillisLowestNumbers(t *testing.T) {
	for _, row := range willis(t) {
		t.Run(row.name, func(t *testing.T) {
			got := recess(t, row.teeth, row.leaves)
			if row.arc != "" {
				want, err := strconv.ParseFloat(row.arc, 64)
				require.NoError(t, err)
				require.InDelta(t, want, got, 1.1e-4)
			}
			if row.teeth == 7 && row.leaves == 32 {
				require.Less(t, got, 0.95, "misprint")
				require.Greater(t, recess(t, 7, 52), 1-drawn)
				return
			}
			require.Greater(t, got, 1-drawn)
			require.Less(t, recess(t, row.teeth-1, row.leaves), 1.0)
		})
	}
}

// Where the printed limit falls short the exact one is a tooth or two above it,
// and 7 teeth are content with 50 leaves.
func TestExactLowestNumbersNearWillis(t *testing.T) {
	for _, c := range [][2]int{{55, 11}, {32, 12}} {
		require.GreaterOrEqual(t, recess(t, c[0], c[1]), 1.0)
		require.Less(t, recess(t, c[0]-1, c[1]), 1.0)
	}
	require.GreaterOrEqual(t, recess(t, 7, 50), 1.0)
	require.Less(t, recess(t, 7, 49), 1.0)
}

// Beckett, same pages: impossible below 11 leaves, 10 very nearly. The rolled
// cycloid of a rack gives 10 leaves 1.01 pitches and 9 leaves 0.94, so 10 is the
// edge itself: short of a pitch with the wheels of a clock, just over from some
// 400 teeth on.
func TestNoWheelDrivesNineLeavesWhollyAfterTheLine(t *testing.T) {
	require.InDelta(t, 0.94, recess(t, 2000, 9), 0.01)
	require.InDelta(t, 1.01, recess(t, 2000, 10), 0.01)
	ten := recess(t, 100, 10)
	require.Less(t, ten, 1.0)
	require.Greater(t, ten, 0.96)
}

// A pair that falls short takes the load before the line of centres, one that
// does not takes it there.
func TestApproachIsWhatRecessLacks(t *testing.T) {
	for _, c := range []struct {
		teeth, leaves int
		least, most   float64 // pitches
	}{
		{30, 12, 0.001, 0.0064 + 1e-3},
		{80, 8, 0.05, 0.5},
		{24, 13, 0, 0.01},
		{120, 16, 0, 0.01},
	} {
		wheel, pinion := theoretical(t, c.teeth, c.leaves, 200)
		turn, err := Mesh(wheel, pinion, float64(c.teeth+c.leaves)/2, 100)
		require.NoError(t, err)
		approach := float64(turn.Approach / wheel.Pitch())
		require.GreaterOrEqual(t, approach, c.least, "%d/%d", c.teeth, c.leaves)
		require.LessOrEqual(t, approach, c.most, "%d/%d", c.teeth, c.leaves)
	}
}

type limit struct {
	name          string
	teeth, leaves int
	arc           string
}

func willis(t *testing.T) (limits []limit) {
	for _, row := range trial.Reference(t, "cycloidal.csv") {
		if row["topic"] != "Willis lowest numbers" {
			continue
		}
		leaves, err := strconv.Atoi(row["pinion_leaves"])
		require.NoError(t, err)
		teeth, err := strconv.Atoi(strings.Fields(row["quantity_and_unit"])[2])
		require.NoError(t, err)
		_, arc, _ := strings.Cut(row["note"], "recess/pitch = ")
		if strings.HasPrefix(arc, "n/a") {
			arc = ""
		}
		limits = append(limits, limit{row["quantity_and_unit"], teeth, leaves, arc})
	}
	require.NotEmpty(t, limits)
	return limits
}
