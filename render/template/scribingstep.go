package template

import (
	"tipline/geometry"
	"tipline/geometry/crossing"
)

// scribeStep is one step of scribing a wheel: what is done, the settings it takes,
// and how.
type scribeStep struct {
	title, how string
	settings   []scribeSetting
}

// scribeSetting is a setting of dividers or compass: a span, and which field made it.
type scribeSetting struct {
	text     string
	from, to geometry.Point
	quantity geometry.Quantity
	length   float64 // where it is no span of the wheel
	letter   string
}

func (r scribeSetting) value() float64 {
	if r.from != r.to {
		return r.from.Dist(r.to)
	}
	return r.length
}

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
	first := sc.windowSteps()
	steps := append([]scribeStep{sc.circles()}, first...)
	for j := range lay.Windows {
		if alikeChords(lay.Windows[j].Chord, lay.Windows[0].Chord) {
			continue
		}
		sc.win = scribed(lay, j)
		for i, step := range sc.windowSteps() {
			if i < len(first) && step.differs(first[i]) {
				step.title = sc.say("after", "step", step.title, "tips", tipsLike(lay, j))
				steps = append(steps, step)
			}
		}
		break
	}
	letters := "ABCDEFGHJKLMNPQRSTUVWXYZ"
	n := 0
	for i := range steps {
		for k := range steps[i].settings {
			steps[i].settings[k].letter = letters[n%len(letters) : n%len(letters)+1]
			n++
		}
	}
	return steps
}

func alikeChords(a, b float64) bool { return a-b < alike && b-a < alike }

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

// differs reports whether a step takes other settings than another.
func (s scribeStep) differs(t scribeStep) bool {
	if len(s.settings) != len(t.settings) {
		return true
	}
	for i := range s.settings {
		if !alikeChords(s.settings[i].value(), t.settings[i].value()) {
			return true
		}
	}
	return false
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
		settings := append([]scribeSetting{sc.radius(of.side, q)}, sc.centre(arc.Centre, of.arm, false, q, both)...)
		return []scribeStep{{sc.say(key), "", settings}}
	}
	settings := []scribeSetting{
		{text: sc.say("side.rim." + way(atRim, of.arm, both)), from: onArm(sc.lay.RimRadius, of.arm), to: atRim, quantity: q},
		{text: sc.say("side.hub." + way(atHub, of.arm, both)), from: onArm(sc.lay.HubRadius, of.arm), to: atHub, quantity: "crossing.arm_at_hub"},
	}
	if !curved {
		return []scribeStep{{sc.say(key), sc.say("sides.rule"), settings}}
	}
	middle, top := bow(of.side, atRim, atHub)
	toArm := "bow.out"
	if sc.win.window.Outline.Contains(middle) {
		toArm = "bow.in"
	}
	return []scribeStep{{sc.say(key), sc.say("sides.strip"), append(settings, scribeSetting{text: sc.say(toArm), from: middle, to: top, quantity: q})}}
}

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
func (sc scriber) radius(arc geometry.Segment, q geometry.Quantity) scribeSetting {
	a, _ := arc.Arc()
	return scribeSetting{text: sc.say("radius"), from: a.Centre, to: arc.At(0.5), quantity: q}
}

// centre are the two settings that find a centre: from the wheel's, and from the
// arm's mark on the rim circle or the hub's.
func (sc scriber) centre(p geometry.Point, arm crossing.Arm, atHub bool, q geometry.Quantity, both string) []scribeSetting {
	mark, key := onArm(sc.lay.RimRadius, arm), "from-rim."
	if atHub {
		mark, key = onArm(sc.lay.HubRadius, arm), "from-hub."
	}
	return []scribeSetting{
		{text: sc.say("from-centre"), to: p, quantity: q},
		{text: sc.say(key + way(p, arm, both)), from: mark, to: p, quantity: q},
	}
}

// edge is the windows' own outer edge, where they have one.
func (sc scriber) edge() []scribeStep {
	arc, ok := sc.win.outer.Arc()
	if !ok || sc.win.outer.Quantity != "crossing.outer_radius" || arc.Centre.Norm() < alike {
		return nil
	}
	settings := append([]scribeSetting{sc.radius(sc.win.outer, "crossing.outer_radius")},
		sc.centre(arc.Centre, sc.win.after.arm, false, "crossing.outer_radius", "")...)
	return []scribeStep{{sc.say("edge"), "", settings}}
}

// corners are the roundings at one end of a window.
func (sc scriber) corners(key string, q geometry.Quantity, atHub bool, of func(scribedSide) geometry.Segment) []scribeStep {
	after, before := of(sc.win.after), of(sc.win.before)
	a, ok := after.Arc()
	b, found := before.Arc()
	switch {
	case !ok && !found:
		return nil
	case atHub && sc.win.apex:
		return []scribeStep{{sc.say("corners.apex"), "", append([]scribeSetting{sc.radius(after, q)}, sc.centre(a.Centre, sc.win.after.arm, atHub, q, "")...)}}
	case ok && found && mirrorImages(a.Centre, sc.win.after.arm, b.Centre, sc.win.before.arm):
		return []scribeStep{{sc.say(key), "", append([]scribeSetting{sc.radius(after, q)}, sc.centre(a.Centre, sc.win.after.arm, atHub, q, "both")...)}}
	}
	var settings []scribeSetting
	if ok {
		settings = append([]scribeSetting{sc.radius(after, q)}, sc.centre(a.Centre, sc.win.after.arm, atHub, q, "")...)
	}
	if found {
		settings = append(settings, sc.centre(b.Centre, sc.win.before.arm, atHub, q, "")...)
		if !ok {
			settings = append([]scribeSetting{sc.radius(before, q)}, settings...)
		}
	}
	return []scribeStep{{sc.say(key), "", settings}}
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
