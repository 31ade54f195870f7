package dividing

import (
	"fmt"
	"math"
	"math/big"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry/trial"
)

// moved returns the turns of the crank that a compound step makes.
func moved(c Compound) *big.Rat {
	sum := big.NewRat(int64(c.Turns), 1)
	for _, m := range []Move{c.First, c.Second} {
		sum.Add(sum, big.NewRat(int64(m.Holes), int64(m.Circle)))
	}
	return sum
}

// missed returns by how much a step of that many turns misses every/n of the
// work, in turns of the crank.
func missed(step *big.Rat, ratio, every, n int) *big.Rat {
	return new(big.Rat).Sub(step, big.NewRat(int64(ratio*every), int64(n)))
}

func onOnePlate(c Compound, plates [][]int) bool {
	return slices.ContainsFunc(plates, func(p []int) bool {
		return slices.Contains(p, c.First.Circle) && slices.Contains(p, c.Second.Circle)
	})
}

func TestCompoundSaysWhatItMisses(t *testing.T) {
	for _, set := range []string{tables.ThreePlates, tables.OnePlate} {
		plates := tables.PlatesOf(set)
		for _, ratio := range []int{40, 60, 72, 90} {
			for n := 2; n <= 400; n++ {
				a, err := Head{Ratio: ratio, Circles: slices.Concat(plates...)}.Divide(n, 30)
				require.NoError(t, err)
				c := a.Compound
				if require.Equal(t, a.Exact, c == nil, n); a.Exact {
					continue
				}
				name := fmt.Sprintf("%d of %d on %s: %+v", n, ratio, set, c)
				require.True(t, onOnePlate(*c, plates), name)
				require.Equal(t, 1, gcd(c.Every, n), name)
				miss := missed(moved(*c), ratio, c.Every, n)
				require.Equal(t, miss.Sign() == 0, c.Exact, name)
				off, _ := miss.Float64()
				work := off * 2 * math.Pi / float64(ratio)
				require.InDelta(t, work, float64(c.Off), 1e-15, name)
				require.InDelta(t, math.Abs(work)*float64(n-1)*30_000, c.Error, 1e-9, name)
			}
		}
	}
}

// The oracle tries every pair of moves on every plate with exact fractions.
func TestNoCompoundIsNearer(t *testing.T) {
	random := trial.Rand(t, 5)
	compared := 0
	for range 60 {
		n, ratio := 2+random.IntN(150), []int{40, 60, 90}[random.IntN(3)]
		circles := []int{5 + random.IntN(15), 5 + random.IntN(15), 5 + random.IntN(15)}
		a, err := Head{Ratio: ratio, Circles: circles}.Divide(n, 30)
		require.NoError(t, err)
		if a.Exact {
			continue
		}
		name := fmt.Sprintf("%d of %d on %v: %+v", n, ratio, circles, a.Compound)
		least, found := leastMiss(circles, ratio, n)
		require.Equal(t, found, a.Compound != nil, name)
		if found {
			compared++
			got := missed(moved(*a.Compound), ratio, a.Compound.Every, n)
			require.Zero(t, got.Abs(got).Cmp(least), name)
		}
	}
	require.Greater(t, compared, 30)
}

// leastMiss returns the least that two moves on different circles miss a tooth by.
func leastMiss(circles []int, ratio, n int) (least *big.Rat, found bool) {
	for _, a := range circles {
		for _, b := range circles {
			for x := 1; x < a; x++ {
				for y := 1; y < b && a != b; y++ {
					sum := new(big.Rat).Add(big.NewRat(int64(x), int64(a)), big.NewRat(int64(y), int64(b)))
					miss := missNearest(sum, ratio, n)
					if !found || miss.Cmp(least) < 0 {
						least, found = miss, true
					}
				}
			}
		}
	}
	return least, found
}

// missNearest returns the least that a part turn and any whole turns miss by, of
// all the ways to go round that are allowed.
func missNearest(part *big.Rat, ratio, n int) *big.Rat {
	least := big.NewRat(1, 1)
	for every := 1; every <= min(mostRounds, n); every++ {
		if new(big.Int).GCD(nil, nil, big.NewInt(int64(every)), big.NewInt(int64(n))).Int64() != 1 {
			continue
		}
		off := missed(part, ratio, every, n)
		floor := new(big.Int).Div(off.Num(), off.Denom())
		off.Sub(off, new(big.Rat).SetInt(floor))
		if other := new(big.Rat).Sub(big.NewRat(1, 1), off); other.Cmp(off) < 0 {
			off = other
		}
		if off.Cmp(least) < 0 {
			least = off
		}
	}
	return least
}

func move(t *testing.T, text string) *big.Rat {
	r, ok := new(big.Rat).SetString(text)
	require.True(t, ok, text)
	return r
}

// Each printed pair of moves makes the decimals it is printed for, and none of
// ours adds up to more of an error.
func TestPublishedCompoundFractions(t *testing.T) {
	for _, row := range published(t, "compound fraction") {
		turn := move(t, row["request"])
		ratio, n := int(turn.Num().Int64()), int(turn.Denom().Int64())
		for i, answer := range strings.Split(row["hole_circle"], "; ") {
			_, printed, _ := strings.Cut(answer, ": ")
			words := strings.Fields(printed)
			sum, second := move(t, words[0]), move(t, words[2])
			if words[1] == "-" {
				second.Neg(second)
			}
			sum.Add(sum, second)
			require.Equal(t, row["request"], sum.FloatString(4), printed)
			a, err := Head{Ratio: ratio, Circles: [][]int{tables.PlateSet(), tables.TwoSidedPlate()}[i]}.Divide(n, 1000)
			require.NoError(t, err)
			if a.Exact {
				continue
			}
			theirs, ours := missed(sum, ratio, 1, n), missed(moved(*a.Compound), ratio, a.Compound.Every, n)
			require.LessOrEqual(t, ours.Abs(ours).Cmp(theirs.Abs(theirs)), 0, "%s against %+v", printed, a.Compound)
		}
	}
}

// Both ways to divide by 106 miss by what the fractions say; ours by less.
func TestPublishedCompoundIndexing(t *testing.T) {
	row := published(t, "compound")[0]
	first, second, _ := strings.Cut(row["hole_circle"], " + ")
	step := new(big.Rat).Add(move(t, first), move(t, second))
	step.Add(step, move(t, row["whole_turns"]))
	ratio, n := whole(t, row["worm_ratio"]), whole(t, row["request"])
	theirs := missed(step, ratio, 5, n)
	require.Equal(t, "1/84747", theirs.String())
	a, err := Head{Ratio: ratio}.Divide(n, 25)
	require.NoError(t, err)
	ours := missed(moved(*a.Compound), ratio, a.Compound.Every, n)
	require.Negative(t, ours.Abs(ours).Cmp(theirs))
}

func TestCompoundByHand(t *testing.T) {
	for _, row := range []struct {
		n    int
		want Compound
	}{
		// 40/69 = 18/27 − 2/23, 40/77 = 3/33 + 9/21, 40/96 = 3/18 + 4/16.
		{69, Compound{Every: 1, First: Move{18, 27}, Second: Move{-2, 23}, Exact: true}},
		{77, Compound{Every: 1, First: Move{3, 33}, Second: Move{9, 21}, Exact: true}},
		{96, Compound{Every: 1, First: Move{3, 18}, Second: Move{4, 16}, Exact: true}},
	} {
		a, err := Head{Ratio: 40}.Divide(row.n, 25)
		require.NoError(t, err)
		require.Equal(t, row.want, *a.Compound)
		require.Equal(t, row.n == 69, a.Compound.Backwards())
	}
	alone, err := Head{Ratio: 40, Circles: []int{15}}.Divide(77, 25)
	require.NoError(t, err)
	require.Nil(t, alone.Compound, "one circle makes no pair")
}

func TestCirclesLieOnPlates(t *testing.T) {
	plate := tables.PlatesOf(tables.ThreePlates)
	for _, row := range []struct {
		name    string
		circles []int
		want    [][]int
	}{
		{"the set", tables.PlateSet(), plate},
		{"some of the set", []int{15, 16, 21}, [][]int{{15, 16}, {21}, {}}},
		{"both sides", tables.TwoSidedPlate(), tables.PlatesOf(tables.OnePlate)},
		{"the maker's own", []int{30, 36, 15}, [][]int{{30, 36, 15}}},
		{"the maker's own beside a plate", append([]int{100, 101}, plate[1]...), [][]int{plate[1], {100, 101}}},
	} {
		require.Equal(t, row.want, Head{Circles: row.circles}.plates(), row.name)
	}
}

// 53 is divided by going round several times.
func TestEveryToothIsCutOnce(t *testing.T) {
	a, err := Head{Ratio: 40}.Divide(53, 25)
	require.NoError(t, err)
	require.Greater(t, a.Compound.Every, 1)
	order := a.Order()
	require.Len(t, order, 53)
	require.Equal(t, []int{0, a.Compound.Every}, order[:2])
	slices.Sort(order)
	for i, tooth := range order {
		require.Equal(t, i, tooth)
	}
	plain, err := Head{Ratio: 40}.Divide(5, 25)
	require.NoError(t, err)
	require.Equal(t, []int{0, 1, 2, 3, 4}, plain.Order())
}

func TestAdviceIsInTheCatalogue(t *testing.T) {
	for _, n := range []int{8, 69, 77} {
		a, err := Head{Ratio: 40}.Divide(n, 25)
		require.NoError(t, err)
		for _, key := range a.Advice() {
			require.True(t, words.English().Has(key))
		}
		require.Len(t, a.Advice(), map[bool]int{true: 2, false: 1}[n == 69])
	}
}

func BenchmarkDivide(b *testing.B) {
	for b.Loop() {
		if _, err := (Head{Ratio: 40}).Divide(127, 25); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkDivideOnManyCircles(b *testing.B) {
	circles := make([]int, 400)
	for i := range circles {
		circles[i] = i + 1
	}
	for b.Loop() {
		if _, err := (Head{Ratio: 40, Circles: circles}).Divide(1999, 25); err != nil {
			b.Fatal(err)
		}
	}
}
