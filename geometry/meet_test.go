package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestMeet(t *testing.T) {
	line := func(x1, y1, x2, y2 float64) Segment { return Segment{From: Point{x1, y1}, To: Point{x2, y2}} }
	arc := func(x1, y1, x2, y2, b float64) Segment {
		return Segment{From: Point{x1, y1}, To: Point{x2, y2}, Bulge: b}
	}
	quarter := math.Tan(math.Pi / 8)
	upper := arc(5, 0, -5, 0, 1)
	cases := []struct {
		name string
		a, b Segment
		want []Point
	}{
		{"lines cross", line(0, 0, 10, 10), line(0, 10, 10, 0), []Point{{5, 5}}},
		{"lines at an end", line(0, 0, 10, 0), line(10, 0, 10, 5), []Point{{10, 0}}},
		{"lines short of it", line(0, 0, 10, 0), line(5, 1e-6, 5, 8), nil},
		{"parallel lines", line(0, 0, 10, 0), line(0, 1, 10, 1), nil},
		{"lines along each other", line(0, 0, 10, 0), line(4, 0, 20, 0), []Point{{4, 0}, {10, 0}}},
		{"one line within the other", line(0, 0, 10, 0), line(7, 0, 4, 0), []Point{{4, 0}, {7, 0}}},
		{"lines end to end", line(0, 0, 10, 0), line(10, 0, 20, 0), []Point{{10, 0}}},
		{"lines in a row", line(0, 0, 10, 0), line(11, 0, 20, 0), nil},
		{"line through an arc", line(-9, 3, 9, 3), upper, []Point{{-4, 3}, {4, 3}}},
		{"line through one side", line(0, 3, 9, 3), upper, []Point{{4, 3}}},
		{"line below the arc", line(-9, -3, 9, -3), upper, nil},
		{"line touches an arc", line(-9, 5, 9, 5), upper, []Point{{0, 5}}},
		{"line passes an arc", line(-9, 5.000001, 9, 5.000001), upper, nil},
		{"arcs cross", upper, upper.Move(Point{6, 0}), []Point{{3, 4}}},
		{"arcs touch outside", upper, upper.Reverse().Move(Point{10, 0}), []Point{{5, 0}}},
		{"arcs touch inside", upper, arc(1, 4, -1, 4, 1), []Point{{0, 5}}},
		{"arcs about one centre", upper, upper.Scale(2), nil},
		{"arcs along each other", upper, arc(0, 5, 0, -5, 1), []Point{{0, 5}, {-5, 0}}},
		{"the two halves of a circle", upper, arc(-5, 0, 5, 0, 1), []Point{{5, 0}, {-5, 0}}},
		{"arcs end to end", arc(5, 0, 0, 5, quarter), arc(0, 5, -5, 0, quarter), []Point{{0, 5}}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			for _, turn := range []Angle{0, 1, 2.5} {
				a, b := c.a.Rotate(turn), c.b.Rotate(turn)
				ms := Meet(a, b)
				require.Len(t, ms, len(c.want), "turned by %v", turn)
				for i, m := range ms {
					require.InDelta(t, 0, m.At.Dist(c.want[i].Rotate(turn)), 1e-9)
					require.InDelta(t, 0, m.At.Dist(a.At(m.S)), 1e-9)
					require.InDelta(t, 0, m.At.Dist(b.At(m.T)), 1e-9)
				}
				require.Len(t, Meet(b, a), len(c.want))
				require.Len(t, Meet(a.Reverse(), b), len(c.want))
			}
		})
	}
}

func TestCirclesAndLinesCountTheirMeetings(t *testing.T) {
	_, n := LineCircle(Point{0, 1}, Point{}, Point{}, 5)
	require.Zero(t, n)
	_, n = CircleCircle(Point{}, 5, Point{}, 5)
	require.Zero(t, n)
	_, n = CircleCircle(Point{}, 5, Point{11, 0}, 5)
	require.Zero(t, n)
	_, n = CircleCircle(Point{}, 5, Point{1, 0}, 3)
	require.Zero(t, n)
	pts, n := CircleCircle(Point{}, 7000, Point{7000, 0}, 1)
	require.Equal(t, 2, n)
	for _, p := range pts {
		require.InDelta(t, 7000, p.Norm(), 1e-11)
		require.InDelta(t, 1, p.Dist(Point{7000, 0}), 1e-11)
	}
	require.Negative(t, pts[0].Y)
}

func TestDistanceOfOutlines(t *testing.T) {
	rnd := trial.Rand(t, 4)
	apart := 0
	for n := range trial.Count(5000) {
		o := starry(t, rnd)
		size := o.Bounds().Width()
		q := starry(t, rnd).Move(Polar(size*(0.5+2*rnd.Float64()), Angle(rnd.Float64()*7)))
		d, a, b := o.Distance(q)
		say := []any{"case %d: %v and %v", n, o.Vertices(), q.Vertices()}
		require.InDelta(t, d, a.Dist(b), 1e-9, say...)
		onO, _ := o.Nearest(a)
		onQ, _ := q.Nearest(b)
		require.InDelta(t, 0, a.Dist(onO), 1e-9, say...)
		require.InDelta(t, 0, b.Dist(onQ), 1e-9, say...)
		least := math.Inf(1)
		for _, p := range o.Flatten(size * 1e-5) {
			on, _ := q.Nearest(p)
			least = math.Min(least, p.Dist(on))
		}
		require.LessOrEqual(t, d, least+1e-9, say...)
		if d > 0 {
			apart++
			require.LessOrEqual(t, least-d, size*0.5, say...)
		}
		back, _, _ := q.Distance(o)
		require.InDelta(t, d, back, 1e-9, say...)
	}
	require.Positive(t, apart)
}

func TestSimple(t *testing.T) {
	require.True(t, Outline{}.Simple())
	require.True(t, rectangle(t, 3, 4).Simple())
	require.True(t, disc(t, Point{1, 1}, 4).Simple())
	bow := polygon(t, Point{0, 0}, Point{10, 10}, Point{10, 0}, Point{0, 10})
	at, crosses := bow.SelfCrossing()
	require.True(t, crosses)
	require.InDelta(t, 0, at.Dist(Point{5, 5}), 1e-9)
	require.False(t, polygon(t, Point{0, 0}, Point{10, 0}, Point{5, 0}, Point{5, 5}).Simple(), "folded back")
	require.False(t, polygon(t, Point{0, 0}, Point{10, 0}, Point{10, 10}, Point{5, 0}, Point{0, 10}).Simple(), "touches")
	require.False(t, made(t, []Vertex{{Point: Point{0, 0}}, {Point: Point{4, 0}, Bulge: 1.5}, {Point: Point{4, 4}}, {Point: Point{9, 2}}}).Simple())
	require.True(t, toothed(t, 60).Simple())
}
