package template

import (
	"errors"
	"fmt"
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/tooth"
	"tipline/render"
)

// ErrNothing says that the wheel has nothing of this kind to draw, because that
// step could not be built or was not asked for.
var ErrNothing = errors.New("template: nothing to draw")

// Crossing draws the full-scale crossing template, the wheel's centre at the
// origin: teeth, windows hatched as waste, saw lines, start holes, the arms' tip
// centre lines out beyond the tip circle with the centre left open for a punch,
// a tick at every tip and a number at every tenth and at the arms. A wheel without
// a crossing shows its teeth alone. ErrNothing if there are no teeth.
func Crossing(w Wheel, s Style) (*render.Drawing, error) {
	if w.Teeth == nil {
		return nil, fmt.Errorf("crossing of %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = w.title()
	b.Drawing.Description = b.Say("template.teeth.line")
	if w.Crossing != nil {
		b.Drawing.Description = b.Say("template.crossing.line")
	}
	drawTeeth(b, w)
	drawBore(b, w)
	if w.Mounting != nil {
		for _, p := range w.Mounting.Places {
			b.Circle(Stroke{render.LayerScrews, "mount.screws", render.Thin, render.Black, render.Paper}, p.At, w.Mounting.Clear.MM/2)
			holeCross(b, p, w.Mounting.Clear.MM/2, w.Mounting.Clear.MM/2+0.8)
		}
	}
	if w.Crossing == nil {
		punchMark(b, w)
	}
	ticks(b, w.Teeth)
	var lines []geometry.Angle
	if w.Crossing != nil {
		windows(b, w.Crossing)
		balance(b, w.Crossing.Balance)
		lines = armLines(b, w.Teeth, w.Crossing.Arms)
	}
	numbers(b, w.Teeth, lines)
	drawAdditions(b, w.Additions)
	return b.Drawing, nil
}

// drawTeeth draws the wheel's outline in brass; a wheel known only by measurement
// has its root circle drawn too.
func drawTeeth(b *Board, w Wheel) {
	b.Closed(Stroke{render.LayerTeeth, "teeth", render.Visible, render.Black, render.Brass}, w.Teeth.Outline)
	if w.Teeth.Form == "measured" {
		b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "teeth.root_diameter", Pen: render.Thin, Ink: render.Blue},
			geometry.Point{}, w.Teeth.RootRadius)
	}
}

func drawBore(b *Board, w Wheel) {
	b.Circle(Stroke{render.LayerBore, "bore", render.Visible, render.Black, render.Paper}, geometry.Point{}, w.Bore/2)
}

// windows draws every window as waste, its saw line and its start hole.
func windows(b *Board, lay *crossing.Layout) {
	for _, win := range lay.Windows {
		b.Closed(Stroke{render.LayerWindows, "crossing", render.Visible, render.Black, render.Waste}, win.Outline)
		b.Closed(Stroke{Layer: render.LayerSawLine, Quantity: "crossing.allowance", Pen: render.Hidden}, win.SawLine...)
		if win.StartHole.Len() > 0 {
			startHole(b, win)
		}
	}
}

// balance draws the hole that would balance the wheel, dashed and as a dimension, for
// nobody asked for it yet.
func balance(b *Board, h *crossing.Hole) {
	if h == nil {
		return
	}
	s := Stroke{Layer: render.LayerDimensions, Quantity: "crossing.placing", Pen: render.Hidden, Ink: render.Blue}
	b.Circle(s, h.Centre(), h.Diameter/2)
	s.Pen = render.Hair
	cross(b, s, h.Centre(), min(0.15, h.Diameter/8), h.Diameter/2+0.8)
}

// startHole draws a start hole, cleared of hatching, with a cross for the punch
// that reaches past the circle and leaves its own centre open.
func startHole(b *Board, win crossing.Window) {
	r := win.Start.Dist(win.StartHole.Vertex(0).Point)
	b.Closed(Stroke{Layer: render.LayerStartHoles, Quantity: "crossing.start_hole", Pen: render.Thin, Fill: render.Paper}, win.StartHole)
	cross(b, Stroke{Layer: render.LayerStartHoles, Quantity: "crossing.start_hole", Pen: render.Hair}, win.Start, math.Min(0.15, r/4), r+0.8)
}

// cross draws the four arms of a centre cross from one radius to another.
func cross(b *Board, s Stroke, centre geometry.Point, from, to float64) {
	lines := make([]geometry.Line, 4)
	for i := range lines {
		a := geometry.Degrees(float64(90 * i))
		lines[i] = geometry.Line{From: centre.Add(geometry.Polar(from, a)), To: centre.Add(geometry.Polar(to, a))}
	}
	b.Line(s, lines...)
}

// armLines draws each arm's tip centre line from beyond the tip circle through
// the centre, left open, to the far side, unless another arm's line runs there,
// and writes the arm's tip. It returns the directions in which lines run out.
func armLines(b *Board, teeth *tooth.Wheel, arms []crossing.Arm) []geometry.Angle {
	line := Stroke{Layer: render.LayerCentreLines, Quantity: "crossing.arms", Pen: render.Centre, Ink: render.Blue}
	var angles []geometry.Angle
	for _, arm := range arms {
		angles = append(angles, arm.Angle)
		b.Line(line, radial(punchGap, teeth.TipRadius+armLineTo, arm.Angle))
		armNumber(b, teeth, arm)
	}
	for _, arm := range arms {
		far := arm.Angle + geometry.Degrees(180)
		if !nearAny(far, angles[:len(arms)], float64(geometry.Degrees(throughMargin))) {
			angles = append(angles, far)
			b.Line(line, radial(punchGap, teeth.TipRadius+farLineTo, far))
		}
	}
	return angles
}

// armNumber writes the tip an arm stands on at the end of its line, with how far
// from that tip it stands when it is not on it.
func armNumber(b *Board, teeth *tooth.Wheel, arm crossing.Arm) {
	dir := geometry.Clock(arm.Angle)
	label := strconv.Itoa(arm.Tip)
	writeNumber(b, label, geometry.Polar(teeth.TipRadius+armNumberAt, dir), armHeight, true)
	if math.Abs(float64(arm.Deviation)) < offTip {
		return
	}
	sign := "+"
	if arm.Deviation < 0 {
		sign = "−"
	}
	below := geometry.Polar(teeth.TipRadius+armNumberAt, dir).Add(geometry.Point{Y: -1.3 * armHeight})
	dev := sign + b.Style.Units.Angle(geometry.Angle(math.Abs(float64(arm.Deviation))))
	writeNumber(b, dev, below, numberHeight, false)
}

// radial returns the line along angle a, clockwise from 12 o'clock, between two
// radii.
func radial(from, to float64, a geometry.Angle) geometry.Line {
	d := geometry.Clock(a)
	return geometry.Line{From: geometry.Polar(from, d), To: geometry.Polar(to, d)}
}

// punchMark draws the centre cross, which stops short of the dead centre.
func punchMark(b *Board, w Wheel) {
	to := 2.4
	if w.Bore > 0 {
		to = math.Min(to, math.Max(0.8*w.Bore/2, 2*punchGap))
	}
	cross(b, Stroke{Layer: render.LayerBore, Quantity: "bore", Pen: render.Hair}, geometry.Point{}, punchGap, to)
}
