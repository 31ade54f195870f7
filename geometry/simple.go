package geometry

// Simple reports whether the outline neither crosses nor touches itself.
func (o Outline) Simple() bool {
	_, crosses := o.SelfCrossing()
	return !crosses && o.Len() > 0
}

// SelfCrossing returns a point where the outline crosses or touches itself, and
// whether there is one.
func (o Outline) SelfCrossing() (Point, bool) {
	segments := o.Segments()
	x := newIndex(boxesOf(segments, onSegment))
	var at Point
	found := false
	for i := range segments {
		x.near(x.boxes[i], func(j int) bool {
			if j > i {
				at, found = crossing(segments, i, j)
			}
			return !found
		})
		if found {
			return at, true
		}
	}
	return Point{}, false
}

// crossing returns a point that segments i < j share besides the corner of
// neighbours.
func crossing(segments []Segment, i, j int) (Point, bool) {
	n := len(segments)
	for _, m := range Meet(segments[i], segments[j]) {
		if j == i+1 && m.At.Dist(segments[i].To) <= 2*onSegment {
			continue
		}
		if i == 0 && j == n-1 && m.At.Dist(segments[i].From) <= 2*onSegment {
			continue
		}
		return m.At, true
	}
	return Point{}, false
}
