package sheet

import (
	"math"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// A punch mark is a cross of hairlines whose centre is left open: from punchGap to
// punchReach from it, in millimetres, a tip's smaller where teeth stand close.
const (
	punchGap   = 0.15
	punchReach = 1.8
	tipReach   = 1.0
	tipShare   = 0.3 // of the tips' distance, at most
)

// drilled reports whether an item's circles are holes. Of the maker's own those are that
// show the paper; the others are scribed.
func drilled(it render.Item) bool {
	switch it.Layer {
	case render.LayerBore, render.LayerTrundles, render.LayerScrews, render.LayerStartHoles:
		return true
	case render.LayerAdditions:
		return it.Fill == render.Paper
	}
	return false
}

// numbering reports whether an item stays where only punch points are left: what is
// written, the maker's own notes too, and the centre lines.
func numbering(it render.Item) bool {
	return it.Layer == render.LayerText || it.Layer == render.LayerCentreLines || it.Layer == render.LayerAdditions && it.Text != nil
}

// punched returns a drawing of the punch points alone, with its numbers and centre
// lines: the centre of every hole and the tips of teeth that have ticks. A drawing
// without any is returned as it is.
func punched(d *render.Drawing, s template.Style) *render.Drawing {
	centres, tips := holeCentres(d), tipPoints(d)
	if len(centres)+len(tips) == 0 {
		return d
	}
	b := template.NewBoard("", s)
	b.Drawing.Title, b.Drawing.Scale = d.Title, d.Scale
	b.Drawing.Description = s.Words.Say("sheet.look.punch")
	for _, it := range d.Items {
		if numbering(it) {
			b.Drawing.Add(it)
		}
	}
	for _, p := range centres {
		punchMark(b, p, punchReach, 0)
	}
	reach := tipReach
	if n := len(tips); n > 1 {
		reach = min(reach, tipShare*tips[0].Dist(tips[1]))
	}
	for _, p := range tips {
		punchMark(b, p, reach, p.Direction())
	}
	return b.Drawing
}

// punchQuantity tells punch marks from what else is drawn.
const punchQuantity geometry.Quantity = "sheet.punch"

func punchMark(b *template.Board, at geometry.Point, reach float64, turn geometry.Angle) {
	gap := min(punchGap, reach/4)
	lines := make([]geometry.Line, 4)
	for i := range lines {
		way := geometry.Polar(1, turn+geometry.Degrees(float64(90*i)))
		lines[i] = geometry.Line{From: at.Add(way.Times(gap)), To: at.Add(way.Times(reach))}
	}
	b.Line(template.Stroke{Layer: render.LayerStartHoles, Quantity: punchQuantity, Pen: render.Hair}, lines...)
}

// holeCentres returns the centres of all that is drilled, each once: of circles,
// and of the cross that stands where there is no bore.
func holeCentres(d *render.Drawing) []geometry.Point {
	var points []geometry.Point
	add := func(p geometry.Point) {
		for _, q := range points {
			if p.Dist(q) < sameHole {
				return
			}
		}
		points = append(points, p)
	}
	for _, it := range d.Items {
		if !drilled(it) {
			continue
		}
		for _, o := range it.Outlines {
			if c, ok := centreOf(o); ok {
				add(c)
			}
		}
		if it.Layer == render.LayerBore && len(it.Chains) == 4 {
			bounds, _ := it.Bounds()
			add(bounds.Centre())
		}
	}
	return points
}

// sameHole is the distance in millimetres within which two marks are one: less than
// any punch can tell.
const sameHole = 1e-3

// centreOf returns the centre of an outline that is a circle.
func centreOf(o geometry.Outline) (geometry.Point, bool) {
	if o.Len() != 2 || math.Abs(o.Vertex(0).Bulge-o.Vertex(1).Bulge) > 1e-9 || math.Abs(math.Abs(o.Vertex(0).Bulge)-1) > 1e-9 {
		return geometry.Point{}, false
	}
	return o.Vertex(0).Point.Toward(o.Vertex(1).Point, 0.5), true
}

// tipPoints returns where the ticks of a wheel's tips meet its tip circle.
func tipPoints(d *render.Drawing) []geometry.Point {
	radius := 0.0
	for _, it := range d.Items {
		for _, o := range it.Outlines {
			if it.Layer == render.LayerTeeth && it.Quantity == "teeth" {
				for _, v := range o.Vertices() {
					radius = max(radius, v.Point.Norm())
				}
			}
		}
	}
	if radius == 0 {
		return nil
	}
	var tips []geometry.Point
	for _, it := range d.Items {
		if it.Layer == render.LayerCentreLines && it.Quantity == "teeth.count" {
			for _, c := range it.Chains {
				tips = append(tips, geometry.Polar(radius, c.Segment(0).From.Direction()))
			}
		}
	}
	return tips
}
