package screen

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Of what is lit the piece nearest to a place is taken: one window's rim, one arm's
// side, or the whole of a circle.
func TestTheExtentOfWhatIsLit(t *testing.T) {
	d := crossed(t, 60)
	for _, row := range []struct {
		quantity     geometry.Quantity
		near, within geometry.Point // the middle of what is found lies within 2 mm of it
		widest       float64
	}{
		{"crossing.rim", geometry.Polar(34, geometry.Degrees(30)), geometry.Polar(32, geometry.Degrees(30)), 34},
		{"crossing.rim", geometry.Polar(34, geometry.Degrees(210)), geometry.Polar(32, geometry.Degrees(210)), 34},
		{"bore", geometry.Point{X: 3}, geometry.Point{}, 6.001},
	} {
		b, ok := Extent(d, Lit{"wheel", row.quantity}, row.near)
		require.True(t, ok)
		require.InDelta(t, 0, b.Centre().Dist(row.within), 2, row.quantity)
		require.Less(t, b.Width(), row.widest)
		require.Less(t, b.Height(), row.widest)
		require.Positive(t, b.Height())
	}
	b, ok := Extent(d, Lit{"wheel", "bore"}, geometry.Point{})
	require.True(t, ok)
	require.InDelta(t, 6, b.Width(), 0.01)
	require.InDelta(t, 6, b.Height(), 0.01)
	_, ok = Extent(d, Lit{"other", "bore"}, geometry.Point{})
	require.False(t, ok)
	_, ok = Extent(d, Lit{}, geometry.Point{})
	require.False(t, ok)
	_, ok = Extent(nil, Lit{"wheel", "bore"}, geometry.Point{})
	require.False(t, ok)
}
