package screen

import "math"

// bend is the cosine of the turn from which on two edges meet in a corner; below
// it their sides are mitred, as along an arc.
const bend = 0.9

// stroke adds the line of the given width along a run to the coverage, without what
// lies outside the box. Every piece turns the same way round, so that pieces that
// overlap add up and none takes away.
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
		atP, atQ := side, side
		if i > 0 || closed {
			atP, _ = joint(ps[(i+len(ps)-1)%len(ps)], p, side, true)
		}
		if i+1 < edges || closed {
			var corner bool
			if atQ, corner = joint(q, ps[(i+2)%len(ps)], side, false); corner {
				c.dot(q, half)
			}
		}
		c.bar(p, q, atP, atQ, half)
	}
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

// joint returns the side of an edge at its joint with a neighbour, mitred where
// they nearly run on, and whether they meet in a corner instead.
func joint(p, q Pixel, side Pixel, before bool) (at Pixel, corner bool) {
	other, ok := normal(p, q)
	if !ok {
		return side, false
	}
	cos := side.X*other.X + side.Y*other.Y
	if cos < bend {
		return side, !before
	}
	return Pixel{(side.X + other.X) / (1 + cos), (side.Y + other.Y) / (1 + cos)}, false
}

// bar adds one edge's strip.
func (c *coverage) bar(p, q, atP, atQ Pixel, half float64) {
	c.moveTo(Pixel{p.X + half*atP.X, p.Y + half*atP.Y})
	c.lineTo(Pixel{q.X + half*atQ.X, q.Y + half*atQ.Y})
	c.lineTo(Pixel{q.X - half*atQ.X, q.Y - half*atQ.Y})
	c.lineTo(Pixel{p.X - half*atP.X, p.Y - half*atP.Y})
	c.close()
}

// dot rounds a corner.
func (c *coverage) dot(at Pixel, half float64) {
	const sides = 10
	sin, cos := math.Sincos(-2 * math.Pi / sides)
	spoke := Pixel{half, 0}
	c.moveTo(Pixel{at.X + spoke.X, at.Y + spoke.Y})
	for range sides - 1 {
		spoke = Pixel{spoke.X*cos - spoke.Y*sin, spoke.X*sin + spoke.Y*cos}
		c.lineTo(Pixel{at.X + spoke.X, at.Y + spoke.Y})
	}
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
			c.bar(between(p, q, from/length), between(p, q, to/length), side, side, width/2)
		})
		d.skip((1 - t1) * length)
	}
}
