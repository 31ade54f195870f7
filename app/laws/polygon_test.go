package laws

import (
	"math"

	"tipline/geometry"
)

// polygon is an outline as a chain of many short lines: what the closed forms over
// lines and arcs are measured against.
type polygon []geometry.Point

// dense cuts every arc of an outline into n lines or more, by its angle and centre, and every
// line where it comes nearest to the origin.
func dense(o geometry.Outline, n int) polygon {
	p := make(polygon, 0, o.Len()*n)
	for i := range o.Len() {
		p = p.along(o.Segment(i), n)
	}
	return p
}

// along goes on along a segment, from its beginning to short of its end.
func (p polygon) along(s geometry.Segment, n int) polygon {
	p = append(p, s.From)
	chord := s.To.Sub(s.From)
	if s.Bulge == 0 {
		at := -(s.From.X*chord.X + s.From.Y*chord.Y) / (chord.X*chord.X + chord.Y*chord.Y)
		if at > 0 && at < 1 {
			p = append(p, geometry.Point{X: s.From.X + at*chord.X, Y: s.From.Y + at*chord.Y})
		}
		return p
	}
	n *= 1 + int(min(math.Abs(s.Bulge), 8)) // more than half a turn takes more lines
	// The arc's points by the share of its sweep on the circle, from its chord: a rise of
	// bulge × chord/2 in the middle.
	half := 2 * math.Atan(s.Bulge)
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
	return p
}

// refined is an outline as two polygons, the second of which cuts every arc into half as
// many lines as the first.
type refined struct{ fine, coarse polygon }

// lines is how many lines the arcs of a refined outline are cut into at least.
const lines = 32

func refine(o geometry.Outline) refined {
	r := refined{make(polygon, 0, o.Len()*lines), make(polygon, 0, o.Len()*lines/2)}
	for i := range o.Len() {
		s, from, step := o.Segment(i), len(r.fine), 1
		if s.Bulge != 0 {
			step = 2
		}
		r.fine = r.fine.along(s, lines)
		for k := from; k < len(r.fine); k += step {
			r.coarse = append(r.coarse, r.fine[k])
		}
	}
	return r
}

// measured is what polygons of an outline come to as they grow denser: the error of one
// falls with the square of the lines that an arc is cut into, so that two of them tell
// what is left of it (Richardson's extrapolation).
func (r refined) measured(of func(polygon) float64) float64 {
	return (4*of(r.fine) - of(r.coarse)) / 3
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
