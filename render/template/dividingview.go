package template

import (
	"fmt"
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/render"
)

// Measures of the drawn plate in millimetres of paper.
const (
	plateRadius  = 42.0 // of the hole circle
	plateMargin  = 6.0
	plateNumbers = 8 // stops that are numbered
)

// DividingView draws where the index pin goes: the hole circle with the holes it
// stops in, the first of them numbered, or the angle of one tooth where whole
// turns do. ErrNothing if the dividing is not worked out.
func DividingView(w Wheel, s Style) (*render.Drawing, error) {
	if w.Dividing == nil || w.Dividing.Divisions < 1 {
		return nil, fmt.Errorf("dividing of %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = b.Say("template.dividingview.title", "name", w.title())
	b.Drawing.Description = b.Say("template.dividingview.line")
	b.Drawing.Scale = 0
	drawPlate(b, w, geometry.Point{}, plateRadius)
	b.Write(Stroke{Layer: render.LayerText, Quantity: "dividing", Ink: render.Black}, render.Text{
		At: geometry.Point{Y: -plateRadius - plateMargin - 13}, Height: 3.5, Align: render.Middle, String: plateCaption(b, w.Dividing),
	})
	if c := w.Dividing.Compound; c != nil {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "dividing", Ink: render.Grey}, render.Text{
			At: geometry.Point{Y: -plateRadius - plateMargin - 19}, Height: 2.5, Align: render.Middle, String: compoundCaption(b, *c),
		})
	}
	return b.Drawing, nil
}

// drawPlate draws the plate, its hole circle of that radius about centre.
func drawPlate(b *Board, w Wheel, centre geometry.Point, radius float64) {
	a := w.Dividing
	b.Circle(Stroke{render.LayerTeeth, "dividing", render.Visible, render.Black, render.Steel}, centre, radius+plateMargin)
	b.Circle(Stroke{render.LayerBore, "dividing", render.Visible, render.Black, render.Paper}, centre, 5)
	b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "dividing", Pen: render.Centre, Ink: render.Blue}, centre, radius)
	if a.Circle == 0 {
		wholeTurns(b, a.Turns, centre, radius)
		return
	}
	stops := stops(a.Holes, a.Circle)
	hole := min(1.3, 0.3*2*math.Pi*radius/float64(a.Circle))
	for i := range a.Circle {
		at := centre.Add(geometry.Polar(radius, geometry.Clock(geometry.FullTurn*geometry.Angle(i)/geometry.Angle(a.Circle))))
		s := Stroke{render.LayerScrews, "dividing.circles", render.Thin, render.Black, render.Paper}
		n, stop := stops[i]
		if stop {
			s.Pen = render.Visible
		}
		b.Circle(s, at, hole)
		if stop {
			s.Fill = render.NoFill
			b.Circle(s, at, 0.4*hole)
		}
		if stop && n < plateNumbers {
			stopNumber(b, n, at.Sub(centre), centre, radius)
		}
	}
	sector(b, a.Holes, a.Circle, centre, radius)
}

// stops returns the holes the pin stops in, each with the first tooth that it
// stops there for.
func stops(holes, circle int) map[int]int {
	at := map[int]int{}
	for tooth, hole := 0, 0; ; tooth, hole = tooth+1, (hole+holes)%circle {
		if _, seen := at[hole]; seen {
			return at
		}
		at[hole] = tooth
	}
}

// stopNumber writes a stop's number outside the plate.
func stopNumber(b *Board, n int, way, centre geometry.Point, radius float64) {
	b.Write(Stroke{Layer: render.LayerText, Quantity: "dividing", Ink: render.Blue}, render.Text{
		At: centre.Add(way.Times((radius + plateMargin + 3.2) / radius)), Height: 2.5, Align: render.Middle, Centred: true, Bold: n < 2, String: strconv.Itoa(n),
	})
}

// sector draws the two sector arms of the first step.
func sector(b *Board, holes, circle int, centre geometry.Point, radius float64) {
	s := Stroke{Layer: render.LayerCentreLines, Quantity: "dividing", Pen: render.Thin, Ink: render.Blue}
	step := geometry.FullTurn * geometry.Angle(holes) / geometry.Angle(circle)
	for _, a := range []geometry.Angle{0, step} {
		line := radial(7, radius-2.5, a)
		b.Line(s, geometry.Line{From: centre.Add(line.From), To: centre.Add(line.To)})
	}
	if step > 0 {
		b.Arc(s, geometry.Arc{Centre: centre, Radius: 0.6 * radius, Start: geometry.Clock(0), Sweep: -step})
	}
}

// wholeTurns draws one hole, to which the pin comes back.
func wholeTurns(b *Board, turns int, centre geometry.Point, radius float64) {
	b.Circle(Stroke{render.LayerScrews, "dividing.circles", render.Thin, render.Black, render.Brass}, centre.Add(geometry.Point{Y: radius}), 1.3)
	b.Arc(Stroke{Layer: render.LayerCentreLines, Quantity: "dividing", Pen: render.Thin, Ink: render.Blue},
		geometry.Arc{Centre: centre, Radius: 0.6 * radius, Start: geometry.Degrees(80), Sweep: geometry.Degrees(-340)})
}

// plateCaption says what one tooth takes.
func plateCaption(b *Board, a *dividing.Answer) string {
	if a.Circle == 0 {
		return b.Say("template.dividingview.whole-turns", "turns", a.Turns)
	}
	return b.Say("template.dividingview.plate", "turns", a.Turns, "holes", a.Holes, "circle", a.Circle)
}

// compoundCaption says the two moves that come nearer.
func compoundCaption(b *Board, c dividing.Compound) string {
	key := "template.dividingview.compound"
	if c.Backwards() {
		key += "-back"
	}
	return b.Say(key, "turns", c.Turns, "holes", c.First.Holes, "circle", c.First.Circle,
		"others", max(c.Second.Holes, -c.Second.Holes), "other", c.Second.Circle, "every", c.Every)
}
