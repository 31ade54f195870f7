package geometry

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// Lengths are told to the last two digits of a float64 from the smallest numbers to
// the greatest, by the root of big.Float's exact squares.
func TestALengthIsToldToTheLastDigits(t *testing.T) {
	r := trial.Rand(t, 1)
	for range trial.Count(100_000) {
		scale := math.Ldexp(1, r.IntN(2000)-1000)
		p := Point{r.NormFloat64() * scale, r.NormFloat64() * scale * math.Ldexp(1, r.IntN(40)-20)}
		x, y := big.NewFloat(p.X).SetPrec(200), big.NewFloat(p.Y).SetPrec(200)
		x.Mul(x, x)
		y.Mul(y, y)
		want, _ := x.Sqrt(x.Add(x, y)).Float64()
		require.InEpsilon(t, want, p.Norm(), 2*0x1p-52, "%v", p)
		require.Equal(t, p.Norm(), Point{}.Dist(p), "%v", p)
	}
	require.Zero(t, Point{}.Norm())
	require.True(t, math.IsInf(Point{math.Inf(-1), math.NaN()}.Norm(), 1))
	require.Equal(t, math.SmallestNonzeroFloat64, Point{Y: -math.SmallestNonzeroFloat64}.Norm())
}
