package dxf

import (
	"fmt"
	"math"
	"strings"
	"unicode/utf16"

	"tipline/geometry"
	"tipline/render"
)

// item writes the item's outlines, chains and text as entities. Outlines without a
// pen are fills and left out, so that nothing is cut twice, except arrowheads.
func (p *plotter) item(it *render.Item) {
	if it.Pen != render.NoPen || it.Fill == render.Solid {
		for _, o := range it.Outlines {
			p.outline(it, o)
		}
	}
	for _, c := range it.Chains {
		p.chain(it, c)
	}
	if it.Text != nil && it.Text.String != "" {
		p.text(it, *it.Text)
	}
}

// entity begins an entity on the item's layer.
func (p *plotter) entity(kind string, it *render.Item) {
	p.name(0, kind)
	p.name(8, string(it.Layer))
	p.name(6, lineType(it.Pen))
	p.whole(62, colour(it.Ink))
}

func (p *plotter) outline(it *render.Item, o geometry.Outline) {
	if centre, radius, ok := circle(o); ok {
		p.entity("CIRCLE", it)
		p.point(10, centre)
		p.number(40, radius)
		return
	}
	if o.Len() > 0 {
		p.polyline(it, o.Vertices(), true)
	}
}

// circle reports whether the outline is a full circle of two half arcs.
func circle(o geometry.Outline) (centre geometry.Point, radius float64, ok bool) {
	if o.Len() != 2 || math.Abs(o.Vertex(0).Bulge) != 1 || o.Vertex(0).Bulge != o.Vertex(1).Bulge {
		return geometry.Point{}, 0, false
	}
	a, b := o.Vertex(0).Point, o.Vertex(1).Point
	return a.Toward(b, 0.5), a.Dist(b) / 2, true
}

// chain writes one segment as LINE or ARC, and more as an open POLYLINE.
func (p *plotter) chain(it *render.Item, c geometry.Chain) {
	switch c.Len() {
	case 0:
	case 1:
		p.segment(it, c.Segment(0))
	default:
		p.polyline(it, c.Vertices(), false)
	}
}

func (p *plotter) segment(it *render.Item, s geometry.Segment) {
	arc, ok := s.Arc()
	if !ok || render.Flat(s) {
		p.entity("LINE", it)
		p.point(10, s.From)
		p.point(11, s.To)
		return
	}
	start, end := arc.Start, arc.Start+arc.Sweep
	if arc.Sweep < 0 {
		start, end = end, start // a DXF arc runs anticlockwise
	}
	p.entity("ARC", it)
	p.point(10, arc.Centre)
	p.number(40, arc.Radius)
	p.number(50, start.Turn().Degrees())
	p.number(51, end.Turn().Degrees())
}

// polyline writes vertices with their bulges, which DXF means as we do.
func (p *plotter) polyline(it *render.Item, vertices []geometry.Vertex, closed bool) {
	p.entity("POLYLINE", it)
	p.whole(66, 1)
	p.point(10, geometry.Point{})
	if closed {
		p.whole(70, 1)
	} else {
		p.whole(70, 0)
	}
	for i, v := range vertices {
		p.name(0, "VERTEX")
		p.name(8, string(it.Layer))
		p.point(10, v.Point)
		if v.Bulge != 0 && (closed || i+1 < len(vertices)) {
			p.number(42, v.Bulge)
		}
	}
	p.name(0, "SEQEND")
	p.name(8, string(it.Layer))
}

// text writes lettering by its own alignment.
func (p *plotter) text(it *render.Item, t render.Text) {
	p.entity("TEXT", it)
	p.point(10, t.Origin())
	p.number(40, t.Height)
	p.name(1, ascii(t.String))
	p.number(50, t.Turn.Turn().Degrees())
	p.name(7, "STANDARD")
	if t.Mirror {
		p.whole(71, 2) // written backward
	}
	if t.Align == render.Left && !t.Centred {
		return
	}
	p.whole(72, int(t.Align)) // 0 left, 1 middle, 2 right
	p.point(11, t.At)
	if t.Centred {
		p.whole(73, 2) // half way up
	}
}

// ascii writes a text in the letters that release 12 has: the degree, diameter and
// plus-minus signs by their codes and any other letter by its number.
func ascii(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == '°':
			b.WriteString("%%d")
		case r == 'Ø' || r == '⌀':
			b.WriteString("%%c")
		case r == '±':
			b.WriteString("%%p")
		case r < ' ':
			b.WriteByte(' ')
		case r < 0x7F:
			b.WriteRune(r)
		default:
			for _, unit := range utf16.Encode([]rune{r}) {
				fmt.Fprintf(&b, `\U+%04X`, unit)
			}
		}
	}
	return b.String()
}
