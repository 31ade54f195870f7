package svg

import (
	"math"
	"regexp"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
	"tipline/render"
)

var pathWord = regexp.MustCompile(`[A-Za-z]|-?[0-9]*\.?[0-9]+`)

// readPath reads a path of M, L, A and Z back into the drawing's coordinates, y
// up, one list of segments for each M.
func readPath(t require.TestingT, data string) (paths [][]geometry.Segment, closed []bool) {
	words := pathWord.FindAllString(data, -1)
	var at geometry.Point
	for i := 0; i < len(words); {
		letter := words[i]
		var v []float64
		for i++; i < len(words) && !(words[i][0] >= 'A' && words[i][0] <= 'Z'); i++ {
			f, err := strconv.ParseFloat(words[i], 64)
			require.NoError(t, err)
			v = append(v, f)
		}
		last := len(paths) - 1
		switch letter {
		case "M":
			require.Len(t, v, 2)
			at = point(v[0], -v[1])
			paths, closed = append(paths, nil), append(closed, false)
		case "L":
			require.Len(t, v, 2)
			to := point(v[0], -v[1])
			paths[last] = append(paths[last], geometry.Segment{From: at, To: to})
			at = to
		case "A":
			require.Len(t, v, 7)
			require.Equal(t, v[0], v[1])
			require.Zero(t, v[3], "no arc is longer than half a circle")
			to := point(v[5], -v[6])
			bulge := 0.0 // of an arc too small for its radius to be written
			if v[0] > 0 {
				bulge = math.Tan(math.Asin(min(1, at.Dist(to)/(2*v[0]))) / 2)
			}
			if v[4] == 1 {
				bulge = -bulge
			}
			paths[last] = append(paths[last], geometry.Segment{From: at, To: to, Bulge: bulge})
			at = to
		case "Z":
			closed[last] = true
		default:
			require.Fail(t, "unknown letter", letter)
		}
	}
	return paths, closed
}

// A full circle is one closed path of true arcs of 30°, within 1 µm.
func TestCircle(t *testing.T) {
	for _, radius := range []float64{0.25, 40, 500} {
		root := read(t, written(t, drawing(render.Item{
			Layer: render.LayerTeeth, Pen: render.Visible,
			Outlines: []geometry.Outline{circle(t, point(3, -2), radius)},
		})))
		data := root.all("path")
		require.Len(t, data, 1)
		paths, closed := readPath(t, data[0].attr("d"))
		require.Equal(t, []bool{true}, closed)
		require.Len(t, paths[0], 12)
		turned := 0.0
		for _, s := range paths[0] {
			arc, ok := s.Arc()
			require.True(t, ok)
			require.InDelta(t, radius, arc.Radius, 0.001)
			require.InDelta(t, 0, arc.Centre.Dist(point(3, -2)), 0.001)
			turned += float64(arc.Sweep)
		}
		require.InDelta(t, 2*math.Pi, turned, 1e-4)
	}
}

// Any outline of lines and arcs comes back to 1 µm: its corners, and the middle of
// each segment.
func TestOutlinesComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(3, 9).Draw(t, "corners")
		vertices := make([]geometry.Vertex, n)
		for i := range vertices {
			r := rapid.Float64Range(1, 150).Draw(t, "radius")
			bulge := float64(rapid.IntRange(-40, 40).Draw(t, "bulge")) / 20
			vertices[i] = geometry.Vertex{Point: geometry.Polar(r, geometry.Angle(2*math.Pi*float64(i)/float64(n))), Bulge: bulge}
		}
		o, err := geometry.NewOutline(vertices)
		require.NoError(t, err)
		root := read(t, written(t, drawing(render.Item{Layer: render.LayerForm, Pen: render.Visible, Outlines: []geometry.Outline{o}})))
		paths, closed := readPath(t, root.all("path")[0].attr("d"))
		require.Equal(t, []bool{true}, closed)
		pieces := paths[0]
		for i := range o.Len() {
			pieces = compareSegment(t, o.Segment(i), pieces)
		}
		require.Empty(t, pieces)
	})
}

// compareSegment checks the pieces that a segment was written as and returns the
// rest. The last line of an outline is not written.
func compareSegment(t require.TestingT, s geometry.Segment, pieces []geometry.Segment) []geometry.Segment {
	arc, curved := s.Arc()
	if !curved || render.Flat(s) {
		if len(pieces) == 0 {
			return nil
		}
		require.InDelta(t, 0, pieces[0].To.Dist(s.To), 0.001)
		return pieces[1:]
	}
	count := int(math.Ceil(math.Abs(float64(arc.Sweep))/(math.Pi/6) - 1e-9))
	require.GreaterOrEqual(t, len(pieces), count)
	for i, p := range pieces[:count] {
		middle := arc.At((float64(i) + 0.5) / float64(count))
		require.InDelta(t, 0, p.At(0.5).Dist(middle), 0.001)
		require.InDelta(t, 0, p.To.Dist(arc.At(float64(i+1)/float64(count))), 0.001)
	}
	return pieces[count:]
}
