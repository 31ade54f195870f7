package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Whatever a slip of the hand types is built or refused with figures that are
// numbers; nothing panics, and what is built has a sound outline.
func TestAbsurdTeethAreRefused(t *testing.T) {
	sizes := []float64{0, -1, 1e-300, 0.01, 0.5, 3, 1e9, 1e300, math.NaN(), math.Inf(1), math.Inf(-1)}
	counts := []int{math.MinInt, -8, 0, 1, 2, 3, 4, 8, 2000, 2001, math.MaxInt}
	refused, built := 0, 0
	try := func(make func() (Wheel, error), about ...any) {
		w, err := make()
		if err == nil {
			built++
			require.True(t, w.Outline.Len() > 0 && w.Outline.Bounds().Max.Finite(), about...)
			require.InDelta(t, w.TipRadius, w.Outline.Bounds().Max.Y, 1e-6, about...)
			require.Less(t, w.RootRadius, w.TipRadius, about...)
			return
		}
		refused++
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit, about...)
		for _, v := range []float64{limit.Value, limit.Min, limit.Max} {
			require.False(t, math.IsNaN(v), about...)
		}
		require.False(t, math.IsInf(limit.Value, 0), about...)
	}
	for _, n := range counts {
		for _, a := range sizes {
			for _, b := range sizes {
				try(Measured{n, a, b}.Wheel, n, a, b)
				try(Pinion{n, a, b}.Wheel, n, a, b)
				try(func() (Wheel, error) {
					p, err := Lantern{n, a, b}.Pinion()
					if err != nil {
						return Wheel{}, err
					}
					shroud, err := geometry.Circle(geometry.Point{}, p.Shroud/2, "")
					return Wheel{TipRadius: p.Shroud / 2, Outline: shroud}, err
				}, n, a, b)
			}
			for _, leaves := range []int{math.MinInt, 2, 3, 8, math.MaxInt} {
				try(Cycloidal{n, a, leaves}.Wheel, n, a, leaves)
				for _, b := range []float64{-1, 0.5, math.NaN(), math.Inf(1)} {
					try(LanternDriver{n, a, leaves, b, 0}.Wheel, n, a, leaves, b)
					try(LanternDriver{n, a, leaves, 0, b}.Wheel, n, a, leaves, b)
				}
			}
		}
	}
	require.Greater(t, refused, 1000)
	require.Greater(t, built, 50)
}
