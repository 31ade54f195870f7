package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func square(t testing.TB, a float64) Outline {
	o, err := NewOutline([]Vertex{{Point: Point{0, 0}}, {Point: Point{a, 0}}, {Point: Point{a, a}}, {Point: Point{0, a}}})
	require.NoError(t, err)
	return o
}

func TestInsetSquare(t *testing.T) {
	o := square(t, 10)
	in, err := o.Inset(1)
	require.NoError(t, err)
	require.Len(t, in, 1)
	require.InDelta(t, 64, in[0].Area(), 1e-9)
	out, err := o.Inset(-1)
	require.NoError(t, err)
	require.Len(t, out, 1)
	require.InDelta(t, 100+40+math.Pi, out[0].Area(), 1e-9)
	require.InDelta(t, 5, o.PinchOut(9), 1e-6)
	r, err := o.Round(0, 2, "x")
	require.NoError(t, err)
	require.InDelta(t, 100-4+math.Pi, r.Area(), 1e-9)
	in, err = r.Inset(1)
	require.NoError(t, err)
	require.Len(t, in, 1)
	require.InDelta(t, 64-1+math.Pi/4, in[0].Area(), 1e-9)
	in, err = o.InsetEach([]float64{1, 0, 0, 0})
	require.NoError(t, err)
	require.Len(t, in, 1)
	require.InDelta(t, 90, in[0].Area(), 1e-9)
}
