package geometry

import "math"

// At returns the point a share t of the way along the segment, by length. From the
// start of an arc that turns by θ the chord to it is sin(tθ/2)/sin(θ/2) of the whole
// and turned back from it by (1−t)θ/2 (the angle between chord and tangent, plain
// geometry): this holds for the flattest arc, whose centre is too far off to tell.
func (s Segment) At(t float64) Point {
	half := Angle(2 * math.Atan(s.Bulge))
	if half*half == 0 {
		return s.From.Toward(s.To, t)
	}
	chord := s.To.Sub(s.From).Rotate((Angle(t) - 1) * half)
	return s.From.Add(chord.Times(math.Sin(t*float64(half)) / math.Sin(float64(half))))
}

// Tangent returns the unit direction of travel a share t of the way along.
func (s Segment) Tangent(t float64) Point {
	if a, ok := s.Arc(); ok {
		turn := math.Copysign(1, float64(a.Sweep))
		return Polar(1, a.Start+Angle(t)*a.Sweep).Left().Times(turn)
	}
	d := s.To.Sub(s.From)
	return d.Times(1 / d.Norm())
}

// Part returns the piece of the segment between the shares t0 < t1 of its length.
func (s Segment) Part(t0, t1 float64) Segment {
	from, to := s.From, s.To
	if t0 != 0 {
		from = s.At(t0)
	}
	if t1 != 1 {
		to = s.At(t1)
	}
	bulge := s.Bulge
	if bulge != 0 {
		bulge = math.Tan(math.Atan(bulge) * (t1 - t0))
	}
	return Segment{from, to, bulge, s.Quantity}
}

// Nearest returns the segment's point nearest to p and its share along it.
func (s Segment) Nearest(p Point) (Point, float64) {
	c := boxless(s)
	q := c.nearest(p)
	return q, c.share(q)
}

// Dist returns the distance of p from the segment.
func (s Segment) Dist(p Point) float64 {
	c := boxless(s)
	return p.Dist(c.nearest(p))
}

// Bounds returns the least box that holds the segment.
func (s Segment) Bounds() Box {
	c := tight(s)
	return c.box
}

// Bounds returns the least box that holds the outline; empty for none.
func (o Outline) Bounds() Box {
	b := NoBox()
	for _, v := range o.vertices {
		b = b.With(v.Point)
	}
	o.each(func(from, to Point, bulge float64) {
		b = b.withArc(Segment{From: from, To: to, Bulge: bulge})
	})
	return b
}

// Bounds returns the least box that holds the chain; empty for none.
func (c Chain) Bounds() Box {
	b := NoBox()
	for i := range c.Len() {
		b = b.Union(c.Segment(i).Bounds())
	}
	return b
}

// withArc returns the least box that holds b and a segment whose ends it holds.
// An arc of at most a half circle lies within its sagitta, bulge·chord/2, of its
// chord, so most need no second look.
func (b Box) withArc(s Segment) Box {
	rise := math.Abs(s.Bulge)
	if rise == 0 {
		return b
	}
	reach := rise * (math.Abs(s.To.X-s.From.X) + math.Abs(s.To.Y-s.From.Y)) / 2
	if rise <= 1 && b.Grow(-reach).Contains(s.From) && b.Grow(-reach).Contains(s.To) {
		return b
	}
	return b.Union(s.Bounds())
}

// Length returns the length round the outline.
func (o Outline) Length() float64 { return lengthOf(o.Len(), o.Segment) }

// Length returns the length along the chain.
func (c Chain) Length() float64 { return lengthOf(c.Len(), c.Segment) }

func lengthOf(n int, segment func(int) Segment) float64 {
	l := 0.0
	for i := range n {
		l += segment(i).Length()
	}
	return l
}

// Nearest returns the outline's point nearest to p, and the segment it lies on.
func (o Outline) Nearest(p Point) (Point, int) { return nearestOf(o.Len(), o.Segment, p) }

// Margin returns how far inside the outline p lies; negative outside it.
func (o Outline) Margin(p Point) float64 {
	q, _ := o.Nearest(p)
	if o.Contains(p) {
		return p.Dist(q)
	}
	return -p.Dist(q)
}

// Nearest returns the chain's point nearest to p, and the segment it lies on.
func (c Chain) Nearest(p Point) (Point, int) { return nearestOf(c.Len(), c.Segment, p) }

func nearestOf(n int, segment func(int) Segment, p Point) (Point, int) {
	var best Point
	at, least := -1, math.Inf(1)
	for i := range n {
		if q, _ := segment(i).Nearest(p); p.Dist(q) < least {
			best, at, least = q, i, p.Dist(q)
		}
	}
	return best, at
}
