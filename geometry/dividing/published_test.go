package dividing

import (
	"fmt"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"tipline/assets/tables"
	"tipline/geometry/trial"
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

// crankOf are the angles asked for in the published rows, in turns of a crank of
// 40 to 1, that is of 9°, as a fraction: a crank's turn of p/q is what a ratio of
// p gives for q divisions.
var crankOf = map[string][2]int{
	"1.0": {1, 9}, "0.3333 (20 min)": {1, 27}, "45.0": {5, 1}, "54 min": {1, 10}, "24 min": {2, 45}, "11.5": {23, 18}, "19.0": {19, 9},
}

func TestPublishedSettings(t *testing.T) {
	for _, kind := range []string{"plain", "angular"} {
		for _, row := range published(t, kind) {
			t.Run(kind+" "+row["request"]+" on "+row["hole_circle"], func(t *testing.T) {
				crank, angle := crankOf[row["request"]]
				if !angle {
					crank = [2]int{whole(t, row["worm_ratio"]), whole(t, row["request"])}
				}
				head := Head{Ratio: crank[0], Circles: []int{whole(t, row["hole_circle"])}}
				a, err := head.Divide(crank[1], 25)
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
	a, err := head.Divide(900, 25)
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

// Each divisions that the three plates give is one that divides 40 turns of some
// circle.
func TestReachOfTheThreePlatesByEnumeration(t *testing.T) {
	for n := 1; n <= 400; n++ {
		whole := big.NewRat(40, int64(n)).IsInt()
		for _, circle := range tables.PlateSet() {
			whole = whole || big.NewRat(int64(40*circle), int64(n)).IsInt()
		}
		a, err := Head{Ratio: 40}.Divide(n, 25)
		require.NoError(t, err)
		require.Equal(t, whole, a.Exact, n)
	}
}

// One turn of the crank is 360° over the ratio.
func TestPublishedTurnOfTheCrank(t *testing.T) {
	for _, row := range published(t, "worm") {
		ratio := whole(t, row["worm_ratio"])
		a, err := Head{Ratio: ratio}.Divide(ratio, 25)
		require.NoError(t, err)
		require.Equal(t, [2]int{1, 0}, [2]int{a.Turns, a.Holes})
		require.InDelta(t, float64(whole(t, row["holes"])), a.Angle(1).Degrees(), 1e-12)
	}
}

// Differential indexing turns the plate by change gears while the crank turns.
// The gears are not worked out here: a home shop's head has none. What the crank
// is set to, the divisions it would give with the plate still, is.
func TestPublishedCrankOfDifferentialIndexing(t *testing.T) {
	still := map[string]int{"271": 280, "319": 290, "2160 (1/6 deg)": 1960}
	for _, row := range published(t, "differential") {
		head := Head{Ratio: whole(t, row["worm_ratio"]), Circles: []int{whole(t, row["hole_circle"])}}
		a, err := head.Divide(still[row["request"]], 25)
		require.NoError(t, err)
		require.True(t, a.Exact)
		require.Equal(t, [2]string{row["whole_turns"], row["holes"]}, [2]string{fmt.Sprint(a.Turns), fmt.Sprint(a.Holes)})
	}
}
