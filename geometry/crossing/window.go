package crossing

import (
	"math"

	"tipline/geometry"
)

// The quantities the pieces of a window's outline carry. A side is made by both of
// the arm's widths and carries the one at the rim.
const (
	ofRim         geometry.Quantity = "crossing.rim"
	ofHub         geometry.Quantity = "crossing.hub"
	ofArmAtRim    geometry.Quantity = "crossing.arm_at_rim"
	ofArmAtHub    geometry.Quantity = "crossing.arm_at_hub"
	ofFilletAtRim geometry.Quantity = "crossing.fillet_at_rim"
	ofFilletAtHub geometry.Quantity = "crossing.fillet_at_hub"
	ofAllowance   geometry.Quantity = "crossing.allowance"
	ofStartHole   geometry.Quantity = "crossing.start_hole"
	ofArms        geometry.Quantity = "crossing.arms"
	ofPlacing     geometry.Quantity = "crossing.placing"
	ofStyle       geometry.Quantity = "crossing.style"
	ofSweep       geometry.Quantity = "crossing.sweep"
	ofWaist       geometry.Quantity = "crossing.waist"
	ofWaistAt     geometry.Quantity = "crossing.waist_at"
	ofOuterRadius geometry.Quantity = "crossing.outer_radius"
	ofBlade       geometry.Quantity = "crossing.blade"
)

// outline returns the window, anticlockwise from where the upper fillet leaves the
// rim: fillet, side, hub, and so back to the rim.
func (o opening) outline(t touches) (geometry.Outline, error) {
	upperRim, lowerRim := t.onOuter(t.upperAtRim.centre), t.onOuter(t.lowerAtRim.centre)
	vs := []geometry.Vertex{
		{Point: upperRim, Bulge: roundBulge(t.upperAtRim.centre, upperRim, t.upperAtRim.on), Quantity: ofFilletAtRim},
		{Point: t.upperAtRim.on, Bulge: -o.upper.bulge(t.upperAtHub.on, t.upperAtRim.on), Quantity: ofArmAtRim},
	}
	vs = append(vs, o.hubEnd(t)...)
	vs = append(vs,
		geometry.Vertex{Point: t.lowerAtHub.on, Bulge: o.lower.bulge(t.lowerAtHub.on, t.lowerAtRim.on), Quantity: ofArmAtRim},
		geometry.Vertex{Point: t.lowerAtRim.on, Bulge: roundBulge(t.lowerAtRim.centre, t.lowerAtRim.on, lowerRim), Quantity: ofFilletAtRim},
		geometry.Vertex{Point: lowerRim, Bulge: t.outerBulge(lowerRim, upperRim), Quantity: o.outerMadeBy()},
	)
	return geometry.NewOutline(joined(vs))
}

// hubEnd returns the window's end at the hub, from the upper side to the lower.
func (o opening) hubEnd(t touches) []geometry.Vertex {
	upper, lower := t.upperAtHub, t.lowerAtHub
	if t.apex {
		return []geometry.Vertex{{Point: upper.on, Bulge: roundBulge(upper.centre, upper.on, lower.on), Quantity: ofFilletAtHub}}
	}
	from, to := geometry.Polar(o.hub, upper.centre.Direction()), geometry.Polar(o.hub, lower.centre.Direction())
	return []geometry.Vertex{
		{Point: upper.on, Bulge: roundBulge(upper.centre, upper.on, from), Quantity: ofFilletAtHub},
		{Point: from, Bulge: roundBulge(geometry.Point{}, from, to), Quantity: ofHub},
		{Point: to, Bulge: roundBulge(lower.centre, to, lower.on), Quantity: ofFilletAtHub},
	}
}

// onOuter returns the point of the outer edge in the direction of p from its
// centre.
func (t touches) onOuter(p geometry.Point) geometry.Point {
	way := p.Sub(t.outer)
	return t.outer.Add(way.Times(t.outerRadius / way.Norm()))
}

// outerBulge returns the bulge of the outer edge, which may turn more than half a
// circle.
func (t touches) outerBulge(from, to geometry.Point) float64 {
	turn := from.Sub(t.outer).Angle(to.Sub(t.outer))
	return math.Tan(float64(turn.Turn()) / 4)
}

// outerMadeBy returns what made the outer edge.
func (o opening) outerMadeBy() geometry.Quantity {
	if o.outerRadius != 0 {
		return ofOuterRadius
	}
	return ofRim
}

// roundBulge returns the bulge of the arc about c from one point to another, by the
// shorter way.
func roundBulge(c, from, to geometry.Point) float64 {
	return math.Tan(float64(from.Sub(c).Angle(to.Sub(c))) / 4)
}

// bulge returns the bulge of the side's piece between two of its points, outwards.
// Its half sweep has the sine bend × chord/2.
func (s side) bulge(from, to geometry.Point) float64 {
	sin := s.bend * from.Dist(to) / 2
	return sin / (1 + math.Sqrt(max(0, 1-sin*sin)))
}

// same is the distance within which two places are one: coordinates agree to it,
// and a piece of outline shorter than it is none.
const same = 1e-9

// joined leaves out the pieces that have no length: fillets of no radius, sides
// and arcs that the fillets use up.
func joined(vs []geometry.Vertex) []geometry.Vertex {
	kept := vs[:0:0]
	for i, v := range vs {
		if v.Dist(vs[(i+1)%len(vs)].Point) > same {
			kept = append(kept, v)
		}
	}
	return kept
}
