package geometry

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// parabola returns what the circular segment of a flat arc on a chord along x has,
// by integrating under the parabola of the same rise h = b·c/2, which differs from it
// by b² of itself: 2ch/3, 2/5 of h times that, and c³h/30 for ∫ x², to which ∫ y²
// adds b² of itself.
func parabola(c, b float64) slice {
	h := b * c / 2
	return slice{2 * c * h / 3, Point{0, -2 * c * h / 3 * 0.4 * h}, c * c * c * h / 30}
}

func TestShallowArcsKeepTheirDigits(t *testing.T) {
	for _, b := range []float64{1e-3, 1e-5, 1e-7, 1e-9, 1e-12, 1e-16, 1e-30, 1e-150, -1e-3, -1e-12} {
		want, got := parabola(3, b), sliceOf(Point{0, 0}, Point{3, 0}, b)
		slack := 4*b*b + 1e-15
		require.InEpsilon(t, want.area, got.area, slack, "%g", b)
		require.InEpsilon(t, want.first.Y, got.first.Y, slack, "%g", b)
		require.Zero(t, got.first.X)
		require.InEpsilon(t, want.polar, got.polar, slack, "%g", b)
	}
}

// The series and the closed form say the same where one takes over from the other,
// and the closed form what the handbook's angle says.
func TestSlicesOfEverySweep(t *testing.T) {
	for _, bulge := range []float64{0.01, 0.2499, 0.2501, 0.5, 1, 1.5, 3, 20} {
		theta := 4 * math.Atan(bulge)
		r := 2 * (1 + bulge*bulge) / (4 * bulge) // on a chord of 2
		sin, cos := math.Sincos(theta)
		area, low := r*r*(theta-sin)/2, r*math.Cos(theta/2) // from the centre to the chord
		first := 2.0/3 - area*low
		polar := r*r*r*r/4*(theta-sin*(2+cos)/3) - 2*low*2/3 + area*low*low
		got := sliceOf(Point{-1, 0}, Point{1, 0}, bulge)
		lost := 1e-15 * r * r * r * r * (1 + theta)
		require.InDelta(t, area, got.area, lost, "%g", bulge)
		require.InDelta(t, -first, got.first.Y, lost, "%g", bulge)
		require.InDelta(t, polar, got.polar, lost, "%g", bulge)
	}
}

// exactExcess is sliceExcess by its series in exact fractions, for a b² below 1/2.
func exactExcess(b2 float64) float64 {
	x, power := new(big.Rat).SetFloat64(b2), big.NewRat(3, 1)
	sum := new(big.Rat)
	for n := range int64(60) {
		term := new(big.Rat).Quo(power, big.NewRat((2*n+1)*(2*n+3)*(2*n+5), 1))
		sum.Add(sum, term)
		power.Neg(power.Mul(power, x))
	}
	v, _ := sum.Float64()
	return v
}

func TestSliceExcessAgainstExactFractions(t *testing.T) {
	rnd := trial.Rand(t, 3)
	for range 20 {
		b2 := rnd.Float64() * 0.3
		slack := 2e-16
		if b2 > shallowSlice {
			slack /= b2 * b2
		}
		require.InDelta(t, exactExcess(b2), sliceExcess(b2), slack, "%g", b2)
	}
}

// Arcs flatter than a coordinate's last place are straight, and nothing asked of
// them is anything but a number.
func TestTheFlattestArcsAreStraight(t *testing.T) {
	square := func(bulge float64) Outline {
		o, err := NewOutline([]Vertex{{Point{0, 0}, bulge, ""}, {Point{4, 0}, -bulge, ""}, {Point{4, 4}, bulge, ""}, {Point{0, 4}, 0, ""}})
		require.NoError(t, err)
		return o
	}
	for _, bulge := range []float64{0, 1e-12, 1e-15, 1e-19, 1e-21, 1e-154, 1e-155, 1e-200, 1e-308, 5e-324, -1e-160, -5e-324} {
		o := square(bulge)
		slack := 1e-13 + 20*math.Abs(bulge)
		require.InDelta(t, 16, o.Area(), slack, "%g", bulge)
		require.InDelta(t, 512.0/3, o.PolarMoment(), 512*slack, "%g", bulge)
		require.InDelta(t, 0, o.Centroid().Dist(Point{2, 2}), slack, "%g", bulge)
		require.InDelta(t, 16, o.Length(), slack, "%g", bulge)
		require.True(t, o.Contains(Point{1, 1}) && !o.Contains(Point{5, 1}) && !o.Contains(Point{2, -1}), "%g", bulge)
		require.InDelta(t, 1, o.Margin(Point{1, 2}), slack, "%g", bulge)
		require.InDelta(t, 4, o.Bounds().Width(), slack, "%g", bulge)
		require.True(t, o.Simple(), "%g", bulge)
		d, a, b := o.Distance(o.Move(Point{7, 0}))
		require.InDelta(t, 3, d, slack, "%g", bulge)
		require.True(t, a.Finite() && b.Finite(), "%g", bulge)
		require.Equal(t, math.Abs(bulge) < 1e-20, o.Segment(0).IsLine(), "%g", bulge)
	}
}

func TestArcsThatNoOutlineHas(t *testing.T) {
	for _, bulge := range []float64{1e17, -1e17, math.MaxFloat64, math.Inf(1), math.NaN()} {
		_, err := NewOutline([]Vertex{{Point{0, 0}, bulge, ""}, {Point{4, 0}, 0, ""}})
		require.Error(t, err, "%g", bulge)
		_, err = NewChain([]Vertex{{Point{0, 0}, bulge, ""}, {Point{4, 0}, 0, ""}})
		require.Error(t, err, "%g", bulge)
	}
	_, err := NewOutline([]Vertex{{Point{0, 0}, 1e-200, ""}, {Point{4, 0}, 0, ""}})
	require.EqualError(t, err, "outline: two vertices enclose nothing")
}
