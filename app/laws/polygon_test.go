package laws

import (
	"math"

	"tipline/geometry"
)

// polygon is an outline as a chain of many short lines: what the closed forms over
// lines and arcs are measured against.
type polygon []geometry.Point

// dense cuts every arc of an outline into n lines or more, by its angle and centre.
func dense(o geometry.Outline, n int) polygon {
	var p polygon
	for i := range o.Len() {
		s := o.Segment(i)
		p = append(p, s.From)
		if s.Bulge == 0 {
			continue
		}
		// The arc's points by the share of its sweep on the circle, from its chord: a
		// rise of bulge × chord/2 in the middle.
		chord, half := s.To.Sub(s.From), 2*math.Atan(s.Bulge)
		for k := 1; k < n; k++ {
			t := float64(k) / float64(n)
			length := t
			if math.Abs(half) > 1e-9 {
				length = math.Sin(t*half) / math.Sin(half)
			}
			sin, cos := math.Sincos((t - 1) * half)
			p = append(p, geometry.Point{
				X: s.From.X + length*(cos*chord.X-sin*chord.Y), Y: s.From.Y + length*(sin*chord.X+cos*chord.Y),
			})
		}
	}
	return p
}

// measured is what polygons of an outline come to as they grow denser: the error of one
// falls with the square of the lines that an arc is cut into, so that two of them tell
// what is left of it (Richardson's extrapolation).
func measured(o geometry.Outline, of func(polygon) float64) float64 {
	return (4*of(dense(o, 32)) - of(dense(o, 16))) / 3
}

// area is the shoelace's, and polar ∫ r² dA about the origin, triangle by triangle.
func (p polygon) area() float64 {
	sum := 0.0
	for i, a := range p {
		b := p[(i+1)%len(p)]
		sum += (a.X*b.Y - a.Y*b.X) / 2
	}
	return sum
}

func (p polygon) polar() float64 {
	sum := 0.0
	for i, a := range p {
		b := p[(i+1)%len(p)]
		sum += (a.X*b.Y - a.Y*b.X) * (a.X*a.X + a.X*b.X + b.X*b.X + a.Y*a.Y + a.Y*b.Y + b.Y*b.Y) / 12
	}
	return sum
}

// reach returns the least and greatest distance of the corners from the origin.
func (p polygon) reach() (least, most float64) {
	least = math.Inf(1)
	for _, at := range p {
		r := math.Hypot(at.X, at.Y)
		least, most = math.Min(least, r), math.Max(most, r)
	}
	return least, most
}

// inside reports whether a point lies within, by the winding of the corners about it.
func (p polygon) inside(at geometry.Point) bool {
	turns := 0.0
	for i, a := range p {
		b := p[(i+1)%len(p)]
		u, w := a.Sub(at), b.Sub(at)
		turns += math.Atan2(u.X*w.Y-u.Y*w.X, u.X*w.X+u.Y*w.Y)
	}
	return math.Abs(turns) > math.Pi
}
