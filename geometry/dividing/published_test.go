package dividing

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"tipline/assets/tables"
	"tipline/geometry/internal/trial"
)

// published returns the rows of testdata/dividing.csv of one kind; each has its
// source in its last column.
func published(t *testing.T, kind string) []map[string]string {
	return trial.Of(t, trial.Reference(t, "dividing.csv"), "kind", kind)
}

func whole(t *testing.T, text string) int {
	n, err := strconv.Atoi(text)
	require.NoError(t, err)
	return n
}

// divisionsOf are the angles asked for in the published rows as divisions of the
// turn.
var divisionsOf = map[string]int{"1.0": 360, "0.3333 (20 min)": 1080, "45.0": 8, "54 min": 400, "24 min": 900}

func TestPublishedSettings(t *testing.T) {
	for _, kind := range []string{"plain", "angular"} {
		for _, row := range published(t, kind) {
			t.Run(kind+" "+row["request"]+" on "+row["hole_circle"], func(t *testing.T) {
				n, ok := divisionsOf[row["request"]]
				if !ok {
					n = whole(t, row["request"])
				}
				head := Head{Ratio: whole(t, row["worm_ratio"]), Circles: []int{whole(t, row["hole_circle"])}}
				a, err := head.Divide(n, 25)
				require.NoError(t, err)
				require.True(t, a.Exact)
				require.Zero(t, a.Error)
				require.Equal(t, row["whole_turns"], fmt.Sprint(a.Turns))
				require.Equal(t, row["holes"], fmt.Sprint(a.Holes))
			})
		}
	}
}

// 24 minutes are 900 divisions, 1 1/45 holes of the circle of 23 each: one hole
// is 540/23 minutes, 0.52 short, as published; the nearest hole is never more
// than half a hole out.
func TestPublishedApproximation(t *testing.T) {
	row := published(t, "angular approx")[0]
	head := Head{Ratio: whole(t, row["worm_ratio"]), Circles: []int{whole(t, row["hole_circle"])}}
	a, err := head.Divide(divisionsOf[row["request"]], 25)
	require.NoError(t, err)
	require.False(t, a.Exact)
	require.Equal(t, [2]string{row["whole_turns"], row["holes"]}, [2]string{fmt.Sprint(a.Turns), fmt.Sprint(a.Holes)})
	require.InDelta(t, -0.52, a.Off(1).Degrees()*60, 0.005)
}

func TestPublishedTurnFractions(t *testing.T) {
	for _, row := range published(t, "turn fraction") {
		decimals, err := strconv.ParseFloat(row["request"], 64)
		require.NoError(t, err)
		answers := strings.Split(row["hole_circle"], ";")
		for i, circles := range [][]int{tables.PlateSet(), tables.TwoSidedPlate()} {
			_, answer, _ := strings.Cut(answers[i], ":")
			first, _, _ := strings.Cut(strings.TrimSpace(answer), ",")
			holes, circle := 0, 0
			if first != "none" {
				_, err := fmt.Sscanf(first, "%d/%d", &holes, &circle)
				require.NoError(t, err)
			}
			t.Run(row["request"]+answers[i], func(t *testing.T) {
				top, bottom := fraction(decimals)
				if top == 4 && bottom == 17 && i == 0 {
					// The row says there is none, but 0.2353 is 4/17 and the set
					// has a circle of 17.
					first, holes, circle = "4/17", 4, 17
				}
				a, err := Head{Ratio: top, Circles: circles}.Divide(bottom, 25)
				require.NoError(t, err)
				require.Equal(t, first != "none", a.Exact)
				if a.Exact {
					require.Equal(t, [2]int{holes, circle}, [2]int{a.Holes, a.Circle})
				}
			})
		}
	}
}

// fraction returns the fraction of least denominator that rounds to the four
// decimals.
func fraction(decimals float64) (top, bottom int) {
	for bottom = 1; ; bottom++ {
		top = int(decimals*float64(bottom) + 0.5)
		if fmt.Sprintf("%.4f", float64(top)/float64(bottom)) == fmt.Sprintf("%.4f", decimals) {
			return top, bottom
		}
	}
}

// "Every number to 50 and every even number to 100 except 96": the row of kind
// capability.
func TestPublishedReachOfTheThreePlates(t *testing.T) {
	row := published(t, "capability")[0]
	require.Equal(t, "three-plate set divides every number to 50 and every even number to 100 except 96", row["request"])
	head := Head{Ratio: whole(t, row["worm_ratio"])}
	for n := 1; n <= 100; n++ {
		if n > 50 && n%2 == 1 {
			continue
		}
		a, err := head.Divide(n, 25)
		require.NoError(t, err)
		require.Equal(t, n != 96, a.Exact, n)
	}
}

func TestPublishedPlates(t *testing.T) {
	sets := map[string][]int{}
	for _, row := range published(t, "plate") {
		set, _, _ := strings.Cut(row["request"], ",")
		for _, circle := range strings.Fields(row["hole_circle"]) {
			sets[set] = append(sets[set], whole(t, circle))
		}
	}
	require.ElementsMatch(t, sets["three-plate set"], tables.PlateSet())
	require.ElementsMatch(t, sets["one-plate set"], tables.TwoSidedPlate())
}
