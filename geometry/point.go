// Package geometry holds the shapes that everything is drawn and worked out with:
// points, angles, lines, arcs, and the chains and outlines made of them, exact
// through turning, mirroring and scaling, with what can be asked of them and done to
// them; and Limit, the error of a value that nothing can be built with.
//
// Lengths are in millimetres, angles in radians. A wheel's centre is the origin, x to
// the right, y up, and 12 o'clock is up.
package geometry

import "math"

// Point is a place, or the way from one place to another, in millimetres: x to
// the right, y up.
type Point struct{ X, Y float64 }

// Polar returns the point at distance r from the origin in direction a.
func Polar(r float64, a Angle) Point {
	sin, cos := math.Sincos(float64(a))
	return Point{r * cos, r * sin}
}

// Add returns p + q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns p − q, the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times returns p stretched k times.
func (p Point) Times(k float64) Point { return Point{k * p.X, k * p.Y} }

// Dot returns the scalar product p·q.
func (p Point) Dot(q Point) float64 { return p.X*q.X + p.Y*q.Y }

// Cross returns the z of p×q: positive when q lies anticlockwise of p.
func (p Point) Cross(q Point) float64 { return p.X*q.Y - p.Y*q.X }

// Norm returns the distance of p from the origin.
func (p Point) Norm() float64 { return length(p.X, p.Y) }

// Dist returns the distance between p and q.
func (p Point) Dist(q Point) float64 { return length(p.X-q.X, p.Y-q.Y) }

// length is math.Hypot at a fraction of its cost wherever the squares neither
// overflow nor lose digits to the smallest numbers there are.
func length(x, y float64) float64 {
	if square := x*x + y*y; square > 0x1p-900 && square < 0x1p900 {
		return math.Sqrt(square)
	}
	return math.Hypot(x, y)
}

// Left returns p turned a quarter anticlockwise.
func (p Point) Left() Point { return Point{-p.Y, p.X} }

// Direction returns the direction of p from the origin, in (−π, π]; the origin
// itself has direction 0.
func (p Point) Direction() Angle { return Angle(math.Atan2(p.Y, p.X)) }

// Toward returns the point a share t of the way from p to q; t outside 0 to 1
// goes beyond them.
func (p Point) Toward(q Point, t float64) Point {
	return Point{p.X + t*(q.X-p.X), p.Y + t*(q.Y-p.Y)}
}

// Rotate returns p turned anticlockwise by a about the origin.
func (p Point) Rotate(a Angle) Point {
	sin, cos := math.Sincos(float64(a))
	return Point{cos*p.X - sin*p.Y, sin*p.X + cos*p.Y}
}

// Move returns p moved by d.
func (p Point) Move(d Point) Point { return p.Add(d) }

// Mirror returns p mirrored left to right, in the y axis.
func (p Point) Mirror() Point { return Point{-p.X, p.Y} }

// Scale returns p enlarged k times about the origin.
func (p Point) Scale(k float64) Point { return p.Times(k) }

// Finite reports whether both coordinates are ordinary numbers.
func (p Point) Finite() bool { return finite(p.X) && finite(p.Y) }

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
