package geometry

import "errors"

// Chain is an open run of lines and arcs; the last vertex's bulge means nothing.
// The zero Chain is empty.
type Chain struct{ vertices []Vertex }

// NewChain returns the chain through the vertices. It refuses fewer than two
// vertices, coordinates that are no numbers or beyond all bounds, an arc that turns a
// full circle, and neighbours that coincide.
func NewChain(vertices []Vertex) (Chain, error) {
	if len(vertices) < 2 {
		return Chain{}, errors.New("chain: fewer than two vertices")
	}
	if err := checkVertices(vertices, false); err != nil {
		return Chain{}, err
	}
	return Chain{append([]Vertex(nil), vertices...)}, nil
}

// ChainOf returns one segment as a chain.
func ChainOf(s Segment) Chain {
	return Chain{[]Vertex{{s.From, s.Bulge, s.Quantity}, {Point: s.To}}}
}

// Len returns the number of segments.
func (c Chain) Len() int { return max(len(c.vertices)-1, 0) }

// Vertex returns vertex i, 0 to Len.
func (c Chain) Vertex(i int) Vertex { return c.vertices[i] }

// Segment returns segment i, 0 to Len−1.
func (c Chain) Segment(i int) Segment {
	v := c.vertices[i]
	return Segment{v.Point, c.vertices[i+1].Point, v.Bulge, v.Quantity}
}

// Vertices returns a copy of the vertices.
func (c Chain) Vertices() []Vertex { return append([]Vertex(nil), c.vertices...) }

// Reverse returns the chain run the other way.
func (c Chain) Reverse() Chain { return Chain{reversed(c.vertices, false)} }

// Rotate returns the chain turned anticlockwise by a about the origin.
func (c Chain) Rotate(a Angle) Chain {
	return Chain{mapped(c.vertices, 1, func(p Point) Point { return p.Rotate(a) })}
}

// Move returns the chain moved by d.
func (c Chain) Move(d Point) Chain {
	return Chain{mapped(c.vertices, 1, func(p Point) Point { return p.Add(d) })}
}

// Mirror returns the chain mirrored left to right.
func (c Chain) Mirror() Chain { return Chain{mapped(c.vertices, -1, Point.Mirror)} }

// Scale returns the chain enlarged k > 0 times about the origin.
func (c Chain) Scale(k float64) Chain {
	return Chain{mapped(c.vertices, 1, func(p Point) Point { return p.Times(k) })}
}
