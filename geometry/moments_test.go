package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// green returns area, first moments over area and polar moment of a polygon by
// Green's theorem.
func green(ps []Point) (area float64, centroid Point, polar float64) {
	for i, p := range ps {
		q := ps[(i+1)%len(ps)]
		c := p.Cross(q)
		area += c / 2
		centroid = centroid.Add(p.Add(q).Times(c / 6))
		polar += c * (p.Dot(p) + p.Dot(q) + q.Dot(q)) / 12
	}
	return area, centroid.Times(1 / area), polar
}

func TestMomentsAgainstADensePolygon(t *testing.T) {
	rnd := trial.Rand(t, 1)
	for n := range trial.Count(2500) {
		o := starry(t, rnd).Move(Point{rnd.Float64() * 50, rnd.Float64() * 50})
		size := o.Bounds().Width()
		area, centroid, polar := green(o.Flatten(size * 1e-8))
		far := math.Pow(o.Bounds().Max.Norm()+size, 2)
		slack := o.Length() * size * 1e-8
		require.InDelta(t, area, o.Area(), slack, "case %d: %v", n, o.Vertices())
		require.InDelta(t, 0, centroid.Dist(o.Centroid()), slack/area*size, "case %d: %v", n, o.Vertices())
		require.InDelta(t, polar, o.PolarMoment(), slack*far, "case %d: %v", n, o.Vertices())
	}
}

func TestMomentsOfDiscAndAnnulus(t *testing.T) {
	// OpenStax, University Physics volume 1, section 10.5: a disc of mass m has
	// m·r²/2 about its axis, an annulus m·(R₁² + R₂²)/2. Here m is the area.
	for _, r := range []float64{0.3, 7, 1000} {
		o, hole := disc(t, Point{}, r), disc(t, Point{}, 0.4*r)
		m := math.Pi * r * r
		require.InEpsilon(t, m, o.Area(), 1e-14)
		require.InEpsilon(t, m*r*r/2, o.PolarMoment(), 1e-14)
		ring := o.Area() - hole.Area()
		require.InEpsilon(t, ring*(r*r+0.16*r*r)/2, o.PolarMoment()-hole.PolarMoment(), 1e-13)
	}
}

func TestMomentsByTheParallelAxis(t *testing.T) {
	o := disc(t, Point{3, 4}, 2)
	require.InDelta(t, 0, o.Centroid().Dist(Point{3, 4}), 1e-14)
	require.InEpsilon(t, 4*math.Pi*(2+25), o.PolarMoment(), 1e-14)
	require.InEpsilon(t, -4*math.Pi*(2+25), o.Reverse().PolarMoment(), 1e-14)
	require.InDelta(t, 0, o.Reverse().Centroid().Dist(Point{3, 4}), 1e-14)
	require.Equal(t, Point{}, Outline{}.Centroid())
}

func TestTurningMovingMirroringAndScaling(t *testing.T) {
	rnd := trial.Rand(t, 2)
	for range trial.Count(2500) {
		o := starry(t, rnd)
		a, k, d := Angle(rnd.Float64()*7), 0.1+rnd.Float64()*3, Point{rnd.Float64() * 9, rnd.Float64() * 9}
		say := []any{"turn %v scale %v move %v of %v", a, k, d, o.Vertices()}
		area, polar, length, c := o.Area(), o.PolarMoment(), o.Length(), o.Centroid()
		require.InEpsilon(t, area, o.Rotate(a).Area(), 1e-11, say...)
		require.InEpsilon(t, polar, o.Rotate(a).PolarMoment(), 1e-11, say...)
		require.InEpsilon(t, length, o.Rotate(a).Length(), 1e-11, say...)
		require.InDelta(t, 0, c.Rotate(a).Dist(o.Rotate(a).Centroid()), 1e-9, say...)
		require.InEpsilon(t, -area, o.Mirror().Area(), 1e-11, say...)
		require.InDelta(t, 0, c.Mirror().Dist(o.Mirror().Centroid()), 1e-9, say...)
		require.InEpsilon(t, -area, o.Reverse().Area(), 1e-11, say...)
		require.InEpsilon(t, area*k*k, o.Scale(k).Area(), 1e-11, say...)
		require.InEpsilon(t, polar*k*k*k*k, o.Scale(k).PolarMoment(), 1e-11, say...)
		require.InEpsilon(t, length*k, o.Scale(k).Length(), 1e-11, say...)
		require.InEpsilon(t, polar+area*(d.Dot(d)+2*d.Dot(c)), o.Move(d).PolarMoment(), 1e-9, say...)
	}
}
