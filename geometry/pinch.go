package geometry

import (
	"math"
	"slices"
)

// PinchOut returns the least inset, up to limit, at which the outline vanishes or
// falls in two, and limit where it does neither. The outline must be simple.
//
// An inset touches itself where a disc that lies inside the outline touches it at
// both ends of a diameter: where a common normal of two segments is as long as
// the disc is wide. There it falls in two, or a narrow end of it is gone. Between
// those it is one outline or none, so whether it vanishes is found by halving, to
// 1e-7 mm, since an outline of that size can no longer be told from a point.
func (o Outline) PinchOut(limit float64) float64 {
	if o.Len() == 0 || !(limit > 0) {
		return 0
	}
	pieces := func(d float64) int {
		loops, err := o.Inset(d)
		if err != nil {
			return 1
		}
		return len(loops)
	}
	last := 0.0
	for _, neck := range append(o.necks(limit), limit) {
		if pieces(neck-10*tied) == 0 {
			return vanishing(last, neck, pieces)
		}
		if neck == limit || pieces(neck+justPast) != 1 {
			return neck
		}
		last = neck
	}
	return limit
}

// justPast is how far beyond a neck, in millimetres, it is looked whether the
// outline has fallen in two: far enough for the parts to be apart, for arcs of up
// to a metre by their sagitta, and less than any part that matters.
const justPast = 1e-7

// vanishing returns the distance between low and high from which there are no
// pieces.
func vanishing(low, high float64, pieces func(float64) int) float64 {
	for high-low > onSegment/2 {
		if middle := (low + high) / 2; pieces(middle) > 0 {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// necks returns, in order, half the lengths up to limit of the common normals of
// two segments whose discs lie inside.
func (o Outline) necks(limit float64) []float64 {
	t := newTree(o.curves())
	var halves []float64
	try := func(a, b Point) {
		half, middle := root(b.Sub(a))/2, a.Toward(b, 0.5)
		if half >= limit || half <= tied || slices.Contains(halves, half) {
			return
		}
		clear := t.about(middle, half, func(k int) bool { return t.curves[k].dist(middle) >= half-tooNear })
		if clear && o.Contains(middle) {
			halves = append(halves, half)
		}
	}
	wide := make([]curve, len(t.curves))
	for i, c := range t.curves {
		wide[i] = c
		wide[i].box = c.box.Grow(limit)
	}
	newTree(wide).pairs(func(i, j int) bool {
		t.curves[i].normals(&t.curves[j], try)
		return true
	})
	slices.Sort(halves)
	return halves
}

// normals calls visit with the ends of the common normals of two curves, an end
// of a curve counting as a place where any direction is normal. Parallel curves
// have a stretch of them, for which its ends and its middle stand.
func (c *curve) normals(r *curve, visit func(a, b Point)) {
	on := c.ends(r, visit)
	back := r.ends(c, func(a, b Point) { visit(b, a) })
	switch {
	case c.round && r.round:
		out := r.centre.Sub(c.centre)
		if root(out) <= onSegment {
			c.middles(r, on, back, visit)
			return
		}
		for _, p := range c.towards(r.centre) {
			for _, q := range r.towards(c.centre) {
				visit(p, q)
			}
		}
	case c.round:
		foot := r.nearest(c.centre)
		for _, p := range c.towards(foot) {
			visit(p, foot)
		}
	case r.round:
		foot := c.nearest(r.centre)
		for _, q := range r.towards(foot) {
			visit(foot, q)
		}
	default:
		if math.Abs(c.travel(c.From).Cross(r.travel(r.From))) <= smoothTurn {
			c.middles(r, on, back, visit)
		}
	}
}

// ends visits the common normals from the ends of c, and returns where those meet
// the other curve.
func (c *curve) ends(r *curve, visit func(a, b Point)) (facing []Point) {
	for _, p := range [...]Point{c.From, c.To} {
		for _, q := range r.feet(p) {
			visit(p, q)
			facing = append(facing, q)
		}
		visit(p, r.From)
		visit(p, r.To)
	}
	return facing
}

// middles visits the middle of the stretch in which two parallel curves face each
// other, whose ends are among theirs and the feet of the other's on each.
func (c *curve) middles(r *curve, on, back []Point, visit func(a, b Point)) {
	for _, q := range on {
		back = append(back, c.nearest(q))
	}
	for i, p := range back {
		for _, q := range back[:i] {
			m := c.nearest(p.Toward(q, 0.5))
			visit(m, r.nearest(m))
		}
	}
}

// feet returns the points within the segment at which the way to p is normal.
func (c *curve) feet(p Point) []Point {
	if !c.round {
		return []Point{c.nearest(p)}
	}
	feet := c.towards(p)
	return feet[:]
}
