package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/render"
)

// Blank draws the turned blank at full size, from the template's side and in
// section, with its diameter, bore and thickness. ErrNothing if there are no
// teeth to turn a blank for.
func Blank(w Wheel, s Style) (*render.Drawing, error) {
	if w.Teeth == nil {
		return nil, fmt.Errorf("blank of %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = b.Say("template.blankview.title", "name", w.title())
	b.Drawing.Description = b.Say("template.blankview.line")
	r := w.Teeth.TipRadius + w.Oversize/2
	blankFace(b, w, r)
	b.Add("blank.oversize", render.Linear(geometry.Point{X: -r}, geometry.Point{X: r}, r+8, diameter(b, 2*r))...)
	blankSection(b, w, r)
	return b.Drawing, nil
}

// blankFace draws the blank's face with the tip circle inside its oversize.
func blankFace(b *Board, w Wheel, r float64) {
	o := geometry.Point{}
	b.Circle(Stroke{render.LayerTeeth, "blank.oversize", render.Visible, render.Black, render.Brass}, o, r)
	drawBore(b, w)
	if w.Oversize > 0 {
		b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "teeth", Pen: render.Centre, Ink: render.Blue}, o, w.Teeth.TipRadius)
	}
	end := r + 4
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "bore", Pen: render.Centre, Ink: render.Blue},
		geometry.Line{From: geometry.Point{X: -end}, To: geometry.Point{X: -punchGap}},
		geometry.Line{From: geometry.Point{X: punchGap}, To: geometry.Point{X: end}},
		geometry.Line{From: geometry.Point{Y: -end}, To: geometry.Point{Y: -punchGap}},
		geometry.Line{From: geometry.Point{Y: punchGap}, To: geometry.Point{Y: end}})
}

// sectionPast is how far right of its face the blank's section stands.
const sectionPast = 22.0

// blankSection draws the blank cut through its axis, to the right of its face.
func blankSection(b *Board, w Wheel, r float64) {
	thick := w.Thickness
	if thick <= 0 {
		return
	}
	x := r + sectionPast
	s := Stroke{render.LayerTeeth, "thickness", render.Visible, render.Black, render.Brass}
	for _, side := range []float64{1, -1} {
		b.Rectangle(s, geometry.Point{X: x, Y: side * w.Bore / 2}, geometry.Point{X: x + thick, Y: side * r})
	}
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "bore", Pen: render.Centre, Ink: render.Blue},
		geometry.Line{From: geometry.Point{X: x - 5}, To: geometry.Point{X: x + thick + 5}})
	if w.Bore > 0 {
		b.Add("bore", render.Linear(geometry.Point{X: x + thick, Y: w.Bore / 2}, geometry.Point{X: x + thick, Y: -w.Bore / 2}, 8, diameter(b, w.Bore))...)
	}
	b.Add("thickness", render.Linear(geometry.Point{X: x, Y: r}, geometry.Point{X: x + thick, Y: r}, 8, b.Style.Units.Length(thick))...)
}

func diameter(b *Board, d float64) string {
	return b.Say("template.blankview.diameter", "diameter", b.Style.Units.Length(d))
}
