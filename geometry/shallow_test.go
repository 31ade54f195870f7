package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// An arc that rises 1e-5 mm to 1 mm over some 20 mm is as good as straight, but its
// centre lies up to 5 km off. A small arc run on from its end without a corner meets
// it there and nowhere else; one moved across it by half its radius meets it where
// the chord says.
func TestShallowArcsMeetSmallOnesWhereTheyAre(t *testing.T) {
	rnd := trial.Rand(t, 11)
	for range trial.Count(20_000) {
		bulge := math.Pow(10, -6+5*rnd.Float64()) * math.Copysign(1, rnd.Float64()-0.5)
		from := Point{rnd.Float64() * 50, rnd.Float64() * 50}
		long := Segment{From: from, To: from.Add(Polar(10+20*rnd.Float64(), Angle(7*rnd.Float64()))), Bulge: bulge}
		r := math.Pow(10, -1.5*rnd.Float64())
		way := long.Tangent(1)
		centre := long.To.Add(way.Left().Times(r))
		start := long.To.Sub(centre).Direction()
		on := Arc{Centre: centre, Radius: r, Start: start, Sweep: 1.5}.Segment()
		on.From = long.To
		ms := Meet(long, on)
		require.Len(t, ms, 1, "%v %v", long, on)
		require.InDelta(t, 0, ms[0].At.Dist(long.To), 1e-9, "%v %v", long, on)

		middle := long.At(0.5).Add(long.Tangent(0.5).Left().Times(r / 2))
		across := Arc{Centre: middle, Radius: r, Start: long.Tangent(0.5).Direction() - 3, Sweep: 6}.Segment()
		for _, m := range Meet(long, across) {
			require.InDelta(t, r, m.At.Dist(middle), 1e-9)
			require.InDelta(t, 0, long.Dist(m.At), 1e-8)
		}
		require.Len(t, Meet(long, across), 2, "%v %v", long, across)
	}
}
