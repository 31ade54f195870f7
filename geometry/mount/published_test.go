package mount

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// chords are the rows of kind chord, printed in inches.
func chords(t *testing.T) (twoHoles, elevenHoles float64) {
	rows := trial.Of(t, trial.Reference(t, "dividing.csv"), "kind", "chord")
	require.Len(t, rows, 2)
	var printed [2]float64
	for i, row := range rows {
		v, err := strconv.ParseFloat(row["holes"], 64)
		require.NoError(t, err)
		printed[i] = v
	}
	return printed[0], printed[1]
}

// A wheel large enough for circles of inches.
func face() Seat { return Seat{Root: 300, Tip: 310, Teeth: 120, Thickness: 5} }

// Two holes 37°20' apart on a circle of 6 1/2 in, Machinery's Reference Series 135.
func TestPublishedChordOfTwoHoles(t *testing.T) {
	printed, _ := chords(t)
	var places [2]geometry.Point
	for i, start := range []float64{0, 37 + 20.0/60} {
		m, err := Fit(face(), Collet{}, Screws{Count: 1, Thread: thread(t, "M2"), Circle: 6.5 * 25.4, Start: at(start)})
		require.NoError(t, err)
		places[i] = m.Places[0].At
	}
	require.InDelta(t, printed, places[0].Dist(places[1])/25.4, 0.00005)
}

// Eleven holes on a circle of 8 in. The print, 2.252, is low by 0.0019 through a
// sine of four figures; 2.25386 is the exact chord, 8 sin(180°/11).
func TestPublishedChordOfElevenHoles(t *testing.T) {
	_, printed := chords(t)
	m, err := Fit(face(), Collet{}, Screws{Count: 11, Thread: thread(t, "M2"), Circle: 8 * 25.4})
	require.NoError(t, err)
	require.InDelta(t, 2.25386, m.Chord/25.4, 0.000005)
	require.InDelta(t, printed, m.Chord/25.4, 0.002)
	require.InDelta(t, m.Chord, m.Places[10].At.Dist(m.Places[0].At), 1e-9)
}
