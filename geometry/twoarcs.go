package geometry

import "math"

// FitTolerance is how far, in mm, arcs may lie from a curve they stand for: 1 µm, a
// tenth of what a bit can be ground to (common practice, no source).
const FitTolerance = 1e-3

// TwoArcs returns two arcs, tangent to each other, of which the first leaves from in
// the unit direction out and the second arrives at to in the unit direction in. Of
// all such pairs it is the one whose tangents from both ends to the joint are
// equally long: their length d is the root of
// 2d²(1 − out·in) + 2d·chord·(out + in) = chord² (plane geometry). The ends must lie
// apart, and out and in turn by less than half a turn together.
func TwoArcs(from, out, to, in Point) (first, second Segment) {
	chord := to.Sub(from)
	along, bend, square := chord.Dot(out.Add(in)), 2*(1-out.Dot(in)), chord.Dot(chord)
	d := square / (along + math.Sqrt(along*along+bend*square))
	joint := from.Toward(to, 0.5).Add(out.Sub(in).Times(d / 2))
	first = Segment{From: from, To: joint, Bulge: tangentBulge(out, joint.Sub(from))}
	second = Segment{From: joint, To: to, Bulge: -tangentBulge(in.Times(-1), joint.Sub(to))}
	return first, second
}

// tangentBulge returns the bulge of the arc that leaves in a unit direction and
// spans a chord: the chord turns half the sweep from it.
func tangentBulge(way, chord Point) float64 {
	return way.Cross(chord) / (chord.Norm() + way.Dot(chord))
}
