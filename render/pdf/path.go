package pdf

import (
	"tipline/geometry"
	"tipline/render"
)

// closed writes outlines as closed paths.
func (c *content) closed(outlines []geometry.Outline) {
	for _, o := range outlines {
		last := o.Len() - 1
		for i := range o.Len() {
			s := o.Segment(i)
			if i == last && s.IsLine() && i > 0 {
				break // the closing line
			}
			c.segment(s, i == 0)
		}
		if last >= 0 {
			c.operator("h")
		}
	}
}

// segment writes a line or an arc from the current point, which it sets first at
// the start of a path.
func (c *content) segment(s geometry.Segment, first bool) {
	if first {
		c.point(s.From)
		c.operator("m")
	}
	if s.IsLine() {
		c.point(s.To)
		c.operator("l")
		return
	}
	for piece := range render.Pieces(s) {
		c.curve(piece)
	}
}

// curve writes the cubic that agrees with an arc at both ends and its middle. Its
// handles lie along the arc's tangents and are 4/3·tan(turn/4) of the radius long
// (plain geometry), which by chord c and bulge b is (c(1−b²) ∓ 2b·c⊥)/3.
func (c *content) curve(arc geometry.Segment) {
	b, chord := arc.Bulge, arc.To.Sub(arc.From)
	along, across := chord.Times((1-b*b)/3), chord.Left().Times(2*b/3)
	c.point(arc.From.Add(along).Sub(across))
	c.point(arc.To.Sub(along).Sub(across))
	c.point(arc.To)
	c.operator("c")
}
