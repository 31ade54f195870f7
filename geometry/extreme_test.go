package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// flat are bulges of arcs that lie within a picometre of their chords.
var flat = []float64{5e-324, 1e-310, 1e-160, 1e-21, 1e-20, 1.1e-20, 1e-19, 1e-17, 1e-16, 1e-15, 1e-14}

// An outline whose sides are all but straight is inset as the straight one is, to
// 1e-9 mm.
func TestInsetOfOutlinesThatAreAllButStraight(t *testing.T) {
	rnd := trial.Rand(t, 16)
	for n := range trial.Count(5000) {
		vs := make([]Vertex, 3+rnd.IntN(8))
		for i := range vs {
			vs[i].Point = Polar(10*(0.4+0.6*rnd.Float64()), Angle((float64(i)+0.7*rnd.Float64())/float64(len(vs)))*FullTurn)
		}
		straight := made(t, vs)
		for i := range vs {
			vs[i].Bulge = flat[rnd.IntN(len(flat))] * float64(1-2*rnd.IntN(2))
		}
		o := made(t, vs)
		for _, d := range []float64{1e-310, -1e-310, 1e-12, -1e-12, 0.1, -0.1, 2, -2} {
			say := []any{"case %d, d %v of %v", n, d, vs}
			want, err := straight.Inset(d)
			require.NoError(t, err, say...)
			in, err := o.Inset(d)
			require.NoError(t, err, say...)
			require.Len(t, in, len(want), say...)
			for i := range in {
				require.InDelta(t, want[i].Area(), in[i].Area(), 1e-8, say...)
			}
			requireNothingLost(t, straight, in, d)
		}
	}
}

// The nearest point of an arc is found as exactly however far its centre lies.
func TestNearestOfFlatArcs(t *testing.T) {
	for _, bulge := range append([]float64{1e-3, 1e-6, 1e-9, 1e-12, 1e-13}, flat...) {
		s := Segment{From: Point{-10, 3}, To: Point{90, 3}, Bulge: bulge}
		for _, x := range []float64{-10, 0, 15, 40, 77, 90} {
			share := (x + 10) / 100
			rise := 50 * bulge * 4 * share * (1 - share)
			on, at := s.Nearest(Point{x, 3 - rise}) // the arc itself, but for its fourth powers
			require.InDelta(t, 0, on.Dist(Point{x, 3 - rise}), 1e-13+50*bulge*bulge*bulge, "%g", bulge)
			require.InDelta(t, share, at, 1e-14+bulge*bulge, "%g", bulge)
			require.InDelta(t, 7+rise, s.Dist(Point{x, 10}), 1e-13+50*bulge*bulge, "%g", bulge)
		}
	}
}

// What is asked of an outline with flat arcs, level and turned, comes out as of the
// straight one but for what the arcs rise.
func TestFlatArcsAreAsGoodAsLines(t *testing.T) {
	round := Segment{From: Point{3, 12}, To: Point{7, 12}, Bulge: 1}
	for _, bulge := range append([]float64{1e-8, 1e-9, 1e-10, 1e-11, 1e-12, 1e-13}, flat...) {
		slack := 1e-13 + 20*bulge
		for k := range 24 {
			turn := Angle(k) * FullTurn / 12
			if k >= 12 {
				turn += 0.2
			}
			bowl := func(b float64) Outline {
				o := made(t, []Vertex{{Point{0, 0}, b, ""}, {Point{10, 0}, -b, ""}, {Point{12, 7}, b, ""}, {Point{-1, 6}, 0, ""}})
				return o.Rotate(turn)
			}
			o, straight := bowl(bulge), bowl(0)
			say := []any{"bulge %g turned by %v", bulge, turn}
			require.InDelta(t, 0, o.Bounds().Min.Dist(straight.Bounds().Min), slack, say...)
			require.InDelta(t, 0, o.Bounds().Max.Dist(straight.Bounds().Max), slack, say...)
			require.InDelta(t, straight.PinchOut(20), o.PinchOut(20), 2e-8+slack, say...)
			for corner := range 4 {
				rounded, err := o.Round(corner, 0.7, "")
				require.NoError(t, err, say...)
				want, err := straight.Round(corner, 0.7, "")
				require.NoError(t, err, say...)
				for i, v := range want.Vertices() {
					require.InDelta(t, 0, rounded.Vertex(i).Dist(v.Point), slack, say...)
				}
			}
			other := round.Rotate(turn)
			for i := range 4 {
				d, _, _ := o.Segment(i).Distance(other)
				back, _, _ := other.Distance(o.Segment(i))
				want, _, _ := straight.Segment(i).Distance(other)
				require.InDelta(t, want, d, slack, say...)
				require.InDelta(t, want, back, slack, say...)
			}
		}
	}
}

// An outset as large as the world, and an arc of which it is part, are refused; and
// whatever is made of small numbers and large is made of numbers.
func TestWhatIsBeyondAllBounds(t *testing.T) {
	for _, d := range []float64{1e5, -1e5, 1e300, -1e300, math.MaxFloat64} {
		_, err := rectangle(t, 10, 6).Inset(d)
		require.Error(t, err, "%g", d)
	}
	for _, bulge := range []float64{1e5, -1e9, 1e16} {
		_, err := made(t, []Vertex{{Point: Point{0, 0}, Bulge: bulge}, {Point: Point{4, 0}}}).Inset(0.1)
		require.Error(t, err, "%g", bulge)
	}
	for _, far := range []float64{1e60, -1e300, math.MaxFloat64, math.Inf(1), math.NaN()} {
		_, err := NewOutline([]Vertex{{Point: Point{0, 0}}, {Point: Point{far, 0}}, {Point: Point{0, 1}}})
		require.Error(t, err, "%g", far)
		_, err = NewChain([]Vertex{{Point: Point{0, 0}}, {Point: Point{0, far}}})
		require.Error(t, err, "%g", far)
		_, err = Circle(Point{far, 0}, 1, "")
		require.Error(t, err, "%g", far)
		_, err = Circle(Point{}, far, "")
		require.Error(t, err, "%g", far)
	}
	_, err := Circle(Point{10, 10}, 1e-20, "")
	require.Error(t, err, "its ends are one point")
}

func TestFiguresOfSmallAndLargeCircles(t *testing.T) {
	for _, r := range []float64{1e-310, 1e-160, 1e-9, 1, 1e9, 1e49} {
		o := disc(t, Point{}, r)
		c := o.Centroid()
		for _, v := range []float64{o.Area(), o.Length(), o.PolarMoment(), o.Bounds().Width(), c.X, c.Y, o.Margin(Point{})} {
			require.True(t, finite(v), "%g", r)
		}
		require.InDelta(t, 0, c.Norm(), r*1e-15)
		require.InEpsilon(t, 2*math.Pi*r, o.Length(), 1e-12)
		require.True(t, o.Contains(Point{}) || r < 1e-150, "%g", r)
	}
}
