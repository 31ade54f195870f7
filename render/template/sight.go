package template

import (
	"cmp"
	"math"
	"slices"

	"tipline/geometry"
	"tipline/render"
)

// leastLean is the angle in radians from the infeed, or from square to it, below
// which an edge needs no sighting line of its own, and within which two angles are
// one: 1 nm over a millimetre.
const leastLean = 1e-6

// sightLines draws a line along every straight edge of the form that cuts, long
// enough to sight along, the infeed axis, and the line square to it through the
// cutting end; with their angles if they are to be written.
func (e *enlargement) sightLines(written bool) {
	box := e.box().Grow(e.sightPast())
	s := Stroke{Layer: render.LayerRelief, Quantity: "cutter", Pen: render.Centre, Ink: render.Blue}
	end := geometry.Point{Y: box.Max.Y}
	if written {
		end.Y += axisPast
		e.topNote(end, "cutter", e.Say("template.grinding.infeed"), !e.mirror)
	}
	e.Line(s, geometry.Line{From: geometry.Point{Y: box.Min.Y}, To: end})
	s.Pen = render.Thin
	e.Line(s, geometry.Line{From: geometry.Point{X: box.Min.X}, To: geometry.Point{X: box.Max.X}})
	said := map[string]bool{}
	for i := range e.cut.Form.Edge.Len() {
		if edge := e.cut.Form.Edge.Segment(i); edge.IsLine() && e.cuts(edge) {
			e.sight(edge, said, written)
		}
	}
}

// sightPast returns how far sighting lines run on past the form: further past one
// that is too small on paper to be lettered, and less far past one for small paper.
func (e *enlargement) sightPast() float64 {
	switch {
	case e.small():
		return 2 * sightPast
	case e.narrow():
		return sightPastNarrow
	}
	return sightPast
}

// axisPast is how much further up than the sighting lines the infeed axis runs,
// clear of their angles.
const axisPast = 4.5

// cuts reports whether an edge reaches below the tip circle at depth.
func (e *enlargement) cuts(edge geometry.Segment) bool {
	centre := geometry.Point{X: e.cut.SetOver, Y: -e.cut.Height()}
	far := func(p geometry.Point) float64 { return geometry.Point{X: p.X, Y: p.Y / e.share}.Dist(centre) }
	low := min(far(edge.From), far(edge.To))
	return low < e.cut.TipRadius-leastCut
}

// leastCut is how far below the tip circle an edge must reach to count as cutting:
// ten times the last digit that is written.
const leastCut = 0.01

// sight draws the sighting line along one straight edge and writes its angle. An
// angle that two edges share is written once.
func (e *enlargement) sight(edge geometry.Segment, said map[string]bool, written bool) {
	placed := e.segment(edge)
	way := placed.To.Sub(placed.From)
	lean := math.Atan2(math.Abs(way.X), math.Abs(way.Y))
	if lean < leastLean || math.Pi/2-lean < leastLean {
		return
	}
	line, ok := through(placed.From, way, e.box().Grow(e.sightPast()))
	if !ok {
		return
	}
	e.Line(Stroke{Layer: render.LayerRelief, Quantity: edge.Quantity, Pen: render.Thin, Ink: render.Blue}, line)
	key, fromInfeed := sightKey(edge.Quantity, lean <= math.Pi/4)
	angle := lean
	if !fromInfeed {
		angle = math.Pi/2 - lean
	}
	angle = math.Round(angle/leastLean) * leastLean
	text := e.Say(key, "angle", e.Style.Units.Angle(geometry.Angle(angle)))
	if !written || said[text] {
		return
	}
	said[text] = true
	e.writeSight(edge, line, lean <= math.Pi/4, text)
}

// writeSight writes a sighting line's angle at its upper end: above it for a steep
// line, in the column beside it for a flat one.
func (e *enlargement) writeSight(edge geometry.Segment, line geometry.Line, steep bool, text string) {
	top := line.From
	if line.To.Y > top.Y {
		top = line.To
	}
	if steep {
		e.topNote(top, edge.Quantity, text, top.X < 0)
		return
	}
	e.call(top, edge.Quantity, render.Blue, text)
}

// sightKey returns the catalogue's key for an edge that q made, and whether its
// angle is counted from the infeed, as a front's and a back's are, or from square to
// it, as a floor's is; an edge that no field made goes by how steep it is.
func sightKey(q geometry.Quantity, steep bool) (key string, fromInfeed bool) {
	switch q {
	case "teeth.front_relief":
		return "template.grinding.front-relief", true
	case "teeth.floor", "teeth.floor_slope":
		return "template.grinding.floor", false
	case "teeth.back_angle":
		return "template.grinding.back", true
	}
	if steep {
		return "template.grinding.flank", true
	}
	return "template.grinding.floor", false
}

// topNote writes a note above the form at the end of a line, to its left or right;
// where another note stands there already it goes higher, and the line with it.
func (e *enlargement) topNote(at geometry.Point, q geometry.Quantity, text string, left bool) {
	t := render.Text{At: at.Add(geometry.Point{X: 1.2, Y: -2.5}), Height: 2.5, String: text}
	if left {
		t.At.X, t.Align = at.X-1.2, render.Right
	}
	raised := t
	for e.crowded(raised) {
		raised.At.Y += 4
	}
	if up := raised.At.Y - t.At.Y; up > 0 {
		e.Line(Stroke{Layer: render.LayerRelief, Quantity: q, Pen: render.Hair, Ink: render.Blue},
			geometry.Line{From: at, To: at.Add(geometry.Point{Y: up})})
	}
	e.tops = append(e.tops, raised)
	e.Write(Stroke{Layer: render.LayerText, Quantity: q, Ink: render.Blue}, raised)
}

// crowded reports whether a text would stand on a note above the form.
func (e *enlargement) crowded(t render.Text) bool {
	for _, other := range e.tops {
		if t.Bounds().Grow(0.5).Touches(other.Bounds()) {
			return true
		}
	}
	return false
}

// rounding is an arc of the form with what is written of it.
type rounding struct {
	q    geometry.Quantity
	arc  geometry.Arc
	text string
}

// mostRadii is how many radii are dimensioned: a flank fitted with more arcs than
// that, or with those of an ellipse, is ground to the drawing, and only its least and greatest are called out.
const mostRadii = 3

// radii dimensions the arcs of the form: each has its centre cross and a radius
// line where the centre lies near enough and the arc is large enough, else a
// callout. A radius that two arcs share is written once.
func (e *enlargement) radii() {
	all := e.roundings()
	fitted := len(all) > mostRadii || e.share != 1
	if fitted && len(all) > 2 {
		slices.SortFunc(all, func(a, b rounding) int { return cmp.Compare(a.arc.Radius, b.arc.Radius) })
		all = []rounding{all[0], all[len(all)-1]}
	}
	near := e.box().Grow(2 * e.notes.past)
	near.Max.Y = e.box().Max.Y
	for _, r := range all {
		if middle := r.arc.At(0.5); fitted || r.arc.Radius < leastRadius || !near.Contains(r.arc.Centre) {
			e.call(middle, r.q, render.Black, r.text)
		} else {
			s := Stroke{Layer: render.LayerDimensions, Quantity: r.q, Pen: render.Thin}
			cross(e.Board, s, r.arc.Centre, 0, 3)
			e.Add(r.q, render.Radius(r.arc.Centre, r.arc.Radius, middle.Sub(r.arc.Centre).Direction(), r.text)...)
		}
	}
}

// roundings returns the form's arcs, the first of each radius, without the root.
func (e *enlargement) roundings() []rounding {
	var all []rounding
	for i := range e.cut.Form.Edge.Len() {
		edge := e.cut.Form.Edge.Segment(i)
		arc, ok := e.segment(edge).Arc()
		if !ok || e.isRoot(edge) {
			continue
		}
		text := e.Say(radiusKey(edge.Quantity), "radius", e.Style.Units.Bare(arc.Radius/e.scale))
		if !slices.ContainsFunc(all, func(r rounding) bool { return r.text == text }) {
			all = append(all, rounding{edge.Quantity, arc, text})
		}
	}
	return all
}

// onRoot is how near the root circle in millimetres an arc must lie all along to be
// the root, which is called out as such: twice what arcs are fitted to.
const onRoot = 2e-3

// isRoot reports whether an arc of the form lies along the root circle.
func (e *enlargement) isRoot(edge geometry.Segment) bool {
	centre := geometry.Point{X: e.cut.SetOver, Y: -e.cut.Height()}
	for _, p := range [3]geometry.Point{edge.From, edge.At(0.5), edge.To} {
		p.Y /= e.share
		if math.Abs(p.Dist(centre)-e.cut.RootRadius) > onRoot {
			return false
		}
	}
	return true
}

// radiusKey returns the catalogue's key for a radius that q made.
func radiusKey(q geometry.Quantity) string {
	switch q {
	case "teeth.corner_radius":
		return "template.grinding.corner"
	case "teeth.back_fillet":
		return "template.grinding.back-fillet"
	}
	return "template.grinding.radius"
}

// leastRadius is the radius in millimetres of paper below which a radius is called
// out instead of dimensioned.
const leastRadius = 18.0
