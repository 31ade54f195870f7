package cutter

import (
	"math"
	"slices"

	"tipline/geometry"
)

// strand is a piece of an edge that runs one way across the tool, or straight up
// or down.
type strand struct {
	geometry.Segment
	curve
	upright bool
}

// strands cuts an edge where it turns from one way across the tool to the other.
func strands(edge geometry.Chain) []strand {
	var list []strand
	for i := range edge.Len() {
		g := edge.Segment(i)
		from := 0.0
		for _, t := range turns(g) {
			list = append(list, strandOf(g.Part(from, t)))
			from = t
		}
		list = append(list, strandOf(g.Part(from, 1)))
	}
	return list
}

// turns returns the shares along a segment at which it runs straight up or down
// on its way from one side to the other.
func turns(g geometry.Segment) []float64 {
	a, ok := g.Arc()
	if !ok {
		return nil
	}
	var shares []float64
	for half := -3; half <= 3; half++ {
		t := (float64(half)*math.Pi - float64(a.Start)) / float64(a.Sweep)
		if least := coincide / g.Length(); t > least && t < 1-least {
			shares = append(shares, t)
		}
	}
	slices.Sort(shares)
	return shares
}

func strandOf(g geometry.Segment) strand {
	s := strand{Segment: g, upright: math.Abs(g.To.X-g.From.X) <= coincide}
	s.lo, s.hi = math.Min(g.From.X, g.To.X), math.Max(g.From.X, g.To.X)
	a, ok := g.Arc()
	if !ok {
		s.x, s.y, s.slope = g.From.X, g.From.Y, (g.To.Y-g.From.Y)/(g.To.X-g.From.X)
		return s
	}
	s.x, s.y, s.radius, s.halfSign = a.Centre.X, a.Centre.Y, a.Radius, 1
	if g.At(0.5).Y < a.Centre.Y {
		s.halfSign = -1
	}
	return s
}

// pointAt returns the strand's point at x, its own end where that is one.
func (s strand) pointAt(x float64) geometry.Point {
	switch {
	case math.Abs(x-s.From.X) <= coincide:
		return s.From
	case math.Abs(x-s.To.X) <= coincide:
		return s.To
	}
	return geometry.Point{X: x, Y: s.at(x)}
}

// between returns the strand from one x to a greater one.
func (s strand) between(lo, hi float64) geometry.Segment {
	g := geometry.Segment{From: s.pointAt(lo), To: s.pointAt(hi), Quantity: s.Quantity}
	if s.radius > 0 {
		centre := geometry.Point{X: s.x, Y: s.y}
		sweep := (g.To.Sub(centre).Direction() - g.From.Sub(centre).Direction()).Normal()
		g.Bulge = math.Tan(float64(sweep) / 4)
	}
	return g
}

// shade is an edge seen from below: its strands, the places across the tool
// between which no two of them change places, and which of them is lowest from
// each place to the next.
type shade struct {
	strands []strand
	xs      []float64
	lowest  []int
}

func shadeOf(edge geometry.Chain) shade {
	s := shade{strands: strands(edge)}
	for i, a := range s.strands {
		s.xs = append(s.xs, a.lo, a.hi)
		for _, b := range s.strands[:i] {
			if a.lo > b.hi || b.lo > a.hi {
				continue
			}
			for _, m := range geometry.Meet(a.Segment, b.Segment) {
				s.xs = append(s.xs, m.At.X)
			}
		}
	}
	slices.Sort(s.xs)
	s.xs = slices.CompactFunc(s.xs, func(a, b float64) bool { return math.Abs(a-b) <= coincide })
	s.lowest = make([]int, max(len(s.xs)-1, 0))
	for k := range s.lowest {
		s.lowest[k] = s.lowestAt((s.xs[k] + s.xs[k+1]) / 2)
	}
	return s
}

// lowestAt returns the strand that is lowest at x, −1 where there is none.
func (s shade) lowestAt(x float64) int {
	at, least := -1, math.Inf(1)
	for i := range s.strands {
		t := &s.strands[i]
		if t.upright || x < t.lo || x > t.hi {
			continue
		}
		if y := t.at(x); y < least {
			at, least = i, y
		}
	}
	return at
}

// swept returns what the edge leaves when it is fed along y: its lower envelope,
// with upright walls where the edge steps or turns back under itself, and far up
// at both ends along its own tangent, where that leads outwards, or else upright.
func (s shade) swept(edge geometry.Chain, reach float64) sweep {
	var out sweep
	for k := 0; k < len(s.lowest); {
		i := s.lowest[k]
		end := k + 1
		for end < len(s.lowest) && s.lowest[end] == i {
			end++
		}
		if i >= 0 {
			out = out.joined(s.strands[i].between(s.xs[k], s.xs[end]))
		}
		k = end
	}
	if len(out) == 0 {
		return nil
	}
	last := edge.Segment(edge.Len() - 1)
	out = append(out, outward(last, out[len(out)-1].To, 1, reach))
	front := outward(edge.Segment(0).Reverse(), out[0].From, -1, reach)
	return append(sweep{front.Reverse()}, out...)
}

// joint is how far in mm two pieces of an envelope may end apart and still be one
// run: heights near the side of an arc, where it is steepest, are good to that.
const joint = 1e-6

// joined adds a piece to the right of the rest, with the wall that leads to it.
func (s sweep) joined(g geometry.Segment) sweep {
	if len(s) > 0 {
		end := s[len(s)-1].To
		if math.Abs(g.From.Y-end.Y) > joint {
			wall := geometry.Segment{From: end, To: geometry.Point{X: end.X, Y: g.From.Y}, Quantity: g.Quantity}
			s, end = append(s, wall), wall.To
		}
		g.From = end
	}
	if g.From.Dist(g.To) <= coincide {
		return s
	}
	return append(s, g)
}

// outward returns the line along which an envelope goes on from its end: along
// the last piece's tangent where the edge itself ends there and leads to that side
// and up at 45° or more, else straight up. With an undercut of at most 45° no tip
// circle rises more steeply beyond the cut, so that what is added never touches
// first.
func outward(last geometry.Segment, end geometry.Point, side, reach float64) geometry.Segment {
	way := leaving(last.Reverse()).Times(-1)
	if last.To.Dist(end) > joint || way.X*side <= 0 || way.Y < way.X*side {
		way = geometry.Point{Y: 1}
	}
	return geometry.Segment{From: end, To: end.Add(way.Times(reach)), Quantity: last.Quantity}
}

// hidden is a run of an edge that lies above another part of it, so that no
// plunge leaves its form in the work.
type hidden struct {
	from, to geometry.Point // along the edge
	lo, hi   float64        // how far it reaches across the tool
	front    bool           // it begins at the front at the shank
}

// hiddenBy is how far in mm a run must reach across the tool to count: less is
// under what a bit can be measured to (common practice, no source).
const hiddenBy = 1e-3

// hidden returns the runs that cannot be seen from below.
func (s shade) hidden() []hidden {
	var list []hidden
	open := false
	s.walk(func(from, to geometry.Point, visible, upright bool) {
		switch {
		case visible:
			open = false
			return
		case upright && !open:
			return
		case !open:
			list = append(list, hidden{from: from, lo: from.X, hi: from.X, front: from == s.strands[0].From})
			open = true
		}
		h := &list[len(list)-1]
		h.to, h.lo, h.hi = to, min(h.lo, to.X), max(h.hi, to.X)
	})
	return slices.DeleteFunc(list, func(h hidden) bool { return h.hi-h.lo < hiddenBy })
}

// walk goes along the edge from place to place.
func (s shade) walk(step func(from, to geometry.Point, visible, upright bool)) {
	for i, t := range s.strands {
		if t.upright {
			step(t.From, t.To, false, true)
			continue
		}
		var ks []int
		for k := range s.lowest {
			if s.xs[k] >= t.lo-coincide && s.xs[k+1] <= t.hi+coincide {
				ks = append(ks, k)
			}
		}
		for n := range ks {
			k := ks[n]
			from, to := s.xs[k], s.xs[k+1]
			if t.To.X < t.From.X {
				k = ks[len(ks)-1-n]
				from, to = s.xs[k+1], s.xs[k]
			}
			step(t.pointAt(from), t.pointAt(to), s.lowest[k] == i, false)
		}
	}
}

// turn returns the place where the edge turns back under itself: the lower end of
// the run.
func (h hidden) turn() geometry.Point {
	if h.from.Y < h.to.Y {
		return h.from
	}
	return h.to
}
