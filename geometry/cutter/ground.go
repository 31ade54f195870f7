package cutter

import (
	"math"

	"tipline/geometry"
)

// Ground is what a bit cuts as it was really ground, at the setting that was
// worked out for the form it should have: the same set-over, and the same infeed
// from the bit's own first touch.
type Ground struct {
	// Form is the measured edge, moved so that its lowest point is y = 0; x is as
	// it was measured.
	Form Form
	// Cut is what the bit leaves: its own TouchHeight, Land (negative where the
	// teeth grow shorter), RootRadius; no BackRadius and BackAngle.
	Cut Cut
	// Lift is how far up the measured edge lies when it is drawn over the wanted
	// form with both at depth in the same wheel.
	Lift float64

	Worst Deviation   // the greatest deviation of the flanks, by size
	Along []Deviation // along the wanted flanks, from the front tip to the back tip

	Best          float64   // the infeed at which the greatest deviation is least
	BestDeviation Deviation // the greatest deviation there
	BestLand      float64   // the land there

	// Undercut holds the places, in the measured edge's coordinates of Form,
	// inside the blank at depth, where the edge turns back under itself: no plunge
	// cuts the walls above them. The relieved front of a pointed form is none.
	Undercut []geometry.Point
}

// Deviation is how far the tooth flank that a bit leaves lies from the wanted one
// at a place: metal left on is positive, metal missing negative, by the shortest
// way, in mm.
type Deviation struct {
	At  geometry.Point // in the wanted form's tool frame, on its edge or on what the bit leaves
	Off float64
}

// Ground works out what a measured edge cuts at the cut's setting. The edge is
// one that NewEdge gives, in the tool frame: its x = 0 stands where the wanted
// form's stands, its y may start anywhere. Above its ends it is taken to go on
// along its tangents where they lead outwards at 45° or steeper, and straight up
// elsewhere.
//
// What is compared are the flanks: the wanted edge from tip to tip without its
// floor, whose depth RootRadius tells. A *geometry.Limit on a corner says that
// the edge misses the blank, cuts to its middle, or ends inside the blank.
func (c Cut) Ground(edge geometry.Chain) (Ground, error) {
	if edge.Len() == 0 {
		return Ground{}, ErrNoSpace
	}
	lowest := edge.Bounds().Min.Y
	edge = edge.Move(geometry.Point{Y: -lowest})
	seen := shadeOf(edge)
	cut := c.asGround(edge, seen)
	if err := cut.checkGround(edge, lowest); err != nil {
		return Ground{}, err
	}
	g := Ground{Form: cut.Form, Cut: cut, Lift: cut.Height() - c.Height()}
	for _, h := range seen.hidden() {
		if !(h.front && c.Form.fronted()) && cut.inBlank(h.turn()) {
			g.Undercut = append(g.Undercut, h.turn())
		}
	}
	k := newComparison(c, cut)
	g.Along, g.Worst = k.along(g.Lift), k.worst(cut.Infeed)
	g.Best, g.BestDeviation = k.nearest(g.Worst)
	g.BestLand = cut.LandAt(g.Best)
	return g, nil
}

// asGround returns the cut that an edge makes at the setting.
func (c Cut) asGround(edge geometry.Chain, seen shade) Cut {
	top := math.Min(edge.Vertex(0).Y, edge.Vertex(edge.Len()).Y)
	g := Cut{
		Form:  Form{Edge: edge, StockWidth: c.Form.StockWidth, StockFront: c.Form.StockFront, Top: top},
		Count: c.Count, TipRadius: c.TipRadius, SetOver: c.SetOver, Undercut: c.Undercut, Infeed: c.Infeed,
		swept: seen.swept(edge, 8*c.TipRadius),
	}
	g.TouchHeight = g.swept.touch(g.SetOver, g.TipRadius)
	g.RootRadius = g.swept.nearest(g.SetOver, g.Height(), g.TipRadius)
	g.Land = g.LandAt(g.Infeed)
	if math.Abs(g.Land) < noLand {
		g.Land = 0
	}
	return g
}

// fronted reports whether the form has a front edge that is no part of what it
// leaves: a pointed form's, which may lean back out of the way of the face.
func (f Form) fronted() bool { return f.Edge.Len() > 0 && f.Edge.Segment(0).Quantity == FrontRelief }

// inBlank reports whether a point of the form lies inside the blank at depth.
func (c Cut) inBlank(p geometry.Point) bool {
	return p.Dist(geometry.Point{X: c.SetOver, Y: -c.Height()}) < c.TipRadius-hiddenBy
}

// checkGround refuses an edge that misses the blank, that cuts to its middle, or
// that ends inside it. It was typed with its lowest point at height base.
func (c Cut) checkGround(edge geometry.Chain, base float64) error {
	lowest := lowestCorner(edge)
	x := edge.Vertex(lowest).X
	if math.IsInf(c.TouchHeight, -1) {
		return geometry.Between(at(lowest, "x"), x, c.SetOver-c.TipRadius, c.SetOver+c.TipRadius, "cutter.bit-off-the-blank")
	}
	if c.RootRadius < shallowestCut*c.TipRadius {
		return geometry.Refused(at(lowest, "x"), x, "cutter.bit-too-deep")
	}
	for _, i := range []int{0, edge.Len()} {
		v := edge.Vertex(i)
		if w := v.X - c.SetOver; c.inBlank(v.Point) {
			least := math.Sqrt(c.TipRadius*c.TipRadius-w*w) - c.Height()
			return geometry.AtLeast(at(i, "y"), base+v.Y, base+least, "cutter.bit-ends-in-the-blank")
		}
	}
	return nil
}

// lowestCorner returns the end point of the edge's pieces that is lowest.
func lowestCorner(edge geometry.Chain) int {
	lowest := 0
	for i := range edge.Len() + 1 {
		if edge.Vertex(i).Y < edge.Vertex(lowest).Y {
			lowest = i
		}
	}
	return lowest
}
