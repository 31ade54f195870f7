package depthing

import (
	"math"

	"tipline/geometry"
)

// sameTooth is how far, in mm, the teeth of one wheel may differ: what files are
// written to.
const sameTooth = 1e-3

// deepest returns the segment of the first tooth that comes nearest the centre,
// the share along it where, and the distance.
func deepest(o geometry.Outline, each int) (at int, share, floor float64) {
	floor = math.Inf(1)
	for i := range each {
		s := o.Segment(i)
		p, t := s.Nearest(geometry.Point{})
		r := p.Norm()
		if a, ok := s.Arc(); ok && a.Centre.Norm() <= sameTooth {
			t = 0.5 // concentric: anywhere is nearest
		}
		if r < floor {
			at, share, floor = i, t, r
		}
	}
	return at, share, floor
}

// pitchFrom returns one pitch of the outline from a share of the way along a
// segment.
func pitchFrom(o geometry.Outline, at, each int, share float64) (geometry.Chain, error) {
	var vertices []geometry.Vertex
	add := func(s geometry.Segment) {
		if s.From.Dist(s.To) > onPiece {
			vertices = append(vertices, geometry.Vertex{Point: s.From, Bulge: s.Bulge, Quantity: s.Quantity})
		}
	}
	last := o.Segment(at + each)
	add(o.Segment(at).Part(share, 1))
	for i := at + 1; i < at+each; i++ {
		add(o.Segment(i))
	}
	add(last.Part(0, share))
	return geometry.NewChain(append(vertices, geometry.Vertex{Point: last.At(share)}))
}

// topmost returns the tooth turned by whole pitches so that its middle is nearest
// 12 o'clock.
func topmost(tooth geometry.Chain, count int) geometry.Chain {
	from := tooth.Vertex(0).Direction()
	pitch := geometry.FullTurn / geometry.Angle(count)
	away := from + pitch/2 - geometry.Clock(0)
	return tooth.Rotate(-pitch * geometry.Angle(math.Round(float64(away/pitch))))
}

// radii returns the least and greatest distance of a segment from the origin.
func radii(s geometry.Segment) (near, far float64) {
	p, _ := s.Nearest(geometry.Point{})
	near, far = p.Norm(), math.Max(s.From.Norm(), s.To.Norm())
	a, ok := s.Arc()
	if d := a.Centre.Norm(); ok && d > 0 {
		top := a.Centre.Times(1 + a.Radius/d)
		if q, _ := s.Nearest(top); q.Dist(top) < onPiece {
			far = d + a.Radius
		}
	}
	return near, far
}
