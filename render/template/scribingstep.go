package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// scriber works out the steps of a wheel.
type scriber struct {
	say func(key string, args ...any) string
	lay *crossing.Layout
	w   Wheel
	win scribedWindow
}

// scribing returns the steps in the order of the work: what all windows share, and
// for windows of another width what differs.
func scribing(w Wheel, s Style) []scribeStep {
	lay := w.Crossing
	sc := scriber{say: func(key string, args ...any) string { return s.Words.Say("cards.scribing."+key, args...) }, lay: lay, w: w}
	sc.win = scribed(lay, 0)
	steps := lettered(append([]scribeStep{sc.circles()}, sc.windowSteps()...))
	first := steps[1:]
	for j := range lay.Windows {
		if alikeChords(lay.Windows[j].Chord, lay.Windows[0].Chord) {
			continue
		}
		sc.win = scribed(lay, j)
		for i, step := range sc.windowSteps() {
			if i < len(first) && step.differs(first[i]) {
				step.title = sc.say("after", "step", step.title, "tips", tipsLike(lay, j))
				steps = append(steps, step.again(first[i]))
			}
		}
		break
	}
	return steps
}

// tipsLike lists the tips of the arms before the windows that are as wide as window j.
func tipsLike(lay *crossing.Layout, j int) string {
	var tips []int
	for i, win := range lay.Windows {
		if alikeChords(win.Chord, lay.Windows[j].Chord) {
			tips = append(tips, lay.Arms[i].Tip)
		}
	}
	return counts(tips)
}

// circles are the two circles about the wheel's centre, whose places on the tip lines
// are the marks.
func (sc scriber) circles() scribeStep {
	r, h := sc.lay.RimRadius, sc.lay.HubRadius
	return scribeStep{sc.say("circles"), sc.say("circles.how"), []scribeSetting{
		{text: sc.say("rim"), to: geometry.Polar(r, geometry.Clock(sc.lay.Arms[0].Angle+sc.share(0.5))), quantity: "crossing.rim"},
		{text: sc.say("hub"), to: geometry.Polar(h, geometry.Clock(sc.lay.Arms[0].Angle-sc.share(0.4))), quantity: "crossing.hub"},
	}}
}

// share returns a share of the angle of the window after arm 0.
func (sc scriber) share(t float64) geometry.Angle {
	next := sc.lay.Arms[1%len(sc.lay.Arms)].Angle - sc.lay.Arms[0].Angle
	return geometry.Angle(t) * next.Turn()
}

// windowSteps are the steps of one window.
func (sc scriber) windowSteps() []scribeStep {
	steps := sc.sides()
	steps = append(steps, sc.edge()...)
	steps = append(steps, sc.corners("corners.rim", "crossing.fillet_at_rim", false, func(s scribedSide) geometry.Segment { return s.atRim })...)
	steps = append(steps, sc.corners("corners.hub", "crossing.fillet_at_hub", true, func(s scribedSide) geometry.Segment { return s.atHub })...)
	return append(steps, sc.sawing()...)
}

// sides are the arms' sides: both at once where they are alike.
func (sc scriber) sides() []scribeStep {
	if sc.win.sameSides() {
		return sc.side("sides", sc.win.after, "both")
	}
	return append(sc.side("sides.clockwise", sc.win.after, ""), sc.side("sides.anticlockwise", sc.win.before, "")...)
}

// side is one side: straight from place to place, or an arc about a centre, or where
// that is out of reach by its bow.
func (sc scriber) side(key string, of scribedSide, both string) []scribeStep {
	if of.side == (geometry.Segment{}) {
		return nil
	}
	const q = "crossing.arm_at_rim"
	atRim, reaches := alongSide(of.side, sc.lay.RimRadius)
	atHub, found := alongSide(of.side, sc.lay.HubRadius)
	arc, curved := of.side.Arc()
	if curved && (arc.Radius < flattest || !reaches || !found) {
		settings := append([]scribeSetting{sc.radius(of.side, of.arm, q)}, sc.centre(arc.Centre, of.arm, false, q, both)...)
		return []scribeStep{{sc.say(key), "", settings}}
	}
	rim, hub := geometry.Point{Y: sc.lay.RimRadius}, geometry.Point{Y: sc.lay.HubRadius}
	settings := []scribeSetting{
		{text: sc.say("side.rim." + way(atRim, of.arm, both)), from: rim, to: fromArm(atRim, of.arm), quantity: q, at: rimMark},
		{text: sc.say("side.hub." + way(atHub, of.arm, both)), from: hub, to: fromArm(atHub, of.arm), quantity: "crossing.arm_at_hub", at: hubMark},
	}
	if !curved {
		return []scribeStep{{sc.say(key), sc.say("sides.rule"), settings}}
	}
	middle, top := bow(of.side, atRim, atHub)
	if middle.Dist(top) < leastBow {
		return []scribeStep{{sc.say(key), sc.say("sides.rule"), settings}}
	}
	toArm := "bow.out"
	if sc.win.window.Outline.Contains(middle) {
		toArm = "bow.in"
	}
	rise := scribeSetting{text: sc.say(toArm), from: fromArm(middle, of.arm), to: fromArm(top, of.arm), quantity: q}
	return []scribeStep{{sc.say(key), sc.say("sides.strip"), append(settings, rise)}}
}

// leastBow is the rise in millimetres below which a side is ruled: what a card prints
// as nothing.
const leastBow = 0.005

// way names the side of an arm's tip line that a place lies on.
func way(p geometry.Point, arm crossing.Arm, both string) string {
	switch {
	case both != "":
		return both
	case fromArm(p, arm).X < 0:
		return "anticlockwise"
	}
	return "clockwise"
}

// radius is the setting that strikes an arc.
func (sc scriber) radius(arc geometry.Segment, arm crossing.Arm, q geometry.Quantity) scribeSetting {
	a, _ := arc.Arc()
	return scribeSetting{text: sc.say("radius"), from: fromArm(a.Centre, arm), to: fromArm(arc.At(0.5), arm), quantity: q}
}

// centre are the two settings that find a centre: from the wheel's, and from the
// arm's mark on the rim circle or the hub's.
func (sc scriber) centre(p geometry.Point, arm crossing.Arm, atHub bool, q geometry.Quantity, both string) []scribeSetting {
	mark, key := geometry.Point{Y: sc.lay.RimRadius}, "from-rim."
	if atHub {
		mark, key = geometry.Point{Y: sc.lay.HubRadius}, "from-hub."
	}
	to, text := fromArm(p, arm), sc.say(key+way(p, arm, both))
	if q != "crossing.outer_radius" && crossingSine(to, mark) < leastSine { // of an edge the way along it matters little
		if next := fromArm(onArm(sc.lay.RimRadius, sc.across(arm)), arm); crossingSine(to, next) > crossingSine(to, mark) {
			mark, text = next, sc.say("from-next")
		}
	}
	return []scribeSetting{
		{text: sc.say("from-centre"), to: to, quantity: q},
		{text: text, from: mark, to: to, quantity: q},
	}
}

// leastSine is the sine of the angle, twenty degrees, at which arcs struck from two
// places must cross at least: what a setting is out, the crossing is out thrice.
const leastSine = 0.34

// crossingSine returns the sine of the angle at which arcs about the wheel's centre
// and about a mark cross in p.
func crossingSine(p, mark geometry.Point) float64 {
	return math.Abs(p.Cross(p.Sub(mark))) / max(alike*alike, p.Norm()*p.Dist(mark))
}

// across returns the arm on the window's other side.
func (sc scriber) across(arm crossing.Arm) crossing.Arm {
	if arm == sc.win.after.arm {
		return sc.win.before.arm
	}
	return sc.win.after.arm
}

// edge is the windows' own outer edge, where they have one.
func (sc scriber) edge() []scribeStep {
	arc, ok := sc.win.outer.Arc()
	if !ok || sc.win.outer.Quantity != "crossing.outer_radius" || arc.Centre.Norm() < alike {
		return nil
	}
	settings := append([]scribeSetting{sc.radius(sc.win.outer, sc.win.after.arm, "crossing.outer_radius")},
		sc.centre(arc.Centre, sc.win.after.arm, false, "crossing.outer_radius", "")...)
	return []scribeStep{{sc.say("edge"), "", settings}}
}

// corners are the roundings at one end of a window, at the arm before it and at the
// next: once where they are alike.
func (sc scriber) corners(key string, q geometry.Quantity, atHub bool, of func(scribedSide) geometry.Segment) []scribeStep {
	var settings []scribeSetting
	a, rounded := of(sc.win.after).Arc()
	b, found := of(sc.win.before).Arc()
	apex := atHub && sc.win.apex
	both := ""
	if rounded && found && !apex && mirrorImages(a.Centre, sc.win.after.arm, b.Centre, sc.win.before.arm) {
		both = "both"
	}
	for _, half := range []scribedSide{sc.win.after, sc.win.before} {
		piece := of(half)
		arc, ok := piece.Arc()
		if !ok || len(settings) > 0 && (both != "" || apex) {
			continue
		}
		if len(settings) == 0 {
			settings = append(settings, sc.radius(piece, half.arm, q))
		}
		centre := sc.centre(arc.Centre, half.arm, atHub, q, both)
		if both == "" && !apex {
			centre[0].text = sc.say("corner." + half.named)
		}
		settings = append(settings, centre...)
	}
	if len(settings) == 0 {
		return nil
	}
	if apex {
		key = "corners.apex"
	}
	return []scribeStep{{sc.say(key), "", sc.near(settings, atHub)}}
}

// near says that settings are drawn at an arm's mark where they lie close by it.
func (sc scriber) near(settings []scribeSetting, atHub bool) []scribeSetting {
	at, mark := rimMark, geometry.Point{Y: sc.lay.RimRadius}
	if atHub {
		at, mark = hubMark, geometry.Point{Y: sc.lay.HubRadius}
	}
	for i := range settings {
		near := 0.4 * (sc.lay.RimRadius - sc.lay.HubRadius)
		if from := settings[i].from; settings[i].to.Dist(mark) < near && (from.Dist(mark) < near || from == (geometry.Point{})) {
			settings[i].at = at
		}
	}
	return settings
}

// sawing is where the saw starts and how far inside the lines it goes.
func (sc scriber) sawing() []scribeStep {
	win := sc.win.window
	var settings []scribeSetting
	if win.StartHole.Len() > 0 {
		settings = sc.centre(win.Start, sc.win.after.arm, false, "crossing.start_hole", "")
		d := 2 * win.Start.Dist(win.StartHole.Vertex(0).Point)
		settings = append(settings, scribeSetting{text: sc.say("start-hole"), length: d, quantity: "crossing.start_hole"})
	}
	if a := sc.lay.Spec.Allowance; a > 0 {
		settings = append(settings, scribeSetting{text: sc.say("allowance"), length: a, quantity: "crossing.allowance"})
	}
	if len(settings) == 0 {
		return nil
	}
	return []scribeStep{{sc.say("saw"), "", settings}}
}
