package template

import (
	"fmt"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/mount"
	"tipline/render"
)

// Drilling draws the full-scale template by which a wheel's screw holes are drilled,
// the wheel's centre at the origin: its outline, windows, hub and bore, the collet's
// register and flange behind it, the screw circle, and the holes with their centres
// left open for a punch, numbered clockwise. ErrNothing if no screws hold the wheel.
func Drilling(w Wheel, s Style) (*render.Drawing, error) {
	if w.Teeth == nil || w.Mounting == nil || len(w.Mounting.Places) == 0 {
		return nil, fmt.Errorf("drilling template of %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = b.Say("template.drilling.title", "name", w.title())
	b.Drawing.Description = b.Say("template.drilling.line")
	drawTeeth(b, w)
	faceForDrilling(b, w)
	ticks(b, w.Teeth)
	var lines []geometry.Angle
	if w.Crossing != nil {
		lines = armLines(b, w.Teeth, w.Crossing.Arms)
	} else {
		punchMark(b, w)
	}
	numbers(b, w.Teeth, lines)
	seat(b, w.Collet, 1, Stroke{Layer: render.LayerBore, Pen: render.Hidden})
	screwHoles(b, *w.Mounting)
	return b.Drawing, nil
}

// faceForDrilling draws bore, hub and windows in thin lines: they are there to see
// what the holes come near to, and may be cut already.
func faceForDrilling(b *Board, w Wheel) {
	if lay := w.Crossing; lay != nil {
		for _, win := range lay.Windows {
			b.Closed(Stroke{render.LayerWindows, "crossing", render.Thin, render.Black, render.Paper}, win.Outline)
		}
		b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "crossing.hub", Pen: render.Thin, Ink: render.Blue}, geometry.Point{}, lay.HubRadius)
	}
	drawBore(b, w)
}

// seat draws the collet's register and flange, which lie behind the wheel, at a scale.
func seat(b *Board, c mount.Collet, k float64, s Stroke) {
	for _, part := range []struct {
		diameter float64
		q        geometry.Quantity
	}{{c.Register, "mount.collet.register"}, {c.Flange, "mount.collet.flange"}} {
		s.Quantity = part.q
		b.Circle(s, geometry.Point{}, k*part.diameter/2)
	}
}

// screwHoles draws the screw circle and the clearance holes, each with a cross that
// leaves its centre open and runs a little past the hole, and its number outside.
func screwHoles(b *Board, m mount.Mounting) {
	b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "mount.screw_circle", Pen: render.Centre, Ink: render.Blue},
		geometry.Point{}, m.Screws.Circle/2)
	r := m.Clear.MM / 2
	for i, p := range m.Places {
		b.Circle(Stroke{render.LayerScrews, "mount.screws", render.Visible, render.Black, render.Paper}, p.At, r)
		holeCross(b, p, r, r+0.8)
		b.Write(Stroke{Layer: render.LayerText, Quantity: "mount.screws", Ink: render.Blue}, render.Text{
			At: geometry.Polar(m.Screws.Circle/2+r+2.1, geometry.Clock(p.Angle)), Height: 1.8, Align: render.Middle, Centred: true,
			Bold: i == 0, String: strconv.Itoa(i + 1),
		})
	}
}

// holeCross draws the cross of a hole of that radius, along its radius and square to
// it, out to a distance, its middle left open for the punch.
func holeCross(b *Board, p mount.Place, r, to float64) {
	from := min(0.15, r/4)
	lines := make([]geometry.Line, 4)
	for i := range lines {
		way := geometry.Polar(1, geometry.Clock(p.Angle)+geometry.Degrees(float64(90*i)))
		lines[i] = geometry.Line{From: p.At.Add(way.Times(from)), To: p.At.Add(way.Times(to))}
	}
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "mount.screws", Pen: render.Hair, Ink: render.Blue}, lines...)
}
