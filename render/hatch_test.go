package render

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
)

func circle(t require.TestingT, x, y, r float64) geometry.Outline {
	o, err := geometry.Circle(geometry.Point{X: x, Y: y}, r, "")
	require.NoError(t, err)
	return o
}

func polygon(t require.TestingT, points ...geometry.Point) geometry.Outline {
	vertices := make([]geometry.Vertex, len(points))
	for i, p := range points {
		vertices[i] = geometry.Vertex{Point: p}
	}
	o, err := geometry.NewOutline(vertices)
	require.NoError(t, err)
	return o
}

// The lines' length times their distance approaches the area, and for a ring of
// two circles that is π(R²−r²).
func TestHatchFillsARing(t *testing.T) {
	ring := []geometry.Outline{circle(t, 3, -2, 10), circle(t, 3, -2, 4)}
	for _, angle := range []geometry.Angle{0, 0.3, math.Pi / 4, math.Pi / 2, -1} {
		total := 0.0
		for _, l := range Hatch(ring, 0.01, angle) {
			total += l.From.Dist(l.To) * 0.01
		}
		require.InDelta(t, math.Pi*(100-16), total, 0.01)
	}
}

// A row exactly through corners, and one along an edge or touching a circle, is
// neither lost nor doubled.
func TestHatchThroughCorners(t *testing.T) {
	p := func(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }
	for _, row := range []struct {
		name     string
		outlines []geometry.Outline
		lines    []geometry.Line
	}{
		{
			"diamond",
			[]geometry.Outline{polygon(t, p(2, 0), p(0, 2), p(-2, 0), p(0, -2))},
			[]geometry.Line{{From: p(-1, -1), To: p(1, -1)}, {From: p(-2, 0), To: p(2, 0)}, {From: p(-1, 1), To: p(1, 1)}},
		},
		{
			"square on the rows",
			[]geometry.Outline{polygon(t, p(0, 0), p(3, 0), p(3, 2), p(0, 2))},
			[]geometry.Line{{From: p(0, 0), To: p(3, 0)}, {From: p(0, 1), To: p(3, 1)}},
		},
		{
			"circle that touches rows",
			[]geometry.Outline{circle(t, 0, 0, 1)},
			[]geometry.Line{{From: p(-1, 0), To: p(1, 0)}},
		},
	} {
		t.Run(row.name, func(t *testing.T) {
			got := Hatch(row.outlines, 1, 0)
			require.Len(t, got, len(row.lines))
			for i, want := range row.lines {
				require.InDelta(t, 0, want.From.Dist(got[i].From)+want.To.Dist(got[i].To), 1e-12)
			}
		})
	}
}

func TestHatchOfNothing(t *testing.T) {
	for _, spacing := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		require.Empty(t, Hatch([]geometry.Outline{circle(t, 0, 0, 5)}, spacing, 0))
	}
	require.Empty(t, Hatch(nil, 1, 0))
	require.Empty(t, Hatch([]geometry.Outline{circle(t, 0, 0, 5)}, 1e-6, 0))
}

// For any star-shaped outline with arcs, ends of hatch lines lie on the outline's
// circles and lines, and the middle of each line lies inside a dense polygon of it.
func TestHatchLinesLieInside(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 12).Draw(t, "corners")
		vertices := make([]geometry.Vertex, n)
		for i := range vertices {
			r := rapid.Float64Range(5, 20).Draw(t, "radius")
			at := geometry.Angle(2 * math.Pi * float64(i) / float64(n))
			vertices[i] = geometry.Vertex{Point: geometry.Polar(r, at), Bulge: float64(rapid.IntRange(-100, 100).Draw(t, "bulge")) / 1000}
		}
		o, err := geometry.NewOutline(vertices)
		require.NoError(t, err)
		angle := geometry.Angle(rapid.Float64Range(-4, 4).Draw(t, "angle"))
		dense := densePolygon(o)
		for _, l := range Hatch([]geometry.Outline{o}, 0.7, angle) {
			if l.From.Dist(l.To) < 0.05 {
				continue
			}
			require.True(t, insidePolygon(dense, l.From.Toward(l.To, 0.5)))
			require.False(t, insidePolygon(dense, l.From.Toward(l.To, -0.01/l.From.Dist(l.To))))
		}
	})
}

func densePolygon(o geometry.Outline) (points []geometry.Point) {
	for i := range o.Len() {
		s := o.Segment(i)
		arc, ok := s.Arc()
		for k := range 200 {
			if share := float64(k) / 200; ok {
				points = append(points, arc.At(share))
			} else {
				points = append(points, s.From.Toward(s.To, share))
			}
		}
	}
	return points
}

// insidePolygon counts how often the polygon winds round the point.
func insidePolygon(polygon []geometry.Point, p geometry.Point) bool {
	turn := 0.0
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		turn += math.Atan2(a.Sub(p).Cross(b.Sub(p)), a.Sub(p).Dot(b.Sub(p)))
	}
	return math.Abs(turn) > math.Pi
}

// An arc so flat that its circle is beyond measure is hatched as its chord.
func TestHatchOfAnAlmostStraightArc(t *testing.T) {
	p := func(x, y, bulge float64) geometry.Vertex {
		return geometry.Vertex{Point: geometry.Point{X: x, Y: y}, Bulge: bulge}
	}
	o, err := geometry.NewOutline([]geometry.Vertex{p(0, 0, 7e-15), p(10, 0.3, 0), p(10, 10, -3e-12), p(0, 10, 1e-9)})
	require.NoError(t, err)
	lines := Hatch([]geometry.Outline{o}, 1, 0.4)
	require.NotEmpty(t, lines)
	for _, l := range lines {
		for _, end := range []geometry.Point{l.From, l.To} {
			floor := end.Y - 0.03*end.X
			require.InDelta(t, 0, min(math.Abs(floor), math.Abs(end.X), math.Abs(end.X-10), math.Abs(end.Y-10)), 1e-6)
		}
	}
}
