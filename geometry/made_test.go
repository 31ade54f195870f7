package geometry

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// polygon returns the outline with straight sides through the corners.
func polygon(t testing.TB, corners ...Point) Outline {
	t.Helper()
	vs := make([]Vertex, len(corners))
	for i, p := range corners {
		vs[i].Point = p
	}
	return made(t, vs)
}

func made(t testing.TB, vs []Vertex) Outline {
	t.Helper()
	o, err := NewOutline(vs)
	require.NoError(t, err)
	return o
}

func rectangle(t testing.TB, w, h float64) Outline {
	return polygon(t, Point{0, 0}, Point{w, 0}, Point{w, h}, Point{0, h})
}

func disc(t testing.TB, c Point, r float64) Outline {
	t.Helper()
	o, err := Circle(c, r, "")
	require.NoError(t, err)
	return o
}

// starry returns a random simple outline about the origin: 4 to 14 corners in
// order round it, sides straight or arched, some corners filleted.
func starry(t testing.TB, rnd *rand.Rand) Outline {
	for {
		n := 4 + rnd.IntN(11)
		size := math.Exp(rnd.Float64() * 5)
		vs := make([]Vertex, n)
		for i := range vs {
			a := (float64(i) + 0.8*rnd.Float64()) / float64(n) * 2 * math.Pi
			vs[i].Point = Polar(size*(0.12+0.88*rnd.Float64()), Angle(a))
			if rnd.IntN(2) == 0 {
				vs[i].Bulge = (rnd.Float64() - 0.5) * 0.9
			}
		}
		o := made(t, vs)
		for i := range n {
			if r, err := o.Round(n-1-i, size*0.2*rnd.Float64(), "fillet"); err == nil && rnd.IntN(3) > 0 {
				o = r
			}
		}
		if o.Simple() && o.Area() > 0 {
			return o
		}
	}
}

// window returns the outline of a crossing's window with four fillets.
func window(t testing.TB, turn Angle) Outline {
	t.Helper()
	at := func(r, deg float64) Point { return Polar(r, Degrees(deg)) }
	arch := math.Tan(float64(Degrees(50)) / 4)
	o := made(t, []Vertex{
		{Point: at(20, 65)},
		{Point: at(70, 65), Bulge: arch},
		{Point: at(70, 115)},
		{Point: at(20, 115), Bulge: -arch},
	})
	for _, corner := range []int{3, 2, 1, 0} {
		var err error
		o, err = o.Round(corner, 2, "crossing.fillet_at_rim")
		require.NoError(t, err)
	}
	return o.Rotate(turn)
}

// toothed returns a wheel-like outline: arched flanks, tips and floors, filleted
// at the floor, 7 segments to a tooth.
func toothed(t testing.TB, count int) Outline {
	t.Helper()
	var vs []Vertex
	pitch := 360.0 / float64(count)
	root := float64(count) * 0.25
	for i := range count {
		a := float64(i) * pitch
		for _, v := range []struct{ height, share, bulge float64 }{
			{0.15, 0, -0.4},
			{0, 0.1, math.Tan(float64(Degrees(0.2*pitch)) / 4)},
			{0, 0.3, -0.4},
			{0.15, 0.4, 0},
			{0.6, 0.42, 0.1},
			{1, 0.68, 0.1},
			{0.6, 0.94, 0},
		} {
			vs = append(vs, Vertex{Point: Polar(root+v.height, Degrees(a+v.share*pitch)), Bulge: v.bulge})
		}
	}
	return made(t, vs)
}
