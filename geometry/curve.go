package geometry

import "math"

// curve is a segment made ready for many questions: its circle and its box are
// worked out once, and nothing asked of it needs an angle.
type curve struct {
	Segment
	round  bool
	out    Point // from the centre to From
	centre Point
	radius float64
	box    Box // holds every point within onSegment of the segment
}

func newCurve(s Segment) curve {
	c := tight(s)
	c.box = c.box.Grow(onSegment)
	return c
}

// tight returns the curve with the least box that holds it.
func tight(s Segment) curve {
	c := boxless(s)
	c.box = between(s.From, s.To)
	if c.round {
		c.box = c.bulging(c.box)
	}
	return c
}

// boxless returns the curve with its circle alone, for a single question.
func boxless(s Segment) curve {
	c := curve{Segment: s}
	if !s.IsLine() {
		c.round = true
		c.out, c.radius = circleOf(s)
		c.centre = s.From.Sub(c.out)
	}
	return c
}

// circleOf returns the way from the centre of an arc's circle to its start, and
// its radius.
func circleOf(s Segment) (out Point, radius float64) {
	b := s.Bulge
	chord := s.To.Sub(s.From)
	out = chord.Times(-0.5).Sub(chord.Left().Times((1 - b*b) / (4 * b)))
	return out, root(chord) * (1 + b*b) / (4 * math.Abs(b))
}

// bulging returns the box of the arc's ends widened to the quarter points of its
// circle that it spans.
func (c *curve) bulging(b Box) Box {
	if x := c.From.X + c.rise(c.out.X, c.out.Y); c.reaches(Point{x, c.centre.Y}) {
		b.Max.X = max(b.Max.X, x)
	}
	if x := c.From.X - c.rise(-c.out.X, c.out.Y); c.reaches(Point{x, c.centre.Y}) {
		b.Min.X = min(b.Min.X, x)
	}
	if y := c.From.Y + c.rise(c.out.Y, c.out.X); c.reaches(Point{c.centre.X, y}) {
		b.Max.Y = max(b.Max.Y, y)
	}
	if y := c.From.Y - c.rise(-c.out.Y, c.out.X); c.reaches(Point{c.centre.X, y}) {
		b.Min.Y = min(b.Min.Y, y)
	}
	return b
}

// rise returns how far a circle's quarter point lies beyond a point of it that is along
// and across from the centre: r − along, which equals across²/(r + along) and has its
// digits whole so where the two are nearly one.
func (c *curve) rise(along, across float64) float64 {
	if along > 0 {
		return across * across / (c.radius + along)
	}
	return c.radius - along
}

// between returns the least box that holds two points.
func between(p, q Point) Box {
	return Box{Point{min(p.X, q.X), min(p.Y, q.Y)}, Point{max(p.X, q.X), max(p.Y, q.Y)}}
}

// bowed is the bulge up to which an arc's ends are told along its chord and from
// there on across it: of a flat arc all points lie as good as on the chord, of a half
// circle's ends both within rounding of either. An arc of it leaves its chord at 28°.
const bowed = 0.25

// reaches reports whether an arc spans the direction of p from its centre, for a
// p on its circle: the arc lies on one side of its chord, and a flat one between its
// ends on the nearer half of its circle.
func (c *curve) reaches(p Point) bool {
	chord, way, b := c.To.Sub(c.From), p.Sub(c.From), c.Bulge
	side := chord.Cross(way)
	if math.Abs(b) > bowed {
		return side*b <= 0
	}
	along, whole := chord.Dot(way), chord.Dot(chord)
	return along >= 0 && along <= whole && 4*side*b <= whole*(1-b*b)
}

// dist returns the distance of p from the segment.
func (c *curve) dist(p Point) float64 {
	if !c.round {
		chord, way := c.To.Sub(c.From), p.Sub(c.From)
		t := way.Dot(chord) / chord.Dot(chord)
		switch {
		case t <= 0:
			return root(way)
		case t >= 1:
			return root(p.Sub(c.To))
		}
		return math.Abs(chord.Cross(way)) / root(chord)
	}
	if p.Sub(c.From).Add(c.out) == (Point{}) || c.reaches(c.facing(p)) {
		return math.Abs(c.height(p))
	}
	return math.Min(root(p.Sub(c.From)), root(p.Sub(c.To)))
}

// root is the length of p; unlike Norm it need not fear overflow, for
// coordinates are checked to be far from it.
func root(p Point) float64 { return math.Sqrt(p.X*p.X + p.Y*p.Y) }

// height returns how far p lies outside the arc's circle, negative inside: its
// power over its distance plus the radius, taken from the arc's start so that a
// large radius costs no digits.
func (c *curve) height(p Point) float64 {
	way := p.Sub(c.From)
	power := way.Dot(way) + 2*way.Dot(c.out)
	return power / (root(way.Add(c.out)) + c.radius)
}

// facing returns the point of the arc's circle nearest to p, which is not its centre. p
// is moved by its height, so that a far centre's rounding is not in it.
func (c *curve) facing(p Point) Point {
	way := p.Sub(c.From).Add(c.out)
	return p.Sub(way.Times(c.height(p) / root(way)))
}

// holds reports whether p, on the endless line or circle, lies on the segment or
// within onSegment of its ends. Far from an arc's chord its box tells, where p was
// rounded off so large a circle.
func (c *curve) holds(p Point) bool {
	if c.From.near(p) || c.To.near(p) {
		return true
	}
	if c.round {
		return c.reaches(p) && c.box.Contains(p)
	}
	chord := c.To.Sub(c.From)
	t := p.Sub(c.From).Dot(chord)
	return t > 0 && t < chord.Dot(chord)
}

// near reports whether p and q are one point within onSegment.
func (p Point) near(q Point) bool {
	dx, dy := p.X-q.X, p.Y-q.Y
	return dx*dx+dy*dy <= onSegment*onSegment
}

// share returns how far along the segment p, a point on it, lies: 0 to 1.
func (c *curve) share(p Point) float64 {
	switch {
	case c.From.near(p):
		return 0
	case c.To.near(p):
		return 1
	case !c.round:
		chord := c.To.Sub(c.From)
		return math.Min(1, math.Max(0, p.Sub(c.From).Dot(chord)/chord.Dot(chord)))
	case c.radius > distant: // by the chord to p, since a far centre tells no angles
		return math.Min(1, math.Asin(math.Min(1, root(p.Sub(c.From))/(2*c.radius)))/(2*math.Atan(math.Abs(c.Bulge))))
	}
	way := p.Sub(c.centre)
	turn := Angle(math.Atan2(c.out.Cross(way), c.out.Dot(way)))
	if c.Bulge < 0 {
		turn = -turn
	}
	return math.Min(1, float64(turn.Turn())/(4*math.Atan(math.Abs(c.Bulge))))
}

// leaving returns the unit direction of travel at the start.
func (c *curve) leaving() Point { return c.travel(c.From) }

// arriving returns the unit direction of travel at the end.
func (c *curve) arriving() Point { return c.travel(c.To) }

// travel returns the unit direction of travel at p on the segment.
func (c *curve) travel(p Point) Point {
	if !c.round {
		chord := c.To.Sub(c.From)
		return chord.Times(1 / root(chord))
	}
	out := p.Sub(c.From).Add(c.out)
	return out.Left().Times(math.Copysign(1/root(out), c.Bulge))
}

// curves returns the outline's segments made ready.
func (o Outline) curves() []curve {
	cs := make([]curve, o.Len())
	for i, v := range o.vertices {
		cs[i] = newCurve(Segment{v.Point, o.vertices[(i+1)%len(cs)].Point, v.Bulge, v.Quantity})
	}
	return cs
}
