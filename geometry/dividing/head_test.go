package dividing

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

func TestSettings(t *testing.T) {
	for _, row := range []struct {
		name string
		head Head
		n    int
		want Answer
	}{
		{"whole turns", Head{Ratio: 40}, 8, Answer{Turns: 5, Exact: true}},
		{"one turn", Head{Ratio: 60}, 60, Answer{Turns: 1, Exact: true}},
		{"less than a turn", Head{Ratio: 60}, 72, Answer{Holes: 15, Circle: 18, Exact: true}},
		{"smallest circle in any order", Head{Ratio: 60, Circles: []int{36, 24, 18, 12}}, 72, Answer{Holes: 10, Circle: 12, Exact: true}},
		{"direct plates", Head{Ratio: 40, Direct: []int{24, 60, 36}}, 12, Answer{Turns: 3, Holes: 5, Circle: 15, Exact: true, Direct: []int{24, 60, 36}}},
		{"one direct plate", Head{Ratio: 40, Direct: []int{24, 60, 36}}, 30, Answer{Turns: 1, Holes: 5, Circle: 15, Exact: true, Direct: []int{60}}},
	} {
		t.Run(row.name, func(t *testing.T) {
			got, err := row.head.Divide(row.n, 25)
			require.NoError(t, err)
			row.want.Divisions, row.want.Ratio, row.want.TipRadius = row.n, row.head.Ratio, 25
			require.Equal(t, row.want, got)
		})
	}
}

// The oracle tries every circle and measures every tooth with exact fractions.
func TestNearestCircleAgainstEveryTooth(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 11))
	for trial := 0; trial < 100; trial++ {
		n, ratio := 2+random.IntN(400), []int{40, 60, 72, 90}[random.IntN(4)]
		circles := make([]int, 1+random.IntN(6))
		for i := range circles {
			circles[i] = 1 + random.IntN(70)
		}
		got, err := Head{Ratio: ratio, Circles: circles}.Divide(n, 30)
		require.NoError(t, err)
		least, circle := big.NewRat(1, 1), 0
		for _, c := range circles {
			e := greatestError(n, ratio, c)
			if cmp := e.Cmp(least); cmp < 0 || cmp == 0 && c < circle {
				least, circle = e, c
			}
		}
		if ratio%n == 0 {
			circle = 0
		}
		turn, _ := least.Float64()
		require.Equal(t, circle, got.Circle, "n %d ratio %d circles %v", n, ratio, circles)
		require.InDelta(t, turn*2*math.Pi*30*1000, got.Error, 1e-9, "n %d ratio %d circles %v", n, ratio, circles)
		require.Equal(t, least.Sign() == 0, got.Exact)
	}
}

// greatestError returns the greatest distance of the nearest hole over all teeth,
// in turns of the work.
func greatestError(n, ratio, circle int) *big.Rat {
	greatest, half := new(big.Rat), big.NewRat(1, 2)
	for i := 0; i < n; i++ {
		place := new(big.Rat).Mul(big.NewRat(int64(i*ratio), int64(n)), big.NewRat(int64(circle), 1))
		floor := new(big.Int).Div(place.Num(), place.Denom())
		off := place.Sub(place, new(big.Rat).SetInt(floor))
		if off.Cmp(half) > 0 {
			off.Sub(big.NewRat(1, 1), off)
		}
		if off.Cmp(greatest) > 0 {
			greatest = off
		}
	}
	return greatest.Quo(greatest, big.NewRat(int64(circle*ratio), 1))
}

func TestCrankTurnsOneWayAndComesRound(t *testing.T) {
	for _, head := range []Head{{Ratio: 40}, {Ratio: 60}, {Ratio: 90, Circles: []int{23}}} {
		for n := 1; n <= 500; n++ {
			a, err := head.Divide(n, 20)
			require.NoError(t, err)
			circle, gone, worst := max(a.Circle, 1), 0, 0.0
			for i := 1; i <= n; i++ {
				turns, holes := a.Advance(i)
				require.GreaterOrEqual(t, turns*circle+holes, 1)
				if a.Exact {
					require.Equal(t, [2]int{a.Turns, a.Holes}, [2]int{turns, holes})
				}
				gone += turns*circle + holes
				worst = max(worst, math.Abs(float64(a.Off(i))))
			}
			require.Equal(t, head.Ratio*circle, gone)
			require.InDelta(t, a.Error, worst*20*1000, 1e-9)
		}
	}
}

func TestTableReadsToTheSecond(t *testing.T) {
	a, err := Head{Ratio: 60}.Divide(7, 20)
	require.NoError(t, err)
	table := a.Table()
	require.Len(t, table, 7)
	require.Equal(t, Row{0, Reading{0, 0, 0}, 0, 0}, table[0])
	require.Equal(t, Row{1, Reading{51, 25, 43}, 8, 12}, table[1]) // 51.428571°, 8 4/7 turns
	require.Equal(t, Row{6, Reading{308, 34, 17}, 51, 9}, table[6])
	require.Equal(t, `8° 03' 05"`, Reading{8, 3, 5}.String())
	for n := 1; n <= 2000; n += 13 {
		a, err := Head{Ratio: 60}.Divide(n, 20)
		require.NoError(t, err)
		for _, row := range a.Table() {
			r := row.Reading
			require.Less(t, r.Minutes, 60)
			require.Less(t, r.Seconds, 60)
			read := float64(r.Degrees) + float64(r.Minutes)/60 + float64(r.Seconds)/3600
			require.InDelta(t, a.Angle(row.Tooth).Degrees(), read, 0.5/3600+1e-9)
		}
	}
}

func TestSectorSpansOneMoreThanTheHoles(t *testing.T) {
	a, err := Head{Ratio: 40}.Divide(42, 20) // 20 holes of 21
	require.NoError(t, err)
	require.Equal(t, 21, a.Sector())
	whole, err := Head{Ratio: 40}.Divide(8, 20)
	require.NoError(t, err)
	require.Zero(t, whole.Sector())
	near, err := Head{Ratio: 40}.Divide(96, 20)
	require.NoError(t, err)
	require.Zero(t, near.Sector())
}

func TestHeadThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		head     Head
		n        int
		radius   float64
		quantity geometry.Quantity
	}{
		{"no divisions", Head{Ratio: 40}, 0, 20, "teeth.count"},
		{"too many", Head{Ratio: 40}, mostDivisions + 1, 20, "teeth.count"},
		{"no ratio", Head{}, 12, 20, "dividing.ratio"},
		{"negative ratio", Head{Ratio: -40}, 12, 20, "dividing.ratio"},
		{"circle without holes", Head{Ratio: 40, Circles: []int{15, 0}}, 12, 20, "dividing.circles"},
		{"direct plate without holes", Head{Ratio: 40, Direct: []int{-1}}, 12, 20, "dividing.direct"},
		{"no radius", Head{Ratio: 40}, 12, 0, "teeth.tip_diameter"},
		{"radius is no number", Head{Ratio: 40}, 12, math.NaN(), "teeth.tip_diameter"},
		{"endless radius", Head{Ratio: 40}, 12, math.Inf(1), "teeth.tip_diameter"},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.head.Divide(row.n, row.radius)
			var limit *geometry.Limit
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.quantity, limit.Quantity)
			require.False(t, math.IsNaN(limit.Value) || math.IsInf(limit.Value, 0))
			require.True(t, words.English().Has(limit.Code))
		})
	}
}

func TestZeroAnswerIsHarmless(t *testing.T) {
	var a Answer
	turns, holes := a.Advance(1)
	require.Zero(t, turns)
	require.Zero(t, holes)
	require.Zero(t, a.Off(0))
	require.Empty(t, a.Table())
}
