package cutter

import (
	"math"

	"tipline/geometry"
)

// fitTolerance is how far, in mm, the arcs of a squeezed form may lie from the
// ellipses they stand for: 1 µm, a tenth of what a bit can be ground to (common
// practice, no source).
const fitTolerance = 1e-3

// squeezed returns a segment with every y times a share, and how far at most what
// stands for it lies from it. A line stays one. An arc becomes part of an ellipse:
// pairs of arcs, tangent to each other and at their ends to the ellipse, halved
// until they lie within fitTolerance of it.
func squeezed(g geometry.Segment, share float64) ([]geometry.Segment, float64) {
	squeeze := func(p geometry.Point) geometry.Point { return geometry.Point{X: p.X, Y: p.Y * share} }
	a, round := g.Arc()
	if !round || share == 1 {
		g.From, g.To = squeeze(g.From), squeeze(g.To)
		return []geometry.Segment{g}, 0
	}
	e := ellipse{a, share}
	var list []geometry.Segment
	var off float64
	var fit func(from, to float64)
	fit = func(from, to float64) {
		first, second := e.pair(from, to)
		if o := e.off(first, second, from, to); o > fitTolerance {
			fit(from, (from+to)/2)
			fit((from+to)/2, to)
		} else {
			off = math.Max(off, o)
			list = append(list, first, second)
		}
	}
	fit(0, 1)
	for i := range list {
		list[i].Quantity = g.Quantity
	}
	list[0].From, list[len(list)-1].To = squeeze(g.From), squeeze(g.To)
	return list, off
}

// ellipse is an arc with every y times a share.
type ellipse struct {
	arc   geometry.Arc
	share float64
}

func (e ellipse) at(t float64) geometry.Point {
	p := e.arc.At(t)
	return geometry.Point{X: p.X, Y: p.Y * e.share}
}

// way returns the unit direction of travel.
func (e ellipse) way(t float64) geometry.Point {
	out := geometry.Polar(math.Copysign(1, float64(e.arc.Sweep)), e.arc.Start+geometry.Angle(t)*e.arc.Sweep).Left()
	out.Y *= e.share
	return out.Times(1 / out.Norm())
}

// pair returns two arcs that are tangent to each other and to the ellipse at both
// ends. Their tangents from the ends to the joint are equally long, which makes
// that length d the root of 2d²(1 − out·in) + 2d·chord·(out + in) = chord² (plane
// geometry).
func (e ellipse) pair(from, to float64) (first, second geometry.Segment) {
	start, end, out, in := e.at(from), e.at(to), e.way(from), e.way(to)
	chord := end.Sub(start)
	half, bend, square := chord.Dot(out.Add(in)), 2*(1-out.Dot(in)), chord.Dot(chord)
	d := square / (half + math.Sqrt(half*half+bend*square))
	joint := start.Add(out.Times(d)).Toward(end.Sub(in.Times(d)), 0.5)
	return leavingAlong(start, joint, out), leavingAlong(end, joint, in.Times(-1)).Reverse()
}

// leavingAlong returns the arc from one point to another that leaves in a unit
// direction; the chord turns by half its sweep from that.
func leavingAlong(from, to, way geometry.Point) geometry.Segment {
	chord := to.Sub(from)
	turn := math.Atan2(way.Cross(chord), way.Dot(chord))
	return geometry.Segment{From: from, To: to, Bulge: math.Tan(turn / 2)}
}

// fitPlaces is at how many places a pair of arcs is measured; between them a hump,
// at least a quarter of the pair long, hides less than 1 % of its height.
const fitPlaces = 64

// off returns the greatest distance of the ellipse from a pair of arcs.
func (e ellipse) off(first, second geometry.Segment, from, to float64) float64 {
	most := 0.0
	pair := sweep{first, second}.ruler(func(geometry.Segment) bool { return false })
	for i := 1; i < fitPlaces; i++ {
		d, _ := pair.dist(e.at(from + (to-from)*float64(i)/fitPlaces))
		most = math.Max(most, d)
	}
	return most
}
