package geometry

import "math"

// Distance returns the least distance between two outlines and the points of
// each where it is found; 0 where they meet. One inside the other is as far from
// it as their edges are. Against an empty outline it is +Inf.
func (o Outline) Distance(q Outline) (d float64, a, b Point) {
	c := closest{newTree(o.curves()), newTree(q.curves()), math.Inf(1), a, b}
	if o.Len() > 0 && q.Len() > 0 {
		c.between(0, 0)
	}
	return c.d, c.a, c.b
}

// Distance returns the least distance between two segments and the points of
// each where it is found.
func (s Segment) Distance(r Segment) (d float64, a, b Point) {
	p, q := newCurve(s), newCurve(r)
	return p.distance(&q)
}

// closest is a search for the nearest points of two trees.
type closest struct {
	from, to *tree
	d        float64
	a, b     Point
}

func (c *closest) between(k, l int) {
	n, m := &c.from.nodes[k], &c.to.nodes[l]
	if n.box.gap(m.box) >= c.d {
		return
	}
	switch {
	case n.right != 0 && (m.right == 0 || n.last-n.first >= m.last-m.first):
		c.nearer(k+1, l, n.right, l)
	case m.right != 0:
		c.nearer(k, l+1, k, m.right)
	default:
		c.leaves(n, m)
	}
}

// nearer searches two pairs of nodes, the pair whose boxes are nearer first.
func (c *closest) nearer(k, l, kk, ll int) {
	if c.gap(k, l) > c.gap(kk, ll) {
		k, l, kk, ll = kk, ll, k, l
	}
	c.between(k, l)
	c.between(kk, ll)
}

func (c *closest) gap(k, l int) float64 { return c.from.nodes[k].box.gap(c.to.nodes[l].box) }

func (c *closest) leaves(n, m *node) {
	for i := n.first; i < n.last; i++ {
		for j := m.first; j < m.last; j++ {
			p, q := &c.from.curves[i], &c.to.curves[j]
			if p.box.gap(q.box) >= c.d {
				continue
			}
			if d, a, b := p.distance(q); d < c.d {
				c.d, c.a, c.b = d, a, b
			}
		}
	}
}

// distance returns the least distance between two curves and where it is: where
// they meet, at an end of one, or where a common normal joins them.
func (c *curve) distance(r *curve) (d float64, a, b Point) {
	if pts, n := meet(c, r); n > 0 {
		return 0, pts[0], pts[0]
	}
	d = math.Inf(1)
	try := func(p, q Point) {
		if dd := root(p.Sub(q)); dd < d {
			d, a, b = dd, p, q
		}
	}
	try(c.From, r.nearest(c.From))
	try(c.To, r.nearest(c.To))
	try(c.nearest(r.From), r.From)
	try(c.nearest(r.To), r.To)
	switch {
	case c.round && r.round:
		for _, p := range c.towards(r.centre) {
			try(p, r.nearest(p))
		}
	case c.round:
		p := c.nearest(r.nearest(c.centre))
		try(p, r.nearest(p))
	case r.round:
		p := r.nearest(c.nearest(r.centre))
		try(c.nearest(p), p)
	}
	return d, a, b
}

// towards returns the arc's points in the direction of q from its centre and against
// it, each moved to the arc's nearer end where the arc does not span that.
func (c *curve) towards(q Point) [2]Point {
	way := q.Sub(c.From).Add(c.out)
	length := root(way)
	if length == 0 {
		return [2]Point{c.From, c.To}
	}
	u := way.Times(c.radius / length)
	facing := c.centre.Add(u)
	if c.radius > distant && root(q) <= distant { // a far centre's digits end before the arc
		facing = q
	}
	return [2]Point{c.nearest(facing), c.nearest(c.centre.Sub(u))}
}

// nearest returns the segment's point nearest to p.
func (c *curve) nearest(p Point) Point {
	if !c.round {
		chord := c.To.Sub(c.From)
		switch t := p.Sub(c.From).Dot(chord) / chord.Dot(chord); {
		case t <= 0:
			return c.From
		case t >= 1:
			return c.To
		default:
			return c.From.Toward(c.To, t)
		}
	}
	if p.Sub(c.From).Add(c.out) == (Point{}) {
		return c.From
	}
	if q := c.facing(p); c.reaches(q) {
		return q
	}
	if root(p.Sub(c.From)) <= root(p.Sub(c.To)) {
		return c.From
	}
	return c.To
}
