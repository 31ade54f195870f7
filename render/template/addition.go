package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
)

// noteHeight is the height of a maker's own notes on a template, in millimetres.
const noteHeight = 2.5

// drawAdditions draws the maker's own holes, circles, lines and notes wherever they
// are repeated; a hole's centre is left open for the punch.
func drawAdditions(b *Board, additions []crossing.Addition) {
	for i, a := range additions {
		of := func(field string) geometry.Quantity {
			return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, field))
		}
		for _, one := range a.EvenlySpread() {
			drawAddition(b, one, of)
		}
	}
}

func drawAddition(b *Board, a crossing.Addition, of func(string) geometry.Quantity) {
	at := geometry.Polar(a.Radius, geometry.Clock(a.Angle))
	scribed := Stroke{Layer: render.LayerAdditions, Pen: render.Thin}
	switch a.Kind {
	case crossing.HoleKind:
		r := a.Diameter / 2
		b.Circle(Stroke{render.LayerAdditions, of("diameter"), render.Visible, render.Black, render.Paper}, at, r)
		cross(b, Stroke{Layer: render.LayerAdditions, Quantity: of("radius"), Pen: render.Hair}, at, min(0.15, r/4), r+0.8)
	case crossing.CircleKind:
		scribed.Quantity = of("diameter")
		b.Circle(scribed, at, a.Diameter/2)
	case crossing.LineKind:
		scribed.Quantity = of("to_radius")
		b.Line(scribed, geometry.Line{From: at, To: geometry.Polar(a.ToRadius, geometry.Clock(a.ToAngle))})
	case crossing.NoteKind:
		b.Write(Stroke{Layer: render.LayerAdditions, Quantity: of("text")},
			render.Text{At: at, Height: noteHeight, Align: render.Middle, Centred: true, String: a.Text})
	}
}

// besideNote is how far before a note its handle stands, so that the note can be read.
const besideNote = 1.8

// additionHandles returns the handles of the maker's own: the place of each and the
// diameter of what is round, and where a line ends. A note's stands before it.
func additionHandles(additions []crossing.Addition) []Handle {
	var handles []Handle
	for i, a := range additions {
		of := func(field string) geometry.Quantity {
			return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, field))
		}
		at := geometry.Polar(a.Radius, geometry.Clock(a.Angle))
		place := placeHandle(of("radius"), of("angle"), at)
		if a.Kind == crossing.NoteKind {
			wide := render.Text{Height: noteHeight, String: a.Text}.Width()
			place = place.aside(geometry.Point{X: -wide/2 - besideNote})
		}
		handles = append(handles, place)
		switch {
		case a.Kind == crossing.LineKind:
			handles = append(handles, placeHandle(of("to_radius"), of("to_angle"), geometry.Polar(a.ToRadius, geometry.Clock(a.ToAngle))))
		case a.Diameter > 0:
			handles = append(handles, lengthHandle(of("diameter"), at.Add(geometry.Point{X: a.Diameter / 2}), leastLength,
				func(p geometry.Point) float64 { return 2 * p.Dist(at) }).from(at.Sub(geometry.Point{X: a.Diameter / 2})))
		}
	}
	return handles
}

// placeHandle sets a place by its distance from the wheel's centre and its angle
// clockwise from 12 o'clock.
func placeHandle(radius, angle geometry.Quantity, at geometry.Point) Handle {
	return Handle{Quantity: radius, At: at, Span: [2]geometry.Point{{}, at}, Set: func(p geometry.Point) ([]Setting, error) {
		if !p.Finite() {
			return nil, ErrNowhere
		}
		clockwise := (geometry.Clock(0) - p.Direction()).Turn()
		return []Setting{{radius, math.Min(p.Norm(), greatestLength)}, {angle, float64(clockwise)}}, nil
	}}
}
