package depthing

import (
	"math"
	"math/big"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// numbers returns every whole number of a text, in order.
func numbers(text string) (ns []int) {
	for _, f := range strings.FieldsFunc(text, func(r rune) bool { return r < '0' || r > '9' }) {
		n, _ := strconv.Atoi(f)
		ns = append(ns, n)
	}
	return ns
}

// perMinute returns the beats of two wheels over two pinions and an escape wheel,
// the first wheel turning once an hour.
func perMinute(t *testing.T, wheels, pinions [2]int, escape int) (float64, Beat) {
	pairs := []Engagement{
		{"third", "escape", wheels[1], pinions[1]},
		{"centre", "third", wheels[0], pinions[0]},
	}
	train, err := Geared(pairs).Train("centre", "escape")
	require.NoError(t, err)
	require.Equal(t, []int{1, 0}, train.Pairs)
	require.False(t, train.Reverse)
	beat, err := Beats(train.Ratio, big.NewRat(1, 1), escape)
	require.NoError(t, err)
	v, _ := beat.PerHour.Float64()
	return v / 60, beat
}

// The rows' exact values, printed to three decimals, come out of counts alone;
// lengths in the tables follow 39.1393·(60/v)² (Goodrich's figure). Printed
// values are the source's own roundings and slips: W31 prints 30.49 for 30.472,
// W33 23.15 for 23.159, W35 17.72 for 17.731, and W27's 9.78 in is a two-decimal
// rounding of 9.785. They are not reproduced.
func TestPublishedTrains(t *testing.T) {
	checked := 0
	for _, row := range trial.Reference(t, "worked.csv") {
		n := numbers(row["given"])
		if row["topic"] != "train table" && row["topic"] != "train" || len(n) != 5 {
			continue
		}
		t.Run(row["id"], func(t *testing.T) {
			v, beat := perMinute(t, [2]int{n[0], n[1]}, [2]int{n[2], n[3]}, n[4])
			want := strings.Split(row["exact_value"], " / ")
			beats, err := strconv.ParseFloat(want[0], 64)
			require.NoError(t, err)
			require.InDelta(t, beats, v, 6e-4)
			require.Equal(t, math.Abs(v*60-math.Round(v*60)) < 1e-9, beat.Whole)
			if len(want) == 2 {
				length, err := strconv.ParseFloat(want[1], 64)
				require.NoError(t, err)
				require.InDelta(t, length, publishedLength(v), 6e-4)
				// The tables' seconds pendulum is 994.14 mm, standard gravity's 993.62: 0.052 %.
				require.InEpsilon(t, length*25.4, beat.Length, 6e-4)
			}
		})
		checked++
	}
	require.GreaterOrEqual(t, checked, 8)
}

// W23: wheels 120 to 10, 64 to 8, 60 to 8: the great wheel turns in 12 hours, the
// next in 7.5 minutes (the source prints 8), the last in 1.
func TestBeckettsTrainOfThree(t *testing.T) {
	pairs := []Engagement{{"great", "centre", 120, 10}, {"centre", "third", 64, 8}, {"third", "escape", 60, 8}}
	for to, minutes := range map[string]*big.Rat{
		"great": big.NewRat(720, 1), "centre": big.NewRat(60, 1), "third": big.NewRat(15, 2), "escape": big.NewRat(1, 1),
	} {
		train, err := Geared(pairs).Train("great", to)
		require.NoError(t, err)
		require.Zero(t, minutes.Cmp(new(big.Rat).Quo(big.NewRat(720, 1), train.Ratio)), to)
	}
}

// publishedLength returns the length in inches that Goodrich's tables print for that
// many beats a minute, from 39.1393 for a pendulum that beats seconds (The Modern
// Clock, 1905, ch. XIV).
func publishedLength(perMinute float64) float64 { return 39.1393 * (60 / perMinute) * (60 / perMinute) }

// W41: 18,000 beats an hour; printed 39.8 mm, exact from 39.1393 in 39.77 mm.
// Standard gravity gives 39.745. A seconds pendulum is 993.6 mm (from memory).
func TestPendulums(t *testing.T) {
	require.InDelta(t, 39.77, publishedLength(300)*25.4, 6e-3)
	require.InDelta(t, 39.8, PendulumLength(0.2), 0.06)
	require.InDelta(t, 993.62, PendulumLength(1), 5e-3)
}

func TestTrainsThatCannotBeCounted(t *testing.T) {
	pairs := []Engagement{{"a", "b", 60, 8}, {"b", "c", 64, 8}, {"x", "y", 8, 8}}
	_, err := Geared(pairs).Train("a", "x")
	require.ErrorIs(t, err, ErrNoWay)
	_, err = Geared(append(pairs, Engagement{"a", "c", 60, 1})).Train("a", "c")
	require.ErrorIs(t, err, ErrLocks, "the same speed, but the other way round")
	_, err = Geared(append(pairs, Engagement{"c", "c", 60, 8})).Train("a", "c")
	require.ErrorIs(t, err, ErrLocks)
	_, err = Geared([]Engagement{{"a", "b", 0, 8}}).Train("a", "b")
	require.ErrorIs(t, err, ErrLocks)
	back, err := Geared(pairs).Train("c", "a")
	require.NoError(t, err)
	require.Zero(t, back.Ratio.Cmp(big.NewRat(1, 60)))
	_, err = Beats(new(big.Rat), big.NewRat(1, 1), 30)
	require.Error(t, err)
	_, err = Beats(big.NewRat(1, 1), big.NewRat(1, 1), 0)
	require.Error(t, err)
}
