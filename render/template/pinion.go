package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/render"
)

// isPinion reports whether the part is a pinion, which has no hand: it is seen from
// no template's side.
func (w Wheel) isPinion() bool { return w.Lantern != nil || w.Teeth != nil && w.Hand == "" }

// pinionWide is how wide a pinion is drawn, at most, in its view.
const pinionWide = 80.0

// PinionView draws a pinion seen along its arbor, enlarged by the greatest scale of
// ISO 5455 at which it is no wider than 80 mm: its leaves, or its trundles on a
// shroud, with tip, pitch and root circle, bore, and their diameters. ErrNothing if
// it is no pinion.
func PinionView(w Wheel, s Style) (*render.Drawing, error) {
	if !w.isPinion() {
		return nil, fmt.Errorf("view of the pinion %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = w.title()
	v := pinionPicture{Board: b, scale: 1, notes: callouts{past: 12}}
	if w.Lantern != nil {
		b.Drawing.Description = b.Say("template.pinionview.lantern")
		v.lantern(w)
	} else {
		b.Drawing.Description = b.Say("template.pinionview.leaves")
		v.leaves(w)
	}
	b.Drawing.Scale = v.scale
	v.circle(w.Bore/2, 235, "bore", "bore", Stroke{render.LayerBore, "bore", render.Visible, render.Black, render.Paper})
	cross(b, Stroke{Layer: render.LayerCentreLines, Quantity: "bore", Pen: render.Centre, Ink: render.Blue}, geometry.Point{}, punchGap, v.edge+6)
	v.notes.draw(b, geometry.Box{Min: geometry.Point{X: -v.edge, Y: -v.edge}, Max: geometry.Point{X: v.edge, Y: v.edge}})
	return b.Drawing, nil
}

// pinionPicture is a pinion being drawn.
type pinionPicture struct {
	*Board
	scale float64
	edge  float64 // radius on the paper
	notes callouts
}

// leaves draws a pinion's leaves with their circles.
func (v *pinionPicture) leaves(w Wheel) {
	t := w.Teeth
	v.enlarge(t.TipRadius)
	v.Closed(Stroke{render.LayerTeeth, "leaves", render.Visible, render.Black, render.Steel}, t.Outline.Scale(v.scale))
	chain := Stroke{Layer: render.LayerPitchCircle, Quantity: "module", Pen: render.Centre, Ink: render.Blue}
	v.circle(t.TipRadius, 35, "module", "tips", chain)
	v.circle(t.PitchRadius, 145, "module", "pitch", chain)
	v.circle(t.RootRadius, 200, "ratio", "root", chain)
}

// lantern draws a lantern pinion's trundles on a shroud.
func (v *pinionPicture) lantern(w Wheel) {
	l := w.Lantern
	v.enlarge(l.Shroud / 2)
	v.circle(l.Shroud/2, 150, "leaves", "shroud", Stroke{render.LayerTeeth, "leaves", render.Visible, render.Black, render.Brass})
	v.circle(l.PitchRadius, 190, "module", "circle", Stroke{Layer: render.LayerPitchCircle, Quantity: "module", Pen: render.Centre, Ink: render.Blue})
	for _, h := range l.Holes {
		v.Circle(Stroke{render.LayerTrundles, "trundle", render.Visible, render.Black, render.Steel}, h.At.Times(v.scale), v.scale*l.TrundleDiameter/2)
	}
	at := l.Holes[1].At.Times(v.scale).Add(geometry.Polar(v.scale*l.TrundleDiameter/2, geometry.Degrees(30)))
	v.call(at, "trundle", "trundle", v.Style.Units.Fine(l.TrundleDiameter))
}

// enlarge chooses the scale for a pinion of that radius.
func (v *pinionPicture) enlarge(radius float64) {
	v.scale = viewScale(2*radius, pinionWide)
	v.edge = radius * v.scale
}

// circle draws a circle of the work and calls its diameter out from a direction in
// degrees; one without a radius is left out.
func (v *pinionPicture) circle(radius, degrees float64, q geometry.Quantity, name string, s Stroke) {
	if !(radius > 0) {
		return
	}
	v.Circle(s, geometry.Point{}, radius*v.scale)
	v.call(geometry.Polar(radius*v.scale, geometry.Degrees(degrees)), q, name, v.Style.Units.Fine(2*radius))
}

// call calls out a size.
func (v *pinionPicture) call(at geometry.Point, q geometry.Quantity, name, value string) {
	box := geometry.Box{Min: geometry.Point{X: -v.edge, Y: -v.edge}, Max: geometry.Point{X: v.edge, Y: v.edge}}
	v.notes.call(box, at, q, render.Black, v.Say("template.pinionview."+name, "value", value))
}
