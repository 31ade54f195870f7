package screen

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// Found is what lies under a pixel: an item of the drawing, the part and the
// quantity that made the line there, and the nearest place on it.
type Found struct {
	Item     int
	Part     string
	Quantity geometry.Quantity
	At       geometry.Point
	Distance float64 // pixels
}

// Find returns the line of the drawing nearest to a pixel, false when none lies
// within reach pixels. Lines that no field made are passed over. Of two lines
// that are equally near the upper one is found.
func Find(d *render.Drawing, v View, at Pixel, reach float64) (Found, bool) {
	best := Found{Item: -1, Distance: reach}
	if d == nil || v.Blank() {
		return best, false
	}
	here := v.ToDrawing(at)
	for _, i := range layered(d) {
		it := &d.Items[i]
		if it.Pen == render.NoPen {
			continue
		}
		look := func(s geometry.Segment) {
			q := madeBy(s, it.Quantity)
			if q == "" {
				return
			}
			p := nearest(s, here)
			if far := p.Dist(here) * v.Scale; far <= best.Distance {
				best = Found{i, it.Part, q, p, far}
			}
		}
		for _, o := range it.Outlines {
			for k := range o.Len() {
				look(o.Segment(k))
			}
		}
		for _, c := range it.Chains {
			for k := range c.Len() {
				look(c.Segment(k))
			}
		}
	}
	return best, best.Item >= 0
}

// nearest returns the point of a segment nearest to p.
func nearest(s geometry.Segment, p geometry.Point) geometry.Point {
	near, _ := s.Nearest(p)
	return near
}

// even is how much shorter a line may be and still be as good a place.
const even = 0.97

// Place returns the middle of the longest line that a lit quantity made and that
// is seen in a picture of the size, the highest of those as long; false when there
// is none.
func Place(d *render.Drawing, v View, lit Lit, width, height float64) (Pixel, bool) {
	if d == nil || v.Blank() {
		return Pixel{}, false
	}
	lit, ok := litOn(d, lit)
	if !ok {
		return Pixel{}, false
	}
	picture := box{0, 0, width, height}
	var t trace
	longest, place := 0.0, Pixel{}
	for i := range d.Items {
		it := &d.Items[i]
		if it.Part != lit.Part || it.Pen == render.NoPen {
			continue
		}
		t.reset()
		t.lit(it, lit.Quantity, v)
		for _, r := range t.runs {
			ps := t.of(r)
			middle := ps[len(ps)/2]
			if len(ps) == 2 {
				middle = between(ps[0], ps[1], 0.5)
			}
			size := math.Hypot(r.box.x1-r.box.x0, r.box.y1-r.box.y0)
			better := size*even > longest || size > longest*even && middle.Y < place.Y
			if better && picture.contains(middle) {
				longest, place = math.Max(size, longest), middle
			}
		}
	}
	return place, longest > 0
}
