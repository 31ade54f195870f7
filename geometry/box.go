package geometry

import "math"

// Box is an upright rectangle. A Box whose Min lies right of or above its Max is
// empty, and so is NoBox.
type Box struct{ Min, Max Point }

// NoBox returns the empty box, which leaves any box it is united with unchanged.
func NoBox() Box {
	return Box{Point{math.Inf(1), math.Inf(1)}, Point{math.Inf(-1), math.Inf(-1)}}
}

// Empty reports whether the box holds no point.
func (b Box) Empty() bool { return b.Min.X > b.Max.X || b.Min.Y > b.Max.Y }

// Width returns the box's extent in x.
func (b Box) Width() float64 { return b.Max.X - b.Min.X }

// Height returns the box's extent in y.
func (b Box) Height() float64 { return b.Max.Y - b.Min.Y }

// Corners returns the box's corners, anticlockwise from its least point.
func (b Box) Corners() [4]Point {
	return [4]Point{b.Min, {b.Max.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}}
}

// Centre returns the middle of the box.
func (b Box) Centre() Point { return b.Min.Toward(b.Max, 0.5) }

// Union returns the least box that holds both.
func (b Box) Union(c Box) Box {
	return Box{
		Point{min(b.Min.X, c.Min.X), min(b.Min.Y, c.Min.Y)},
		Point{max(b.Max.X, c.Max.X), max(b.Max.Y, c.Max.Y)},
	}
}

// With returns the least box that holds b and p.
func (b Box) With(p Point) Box { return b.Union(Box{p, p}) }

// Grow returns the box with each side moved out by d.
func (b Box) Grow(d float64) Box {
	return Box{Point{b.Min.X - d, b.Min.Y - d}, Point{b.Max.X + d, b.Max.Y + d}}
}

// Contains reports whether p lies in the box or on its edge.
func (b Box) Contains(p Point) bool {
	return p.X >= b.Min.X && p.X <= b.Max.X && p.Y >= b.Min.Y && p.Y <= b.Max.Y
}

// Touches reports whether the boxes share a point.
func (b Box) Touches(c Box) bool {
	return b.Min.X <= c.Max.X && c.Min.X <= b.Max.X && b.Min.Y <= c.Max.Y && c.Min.Y <= b.Max.Y
}

// holds reports whether c lies in b, edges included.
func (b Box) holds(c Box) bool { return b.Contains(c.Min) && b.Contains(c.Max) }
