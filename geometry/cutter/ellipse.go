package cutter

import (
	"math"

	"tipline/geometry"
)

// squeezed returns a segment with every y times a share, and how far at most what
// stands for it lies from it. A line stays one. An arc becomes part of an ellipse:
// pairs of arcs, tangent to each other and at their ends to the ellipse, halved
// until they lie within geometry.FitTolerance of it.
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
		first, second := geometry.TwoArcs(e.at(from), e.way(from), e.at(to), e.way(to))
		if o := e.off(first, second, from, to); o > geometry.FitTolerance {
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
