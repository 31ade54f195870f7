package crossing

import (
	"math"

	"tipline/geometry"
)

// opening is what bounds a window, in the window's own frame: rim and hub circle,
// the sides of the two arms, and the fillets' radii.
type opening struct {
	upper, lower             side
	rim, hub                 float64
	outerRadius              float64 // of the outer edge; 0 for the rim's circle
	filletAtRim, filletAtHub float64
	half                     geometry.Angle // of the angle between the arms
	armAtHub                 float64
}

func openingOf(half geometry.Angle, b Blank, s Spec) opening {
	rim, hub := b.RootRadius-s.Rim, s.Hub/2
	right, left := armSides(hub, rim, s)
	return opening{
		upper: right.turned(half), lower: left.turned(-half), rim: rim, hub: hub,
		outerRadius: s.OuterRadius, filletAtRim: s.FilletAtRim, filletAtHub: s.FilletAtHub,
		half: half, armAtHub: s.ArmAtHub,
	}
}

// touch says where a fillet touches a side, and its centre.
type touch struct{ on, centre geometry.Point }

// touches says where a window's fillets touch.
type touches struct {
	outer                  geometry.Point // centre of the outer edge
	outerRadius            float64
	upperAtRim, lowerAtRim touch
	upperAtHub, lowerAtHub touch
	apex                   bool // one arc at the hub, tangent to both sides
}

// touch finds where the fillets go. A fillet at the rim has its centre at the outer
// edge's radius less its own from that edge's centre, one at the hub at hub + fillet
// from the wheel's, and each as far from the side as its radius.
func (o opening) touch() (touches, fault) {
	var t touches
	if f := o.touchRim(&t); f != sound {
		return t, f
	}
	if f := o.touchHub(&t); f != sound {
		return t, f
	}
	if o.upper.share(t.upperAtHub.on) > o.upper.share(t.upperAtRim.on) ||
		o.lower.share(t.lowerAtHub.on) > o.lower.share(t.lowerAtRim.on) {
		return t, filletsMeet
	}
	return t, sound
}

// touchRim finds the outer edge and the fillets there.
func (o opening) touchRim(t *touches) fault {
	upper, ok := o.upper.reach(geometry.Point{}, o.rim, 0)
	lower, found := o.lower.reach(geometry.Point{}, o.rim, 0)
	switch {
	case !ok || !found || o.grazes(o.upper, upper) || o.grazes(o.lower, lower):
		return armMissesRim
	case o.lower.rim.Angle(o.upper.rim) <= 0 || lower.Angle(upper) <= 0:
		return armsMeetAtRim
	}
	t.outer, t.outerRadius = o.outerEdge(upper, lower)
	if t.outer.X+t.outerRadius <= o.hub {
		return outerMeetsHub
	}
	if o.outerRadius != 0 && !(o.reaches(o.upper, t) && o.reaches(o.lower, t)) {
		return outerMissesArm
	}
	t.upperAtRim, ok = fillet(o.upper, t.outer, t.outerRadius-o.filletAtRim, o.filletAtRim)
	t.lowerAtRim, found = fillet(o.lower, t.outer, t.outerRadius-o.filletAtRim, o.filletAtRim)
	if t.outerRadius <= o.filletAtRim {
		return rimFilletsOverlap
	}
	axis := upper.Toward(lower, 0.5)
	above, below := axis.Angle(t.upperAtRim.centre.Sub(t.outer)), axis.Angle(t.lowerAtRim.centre.Sub(t.outer))
	if !ok || !found || above < below {
		return rimFilletsOverlap
	}
	return sound
}

// grazing is the sine of the least angle, three degrees, at which the side of a swept
// arm may run into the rim: one that runs along it leaves a sliver for a corner, a
// fillet of micrometres whose place rounding decides.
const grazing = 0.05

// grazes reports whether a round side runs along the rim's circle where it meets it.
func (o opening) grazes(s side, at geometry.Point) bool {
	return s.bend != 0 && s.travel(at).Dot(at) < grazing*o.rim
}

// reaches reports whether the outer edge comes to the side.
func (o opening) reaches(s side, t *touches) bool {
	_, ok := s.reach(t.outer, t.outerRadius, 0)
	return ok
}

// outerEdge returns the centre and the radius of the arc that is the window's outer
// edge, the corners being where the sides meet the rim's circle. An arc of less than
// that circle's radius touches it halfway between them; one of more meets it there.
func (o opening) outerEdge(upper, lower geometry.Point) (geometry.Point, float64) {
	r := o.outerRadius
	if r == 0 || r == o.rim {
		return geometry.Point{}, o.rim
	}
	half := float64(lower.Angle(upper)) / 2
	toward := geometry.Polar(1, lower.Direction()+geometry.Angle(half))
	if r < o.rim {
		return toward.Times(o.rim - r), r
	}
	across := o.rim * math.Sin(half)
	return toward.Times(o.rim*math.Cos(half) - math.Sqrt((r-across)*(r+across))), r
}

// fillet returns the arc that touches the side, its centre r from c.
func fillet(s side, c geometry.Point, r, radius float64) (touch, bool) {
	centre, ok := s.reach(c, r, radius)
	if !ok {
		return touch{}, false
	}
	return touch{s.foot(centre, radius), centre}, true
}

// touchHub finds the fillets at the hub, or the one arc where two would overlap.
func (o opening) touchHub(t *touches) fault {
	var dead geometry.Point
	switch {
	case o.upper.away(dead) >= o.hub || o.lower.away(dead) >= o.hub:
		return armMissesHub
	case math.Atan2(o.armAtHub/2, o.hub) >= 2*float64(o.half):
		return armsMeetAtHub
	}
	upper, ok := fillet(o.upper, dead, o.hub+o.filletAtHub, o.filletAtHub)
	lower, found := fillet(o.lower, dead, o.hub+o.filletAtHub, o.filletAtHub)
	if ok && found && lower.centre.Angle(upper.centre) >= 0 {
		t.upperAtHub, t.lowerAtHub = upper, lower
		return sound
	}
	if o.touchApex(t) {
		return sound
	}
	if o.reachesHub() {
		return hubFilletsOverlap
	}
	return armsMeetAtHub
}

// touchApex finds the one arc at the hub that touches both sides where they run
// outwards; false where there is none outside the hub.
func (o opening) touchApex(t *touches) bool {
	centre, ok := corner(o.upper, o.lower, o.filletAtHub)
	if !ok || centre.Norm() < o.hub+o.filletAtHub-same {
		return false
	}
	t.apex = true
	t.upperAtHub = touch{o.upper.foot(centre, o.filletAtHub), centre}
	t.lowerAtHub = touch{o.lower.foot(centre, o.filletAtHub), centre}
	upper, lower := t.upperAtHub.on, t.lowerAtHub.on
	return o.upper.travel(upper).Dot(upper) > 0 && o.lower.travel(lower).Dot(lower) > 0
}

// reachesHub reports whether the sides come down to the hub circle before they
// meet, fillets apart.
func (o opening) reachesHub() bool {
	upper, ok := o.upper.reach(geometry.Point{}, o.hub, 0)
	lower, found := o.lower.reach(geometry.Point{}, o.hub, 0)
	return ok && found && lower.Angle(upper) >= 0
}
