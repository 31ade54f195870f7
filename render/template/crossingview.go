package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
)

// viewPast is how far off the tip circle the dimensions of a crossing stand, clear
// of the numbers of its arms.
const viewPast = armNumberAt + 9

// CrossingView draws the crossing template with its dimensions led out to both
// sides, each tagged with the field that sets it. ErrNothing if there are no teeth.
func CrossingView(w Wheel, s Style) (*render.Drawing, error) {
	d, err := Crossing(w, s)
	if err != nil {
		return nil, err
	}
	b := &Board{d, w.ID, s}
	r := w.Teeth.TipRadius
	box := geometry.Box{Min: geometry.Point{X: -r, Y: -r}, Max: geometry.Point{X: r, Y: r}}
	notes := callouts{past: viewPast}
	call := func(at geometry.Point, q geometry.Quantity, key string, mm float64) {
		notes.call(box, at, q, render.Blue, b.Say("template.view."+key, "length", s.Units.Length(mm)))
	}
	call(geometry.Polar(r, geometry.Degrees(58)), "teeth", "tips", 2*r)
	if w.Bore > 0 {
		call(geometry.Polar(w.Bore/2, geometry.Degrees(-20)), "bore", "bore", w.Bore)
	}
	if w.Crossing != nil && len(w.Crossing.Windows) > 0 {
		callCrossing(w.Crossing, call)
	}
	notes.draw(b, box)
	return d, nil
}

// callCrossing calls out the dimensions of a crossing: those of the rim on the
// right, those of the hub on the left.
func callCrossing(lay *crossing.Layout, call func(geometry.Point, geometry.Quantity, string, float64)) {
	s := lay.Spec
	right, left := windowToward(lay, 0), windowToward(lay, math.Pi)
	rim := right.Start.Direction()
	call(geometry.Polar(lay.RimRadius+s.Rim/2, rim+geometry.Degrees(6)), "crossing.rim", "rim", s.Rim)
	call(geometry.Polar(lay.HubRadius, left.Start.Direction()), "crossing.hub", "hub", s.Hub)
	if f, ok := madeBy(right.Outline, "crossing.fillet_at_rim", true); ok {
		call(f.At(0.5), f.Quantity, "fillet-at-rim", s.FilletAtRim)
	}
	if f, ok := madeBy(left.Outline, "crossing.fillet_at_hub", true); ok {
		call(f.At(0.5), f.Quantity, "fillet-at-hub", s.FilletAtHub)
	}
	if side, ok := madeBy(right.Outline, "crossing.arm_at_rim", false); ok {
		call(end(side, true), "crossing.arm_at_rim", "arm-at-rim", s.ArmAtRim)
	}
	if side, ok := madeBy(left.Outline, "crossing.arm_at_rim", false); ok {
		call(end(side, false), "crossing.arm_at_hub", "arm-at-hub", s.ArmAtHub)
	}
}

// end returns a segment's outer or inner end.
func end(s geometry.Segment, outer bool) geometry.Point {
	if (s.From.Norm() > s.To.Norm()) == outer {
		return s.From
	}
	return s.To
}

// windowToward returns the window whose start hole lies nearest a direction.
func windowToward(lay *crossing.Layout, a geometry.Angle) crossing.Window {
	best := lay.Windows[0]
	for _, win := range lay.Windows {
		if math.Abs(float64((win.Start.Direction() - a).Normal())) < math.Abs(float64((best.Start.Direction() - a).Normal())) {
			best = win
		}
	}
	return best
}

// madeBy returns the highest or lowest segment of an outline that a field made.
func madeBy(o geometry.Outline, q geometry.Quantity, top bool) (found geometry.Segment, ok bool) {
	for i := range o.Len() {
		s := o.Segment(i)
		if s.Quantity == q && (!ok || (s.At(0.5).Y > found.At(0.5).Y) == top) {
			found, ok = s, true
		}
	}
	return found, ok
}
