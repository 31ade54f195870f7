package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestBoundsContainsAndNearestAgainstADensePolygon(t *testing.T) {
	rnd := trial.Rand(t, 5)
	for n := range trial.Count(5000) {
		o := starry(t, rnd)
		size := o.Bounds().Width()
		ps := o.Flatten(size * 1e-6)
		dense := polygon(t, ps...)
		b, want := o.Bounds(), dense.Bounds()
		say := []any{"case %d: %v", n, o.Vertices()}
		require.InDelta(t, 0, b.Min.Dist(want.Min), size*3e-6, say...)
		require.InDelta(t, 0, b.Max.Dist(want.Max), size*3e-6, say...)
		require.InDelta(t, dense.Length(), o.Length(), o.Length()*1e-5, say...)
		for range 20 {
			p := Point{b.Min.X + rnd.Float64()*size, b.Min.Y + rnd.Float64()*b.Height()}
			on, i := o.Nearest(p)
			d := p.Dist(on)
			require.InDelta(t, 0, o.Segment(i).Dist(on), 1e-9, say...)
			theirs, _ := dense.Nearest(p)
			require.InDelta(t, p.Dist(theirs), d, size*2e-6, say...)
			if d > size*1e-5 {
				require.Equal(t, dense.Contains(p), o.Contains(p), say...)
			}
		}
	}
}

func TestContainsOnTheLevelOfVerticesAndChords(t *testing.T) {
	o := disc(t, Point{}, 5) // its chords lie along y = 0
	for _, x := range []float64{-4.999, -1, 0, 3, 4.999} {
		require.True(t, o.Contains(Point{x, 0}), "x %v", x)
		require.True(t, o.Reverse().Contains(Point{x, 0}), "x %v", x)
	}
	require.False(t, o.Contains(Point{5.001, 0}))
	require.False(t, o.Contains(Point{-5.001, 0}))
	turned := o.Rotate(math.Pi / 2) // and along x = 0
	require.True(t, turned.Contains(Point{0, 1}))
	require.True(t, turned.Contains(Point{1e-12, -2}))
	require.False(t, turned.Contains(Point{0, 6}))
	kite := polygon(t, Point{0, -3}, Point{4, 0}, Point{0, 3}, Point{-4, 0})
	require.True(t, kite.Contains(Point{0, 0}))
	require.False(t, kite.Contains(Point{-5, 0}))
	require.False(t, kite.Contains(Point{5, 0}))
	require.Equal(t, -1, kite.Reverse().Winding(Point{1, 0}))
}

func TestWindingByATreeIsWinding(t *testing.T) {
	rnd := trial.Rand(t, 15)
	for n := range trial.Count(5000) {
		o := starry(t, rnd)
		if n%2 == 0 { // one that crosses itself, some corners level with each other
			vs := make([]Vertex, 3+rnd.IntN(30))
			for i := range vs {
				vs[i] = Vertex{Point: Point{float64(2*rnd.IntN(9) + i%2), float64(rnd.IntN(9))}, Bulge: float64(rnd.IntN(5)-2) * 0.4}
			}
			vs[len(vs)-1].X += 0.5
			o = made(t, vs)
		}
		source, b := newTree(o.curves()), o.Bounds()
		for k := range 40 {
			p := Point{b.Min.X + (1.2*rnd.Float64()-0.1)*b.Width(), b.Min.Y + (1.2*rnd.Float64()-0.1)*b.Height()}
			if k%4 == 0 {
				p.Y = o.Vertex(k).Y
			}
			if on, _ := o.Nearest(p); on.Dist(p) > 1e-9 {
				require.Equal(t, o.Winding(p), source.winding(p), "case %d: %v in %v", n, p, o.Vertices())
			}
		}
	}
	require.Zero(t, newTree(nil).winding(Point{}))
}

func TestAlongASegment(t *testing.T) {
	s := Segment{From: Point{5, 0}, To: Point{0, 5}, Bulge: math.Tan(math.Pi / 8), Quantity: "land"}
	require.InDelta(t, 0, s.At(0.5).Dist(Polar(5, math.Pi/4)), 1e-12)
	require.InDelta(t, 0, s.Tangent(0).Dist(Point{0, 1}), 1e-12)
	require.InDelta(t, 0, s.Reverse().Tangent(1).Dist(Point{0, -1}), 1e-12)
	part := s.Part(0.25, 0.75)
	require.InDelta(t, s.Length()/2, part.Length(), 1e-12)
	require.InDelta(t, 0, part.At(0.5).Dist(s.At(0.5)), 1e-12)
	require.Equal(t, Quantity("land"), part.Quantity)
	on, share := s.Nearest(Point{-3, -1})
	require.Equal(t, s.To, on)
	require.Equal(t, 1.0, share)
	require.Equal(t, Box{Point{-5, -3}, Point{5, 5}}, Segment{From: Point{4, -3}, To: Point{-4, -3}, Bulge: 2}.Bounds())
}

// How far a point lies inside is the least of its distances from a rectangle's sides,
// and from a disc's edge the radius less its own.
func TestMarginIsTheDistanceInside(t *testing.T) {
	r := trial.Rand(t, 93)
	box, round := rectangle(t, 10, 6), disc(t, Point{1, 2}, 5)
	for range trial.Count(5_000) {
		p := Point{12*r.Float64() - 1, 8*r.Float64() - 1}
		inside := math.Min(math.Min(p.X, 10-p.X), math.Min(p.Y, 6-p.Y))
		if inside < 0 {
			out := Point{math.Max(math.Max(-p.X, p.X-10), 0), math.Max(math.Max(-p.Y, p.Y-6), 0)}
			inside = -out.Norm()
		}
		require.InDelta(t, inside, box.Margin(p), 1e-9, "%v", p)
		require.InDelta(t, inside, box.Reverse().Margin(p), 1e-9, "%v", p)
		require.InDelta(t, 5-p.Dist(Point{1, 2}), round.Margin(p), 1e-9, "%v", p)
	}
}

// A point along an arc is on it however flat the arc is: with t of the length behind
// it, it stands off the chord by the parabola's 4t(1−t) of the rise, which an arc of
// so little turn is to far less than a nanometre.
func TestPlacesAlongFlatArcs(t *testing.T) {
	for _, bulge := range []float64{1e-5, -1e-7, 1e-9, 1e-14, -1e-60, 1e-200, 5e-324} {
		s := Segment{From: Point{X: 10, Y: 10}, To: Point{X: 210, Y: 10}, Bulge: bulge}
		for _, share := range []float64{0, 0.25, 0.5, 0.9, 1} {
			at := s.At(share)
			require.InDelta(t, 10+200*share, at.X, 1e-6, "bulge %g", bulge)
			require.InDelta(t, 10-100*bulge*4*share*(1-share), at.Y, 1e-9, "bulge %g", bulge)
		}
	}
}
