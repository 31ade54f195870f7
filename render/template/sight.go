package template

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// Least lengths, in millimetres of paper, of an edge that gets a sighting line and
// of a radius that gets a dimension.
const (
	leastSighted = 1.0
	leastUpright = 1e-6 // radians from the infeed below which an edge stands along it
)

// sightLines draws a line along every straight edge of the form, long enough to
// sight along, with its angle, the infeed axis and the line square to it through
// the cutting end.
func (e *enlargement) sightLines() {
	box := e.box().Grow(sightPast)
	s := Stroke{Layer: render.LayerRelief, Quantity: "cutter", Pen: render.Thin, Ink: render.Blue}
	chain := s
	chain.Pen = render.Centre
	e.Line(chain, geometry.Line{From: geometry.Point{Y: box.Min.Y}, To: geometry.Point{Y: box.Max.Y}})
	e.Line(s, geometry.Line{From: geometry.Point{X: box.Min.X}, To: geometry.Point{X: box.Max.X}})
	e.topNote(geometry.Point{Y: box.Max.Y}, "cutter", e.Say("grinding.infeed"), !e.mirror)
	said := map[string]bool{}
	for i := range e.cut.Form.Edge.Len() {
		edge := e.cut.Form.Edge.Segment(i)
		if edge.IsLine() && edge.Length()*e.scale >= leastSighted {
			e.sight(edge, said)
		}
	}
}

// sight draws the sighting line along one straight edge and writes its angle: from
// the infeed for a steep one, from square to it for a flat one. An angle that two
// edges share is written once.
func (e *enlargement) sight(edge geometry.Segment, said map[string]bool) {
	placed := e.segment(edge)
	way := placed.To.Sub(placed.From)
	lean := math.Atan2(math.Abs(way.X), math.Abs(way.Y))
	if lean < leastUpright || math.Pi/2-lean < leastUpright {
		return
	}
	line, ok := through(placed.From, way, e.box().Grow(sightPast))
	if !ok {
		return
	}
	e.Line(Stroke{Layer: render.LayerRelief, Quantity: edge.Quantity, Pen: render.Thin, Ink: render.Blue}, line)
	steep := lean <= math.Pi/4
	angle := lean
	if !steep {
		angle = math.Pi/2 - lean
	}
	text := e.Say(sightKey(edge.Quantity, steep), "angle", e.Style.Units.Angle(geometry.Angle(angle)))
	if said[text] {
		return
	}
	said[text] = true
	e.writeSight(edge, line, steep, text)
}

// writeSight writes a sighting line's angle at its upper end: above it for a steep
// line, in the column beside it for a flat one.
func (e *enlargement) writeSight(edge geometry.Segment, line geometry.Line, steep bool, text string) {
	top := line.From
	if line.To.Y > top.Y {
		top = line.To
	}
	if steep {
		e.topNote(top, edge.Quantity, text, e.mirror != (top.X < e.box().Min.X))
		return
	}
	e.call(top, edge.Quantity, render.Blue, text)
}

// sightKey returns the catalogue's key for an edge that q made.
func sightKey(q geometry.Quantity, steep bool) string {
	switch q {
	case "teeth.front_relief":
		return "grinding.front-relief"
	case "teeth.floor", "teeth.floor_slope":
		return "grinding.floor"
	case "teeth.back_angle":
		return "grinding.back"
	}
	if steep {
		return "grinding.flank"
	}
	return "grinding.floor"
}

// topNote writes a note above the form at the end of a line, to its left or right.
func (e *enlargement) topNote(at geometry.Point, q geometry.Quantity, text string, left bool) {
	t := render.Text{At: at.Add(geometry.Point{X: 1.2, Y: -2.5}), Height: 2.5, String: text}
	if left {
		t.At.X, t.Align = at.X-1.2, render.Right
	}
	e.Write(Stroke{Layer: render.LayerText, Quantity: q, Ink: render.Blue}, t)
}

// radii dimensions every arc of the form: its centre cross and a radius line where
// the centre lies near enough and the arc is large enough, else a callout. A
// radius that two arcs share is written once.
func (e *enlargement) radii() {
	said := map[string]bool{}
	near := e.box().Grow(2 * columnPast)
	for i := range e.cut.Form.Edge.Len() {
		edge := e.cut.Form.Edge.Segment(i)
		arc, ok := e.segment(edge).Arc()
		if !ok {
			continue
		}
		text := e.Say("grinding.radius", "radius", e.Style.Units.Bare(arc.Radius/e.scale))
		if said[text] {
			continue
		}
		said[text] = true
		if middle := arc.At(0.5); arc.Radius < leastRadius || !near.Contains(arc.Centre) {
			e.call(middle, edge.Quantity, render.Black, text)
		} else {
			s := Stroke{Layer: render.LayerDimensions, Quantity: edge.Quantity, Pen: render.Thin}
			cross(e.Board, s, arc.Centre, 0, 3)
			e.Add(edge.Quantity, render.Radius(arc.Centre, arc.Radius, middle.Sub(arc.Centre).Direction(), text)...)
		}
	}
}

// leastRadius is the radius in millimetres of paper below which a radius is called
// out instead of dimensioned.
const leastRadius = 18.0
