package screen

import (
	"tipline/geometry"
	"tipline/render"
)

// Kind is what kind of place of a drawing is snapped to.
type Kind int

// The kinds. Of two that are equally near the later one is taken; one anywhere on a
// line is taken only where there is no other, and Near returns none that is free.
const (
	Free     Kind = iota // on no line
	OnLine               // anywhere along a line
	Centre               // of an arc
	Middle               // of a line or an arc
	Crossing             // of two lines
	End                  // of a line or an arc, or a corner
	Tip                  // of a tooth
)

// Snap is a place of a drawing that a pointer is drawn to.
type Snap struct {
	Kind     Kind
	At       geometry.Point
	Radius   float64 // of the arc, where a place on or the middle of one was found; else 0
	Distance float64 // from the pointer, in pixels
}

// Snaps are the places of a drawing that a pointer can be drawn to, made ready to be
// asked at every move of it. The zero Snaps has none.
type Snaps struct {
	lines  []geometry.Segment
	about  geometry.Segments
	places []Snap // all but those on lines and where lines cross, Distance 0
}

// SnapsOf returns the places of a drawing: those of its lines, without letters,
// dimensions and arrowheads. Centre lines and fine marks end anywhere, so they have no
// ends and middles, but may be stood on and crossed.
func SnapsOf(d *render.Drawing) Snaps {
	var s Snaps
	for i := range d.Items {
		it := &d.Items[i]
		if it.Pen == render.NoPen || it.Layer == render.LayerDimensions || it.Layer == render.LayerText {
			continue
		}
		ends := it.Pen != render.Centre && it.Pen != render.Hair
		for _, o := range it.Outlines {
			s.run(o.Len(), o.Segment, true, ends)
			if it.Layer == render.LayerTeeth {
				s.tips(o)
			}
		}
		for _, c := range it.Chains {
			s.run(c.Len(), c.Segment, false, ends)
		}
	}
	s.about = geometry.NewSegments(s.lines)
	return s
}

// run adds the segments of one outline or chain, and their places. Where one arc runs
// on along the circle of another there is no end, and of a whole circle in two halves
// no middle.
func (s *Snaps) run(n int, segment func(int) geometry.Segment, closed, ends bool) {
	circle := closed && n == 2 && sameCircle(segment(0), segment(1))
	for i := range n {
		seg := segment(i)
		s.lines = append(s.lines, seg)
		arc, round := seg.Arc()
		on := (i > 0 || closed) && sameCircle(segment((i+n-1)%n), seg)
		if round && (!on || circle && i == 0) {
			s.add(Centre, arc.Centre, 0)
		}
		if circle || !ends {
			continue
		}
		if !on {
			s.add(End, seg.From, 0)
		}
		if !closed && i+1 == n {
			s.add(End, seg.To, 0)
		}
		s.add(Middle, seg.At(0.5), arc.Radius)
	}
}

func (s *Snaps) add(k Kind, at geometry.Point, radius float64) {
	s.places = append(s.places, Snap{Kind: k, At: at, Radius: radius})
}

// same is how near, in millimetres, two places count as one: a thousandth of what any
// reading shows.
const same = 1e-6

func sameCircle(a, b geometry.Segment) bool {
	p, round := a.Arc()
	q, too := b.Arc()
	return round && too && p.Centre.Dist(q.Centre) < same && p.Radius-q.Radius < same && q.Radius-p.Radius < same
}

// mostCrossed is of how many lines, the nearest ones, the crossings are looked for: where
// more lie within reach the drawing is seen from so far that none could be told from
// the next.
const mostCrossed = 48

// Near returns the place nearest to a pixel, within reach pixels; false for none.
func (s Snaps) Near(v View, at Pixel, reach float64) (Snap, bool) {
	if v.Blank() {
		return Snap{}, false
	}
	here, within := v.ToDrawing(at), reach/v.Scale
	best := Snap{Distance: within}
	found := false
	for _, p := range s.places {
		if far := p.At.Dist(here); far < best.Distance || far == best.Distance && p.Kind > best.Kind {
			best, found = p, true
			best.Distance = far
		}
	}
	on, lines := s.onLine(here, within)
	if c, ok := s.crossing(lines, here, best.Distance-same); ok {
		best, found = c, true
	}
	if !found && len(lines) > 0 {
		best, found = on, true
	}
	best.Distance *= v.Scale
	return best, found
}

// onLine returns the nearest place on any line, and which lines come within reach,
// mostCrossed at most.
func (s Snaps) onLine(here geometry.Point, within float64) (Snap, []int) {
	best, lines := Snap{Distance: within}, nearLines{}
	s.about.About(here, within, func(i int, near geometry.Point, far float64) {
		lines.add(i, far)
		if far <= best.Distance {
			arc, _ := s.lines[i].Arc()
			best = Snap{OnLine, near, arc.Radius, far}
		}
	})
	return best, lines.which
}

// crossing returns the nearest place nearer than within where two of the lines cross.
func (s Snaps) crossing(lines []int, here geometry.Point, within float64) (Snap, bool) {
	best, found := Snap{Kind: Crossing, Distance: within}, false
	for k, i := range lines {
		for _, j := range lines[k+1:] {
			if sameCircle(s.lines[i], s.lines[j]) {
				continue
			}
			for _, p := range s.about.Meet(i, j) {
				if far := p.Dist(here); far < best.Distance {
					best.At, best.Distance, found = p, far, true
				}
			}
		}
	}
	return best, found
}

// nearLines are the nearest lines met with so far, no more than mostCrossed.
type nearLines struct {
	which []int
	far   []float64
}

func (n *nearLines) add(i int, far float64) {
	if len(n.which) < mostCrossed {
		n.which, n.far = append(n.which, i), append(n.far, far)
		return
	}
	worst := 0
	for k, f := range n.far {
		if f > n.far[worst] {
			worst = k
		}
	}
	if far < n.far[worst] {
		n.which[worst], n.far[worst] = i, far
	}
}
