package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestInsetOfPlainShapes(t *testing.T) {
	l := polygon(t, Point{0, 0}, Point{10, 0}, Point{10, 4}, Point{4, 4}, Point{4, 10}, Point{0, 10})
	dumbbell := polygon(t, Point{0, 0}, Point{10, 0}, Point{10, 4}, Point{20, 4}, Point{20, 0}, Point{30, 0},
		Point{30, 10}, Point{20, 10}, Point{20, 6}, Point{10, 6}, Point{10, 10}, Point{0, 10})
	horseshoe := polygon(t, Point{0, 0}, Point{10, 0}, Point{10, 10}, Point{6, 10}, Point{6, 9}, Point{9, 9},
		Point{9, 1}, Point{1, 1}, Point{1, 9}, Point{4, 9}, Point{4, 10}, Point{0, 10})
	// What lies between two arcs of 1.5 about points 2 apart and their tangent.
	nib := 2 * (1.5 - math.Sqrt(1.25)/2 - 1.125*math.Asin(1/1.5))
	cases := []struct {
		name  string
		o     Outline
		d     float64
		areas []float64
	}{
		{"rectangle inward", rectangle(t, 10, 6), 1, []float64{8 * 4}},
		{"rectangle outward", rectangle(t, 10, 6), -1, []float64{60 + 32 + math.Pi}},
		{"rectangle the other way round", rectangle(t, 10, 6).Reverse(), 1, []float64{-8 * 4}},
		{"rectangle gone", rectangle(t, 10, 6), 3.001, nil},
		{"disc inward", disc(t, Point{3, 4}, 5), 2, []float64{9 * math.Pi}},
		{"disc outward", disc(t, Point{3, 4}, 5), -2, []float64{49 * math.Pi}},
		{"disc gone", disc(t, Point{3, 4}, 5), 5, nil},
		// The square of 8 less that of 6, its inner corner rolled.
		{"inner corner rolled round", l, 1, []float64{64 - 36 + 1 - math.Pi/4}},
		{"dumbbell in two", dumbbell, 1.5, []float64{49 + nib, 49 + nib}},
		{"gap closed leaves a hole", horseshoe, -1.5, []float64{13*13 - (4-math.Pi)*2.25 - nib, -5*5 - nib}},
		{"zero", rectangle(t, 10, 6), 0, []float64{60}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			in, err := c.o.Inset(c.d)
			require.NoError(t, err)
			require.Len(t, in, len(c.areas))
			for i, o := range in {
				require.InDelta(t, c.areas[i], o.Area(), 1e-8)
			}
		})
	}
}

func TestInsetKeepsItsDistance(t *testing.T) {
	rnd := trial.Rand(t, 11)
	split := 0
	for n := range trial.Count(10000) {
		o := starry(t, rnd)
		size := o.Bounds().Width()
		d := size * 0.3 * (rnd.Float64() - 0.4)
		in, err := o.Inset(d)
		require.NoError(t, err, "case %d, d %v of %v", n, d, o.Vertices())
		split += max(0, len(in)-1)
		for _, loop := range in {
			require.True(t, loop.Simple(), "case %d, d %v of %v: %v", n, d, o.Vertices(), loop.Vertices())
			for i := range loop.Len() {
				s := loop.Segment(i)
				for _, share := range []float64{0, 0.3, 0.77} {
					p := s.At(share)
					q, _ := o.Nearest(p)
					require.InDelta(t, math.Abs(d), p.Dist(q), 1e-9, "case %d, d %v of %v", n, d, o.Vertices())
					require.Equal(t, d > 0, o.Contains(p), "case %d, d %v of %v", n, d, o.Vertices())
				}
			}
		}
		requireNothingLost(t, o, in, d)
	}
	require.Positive(t, split, "no inset fell in two")
}

// requireNothingLost checks points all over the box: each is inside the inset
// exactly where its distance says.
func requireNothingLost(t *testing.T, o Outline, in []Outline, d float64) {
	b := o.Bounds().Grow(math.Max(0, -d))
	for k := range 60 {
		x, y := math.Mod(float64(k)*0.754877666, 1), math.Mod(float64(k)*0.569840291, 1)
		p := Point{b.Min.X + x*b.Width(), b.Min.Y + y*b.Height()}
		q, _ := o.Nearest(p)
		deep := p.Dist(q)
		if !o.Contains(p) {
			deep = -deep
		}
		if math.Abs(deep-d) < 1e-6 {
			continue
		}
		turns := 0
		for _, loop := range in {
			turns += loop.Winding(p)
		}
		require.Equal(t, deep > d, turns != 0, "%v at depth %v, d %v of %v", p, deep, d, o.Vertices())
	}
}

func TestInsetOfAConvexOutlineByItsLength(t *testing.T) {
	// Steiner: an outset of a convex outline has area A + L·d + π·d² (from memory).
	rnd := trial.Rand(t, 12)
	for range trial.Count(5000) {
		d := rnd.Float64() * 5
		o := window(t, Angle(rnd.Float64()*6)).Scale(0.5 + rnd.Float64())
		o = polygon(t, hull(o.Flatten(0.5))...)
		out, err := o.Inset(-d)
		require.NoError(t, err)
		require.Len(t, out, 1)
		require.InEpsilon(t, o.Area()+o.Length()*d+math.Pi*d*d, out[0].Area(), 1e-12, "d %v of %v", d, o.Vertices())
		back, err := out[0].Inset(d)
		require.NoError(t, err)
		require.Len(t, back, 1)
		require.InEpsilon(t, o.Area(), back[0].Area(), 1e-9, "d %v of %v", d, o.Vertices())
	}
}

// hull returns the corners that turn left in a walk round ps from its lowest.
func hull(ps []Point) []Point {
	low := 0
	for i, p := range ps {
		if p.Y < ps[low].Y {
			low = i
		}
	}
	h := []Point{ps[low]}
	for {
		at, next := h[len(h)-1], ps[low]
		for _, p := range ps {
			side := next.Sub(at).Cross(p.Sub(at))
			if next == at || side < 0 {
				next = p
			}
		}
		if next == h[0] {
			return h
		}
		h = append(h, next)
	}
}

func TestInsetOfAnInset(t *testing.T) {
	rnd := trial.Rand(t, 13)
	for range trial.Count(5000) {
		o := window(t, Angle(rnd.Float64()*6))
		a, b := rnd.Float64()*6, rnd.Float64()*6
		once, err := o.Inset(a + b)
		require.NoError(t, err)
		first, err := o.Inset(a)
		require.NoError(t, err)
		require.Len(t, first, 1)
		twice, err := first[0].Inset(b)
		require.NoError(t, err)
		require.Len(t, once, 1)
		require.Len(t, twice, 1)
		require.InEpsilon(t, once[0].Area(), twice[0].Area(), 1e-9, "%v then %v", a, b)
	}
}

func TestInsetsThatCannotBe(t *testing.T) {
	for _, d := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		_, err := rectangle(t, 10, 6).Inset(d)
		require.Error(t, err)
	}
	_, err := Outline{}.Inset(1)
	require.Error(t, err)
}

func TestPinchOut(t *testing.T) {
	dumbbell := polygon(t, Point{0, 0}, Point{10, 0}, Point{10, 4}, Point{20, 4}, Point{20, 0}, Point{30, 0},
		Point{30, 10}, Point{20, 10}, Point{20, 6}, Point{10, 6}, Point{10, 10}, Point{0, 10})
	hyperbolic := made(t, []Vertex{{Point: Point{0, 0}, Bulge: -0.2}, {Point: Point{10, 0}}, {Point: Point{10, 10}, Bulge: -0.3}, {Point: Point{0, 10}}})
	triangle := polygon(t, Point{0, 0}, Point{4, 0}, Point{0, 3})
	cases := []struct {
		name        string
		o           Outline
		limit, want float64
	}{
		{"a slot between two rooms", dumbbell, 9, 1},
		{"rectangle", rectangle(t, 10, 6), 9, 3},
		{"a limit before", rectangle(t, 10, 6), 2, 2},
		{"disc", disc(t, Point{1, 2}, 5), 9, 5},
		{"3-4-5 triangle by its incircle", triangle, 9, 1},
		{"between two arcs", hyperbolic, 9, (10 - 1 - 1.5) / 2},
		{"nothing", Outline{}, 9, 0},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			require.InDelta(t, c.want, c.o.PinchOut(c.limit), 1e-8)
			require.InDelta(t, c.want, c.o.Reverse().PinchOut(c.limit), 1e-8)
		})
	}
}

func TestPinchOutIsWhereInsetsStopBeingOne(t *testing.T) {
	rnd := trial.Rand(t, 14)
	for n := range trial.Count(2000) {
		o := starry(t, rnd)
		d := o.PinchOut(o.Bounds().Width())
		for _, share := range []float64{0.2, 0.6, 0.9, 0.9999} {
			in, err := o.Inset(d * share)
			require.NoError(t, err)
			require.Len(t, in, 1, "case %d, share %v of %v of %v", n, share, d, o.Vertices())
		}
		in, err := o.Inset(d + 1.5e-7) // the lesser part may be gone soon after
		require.NoError(t, err)
		require.NotEqual(t, 1, len(in), "case %d, %v of %v", n, d, o.Vertices())
	}
}
