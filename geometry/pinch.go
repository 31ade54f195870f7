package geometry

import "math"

// PinchOut returns the least inset, up to limit, at which the outline vanishes or
// falls in two, and limit where it does neither. The outline must be simple.
//
// An inset touches itself where a disc that lies inside the outline touches it at
// both ends of a diameter: where a common normal of two segments is as long as
// the disc is wide. Until the least of those the inset is one outline or none,
// so whether it vanishes before is found by halving, to 1e-8 mm, since an outline
// of that size can no longer be told from a point.
func (o Outline) PinchOut(limit float64) float64 {
	if o.Len() == 0 || !(limit > 0) {
		return 0
	}
	neck := o.neck(limit)
	there := func(d float64) bool {
		loops, err := o.Inset(d)
		return err != nil || len(loops) > 0
	}
	if there(neck - 10*tied) {
		return neck
	}
	low, high := 0.0, neck
	for high-low > onSegment/2 {
		if middle := (low + high) / 2; there(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	return high
}

// neck returns half the least common normal of two segments whose disc lies
// inside, and limit where none is shorter.
func (o Outline) neck(limit float64) float64 {
	t := newTree(o.curves())
	least := limit
	try := func(a, b Point) {
		half, middle := root(b.Sub(a))/2, a.Toward(b, 0.5)
		if half >= least || half <= tied {
			return
		}
		clear := t.about(middle, half, func(k int) bool { return t.curves[k].dist(middle) >= half-onSegment })
		if clear && o.Contains(middle) {
			least = half
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
	return least
}

// normals calls visit with the ends of the common normals of two curves, an end
// of a curve counting as a place where any direction is normal. Parallel curves
// have a stretch of them, for which its ends and its middle stand.
func (c *curve) normals(r *curve, visit func(a, b Point)) {
	ends := func(c, r *curve, visit func(a, b Point)) (facing []Point) {
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
	on := ends(c, r, visit)
	back := ends(r, c, func(a, b Point) { visit(b, a) })
	switch {
	case c.round && r.round:
		out := r.centre.Sub(c.centre)
		if root(out) <= onSegment {
			c.middles(r, on, back, visit)
			return
		}
		for _, p := range c.towards(out) {
			for _, q := range r.towards(out) {
				visit(p, q)
			}
		}
	case c.round:
		foot := r.nearest(c.centre)
		for _, p := range c.towards(foot.Sub(c.centre)) {
			visit(p, foot)
		}
	case r.round:
		foot := c.nearest(r.centre)
		for _, q := range r.towards(foot.Sub(r.centre)) {
			visit(foot, q)
		}
	default:
		if math.Abs(c.travel(c.From).Cross(r.travel(r.From))) <= smoothTurn {
			c.middles(r, on, back, visit)
		}
	}
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
	feet := c.towards(p.Sub(c.centre))
	return feet[:]
}
