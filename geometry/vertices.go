package geometry

import (
	"fmt"
	"math"
)

// farthest is how far from the origin, in millimetres along an axis, a vertex may lie:
// even of the roundest arc, 1e16 times as large as its chord, the moments, fourth powers
// of lengths, are numbers then.
const farthest = 1e50

// placed reports whether a vertex may lie at p.
func placed(p Point) bool { return math.Abs(p.X) <= farthest && math.Abs(p.Y) <= farthest }

// checkVertices refuses vertices that no outline or chain may have.
func checkVertices(vs []Vertex, closed bool) error {
	for i, v := range vs {
		if !placed(v.Point) || !finite(v.Bulge) {
			return fmt.Errorf("outline: vertex %d is nowhere", i)
		}
		if i+1 == len(vs) && !closed {
			break
		}
		if math.Abs(v.Bulge) > roundest {
			return fmt.Errorf("outline: the arc from vertex %d turns a full circle", i)
		}
		if v.Point == vs[(i+1)%len(vs)].Point {
			return fmt.Errorf("outline: vertices %d and %d coincide", i, (i+1)%len(vs))
		}
	}
	if closed && len(vs) == 2 && math.Abs(vs[0].Bulge+vs[1].Bulge) < flattest {
		return fmt.Errorf("outline: two vertices enclose nothing")
	}
	return nil
}

// mapped returns the vertices moved by f, which keeps circles circles; turn is
// −1 where it mirrors.
func mapped(vs []Vertex, turn float64, f func(Point) Point) []Vertex {
	out := make([]Vertex, len(vs))
	for i, v := range vs {
		out[i] = Vertex{f(v.Point), turn * v.Bulge, v.Quantity}
	}
	return out
}

// reversed returns the vertices run the other way; each bulge and quantity moves
// to the vertex its segment now leaves.
func reversed(vs []Vertex, closed bool) []Vertex {
	n := len(vs)
	out := make([]Vertex, n)
	for i := range vs {
		j := n - 1 - i
		out[i].Point = vs[j].Point
		if from := (j - 1 + n) % n; closed || j > 0 {
			out[i].Bulge, out[i].Quantity = -vs[from].Bulge, vs[from].Quantity
		}
	}
	return out
}
