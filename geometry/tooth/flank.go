package tooth

import (
	"math"

	"tipline/geometry"
)

// flankSamples is at how many places the distance of a pair of arcs from the
// curve is measured. Between two of them the greatest distance, which lies midway
// along a hump at least a quarter of the pair long, is missed by less than 2 %.
const flankSamples = 48

// flank is the curve from one place to another as pairs of arcs, each pair
// tangent to the curve at both ends and to itself in its middle.
type flank struct {
	vertices []geometry.Vertex // outwards; the last one's bulge means nothing
	off      float64           // greatest distance of arcs and curve, mm
}

// fitted returns the part of the curve between two places, beyond its cusp, as
// the fewest pairs of arcs that lie within geometry.FitTolerance of it.
func (r rolling) fitted(from, to float64) flank {
	for n := 1; ; {
		f := r.inPairs(from, to, n)
		if f.off <= geometry.FitTolerance {
			return f
		}
		// A pair's distance from the curve shrinks with the cube of its length.
		n = max(n+1, int(float64(n)*math.Cbrt(f.off/geometry.FitTolerance)))
	}
}

// inPairs cuts the part into n equal turns of the pinion, which come out alike:
// the curve's curvature changes by nearly the same share of its cube in each.
func (r rolling) inPairs(from, to float64, n int) flank {
	f := flank{vertices: make([]geometry.Vertex, 0, 2*n+1)}
	for i := range n {
		a := from + (to-from)*float64(i)/float64(n)
		b := from + (to-from)*float64(i+1)/float64(n)
		first, second := geometry.TwoArcs(r.at(a), r.way(a), r.at(b), r.way(b))
		f.vertices = append(f.vertices,
			geometry.Vertex{Point: first.From, Bulge: first.Bulge}, geometry.Vertex{Point: second.From, Bulge: second.Bulge})
		f.off = math.Max(f.off, r.off(first, second, a, b))
	}
	f.vertices = append(f.vertices, geometry.Vertex{Point: r.at(to)})
	return f
}

// off returns the greatest distance of the curve between a and b from its pair of
// arcs.
func (r rolling) off(first, second geometry.Segment, a, b float64) float64 {
	most := 0.0
	joint := first.To
	toward := second.To.Sub(first.From)
	one, two := roundOf(first), roundOf(second)
	for i := 1; i < flankSamples; i++ {
		p := r.at(a + (b-a)*float64(i)/flankSamples)
		if p.Sub(joint).Dot(toward) < 0 {
			most = math.Max(most, one(p))
		} else {
			most = math.Max(most, two(p))
		}
	}
	return most
}

// roundOf returns how far a point beside a segment lies from it.
func roundOf(s geometry.Segment) func(geometry.Point) float64 {
	if a, ok := s.Arc(); ok {
		return func(p geometry.Point) float64 { return math.Abs(p.Dist(a.Centre) - a.Radius) }
	}
	way := s.To.Sub(s.From)
	way = way.Times(1 / way.Norm())
	return func(p geometry.Point) float64 { return math.Abs(way.Cross(p.Sub(s.From))) }
}
