package cutter

import (
	"fmt"
	"math"

	"tipline/geometry"
)

// Corner is an end point of a measured bit's edge, in the tool frame and in
// millimetres, and the radius of the arc that leads to it from the corner before:
// 0 a line, more than 0 an arc that bulges out of the bit (convex), less than 0
// one that is hollow (concave); the shorter of the two arcs of that radius. What
// leads to the first corner is not read.
type Corner struct{ X, Y, Radius float64 }

// at returns the field of a corner: "x", "y" or "radius" of corner i.
func at(i int, of string) geometry.Quantity {
	return geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].%s", i, of))
}

// fewestCorners is what an edge needs: the front at the shank, the cutting end
// and the back at the shank.
const fewestCorners = 3

// mostCorners is more than anyone measures on a bit: what is worked out of an edge takes
// the longer by the square of them.
const mostCorners = 400

// rounded is how far in mm a radius may fall short of half the way it spans and
// still stand for a half circle: what typing to 0.001 mm takes off.
const rounded = 1e-3

// NewEdge returns the edge of a bit as its maker measured it, from the front at
// the shank, down, round the cutting end and up the back to the shank, so that
// the bit lies to its left. Its pieces carry the field of the corner they lead
// to. A *geometry.Limit names the corner to blame where there are fewer than
// three or more than 400, where two neighbours coincide, where a radius is less than half the way
// between its ends, and where the edge crosses itself or runs the wrong way.
func NewEdge(corners []Corner) (geometry.Chain, error) {
	if n := len(corners); n < fewestCorners {
		return geometry.Chain{}, geometry.AtLeast(at(n, "x"), float64(n), fewestCorners, "cutter.bit-too-few-corners")
	}
	if n := len(corners); n > mostCorners {
		return geometry.Chain{}, geometry.AtMost(at(mostCorners, "x"), float64(n), mostCorners, "cutter.bit-too-many-corners")
	}
	vertices := make([]geometry.Vertex, len(corners))
	for i, c := range corners {
		if err := c.check(i); err != nil {
			return geometry.Chain{}, err
		}
		vertices[i].Point = geometry.Point{X: c.X, Y: c.Y}
		if i == 0 {
			continue
		}
		bulge, err := c.bulgeFrom(vertices[i-1].Point, i)
		if err != nil {
			return geometry.Chain{}, err
		}
		vertices[i-1].Bulge, vertices[i-1].Quantity = bulge, at(i, "x")
	}
	if err := checkRun(vertices); err != nil {
		return geometry.Chain{}, err
	}
	return geometry.NewChain(vertices)
}

// check refuses coordinates that no bit has.
func (c Corner) check(i int) error {
	for _, v := range []struct {
		of    string
		value float64
	}{{"x", c.X}, {"y", c.Y}, {"radius", c.Radius}} {
		if !(math.Abs(v.value) <= geometry.MostLength) {
			return geometry.Between(at(i, v.of), v.value, -geometry.MostLength, geometry.MostLength, "cutter.bit-corner")
		}
	}
	return nil
}

// bulgeFrom returns the bulge of the piece that leads to corner i from the corner
// before.
func (c Corner) bulgeFrom(from geometry.Point, i int) (float64, error) {
	half := from.Dist(geometry.Point{X: c.X, Y: c.Y}) / 2
	switch {
	case 2*half <= coincide:
		return 0, geometry.Refused(at(i, "x"), c.X, "cutter.bit-corners-coincide")
	case c.Radius == 0:
		return 0, nil
	case c.Radius < 0 && c.Radius > -half+rounded:
		return 0, geometry.AtMost(at(i, "radius"), c.Radius, -half, "cutter.bit-hollow-too-small")
	case c.Radius > 0 && c.Radius < half-rounded:
		return 0, geometry.AtLeast(at(i, "radius"), c.Radius, half, "cutter.bit-radius-too-small")
	}
	quarter := math.Asin(math.Min(half/math.Abs(c.Radius), 1)) / 2
	return math.Copysign(math.Tan(quarter), c.Radius), nil
}

// checkRun refuses an edge that crosses or touches itself, also where it is
// closed across the shank, and one that runs with the bit to its right.
func checkRun(vertices []geometry.Vertex) error {
	n := len(vertices)
	piece := func(i int) geometry.Segment {
		return geometry.Segment{From: vertices[i].Point, To: vertices[(i+1)%n].Point, Bulge: vertices[i].Bulge}
	}
	if piece(n-1).Length() <= coincide {
		return geometry.Refused(at(n-1, "x"), vertices[n-1].X, "cutter.bit-crosses-itself")
	}
	for k := 1; k < n; k++ {
		for i := range k {
			if meetsAgain(piece(i), piece(k), i == k-1, i == 0 && k == n-1) {
				field := at(min(k+1, n-1), "x")
				return geometry.Refused(field, vertices[min(k+1, n-1)].X, "cutter.bit-crosses-itself")
			}
		}
	}
	outline, err := geometry.NewOutline(vertices)
	if err != nil {
		return err
	}
	if outline.Area() <= 0 {
		return geometry.Refused(at(n-1, "x"), vertices[n-1].X, "cutter.bit-runs-backwards")
	}
	return nil
}

// meetsAgain reports whether two pieces of a closed run meet otherwise than where
// the first ends and the second begins, if they follow each other, and where the
// second ends and the first begins, if they close the run.
func meetsAgain(a, b geometry.Segment, follows, closes bool) bool {
	for _, m := range geometry.Meet(a, b) {
		joint := follows && m.At.Dist(b.From) <= 2*coincide
		closing := closes && m.At.Dist(a.From) <= 2*coincide
		if !joint && !closing {
			return true
		}
	}
	return false
}

// Corners returns the form's edge as corners to be typed: NewEdge gives the edge
// again. An arc of more than half a circle has a corner in its middle.
func (f Form) Corners() []Corner {
	if f.Edge.Len() == 0 {
		return nil
	}
	start := f.Edge.Vertex(0)
	corners := []Corner{{X: start.X, Y: start.Y}}
	for i := range f.Edge.Len() {
		g := f.Edge.Segment(i)
		a, _ := g.Arc()
		radius := math.Copysign(a.Radius, g.Bulge)
		if math.Abs(g.Bulge) > 1 {
			middle := g.At(0.5)
			corners = append(corners, Corner{middle.X, middle.Y, radius})
		}
		corners = append(corners, Corner{g.To.X, g.To.Y, radius})
	}
	return corners
}
