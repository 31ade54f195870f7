package geometry

import "errors"

// Vertex is a corner of an outline or chain with the bulge of the segment that
// leaves it and the quantity that made that segment.
type Vertex struct {
	Point
	Bulge    float64
	Quantity Quantity
}

// Outline is a closed chain of lines and arcs, closed by construction: the last
// vertex's segment returns to the first. It may run either way round and may
// cross itself; Simple tells. The zero Outline is empty.
type Outline struct{ vertices []Vertex }

// NewOutline returns the outline through the vertices. It refuses fewer than two
// vertices, two that form no area, coordinates that are no numbers or beyond all
// bounds, an arc that turns a full circle, and neighbours that coincide.
func NewOutline(vertices []Vertex) (Outline, error) {
	if len(vertices) < 2 {
		return Outline{}, errors.New("outline: fewer than two vertices")
	}
	if err := checkVertices(vertices, true); err != nil {
		return Outline{}, err
	}
	return Outline{append([]Vertex(nil), vertices...)}, nil
}

// Circle returns the full circle about c as two half arcs, anticlockwise from
// its rightmost point. It refuses a radius that is not more than nothing, or so little
// that c's own digits end before it, and what lies farther off than a vertex may.
func Circle(c Point, radius float64, q Quantity) (Outline, error) {
	east, west := Point{c.X + radius, c.Y}, Point{c.X - radius, c.Y}
	if !(east.X > west.X) || !placed(east) || !placed(west) {
		return Outline{}, AtLeast(q, radius, 0, "circle.radius")
	}
	return Outline{[]Vertex{{east, 1, q}, {west, 1, q}}}, nil
}

// Len returns the number of vertices, which is the number of segments.
func (o Outline) Len() int { return len(o.vertices) }

// Vertex returns vertex i; i counts round and may be any whole number.
func (o Outline) Vertex(i int) Vertex {
	n := len(o.vertices)
	return o.vertices[(i%n+n)%n]
}

// Segment returns the segment that leaves vertex i.
func (o Outline) Segment(i int) Segment {
	v := o.Vertex(i)
	return Segment{v.Point, o.Vertex(i + 1).Point, v.Bulge, v.Quantity}
}

// Vertices returns a copy of the vertices.
func (o Outline) Vertices() []Vertex { return append([]Vertex(nil), o.vertices...) }

// Reverse returns the outline run the other way round.
func (o Outline) Reverse() Outline { return Outline{reversed(o.vertices, true)} }

// Rotate returns the outline turned anticlockwise by a about the origin.
func (o Outline) Rotate(a Angle) Outline {
	return Outline{mapped(o.vertices, 1, func(p Point) Point { return p.Rotate(a) })}
}

// Move returns the outline moved by d.
func (o Outline) Move(d Point) Outline {
	return Outline{mapped(o.vertices, 1, func(p Point) Point { return p.Add(d) })}
}

// Mirror returns the outline mirrored left to right; it then runs the other way
// round.
func (o Outline) Mirror() Outline { return Outline{mapped(o.vertices, -1, Point.Mirror)} }

// Scale returns the outline enlarged k > 0 times about the origin.
func (o Outline) Scale(k float64) Outline {
	return Outline{mapped(o.vertices, 1, func(p Point) Point { return p.Times(k) })}
}
