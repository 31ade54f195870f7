//go:build geos

package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/twpayne/go-geos"

	"tipline/geometry/internal/trial"
)

// sagitta is how far the polygons handed to GEOS lie from the arcs they stand
// for, as a share of the outline's width.
const sagitta = 1e-6

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
	for n := range trial.Count(2500) {
		o := starry(t, rnd)
		size := o.Bounds().Width()
		slack := 2 * sagitta * size
		g := context.NewPolygon([][][]float64{ring(o.Flatten(sagitta * size))})
		d := size * 0.25 * (rnd.Float64() - 0.4)
		say := []any{"case %d, inset %v of %v", n, d, o.Vertices()}
		require.True(t, g.IsValid(), say...)
		require.InDelta(t, g.Area(), o.Area(), slack*o.Length(), say...)

		// A quarter circle in 1000 pieces is d·1.2e-6/4 short at most.
		theirs := g.Buffer(-d, 1000)
		ours, err := o.Inset(d)
		require.NoError(t, err, say...)
		area, length := 0.0, 0.0
		for _, loop := range ours {
			area += loop.Area()
			length += loop.Length()
		}
		// GEOS drops corners of its input that lie within 1 % of d of a line.
		allowed := slack + 0.01*math.Abs(d)*0.01
		require.InDelta(t, theirs.Area(), area, allowed*(length+o.Length()), say...)
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
