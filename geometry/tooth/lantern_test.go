package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

func lanterns() []Lantern {
	return []Lantern{{8, 0.6, 0}, {6, 1, 0.9}, {3, 0.01, 0}, {12, 0.8, 0}, {2000, 0.3, 0.2}, {7, 2, 1.5}}
}

func TestHolesStandClockwiseFromTwelve(t *testing.T) {
	for _, l := range lanterns() {
		p, err := l.Pinion()
		require.NoError(t, err)
		require.Len(t, p.Holes, l.Leaves)
		require.InDelta(t, l.Module*float64(l.Leaves)/2, p.PitchRadius, near)
		require.Less(t, p.Holes[0].At.Dist(geometry.Point{Y: p.PitchRadius}), near)
		require.Positive(t, p.Holes[1].At.X, "the second stands to the right")
		for i, h := range p.Holes {
			next := p.Holes[(i+1)%l.Leaves]
			require.InDelta(t, p.Step, h.At.Dist(next.At), near, "the dividers step round: %+v", l)
			require.InDelta(t, h.Chord, h.At.Dist(p.Holes[0].At), near)
			require.InDelta(t, p.PitchRadius, h.At.Norm(), near)
			require.InDelta(t, 360*float64(i)/float64(l.Leaves), h.Turn.Degrees(), 1e-9)
		}
	}
}

// The oracle measures the outlines themselves: trundle to trundle, trundle to the
// shroud's edge and to the largest bore.
func TestMetalRoundTheHoles(t *testing.T) {
	for _, l := range lanterns() {
		p, err := l.Pinion()
		require.NoError(t, err)
		require.Len(t, p.Holes, l.Leaves)
		var trundles [2]geometry.Outline
		for i := range trundles {
			trundles[i], err = geometry.Circle(p.Holes[i].At, p.TrundleDiameter/2, "")
			require.NoError(t, err)
		}
		between, _, _ := trundles[0].Distance(trundles[1])
		require.InDelta(t, between, p.Between, near)
		require.Positive(t, p.Between)
		shroud, err := geometry.Circle(geometry.Point{}, p.Shroud/2, "")
		require.NoError(t, err)
		edge, _, _ := trundles[0].Distance(shroud)
		require.InDelta(t, p.TrundleDiameter/2, edge, near)
		if p.LargestBore > 0 {
			bore, err := geometry.Circle(geometry.Point{}, p.LargestBore/2, "")
			require.NoError(t, err)
			edge, _, _ = trundles[0].Distance(bore)
			require.InDelta(t, p.TrundleDiameter/2, edge, near)
		}
	}
}

// A factory's trundle is as thick as the leaf of the equal cut pinion: Goodrich,
// The Modern Clock (1905), ch. XIV, 1.047 modules for 8 leaves. His other rule,
// three parts of eight of the pitch where tooth and space of the wheel are alike,
// is thicker than ours up to 10 trundles and thinner above.
func TestUsualTrundles(t *testing.T) {
	rows := publishedIn(t, "pinions.csv", "Goodrich")
	require.Contains(t, rows[len(rows)-1]["value"], "leaf thickness of the equal cut pinion")
	require.InDelta(t, 1.047, UsualTrundle(8, 1), 0.004)
	for leaves := fewestLeaves; leaves <= 40; leaves++ {
		require.Equal(t, Pinion{Leaves: leaves}.Thickness()*0.7, UsualTrundle(leaves, 0.7))
	}
	require.Less(t, UsualTrundle(10, 1), 3*math.Pi/8)
	require.Greater(t, UsualTrundle(11, 1), 3*math.Pi/8)
}

func TestNearestDrillIsNamed(t *testing.T) {
	p, err := Lantern{8, 0.6, 0}.Pinion()
	require.NoError(t, err)
	require.InDelta(t, 0.63, p.TrundleDiameter, near)
	require.Equal(t, "#72", p.Drill.Name) // 0.0250 in, ASME B94.11M
	p, err = Lantern{8, 1, 1.5875}.Pinion()
	require.NoError(t, err)
	require.Equal(t, "1/16", p.Drill.Name)
}

func TestLanternThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		l        Lantern
		quantity geometry.Quantity
		code     string
		min, max float64
	}{
		{"two trundles", Lantern{2, 1, 0}, "leaves", "tooth.trundles", 3, 2000},
		{"too many", Lantern{2001, 1, 0}, "leaves", "tooth.trundles", 3, 2000},
		{"no module", Lantern{8, 0, 0}, "module", "tooth.pinion-module", 0.01, 2000 / 10.1},
		{"module is no number", Lantern{8, math.NaN(), 1}, "module", "tooth.pinion-module", 0.01, 2000 / 10.1},
		{"trundles meet", Lantern{8, 1, 3.06}, "trundle", "tooth.trundles-meet", 0.01, 8*math.Sin(math.Pi/8) - 0.01},
		{"negative", Lantern{8, 1, -1}, "trundle", "tooth.trundles-meet", 0.01, 8*math.Sin(math.Pi/8) - 0.01},
		{"trundle is no number", Lantern{8, 1, math.NaN()}, "trundle", "tooth.trundles-meet", 0.01, 8*math.Sin(math.Pi/8) - 0.01},
		{"shroud too large", Lantern{8, 190, 250}, "trundle", "tooth.trundles-meet", 0.01, 240},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.l.Pinion()
			var limit *geometry.Limit
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.quantity, limit.Quantity)
			require.Equal(t, row.code, limit.Code)
			require.InDelta(t, row.min, limit.Min, near)
			require.InDelta(t, row.max, limit.Max, near)
			require.False(t, math.IsNaN(limit.Value))
			require.True(t, words.English().Has(limit.Code))
		})
	}
}

// What a limit says would do does, and the trundles then stand apart.
func TestThickestTrundleIsBuilt(t *testing.T) {
	for _, l := range lanterns() {
		l.Trundle = 1000
		_, err := l.Pinion()
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit)
		l.Trundle = limit.Max
		p, err := l.Pinion()
		require.NoError(t, err)
		require.InDelta(t, 0.01, p.Between, near)
	}
}

func TestShroudBore(t *testing.T) {
	p, err := Lantern{8, 1, 1}.Pinion()
	require.NoError(t, err)
	require.NoError(t, p.CheckBore(0))
	require.NoError(t, p.CheckBore(6))
	for _, bore := range []float64{6.01, -1, math.NaN()} {
		var limit *geometry.Limit
		require.ErrorAs(t, p.CheckBore(bore), &limit)
		require.InDelta(t, 6, limit.Max, near)
		require.True(t, words.English().Has(limit.Code))
	}
	p, err = Lantern{3, 1, 2.5}.Pinion()
	require.NoError(t, err)
	require.Zero(t, p.LargestBore, "the trundles leave no room")
}
