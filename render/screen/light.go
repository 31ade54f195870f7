package screen

import (
	"image"
	"math"
	"strings"

	"tipline/geometry"
	"tipline/render"
)

// light draws the lit lines again, heavier and in the lit colour.
func (p *hand) light(dst *image.RGBA, d *render.Drawing, v View) {
	lit, ok := litOn(d, p.Lit)
	if !ok {
		return
	}
	for _, i := range p.plan.order {
		it := &d.Items[i]
		if it.Part != lit.Part || p.leftOut(it) || it.Pen == render.NoPen {
			continue
		}
		p.trace.reset()
		p.trace.lit(it, lit.Quantity, v)
		if len(p.trace.runs) > 0 {
			p.litLine(dst, it.Pen, v)
		}
	}
}

// litLine strokes what is traced in the lit colour. A broken line keeps its marks and gaps,
// on a paler continuous one that covers those it had.
func (p *hand) litLine(dst *image.RGBA, pen render.Pen, v View) {
	width := litWidth * p.density()
	if len(pen.Dashes()) > 0 {
		p.line(dst, render.Thin, p.Theme.Halo, 1.6*width)
		width = math.Max(p.penWidth(pen, v.Scale), litDash*p.density())
	}
	p.line(dst, pen, p.Theme.Lit, width)
}

// litOn returns what is to be lit on a drawing: the lines of the quantity, else
// those of the whole it belongs to, as of all teeth for their number.
func litOn(d *render.Drawing, lit Lit) (Lit, bool) {
	for q := string(lit.Quantity); q != ""; q = q[:max(strings.LastIndex(q, "."), 0)] {
		lit.Quantity = geometry.Quantity(q)
		for i := range d.Items {
			if it := &d.Items[i]; it.Part == lit.Part && it.Pen != render.NoPen && makes(it, lit.Quantity) {
				return lit, true
			}
		}
	}
	return lit, false
}

// makes reports whether a quantity made any line of an item.
func makes(it *render.Item, q geometry.Quantity) bool {
	for _, o := range it.Outlines {
		for i := range o.Len() {
			if madeBy(o.Segment(i), it.Quantity) == q {
				return true
			}
		}
	}
	for _, c := range it.Chains {
		for i := range c.Len() {
			if madeBy(c.Segment(i), it.Quantity) == q {
				return true
			}
		}
	}
	return false
}

// lit traces the segments of an item that a quantity made, each run of them as an
// open run. A segment that names no quantity is of its item's.
func (t *trace) lit(it *render.Item, q geometry.Quantity, v View) {
	for _, o := range it.Outlines {
		t.litRuns(o.Len(), o.Segment, it.Quantity, q, v)
	}
	for _, c := range it.Chains {
		t.litRuns(c.Len(), c.Segment, it.Quantity, q, v)
	}
}

func (t *trace) litRuns(n int, segment func(int) geometry.Segment, whole, q geometry.Quantity, v View) {
	open := false
	for i := range n {
		s := segment(i)
		if madeBy(s, whole) != q {
			if open {
				t.end(false)
			}
			open = false
			continue
		}
		if !open {
			t.begin(v.ToPixel(s.From))
			open = true
		}
		t.segment(s, v)
	}
	if open {
		t.end(false)
	}
}

// madeBy returns the quantity that made a segment of an item.
func madeBy(s geometry.Segment, whole geometry.Quantity) geometry.Quantity {
	if s.Quantity != "" {
		return s.Quantity
	}
	return whole
}
