package geometry

import (
	"math"
)

// clearance of an inset: how much nearer than asked a point of it may seem to the
// outline through rounding, in millimetres, and how far apart two ends may lie
// and still be joined. Both are rounding in coordinates up to 2,000 mm magnified
// where curves meet at a shallow angle.
const (
	nearer   = 1e-9
	joinEnds = 1e-6
)

// Inset returns the outline moved inward by d, or outward for a negative d, in
// exact lines and arcs: the edge of all points further than d inside. Corners
// that turn into the outline come out round. Loops that the move makes invalid
// are gone, so the result may be several outlines or, past the pinch-out, none.
// Outlines run anticlockwise; what an outset encloses runs clockwise.
func (o Outline) Inset(d float64) ([]Outline, error) {
	each := make([]float64, o.Len())
	for i := range each {
		each[i] = math.Abs(d)
	}
	if d < 0 {
		return o.inset(each, false)
	}
	return o.inset(each, true)
}

// InsetEach returns the outline with segment i moved inward by d[i] ≥ 0. Where a
// segment that moves meets one that does not, it is carried on along its tangent
// until they meet again.
func (o Outline) InsetEach(d []float64) ([]Outline, error) {
	return o.inset(d, true)
}

func (o Outline) inset(d []float64, inward bool) ([]Outline, error) {
	for i, v := range d {
		if !finite(v) || v < 0 {
			return nil, AtLeast(o.Vertex(i).Quantity, v, 0, "outline.inset")
		}
	}
	if (o.Area() > 0) != inward {
		o = o.Reverse()
		d = reversedDistances(d)
	}
	w := wall{outline: o, d: d, inward: inward}
	w.build()
	loops := w.loops()
	if !inward {
		for i := range loops {
			loops[i] = loops[i].Reverse()
		}
	}
	return loops, nil
}

// reversedDistances puts each distance at its segment of the reversed outline.
func reversedDistances(d []float64) []float64 {
	n := len(d)
	out := make([]float64, n)
	for i := range d {
		out[i] = d[(2*n-2-i)%n]
	}
	return out
}

// PinchOut returns the least inset, up to limit, at which the outline vanishes or
// falls in two; limit when it does neither.
func (o Outline) PinchOut(limit float64) float64 {
	whole := func(d float64) bool {
		loops, err := o.Inset(d)
		return err == nil && len(loops) == 1
	}
	if whole(limit) {
		return limit
	}
	low, high := 0.0, limit
	for high-low > onSegment {
		if mid := (low + high) / 2; whole(mid) {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// wall is an inset being worked out. Its outline runs with the side that is kept
// on its left.
type wall struct {
	outline  Outline
	d        []float64
	inward   bool
	barriers []Segment // what must be kept away from
	keep     []float64 // how far from each
	index    *index    // of the barriers, each grown by its distance
	raw      []Segment // what may be the new edge
}

// build lays down the barriers and the raw edges.
func (w *wall) build() {
	n := w.outline.Len()
	for i := range n {
		s := w.outline.Segment(i)
		before, after := w.d[(i+n-1)%n], w.d[(i+1)%n]
		if w.d[i] == 0 {
			w.raw = append(w.raw, s)
			continue
		}
		w.add(s, w.d[i])
		if before == 0 {
			w.add(w.carriedOn(s.Reverse()).Reverse(), w.d[i])
		}
		if after == 0 {
			w.add(w.carriedOn(s), w.d[i])
		} else {
			w.turn(i)
		}
	}
	boxes := make([]Box, len(w.barriers))
	for i, s := range w.barriers {
		boxes[i] = s.Bounds().Grow(w.keep[i])
	}
	w.index = newIndex(boxes)
}

// add lays down a barrier and the edge that follows it at its distance.
func (w *wall) add(s Segment, d float64) {
	w.barriers = append(w.barriers, s)
	w.keep = append(w.keep, d)
	if moved, ok := s.beside(d); ok {
		w.raw = append(w.raw, moved)
	}
}

// carriedOn returns the straight continuation of a segment past its end, long
// enough to leave the outline.
func (w *wall) carriedOn(s Segment) Segment {
	b := w.outline.Bounds()
	return Segment{From: s.To, To: s.To.Add(s.Tangent(1).Times(b.Width() + b.Height())), Quantity: s.Quantity}
}

// turn adds the round edge about the corner after segment i where the corner
// turns into the kept side.
func (w *wall) turn(i int) {
	s, next := w.outline.Segment(i), w.outline.Segment(i+1)
	u, v := s.Tangent(1), next.Tangent(0)
	sweep := Angle(math.Atan2(u.Cross(v), u.Dot(v)))
	if sweep >= 0 || math.Abs(float64(sweep)) < 1e-12 {
		return
	}
	for _, d := range []float64{w.d[i], w.d[(i+1)%len(w.d)]} {
		arc := Arc{s.To, d, u.Left().Direction(), sweep}.Segment()
		arc.Quantity = s.Quantity
		w.raw = append(w.raw, arc)
		if w.d[i] == w.d[(i+1)%len(w.d)] {
			return
		}
	}
}

// beside returns the segment moved to its left by d; false for an arc that turns
// left about less than d, of which nothing is left.
func (s Segment) beside(d float64) (Segment, bool) {
	a, round := s.Arc()
	if !round {
		return s.Move(s.Tangent(0).Left().Times(d)), true
	}
	if a.Sweep > 0 {
		a.Radius -= d
	} else {
		a.Radius += d
	}
	if a.Radius <= onSegment {
		return Segment{}, false
	}
	moved := a.Segment()
	moved.Bulge, moved.Quantity = s.Bulge, s.Quantity
	return moved, true
}
