package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// scribedSide is what bounds a window along one arm, outline and centres in the
// wheel's own coordinates. A piece that the window does not have is the zero Segment.
type scribedSide struct {
	arm                crossing.Arm
	side, atRim, atHub geometry.Segment
	named              string // the arm's side that it is
}

// scribedWindow is a window taken to pieces, as it is scribed.
type scribedWindow struct {
	after, before scribedSide // along the arm anticlockwise of it, and along the next
	outer         geometry.Segment
	apex          bool // one arc ends it at the hub
	window        crossing.Window
}

// scribed takes window j to pieces. Its outline runs anticlockwise: in along the arm
// before it, past the hub, out along the next.
func scribed(lay *crossing.Layout, j int) scribedWindow {
	win := lay.Windows[j]
	s := scribedWindow{window: win}
	s.after.arm, s.before.arm = lay.Arms[j], lay.Arms[(j+1)%len(lay.Arms)]
	s.after.named, s.before.named = "clockwise", "anticlockwise"
	var last int
	last, s.apex = lastInward(win.Outline)
	for i := range win.Outline.Len() {
		piece, half := win.Outline.Segment(i), &s.before
		if i <= last {
			half = &s.after
		}
		switch piece.Quantity {
		case "crossing.rim", "crossing.outer_radius":
			s.outer = piece
		case "crossing.fillet_at_rim":
			half.atRim = piece
		case "crossing.fillet_at_hub":
			half.atHub = piece
		case "crossing.arm_at_rim":
			half.side = piece
		}
	}
	if s.apex {
		s.before.atHub = s.after.atHub
	}
	return s
}

// lastInward returns the last piece of a window's outline on its way in: the hub's, or
// where there is none what rounds it off there, or the first side. It reports whether
// one arc ends the window at the hub.
func lastInward(o geometry.Outline) (last int, apex bool) {
	var rounded []int
	side := -1
	for i := range o.Len() {
		switch q := o.Segment(i).Quantity; {
		case q == "crossing.hub":
			return i, false
		case q == "crossing.fillet_at_hub":
			rounded = append(rounded, i)
		case q == "crossing.arm_at_rim" && side < 0:
			side = i
		}
	}
	if len(rounded) > 0 {
		return rounded[0], len(rounded) == 1
	}
	return side, false
}

// fromArm returns a place as it lies from an arm: x clockwise of the arm's tip line,
// y along it.
func fromArm(p geometry.Point, arm crossing.Arm) geometry.Point { return p.Rotate(arm.Angle) }

// onArm returns the place so far along an arm's tip line.
func onArm(r float64, arm crossing.Arm) geometry.Point {
	return geometry.Polar(r, geometry.Clock(arm.Angle))
}

// alike is the distance in millimetres within which two settings are one: a tenth of
// what a card can print.
const alike = 1e-3

// mirrorImages reports whether a place lies from one arm as another does from the
// next on its other side.
func mirrorImages(p geometry.Point, a crossing.Arm, q geometry.Point, b crossing.Arm) bool {
	return fromArm(p, a).Dist(fromArm(q, b).Mirror()) < alike
}

// sameSides reports whether the two sides of an arm are mirror images.
func (s scribedWindow) sameSides() bool {
	return mirrorImages(s.after.side.From, s.after.arm, s.before.side.To, s.before.arm) &&
		mirrorImages(s.after.side.To, s.after.arm, s.before.side.From, s.before.arm) &&
		math.Abs(s.after.side.Bulge-s.before.side.Bulge) < 1e-9
}

// flattest is the radius in millimetres from which on an arc is scribed by its bow,
// for its centre is out of reach of the compass.
const flattest = 250.0

// alongSide returns where a side, carried on, comes to the circle of that radius
// about the wheel's centre, outwards; false where it does not.
func alongSide(side geometry.Segment, radius float64) (geometry.Point, bool) {
	arc, curved := side.Arc()
	var pts [2]geometry.Point
	var n int
	if curved {
		pts, n = geometry.CircleCircle(geometry.Point{}, radius, arc.Centre, arc.Radius)
	} else {
		pts, n = geometry.LineCircle(side.From, side.To.Sub(side.From), geometry.Point{}, radius)
	}
	best, found := geometry.Point{}, false
	for _, p := range pts[:n] {
		if !found || p.Dist(side.At(0.5)) < best.Dist(side.At(0.5)) {
			best, found = p, true
		}
	}
	return best, found
}

// bow returns how far the arc of a side rises above the chord between two of its
// places, and the chord's middle and the arc's.
func bow(side geometry.Segment, from, to geometry.Point) (middle, top geometry.Point) {
	arc, _ := side.Arc()
	middle = from.Toward(to, 0.5)
	way := middle.Sub(arc.Centre)
	return middle, arc.Centre.Add(way.Times(arc.Radius / way.Norm()))
}
