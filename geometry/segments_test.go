package geometry

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// Which segments lie about a place, and where, is what asking each of them by itself
// says.
func TestSegmentsAboutAPlaceAgainstEachByItself(t *testing.T) {
	const seed1, seed2 = 41, 43
	random := rand.New(rand.NewPCG(seed1, seed2))
	place := func() Point { return Point{100 * random.Float64(), 100 * random.Float64()} }
	found := 0
	for round := range 40 {
		list := make([]Segment, 1+random.IntN(300))
		for i := range list {
			list[i] = Segment{From: place(), To: place(), Bulge: []float64{0, 2*random.Float64() - 1}[random.IntN(2)]}
		}
		all := NewSegments(list)
		for range 20 {
			p, d := place(), 8*random.Float64()
			got := map[int]float64{}
			all.About(p, d, func(i int, near Point, far float64) {
				got[i] = far
				require.InDelta(t, far, near.Dist(p), 1e-12)
				require.InDelta(t, 0, list[i].Dist(near), 1e-9)
			})
			for i, s := range list {
				far, ok := got[i]
				require.Equal(t, s.Dist(p) <= d, ok, "seed (%d, %d), round %d, segment %d", seed1, seed2, round, i)
				if ok {
					require.InDelta(t, s.Dist(p), far, 1e-9)
					found++
				}
			}
		}
		i, j := random.IntN(len(list)), random.IntN(len(list))
		require.Len(t, all.Meet(i, j), len(Meet(list[i], list[j])))
	}
	require.Greater(t, found, 1000)
	Segments{}.About(Point{}, 1, func(int, Point, float64) { t.Fatal("there is none") })
}
