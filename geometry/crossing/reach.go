package crossing

import "tipline/geometry"

// overhang is how much of the tip circle's radius an addition may reach beyond it: a
// line may run out of the wheel, or a circle lie round it, but what lies farther out
// was meant for another place. Common practice, no source.
const overhang = 0.1

// Beyond refuses addition i of a wheel where it reaches beyond the tip circle, of that
// radius, by more than a tenth of it; nil where it does not. Of a hole its middle
// counts: one that is too large for its place is refused for the metal it finds there.
func (a Addition) Beyond(i int, tip float64) *geometry.Limit {
	most := (1 + overhang) * tip
	if a.Kind != HoleKind {
		return a.within(i, most, "crossing.addition-off-wheel")
	}
	if a.Radius > most+same {
		return geometry.Refused(additionField(i, "radius"), a.Radius, "crossing.addition-hole-off-wheel")
	}
	return nil
}

// Outside notes that addition i of a wheel reaches beyond its tip circle; nil where it
// does not, and for holes, which find no metal there.
func (a Addition) Outside(i int, tip float64) *geometry.Limit {
	if a.Kind == HoleKind {
		return nil
	}
	return a.within(i, tip, "crossing.addition-outside-tips")
}

// within says which field takes an addition beyond a circle: a place's or an end's
// distance from the centre, or else the diameter.
func (a Addition) within(i int, most float64, code string) *geometry.Limit {
	half := 0.0
	if a.Kind == CircleKind {
		half = a.Diameter / 2
	}
	room := most - a.Radius
	switch radius := additionField(i, "radius"); {
	case a.Kind == LeftOut:
		return nil
	case a.Kind == LineKind && a.ToRadius > most+same:
		return geometry.AtMost(additionField(i, "to_radius"), a.ToRadius, most, code)
	case room >= half-same:
		return nil
	case half == 0 || 2*room < geometry.LeastLength:
		return geometry.AtMost(radius, a.Radius, max(0, most-half), code)
	default:
		return geometry.AtMost(additionField(i, "diameter"), a.Diameter, 2*room, code)
	}
}
