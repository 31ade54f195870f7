package screen

import "math"

// bend is the cosine of the turn from which on two edges meet in a corner; below
// it their sides are mitred, as along an arc.
const bend = 0.9

// spike is the cosine of the turn beyond which a corner is cut off instead of
// drawn to its point.
const spike = -0.5

// stroke adds the line of the given width along a run to the coverage, without
// what lies outside the box. Every piece turns the same way round, so that pieces
// that overlap add up and none takes away.
func (c *coverage) stroke(ps []Pixel, closed bool, width float64, seen box) {
	edges := len(ps) - 1
	if closed {
		edges = len(ps)
	}
	half := width / 2
	seen = seen.grow(width)
	for i := range edges {
		p, q := ps[i], ps[(i+1)%len(ps)]
		if outside(p, q, seen) {
			continue
		}
		side, ok := normal(p, q)
		if !ok {
			continue
		}
		b := bar{p, q, side, side, true, true}
		if i > 0 || closed {
			b.begin(ps[(i+len(ps)-1)%len(ps)], seen)
		}
		if i+1 < edges || closed {
			if after, corner := b.end(ps[(i+2)%len(ps)], seen); corner {
				c.corner(q, side, after, half)
			}
		}
		c.bar(b, half)
	}
}

// bar is the strip along one edge: its sides at both ends in half widths, and
// whether it is cut off there. Where it runs on into a neighbour that is drawn too
// it is not; the two cuts would only take each other away.
type bar struct {
	p, q       Pixel
	atP, atQ   Pixel
	cutP, cutQ bool
}

// begin joins the bar to the edge that comes from a pixel, where it runs on.
func (b *bar) begin(from Pixel, seen box) {
	if before, ok := normal(from, b.p); ok && runsOn(before, b.atP) && !outside(from, b.p, seen) {
		b.atP, b.cutP = mitre(before, b.atP), false
	}
}

// end joins the bar to the edge that goes to a pixel, where it runs on, and
// reports a corner where it does not.
func (b *bar) end(to Pixel, seen box) (after Pixel, corner bool) {
	after, ok := normal(b.q, to)
	if ok && runsOn(b.atQ, after) && !outside(b.q, to, seen) {
		b.atQ, b.cutQ = mitre(b.atQ, after), false
	}
	return after, ok && b.cutQ
}

// outside reports whether a line lies wholly beyond one side of the box.
func outside(p, q Pixel, b box) bool {
	return math.Max(p.X, q.X) < b.x0 || math.Min(p.X, q.X) > b.x1 ||
		math.Max(p.Y, q.Y) < b.y0 || math.Min(p.Y, q.Y) > b.y1
}

// normal returns the unit normal of a line, false where it has no length.
func normal(p, q Pixel) (Pixel, bool) {
	dx, dy := q.X-p.X, q.Y-p.Y
	l := math.Hypot(dx, dy)
	if l < 1e-9 {
		return Pixel{}, false
	}
	return Pixel{-dy / l, dx / l}, true
}

// runsOn reports whether two edges with these normals turn so little that they
// share their side.
func runsOn(before, after Pixel) bool { return before.X*after.X+before.Y*after.Y >= bend }

// mitre returns how far, in half widths, the sides of two edges meet from their
// joint.
func mitre(before, after Pixel) Pixel {
	cos := before.X*after.X + before.Y*after.Y
	return Pixel{(before.X + after.X) / (1 + cos), (before.Y + after.Y) / (1 + cos)}
}

// bar adds one edge's strip.
func (c *coverage) bar(b bar, half float64) {
	p0, p1 := Pixel{b.p.X + half*b.atP.X, b.p.Y + half*b.atP.Y}, Pixel{b.p.X - half*b.atP.X, b.p.Y - half*b.atP.Y}
	q0, q1 := Pixel{b.q.X + half*b.atQ.X, b.q.Y + half*b.atQ.Y}, Pixel{b.q.X - half*b.atQ.X, b.q.Y - half*b.atQ.Y}
	c.edge(p0, q0)
	c.edge(q1, p1)
	if b.cutQ {
		c.edge(q0, q1)
	}
	if b.cutP {
		c.edge(p1, p0)
	}
}

// corner fills the gap on the outer side of a corner, to its point unless that
// would stand out far.
func (c *coverage) corner(at, before, after Pixel, half float64) {
	cos := before.X*after.X + before.Y*after.Y
	turn := before.X*after.Y - before.Y*after.X
	if turn > 0 { // the gap is on the other side
		before, after, half = after, before, -half
	}
	c.moveTo(at)
	c.lineTo(Pixel{at.X + half*before.X, at.Y + half*before.Y})
	if cos > spike {
		point := mitre(before, after)
		c.lineTo(Pixel{at.X + half*point.X, at.Y + half*point.Y})
	}
	c.lineTo(Pixel{at.X + half*after.X, at.Y + half*after.Y})
	c.close()
}

// dashed adds a line of marks and gaps along a run. The pattern's lengths are in
// pixels, mark first, and it starts at the run's first point.
func (c *coverage) dashed(ps []Pixel, closed bool, width float64, pattern []float64, seen box) {
	edges := len(ps) - 1
	if closed {
		edges = len(ps)
	}
	d := dasher{pattern: pattern, left: pattern[0]}
	seen = seen.grow(width)
	for i := range edges {
		p, q := ps[i], ps[(i+1)%len(ps)]
		side, ok := normal(p, q)
		if !ok {
			continue
		}
		length := math.Hypot(q.X-p.X, q.Y-p.Y)
		t0, t1, ok := seen.part(p, q)
		if !ok {
			d.skip(length)
			continue
		}
		d.skip(t0 * length)
		d.run(t0*length, t1*length, func(from, to float64) {
			c.bar(bar{between(p, q, from/length), between(p, q, to/length), side, side, true, true}, width/2)
		})
		d.skip((1 - t1) * length)
	}
}
