package geometry

import (
	"math"
	"slices"
)

// loops cuts the raw edges where they meet, keeps the pieces that stay away from
// every barrier, and joins them.
func (w *wall) loops() []Outline {
	return join(w.kept(w.cuts()))
}

// cuts returns, for each raw edge, the shares of its length where another meets
// it.
func (w *wall) cuts() [][]float64 {
	at := make([][]float64, len(w.raw))
	x := newIndex(boxesOf(w.raw, onSegment))
	for i := range w.raw {
		x.near(x.boxes[i], func(j int) bool {
			if j > i {
				for _, m := range Meet(w.raw[i], w.raw[j]) {
					at[i] = append(at[i], m.S)
					at[j] = append(at[j], m.T)
				}
			}
			return true
		})
	}
	return at
}

// kept returns the pieces of the raw edges that bound what is left.
func (w *wall) kept(at [][]float64) []Segment {
	var pieces []Segment
	for i, s := range w.raw {
		shares := append(at[i], 0, 1)
		slices.Sort(shares)
		length := s.Length()
		from := 0.0
		for _, t := range shares[1:] {
			if (t-from)*length < 2*onSegment {
				continue
			}
			if p := s.At((from + t) / 2); w.clear(p) {
				pieces = append(pieces, s.Part(from, t))
			}
			from = t
		}
	}
	return pieces
}

// clear reports whether a point lies on the kept side and far enough from every
// barrier.
func (w *wall) clear(p Point) bool {
	ok := true
	w.index.near(Box{p, p}, func(i int) bool {
		ok = w.barriers[i].Dist(p) >= w.keep[i]-nearer
		return ok
	})
	if !ok {
		return false
	}
	if w.outline.Contains(p) == w.inward {
		return true
	}
	q, _ := w.outline.Nearest(p)
	return p.Dist(q) <= nearer
}

// join makes outlines of pieces that follow one another, and drops what encloses
// nothing.
func join(pieces []Segment) []Outline {
	used := make([]bool, len(pieces))
	var loops []Outline
	for i := range pieces {
		if used[i] {
			continue
		}
		if o, ok := follow(pieces, used, i); ok && math.Abs(o.Area()) > 4*nearer*o.Length() {
			loops = append(loops, o)
		}
	}
	return loops
}

// follow goes from piece to piece until it is back; false when it cannot.
func follow(pieces []Segment, used []bool, first int) (Outline, bool) {
	var vs []Vertex
	for i := first; ; {
		used[i] = true
		s := pieces[i]
		vs = append(vs, Vertex{s.From, s.Bulge, s.Quantity})
		if s.To.Dist(pieces[first].From) <= joinEnds {
			break
		}
		if i = nextPiece(pieces, used, s); i < 0 {
			return Outline{}, false
		}
	}
	o, err := NewOutline(vs)
	return o, err == nil
}

// nextPiece returns the unused piece that starts where s ends, the one furthest
// to the left where several do; −1 for none.
func nextPiece(pieces []Segment, used []bool, s Segment) int {
	best, turn := -1, math.Inf(-1)
	for j, p := range pieces {
		if used[j] || p.From.Dist(s.To) > joinEnds {
			continue
		}
		u, v := s.Tangent(1), p.Tangent(0)
		if t := math.Atan2(u.Cross(v), u.Dot(v)); t > turn {
			best, turn = j, t
		}
	}
	return best
}
