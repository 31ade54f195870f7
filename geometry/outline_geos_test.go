//go:build geos

package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/twpayne/go-geos"

	"tipline/geometry/trial"
)

// sagitta is how far the polygons handed to GEOS lie from the arcs they stand
// for, as a share of the outline's width.
const sagitta = 1e-5

func ring(ps []Point) [][]float64 {
	coords := make([][]float64, 0, len(ps)+1)
	for _, p := range ps {
		coords = append(coords, []float64{p.X, p.Y})
	}
	return append(coords, coords[0])
}

func TestAgainstGEOS(t *testing.T) {
	rnd := trial.Rand(t, 21)
	context := geos.NewContext()
	for n := range trial.Count(2000) {
		o := starry(t, rnd)
		size := o.Bounds().Width()
		slack := 2 * sagitta * size
		g := context.NewPolygon([][][]float64{ring(o.Flatten(sagitta * size))})
		d := size * 0.25 * (rnd.Float64() - 0.4)
		say := []any{"case %d, inset %v of %v", n, d, o.Vertices()}
		require.True(t, g.IsValid(), say...)
		require.InDelta(t, g.Area(), o.Area(), slack*o.Length(), say...)

		// A quarter circle in 200 chords is 8e-6 of its radius short. Before it
		// buffers, GEOS straightens hollows of its input shallower than 1 % of the
		// distance (from memory), which moves short stretches by as much: 1e-4 of
		// the distance over the whole length allows for that.
		theirs := g.Buffer(-d, 200)
		ours, err := o.Inset(d)
		require.NoError(t, err, say...)
		area, length := 0.0, 0.0
		all := context.NewEmptyPolygon()
		for _, loop := range ours {
			area += loop.Area()
			length += loop.Length()
			all = all.SymDifference(context.NewPolygon([][][]float64{ring(loop.Flatten(sagitta * size))}))
		}
		allowed := 2*slack + 1e-4*math.Abs(d)
		require.InDelta(t, theirs.Area(), area, allowed*(length+o.Length()), say...)
		require.Less(t, theirs.SymDifference(all).Area(), allowed*(length+o.Length()), say...)
		// A corner of angle α moves by the error over sin(α/2): 20 times allows 6°.
		if len(ours) > 0 && !theirs.IsEmpty() && length > size/10 {
			require.Less(t, theirs.HausdorffDistance(all), 20*(slack+0.01*math.Abs(d)), say...)
		}
	}
}

func TestSimpleAgainstGEOS(t *testing.T) {
	rnd := trial.Rand(t, 22)
	context := geos.NewContext()
	counts := map[bool]int{}
	for n := range trial.Count(10000) {
		corners := make([]Vertex, 4+rnd.IntN(5))
		for i := range corners {
			corners[i].Point = Polar(10*rnd.Float64(), Angle(float64(i)+2*rnd.Float64()))
			corners[i].Bulge = (rnd.Float64() - 0.5) * float64(rnd.IntN(2))
		}
		o := made(t, corners)
		g := context.NewPolygon([][][]float64{ring(o.Flatten(1e-7))})
		require.Equal(t, g.IsValid(), o.Simple(), "case %d: %v", n, o.Vertices())
		counts[o.Simple()]++
	}
	require.Len(t, counts, 2)
}
