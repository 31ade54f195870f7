package render

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// The pieces of any arc join, turn alike, and stay on its circle.
func TestPieces(t *testing.T) {
	for degrees := -355.0; degrees <= 355; degrees += 5 {
		arc := geometry.Arc{Centre: point(3, 4), Radius: 40, Start: 0.7, Sweep: geometry.Degrees(degrees)}
		s := arc.Segment()
		s.Quantity = "crossing.rim"
		var pieces []geometry.Segment
		for p := range Pieces(s) {
			pieces = append(pieces, p)
		}
		want := max(1, int(math.Ceil(math.Abs(degrees)/30-1e-6)))
		require.Len(t, pieces, want, "%g°", degrees)
		require.Equal(t, s.From, pieces[0].From)
		require.Equal(t, s.To, pieces[want-1].To)
		for i, p := range pieces {
			if i > 0 {
				require.Equal(t, pieces[i-1].To, p.From)
			}
			require.Equal(t, s.Quantity, p.Quantity)
			if degrees != 0 {
				got, ok := p.Arc()
				require.True(t, ok)
				require.InDelta(t, 0, got.At(0.5).Dist(arc.At((float64(i)+0.5)/float64(want))), 1e-9)
			}
		}
	}
}

func TestPiecesOfALine(t *testing.T) {
	s := geometry.Segment{From: point(0, 0), To: point(5, 5)}
	for p := range Pieces(s) {
		require.Equal(t, s, p)
	}
	require.True(t, Flat(s))
	s.Bulge = 1e-9
	require.True(t, Flat(s))
	s.Bulge = 1e-4
	require.False(t, Flat(s))
}
