package geometry

import "math"

// offset is an outline's parallel in the making: every curve on which its points
// may lie, to the left of each segment and round the corners.
type offset struct {
	tree   *tree // of the source's curves
	d      float64
	inward bool // the left is the inside
	parts  []curve
	over   []bool // the parts that may reach over to the right of the source
}

func newOffset(source *tree, d float64, inward bool) *offset {
	n := len(source.curves)
	f := &offset{tree: source, d: d, inward: inward, parts: make([]curve, 0, 2*n), over: make([]bool, 0, 2*n)}
	for i := range n {
		c := &f.tree.curves[i]
		if s, ok := c.parallel(d); ok {
			f.add(s, false)
		}
		f.corner(c, &f.tree.curves[(i+1)%n])
	}
	return f
}

func (f *offset) add(s Segment, over bool) {
	f.parts, f.over = append(f.parts, newCurve(s)), append(f.over, over)
}

// collapsed is the radius in millimetres at which a parallel arc is taken for a
// point: the ends of what it joined then agree within twice that.
const collapsed = 5e-10

// parallel returns the segment's parallel at d to its left, and whether there is
// one: an arc whose centre is nearer than d has none.
func (c *curve) parallel(d float64) (Segment, bool) {
	s := c.Segment
	if c.round && c.locus(d, 1) <= collapsed {
		return s, false
	}
	s.From = s.From.Add(c.leaving().Left().Times(d))
	s.To = s.To.Add(c.arriving().Left().Times(d))
	return s, true
}

// corner adds the arc that rolls round the vertex between a and b where the
// offset would gape there.
func (f *offset) corner(a, b *curve) {
	in, out := a.arriving(), b.leaving()
	if back := in.Dot(out) < 0; in.Cross(out) < 0 || back && in.Cross(out) < smoothTurn {
		f.roll(b.From, in.Left(), out.Left(), a.Quantity, back)
	}
}

// roll adds the arc about v that runs clockwise between two directions.
func (f *offset) roll(v, from, to Point, q Quantity, over bool) {
	p, r := v.Add(from.Times(f.d)), v.Add(to.Times(f.d))
	if p.near(r) {
		return
	}
	turn := float64(from.Angle(to))
	if turn > 0 {
		turn -= 2 * math.Pi
	}
	f.add(Segment{p, r, math.Tan(turn / 4), q}, over)
}

// tooNear is by how much a point of the offset may lie nearer to the source than
// its distance, in millimetres: over rounding, 1e-12 mm, and the changes of
// nudge apart.
const tooNear = 1e-10

// keeps reports whether p, a point of a part, belongs to the offset: no segment
// of the source is nearer than the distance.
func (f *offset) keeps(p Point, over bool) bool {
	clear := f.tree.about(p, f.d, func(i int) bool { return f.tree.curves[i].dist(p) >= f.d-tooNear })
	return clear && (!over || (f.tree.winding(p) != 0) == f.inward)
}
