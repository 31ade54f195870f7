package cutter

import (
	"math"
	"slices"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
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

	below  graph     // floor of the section looked at last
	across []float64 // and its knots
}

// bit returns the cut's bit, ground with the clearance.
func (c Cut) bit(clearance geometry.Angle) bit {
	b := bit{under: c.edge(), infeed: c.Infeed, slope: math.Tan(float64(clearance))}
	if front := c.Form.Edge.Segment(0); front.Quantity == FrontRelief {
		b.front = front
		b.under = b.under[1:]
	}
	b.edge = b.under.inset(nil, 0)
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
	near     float64 // x of the section's upright front, or of the form's foremost extent
	wall     float64 // x of the section's upright far side

	foot, way geometry.Point // of its front line
	slack     float64        // coincide, as a cross product with way
}

// sectionAt returns the section at depth z, which facets leave inset by z·tan c.
// It holds until the bit's next section is looked at.
func (b *bit) sectionAt(z float64) section {
	s := section{bit: b, z: z, inset: z * b.slope, near: b.least, wall: b.most}
	s.foot, s.way = s.frontLine()
	s.slack = coincide * s.way.Norm()
	b.below = b.under.inset(b.below[:0], s.inset)
	s.floor = b.below
	if first := b.under[0]; b.front.From != b.front.To {
		s.near = s.inset // no nearer to the tangent of the foremost point
	} else if first.From.X == first.To.X {
		s.near = math.Max(s.near, first.To.X+s.inset)
	}
	if last := b.under[len(b.under)-1]; last.From.X == last.To.X {
		s.wall = math.Min(s.wall, last.From.X-s.inset)
	}
	return s
}

// bottom returns the section's lowest y at x, and false where it has nothing
// there below the infeed.
func (s section) bottom(x float64) (float64, bool) {
	y := s.floor.highest(x)
	if y > s.infeed+coincide || math.IsInf(y, -1) || x > s.wall+coincide || x < s.near-coincide {
		return y, false
	}
	return y, s.way.Cross(geometry.Point{X: x, Y: y}.Sub(s.foot)) >= -s.slack
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

// knots are the places across the section where its lower edge, or the form's,
// changes from one curve to the next, passes the infeed or meets the front: from
// one to the next each is one smooth curve, and within the section or not.
func (s section) knots() []float64 {
	all := append(s.across[:0], s.least, s.most, math.Max(s.wall, s.least), math.Min(s.near, s.most))
	for _, list := range [2]graph{s.floor, s.edge} {
		for _, c := range list {
			all = append(all, c.lo, c.hi)
			if c.radius > 0 {
				all = append(all, c.x)
			}
		}
	}
	for i := range s.floor {
		c := &s.floor[i]
		all = c.crossing(all, geometry.Point{Y: s.infeed}, geometry.Point{X: 1})
		if s.way.Y != 0 {
			all = c.crossing(all, s.foot, s.way)
		}
	}
	s.across = all
	slices.Sort(all)
	out := all[:0]
	for _, x := range all {
		if x < s.least || x > s.most || len(out) > 0 && x-out[len(out)-1] < coincide {
			continue
		}
		out = append(out, x)
	}
	return out
}

// frontLine returns a point of the section's front edge and its direction; no
// direction where the front edge is part of the rest.
func (s section) frontLine() (at, way geometry.Point) {
	way = s.front.To.Sub(s.front.From)
	if way.Y == 0 {
		return at, way
	}
	return s.front.From.Add(way.Left().Times(s.inset / way.Norm())), way
}

// pieces returns how many pieces the section has below the infeed.
func (s section) pieces() int {
	n, was := 0, false
	xs := s.knots()
	for i := 1; i < len(xs); i++ {
		_, in := s.bottom((xs[i-1] + xs[i]) / 2)
		if in && !was {
			n++
		}
		was = in
	}
	return n
}

// between is how many steps are taken across a section from one knot to the next;
// topShare how near, as a share of two of them, the place that needs most is told.
const (
	between  = 3
	topShare = 1e-5
)

// look runs across the section for the place that needs the largest swing;
// −Inf where nothing is below the infeed.
func (s section) look() (swing, at float64) {
	swing = math.Inf(-1)
	take := func(x float64) bool {
		need, in := s.swingNeeded(x)
		if !in || need <= swing {
			return false
		}
		swing, at = need, x
		return true
	}
	var low, high float64
	xs := s.knots()
	for i := 1; i < len(xs); i++ {
		step := (xs[i] - xs[i-1]) / between
		for k := min(i-1, 1); k <= between; k++ { // the knot between two is looked at once
			if x := xs[i-1] + float64(k)*step; take(x) {
				low, high = math.Max(x-step, xs[i-1]), math.Min(x+step, xs[i])
			}
		}
	}
	if high > low {
		take(seek.Top(low, high, topShare*(high-low), func(x float64) float64 { need, _ := s.swingNeeded(x); return need }))
	}
	return swing, at
}
