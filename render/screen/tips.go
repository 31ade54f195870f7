package screen

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// tips adds the tips of a wheel's teeth. The outline of a wheel looks the same a tooth
// further on, so its centroid is the wheel's centre; a tip is where it stands furthest
// from it: the end of a land where the straight face meets it, the middle of any other
// land, or a point. The crown of a round tip is its middle. An outline with fewer than
// fewestTips such places is no wheel.
func (s *Snaps) tips(o geometry.Outline) {
	centre, top := o.Centroid(), 0.0
	for i := range o.Len() {
		top = math.Max(top, furthest(o.Segment(i), centre).Dist(centre))
	}
	var found []geometry.Point
	for i := range o.Len() {
		if at, ok := tipAt(o, i, centre, top); ok {
			found = append(found, at)
		}
	}
	if len(found) < fewestTips {
		return
	}
	for _, at := range found {
		s.add(Tip, at, 0)
	}
}

// fewestTips is the least number of teeth or leaves that a wheel is taken to have: a
// blank's section has four corners.
const fewestTips = 5

// tipAt returns the tip that segment i, or the place it begins at, is or holds; top is
// how far from the centre tips stand.
func tipAt(o geometry.Outline, i int, centre geometry.Point, top float64) (geometry.Point, bool) {
	before, seg := o.Segment(i-1), o.Segment(i)
	arc, _ := seg.Arc()
	far := furthest(seg, centre)
	switch {
	case onCircle(seg, centre):
		return tipOfLand(before, seg, o.Segment(i+1)), math.Abs(arc.Radius-top) < same
	case math.Abs(seg.From.Dist(centre)-top) < same:
		return seg.From, !onCircle(before, centre)
	}
	return far, far != seg.To && math.Abs(far.Dist(centre)-top) < same
}

// tipOfLand returns the tip of a land between two segments.
func tipOfLand(before, land, after geometry.Segment) geometry.Point {
	switch {
	case before.Quantity == cutter.Undercut:
		return land.From
	case after.Quantity == cutter.Undercut:
		return land.To
	}
	return land.At(0.5)
}

// onCircle reports whether a segment is an arc about a centre.
func onCircle(s geometry.Segment, centre geometry.Point) bool {
	arc, round := s.Arc()
	return round && arc.Centre.Dist(centre) < same
}

// furthest returns the point of a segment furthest from a centre.
func furthest(seg geometry.Segment, centre geometry.Point) geometry.Point {
	best := seg.From
	if seg.To.Dist(centre) > best.Dist(centre) {
		best = seg.To
	}
	if arc, round := seg.Arc(); round {
		out := arc.Centre.Sub(centre)
		if far := out.Norm(); far > same {
			crown, _ := seg.Nearest(arc.Centre.Add(out.Times(arc.Radius / far)))
			if crown.Dist(centre) > best.Dist(centre)+same/10 {
				best = crown
			}
		}
	}
	return best
}
