package geometry

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestAnOutlineRepeats(t *testing.T) {
	const teeth = 12
	var vs []Vertex
	for i := range teeth {
		turn := FullTurn * Angle(i) / teeth
		vs = append(vs, Vertex{Point: Polar(10, turn), Bulge: 0.1}, Vertex{Point: Polar(9, turn+0.2)}, Vertex{Point: Polar(9.5, turn+0.3)})
	}
	wheel, err := NewOutline(vs)
	require.NoError(t, err)
	for _, row := range []struct {
		name  string
		o     Outline
		count int
		each  int
	}{
		{"every tooth", wheel, teeth, 3},
		{"every third tooth", wheel, 4, 9},
		{"the other way round", wheel.Reverse(), teeth, 3},
		{"turned", wheel.Rotate(0.7), teeth, 3},
		{"too few", wheel, 2, 0},
		{"not a count of it", wheel, 9, 0},
		{"as many segments, not alike", wheel, 36, 0},
		{"about another centre", wheel.Move(Point{0.01, 0}), teeth, 0},
		{"nothing", Outline{}, teeth, 0},
	} {
		t.Run(row.name, func(t *testing.T) {
			each, ok := row.o.Repeats(row.count, 1e-3)
			require.Equal(t, row.each, each)
			require.Equal(t, row.each > 0, ok)
		})
	}
	vs[7].Bulge = 0.01
	odd, err := NewOutline(vs)
	require.NoError(t, err)
	_, ok := odd.Repeats(teeth, 1e-3)
	require.False(t, ok)
}
