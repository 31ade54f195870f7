package screen

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

func TestFindTellsWhichFieldMadeALine(t *testing.T) {
	d := crossed(t, 60)
	v := Fit(whole, 900, 900, 10)
	for _, row := range []struct {
		name string
		at   geometry.Point
		want geometry.Quantity
	}{
		{"rim", geometry.Polar(34, geometry.Degrees(20)), "crossing.rim"},
		{"hub", geometry.Polar(12, geometry.Degrees(40)), "crossing.hub"},
		{"arm's side", geometry.Polar(25, 0.1), "crossing.arm_at_rim"},
		{"arm's centre line", geometry.Polar(20, 0), "crossing.arms"},
		{"bore", geometry.Polar(3, geometry.Degrees(80)), "bore"},
		{"tooth", geometry.Polar(40, geometry.Degrees(90)), "teeth"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := v.ToPixel(row.at)
			found, ok := Find(d, v, Pixel{p.X + 1, p.Y - 1}, 6)
			require.True(t, ok)
			require.Equal(t, row.want, found.Quantity)
			require.Equal(t, "wheel", found.Part)
			require.LessOrEqual(t, found.Distance, 1.5)
		})
	}
}

func TestFindPassesOverWhatNoFieldMade(t *testing.T) {
	d, v := crossed(t, 60), Fit(whole, 900, 900, 10)
	_, ok := Find(d, v, v.ToPixel(geometry.Polar(41.5, geometry.Degrees(90))), 4)
	require.False(t, ok, "ticks")
	_, ok = Find(d, v, Pixel{3, 3}, 6)
	require.False(t, ok, "bare paper")
	_, ok = Find(nil, v, Pixel{3, 3}, 6)
	require.False(t, ok)
	_, ok = Find(d, View{}, Pixel{0, 0}, 6)
	require.False(t, ok)
}

func TestPlaceStandsOnALitLineThatIsSeen(t *testing.T) {
	d, v := crossed(t, 60), Fit(whole, 900, 900, 10)
	at, ok := Place(d, v, Lit{"wheel", "crossing.rim"}, 900, 900)
	require.True(t, ok)
	require.InDelta(t, 34, v.ToDrawing(at).Norm(), 0.1)
	require.Less(t, at.Y, 450.0, "the highest of lines as long")
	_, ok = Place(d, v, Lit{"other", "crossing.rim"}, 900, 900)
	require.False(t, ok)
	_, ok = Place(d, v, Lit{"wheel", "teeth.count"}, 900, 900)
	require.True(t, ok, "the number of teeth lights all of them")
	_, ok = Place(d, v, Lit{"wheel", ""}, 900, 900)
	require.False(t, ok)
	_, ok = Place(d, v.Pan(5000, 0), Lit{"wheel", "crossing.rim"}, 900, 900)
	require.False(t, ok)
}

func TestBarsAreRoundAndAsLongAsTheySay(t *testing.T) {
	for _, row := range []struct {
		scale, drawn, perUnit float64
		length                float64
		parts                 int
	}{
		{8, 1, 1, 20, 4},
		{3, 1, 1, 50, 5},
		{16, 1, 1, 10, 10},
		{8, 10, 1, 2, 4}, // a drawing ten times enlarged
		{8, 1, 25.4, 0.5, 5},
	} {
		d := &render.Drawing{Scale: row.drawn}
		b := BarOf(d, View{Scale: row.scale}, row.perUnit, 170)
		require.InDelta(t, row.length, b.Length, 1e-9)
		require.Equal(t, row.parts, b.Parts)
		require.InDelta(t, row.length*row.perUnit*row.drawn*row.scale, b.Pixels, 1e-6)
		require.LessOrEqual(t, b.Pixels, 170.0)
	}
	require.Zero(t, BarOf(nil, View{}, 1, 170))
}
