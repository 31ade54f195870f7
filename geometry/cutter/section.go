package cutter

import (
	"math"
	"slices"

	"tipline/geometry"
)

// bit is a form with its edge as it matters to the sections behind its rake
// face.
type bit struct {
	under       sweep            // the edge that rises from the cutting end, not cut off at the stock: a facet does not end where the stock does
	edge        graph            // under as heights
	front       geometry.Segment // a front edge by itself, downwards; nothing where under holds the front too
	least, most float64          // x of the form's two sides
	infeed      float64
	slope       float64 // tan of the clearance
}

// bit returns the cut's bit, ground with the clearance.
func (c Cut) bit(clearance geometry.Angle) bit {
	b := bit{under: c.edge(), infeed: c.Infeed, slope: math.Tan(float64(clearance))}
	if front := c.Form.Edge.Segment(0); front.Quantity == FrontRelief {
		b.front = front
		b.under = b.under[1:]
	}
	b.edge = b.under.inset(0)
	b.least, b.most = c.Form.sides()
	return b
}

// sides returns the x of the front and back side of what is drawn of the form.
func (f Form) sides() (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i := range f.Edge.Len() + 1 {
		x := f.Edge.Vertex(i).X
		least, most = math.Min(least, x), math.Max(most, x)
	}
	return math.Min(least, 0), most
}

// section is a bit's section at depth z behind the rake face, as far as it
// matters to a cut: the part no higher than the infeed.
type section struct {
	*bit
	z, inset float64
	floor    graph
	wall     float64 // x of the section's upright far side
}

// sectionAt returns the section at depth z, which facets leave inset by z·tan c.
func (b *bit) sectionAt(z float64) section {
	s := section{b, z, z * b.slope, nil, b.most}
	s.floor = b.under.inset(s.inset)
	if last := b.under[len(b.under)-1]; last.From.X == last.To.X {
		s.wall = math.Min(s.wall, last.From.X-s.inset)
	}
	return s
}

// bottom returns the section's lowest y at x, and false where it has nothing
// there below the infeed.
func (s section) bottom(x float64) (float64, bool) {
	y := s.floor.highest(x)
	if y > s.infeed || math.IsInf(y, -1) || x > s.wall {
		return y, false
	}
	if s.front.From == s.front.To {
		return y, true
	}
	way := s.front.To.Sub(s.front.From)
	off := way.Cross(geometry.Point{X: x, Y: y}.Sub(s.front.From))
	return y, off >= (s.inset-coincide)*way.Norm()
}

// swingNeeded returns the least swing ρ at which the section's lowest point at x
// stays within what the edge sweeps there, hypot(ρ−y, z) ≤ ρ−y_edge, and false
// where the section has nothing below the infeed.
func (s section) swingNeeded(x float64) (float64, bool) {
	y, ok := s.bottom(x)
	if !ok {
		return math.Inf(-1), false
	}
	edge := s.edge.lowest(x)
	return (y+edge)/2 + s.z*s.z/(2*(y-edge)), true
}

// between is how many steps are taken across a section from one knot, where its
// lower edge or the form's changes from one curve to the next, to the next.
const between = 3

// stations are places across the section: its knots and some between them.
func (s section) stations() []float64 {
	knots := make([]float64, 0, 4*(len(s.floor)+len(s.edge)))
	knots = append(knots, s.least, s.most, math.Max(s.wall, s.least))
	for _, list := range [2]graph{s.floor, s.edge} {
		for _, c := range list {
			knots = append(knots, c.lo, c.hi)
			if c.radius > 0 {
				knots = append(knots, c.x)
			}
		}
	}
	slices.Sort(knots)
	out := make([]float64, 0, between*len(knots))
	for _, x := range knots {
		if x < s.least || x > s.most {
			continue
		}
		if n := len(out); n > 0 {
			from := out[n-1]
			if x-from < coincide {
				continue
			}
			for k := 1; k < between; k++ {
				out = append(out, from+(x-from)*float64(k)/between)
			}
		}
		out = append(out, x)
	}
	return out
}

// pieces returns how many pieces the section has below the infeed.
func (s section) pieces() int {
	n, was := 0, false
	for _, x := range s.stations() {
		_, in := s.bottom(x)
		if in && !was {
			n++
		}
		was = in
	}
	return n
}

// look runs across the section for the place that needs the largest swing;
// −Inf where nothing is below the infeed.
func (s section) look() (swing, at float64) {
	swing = math.Inf(-1)
	take := func(x float64) {
		if need, in := s.swingNeeded(x); in && need > swing {
			swing, at = need, x
		}
	}
	xs := s.stations()
	was, best := false, -1
	for i, x := range xs {
		need, in := s.swingNeeded(x)
		if i > 0 && in != was {
			take(s.brink(xs[i-1], x, was))
		}
		if in && need > swing {
			swing, at, best = need, x, i
		}
		was = in
	}
	if best >= 0 {
		take(s.peak(xs[max(best-1, 0)], xs[min(best+1, len(xs)-1)]))
	}
	return swing, at
}

// brink returns the place between a and b where the section just reaches below
// the infeed; it does so at a if first says so, else at b.
func (s section) brink(a, b float64, first bool) float64 {
	if !first {
		a, b = b, a
	}
	for range 36 {
		mid := (a + b) / 2
		if _, in := s.bottom(mid); in {
			a = mid
		} else {
			b = mid
		}
	}
	return a
}

// peak returns the place between a and b that needs the largest swing, by golden
// section.
func (s section) peak(a, b float64) float64 {
	const golden = 0.6180339887498949
	need := func(x float64) float64 { v, _ := s.swingNeeded(x); return v }
	c, d := b-golden*(b-a), a+golden*(b-a)
	fc, fd := need(c), need(d)
	for range 24 {
		if fc >= fd {
			b, d, fd = d, c, fc
			c = b - golden*(b-a)
			fc = need(c)
		} else {
			a, c, fc = c, d, fd
			d = a + golden*(b-a)
			fd = need(d)
		}
	}
	return (a + b) / 2
}
