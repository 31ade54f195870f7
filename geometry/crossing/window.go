package crossing

import (
	"math"

	"tipline/geometry"
)

// opening is what bounds a window, in the window's own frame: rim and hub circle,
// the sides of the two arms, and the fillets' radii.
type opening struct {
	side                     side
	rim, hub                 float64
	filletAtRim, filletAtHub float64

	apart  float64 // how far from the axis the side's point at the rim lies; 0 or less beyond it
	beyond float64 // the angle by which the side's point at the hub lies beyond the next arm; less than 0 short of it
}

// touches says where a window's fillets touch the upper side, and their centres.
type touches struct {
	rim, hub             float64 // how far along the side
	rimCentre, hubCentre geometry.Point
	apex                 bool // one arc at the hub, tangent to both sides, its centre on the axis
}

func openingOf(half geometry.Angle, b Blank, s Spec) opening {
	rim, hub := b.RootRadius-s.Rim, s.Hub/2
	return opening{
		side: sideOf(half, hub, rim, s), rim: rim, hub: hub,
		filletAtRim: s.FilletAtRim, filletAtHub: s.FilletAtHub,
		apart:  geometry.Point{X: rim, Y: -s.ArmAtRim / 2}.Rotate(half).Y,
		beyond: math.Atan2(s.ArmAtHub/2, hub) - 2*float64(half),
	}
}

// touch finds where the fillets go. A fillet at the rim has its centre at rim −
// fillet from the wheel's centre, one at the hub at hub + fillet, and each as far
// from the side as its radius.
func (o opening) touch() (touches, fault) {
	var t touches
	corner, ok := o.side.reach(o.rim, 0)
	if o.apart <= 0 || !ok || o.side.at(corner, 0).Y <= 0 {
		return t, armsMeetAtRim
	}
	if t.rim, ok = o.side.reach(o.rim-o.filletAtRim, o.filletAtRim); !ok {
		return t, rimFilletsOverlap
	}
	if t.rimCentre = o.side.at(t.rim, o.filletAtRim); t.rimCentre.Y < 0 {
		return t, rimFilletsOverlap
	}
	if f := o.touchHub(&t); f != sound {
		return t, f
	}
	if t.hub > t.rim {
		return t, filletsMeet
	}
	return t, sound
}

// touchHub finds the fillets at the hub, or the one arc where two would overlap.
func (o opening) touchHub(t *touches) fault {
	switch {
	case o.side.centre >= o.hub:
		return armMissesHub
	case o.beyond >= 0:
		return armsMeetAtHub
	}
	var ok bool
	if t.hub, ok = o.side.reach(o.hub+o.filletAtHub, o.filletAtHub); ok {
		t.hubCentre = o.side.at(t.hub, o.filletAtHub)
		if t.hubCentre.Y >= 0 {
			return sound
		}
	}
	t.hub, t.apex = o.side.apex(o.filletAtHub)
	switch {
	case !t.apex && o.reachesHub():
		return hubFilletsOverlap
	case !t.apex:
		return armsMeetAtHub
	}
	t.hubCentre = geometry.Point{X: o.side.at(t.hub, o.filletAtHub).X}
	return sound
}

// reachesHub reports whether the sides come down to the hub circle before they
// meet, fillets apart.
func (o opening) reachesHub() bool {
	along, ok := o.side.reach(o.hub, 0)
	return ok && o.side.at(along, 0).Y >= 0
}

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
)

// outline returns the window, anticlockwise from where the upper fillet leaves the
// rim: fillet, side, hub, and the same mirrored back to the rim.
func (o opening) outline(t touches) (geometry.Outline, error) {
	lean := o.side.along.Direction()
	rimTouch := t.rimCentre.Direction()
	upper := []geometry.Vertex{
		{Point: geometry.Polar(o.rim, rimTouch), Bulge: bulge(lean + math.Pi/2 - rimTouch), Quantity: ofFilletAtRim},
		{Point: o.side.at(t.rim, 0), Quantity: ofArmAtRim},
	}
	hubTouch := t.hubCentre.Direction()
	hubBulge := bulge(math.Pi/2 + hubTouch - lean)
	if t.apex {
		hubBulge = bulge(math.Pi - 2*lean)
	}
	upper = append(upper, geometry.Vertex{Point: o.side.at(t.hub, 0), Bulge: hubBulge, Quantity: ofFilletAtHub})
	if !t.apex {
		upper = append(upper, geometry.Vertex{Point: geometry.Polar(o.hub, hubTouch), Bulge: bulge(-2 * hubTouch), Quantity: ofHub})
	}
	return geometry.NewOutline(joined(append(upper, mirrored(upper, bulge(2*rimTouch))...)))
}

// bulge returns the bulge of an arc that turns by sweep.
func bulge(sweep geometry.Angle) float64 { return math.Tan(float64(sweep) / 4) }

// mirrored returns the lower half of a window: the upper half's vertices run
// backwards below the axis, each segment with what made its twin; the last runs
// along the rim with the bulge given.
func mirrored(upper []geometry.Vertex, rim float64) []geometry.Vertex {
	n := len(upper)
	lower := make([]geometry.Vertex, n)
	for i := range upper {
		v := upper[n-1-i]
		lower[i].Point = geometry.Point{X: v.X, Y: -v.Y}
		lower[i].Bulge, lower[i].Quantity = rim, ofRim
		if i+1 < n {
			lower[i].Bulge, lower[i].Quantity = upper[n-2-i].Bulge, upper[n-2-i].Quantity
		}
	}
	return lower
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
