package pdf

import (
	"fmt"
	"image/color"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// content is the stream of marks of one page, in millimetres from the lower left
// corner. PDF's y runs up as the drawing's does, so nothing is turned over.
type content struct {
	book   *book
	out    []byte
	pen    render.Pen
	stroke color.RGBA
	fill   color.RGBA
	err    error
}

// draw writes the drawing layer by layer, stretched against the printer's error.
func (c *content) draw(d *render.Drawing, against render.Stretch) error {
	c.stroke, c.fill = color.RGBA{A: 0xFF}, color.RGBA{A: 0xFF} // black, as a page begins
	x, y := against.Factors()
	if !(x > 0) || !(y > 0) || math.IsInf(x+y, 1) {
		return fmt.Errorf("a page cannot be stretched %g × %g times", x, y)
	}
	c.printf("%.12f 0 0 %.12f 0 0 cm 1 j\n", pointsPerMM*x, pointsPerMM*y)
	if d == nil {
		return nil
	}
	for _, level := range d.Levels() {
		c.printf("/OC/%s BDC\n", resourceName(c.book.layer(level.Layer)))
		for i := range level.Items {
			c.item(&level.Items[i])
		}
		c.printf("EMC\n")
	}
	return c.err
}

func (c *content) printf(format string, values ...any) {
	c.out = fmt.Appendf(c.out, format, values...)
}

// item writes the item's fill, hatching and lines, then its text.
func (c *content) item(it *render.Item) {
	if len(it.Outlines) > 0 {
		c.outlines(it)
	}
	if len(it.Chains) > 0 && c.use(it.Pen, it.Ink) {
		for _, chain := range it.Chains {
			for i := range chain.Len() {
				c.segment(chain.Segment(i), i == 0)
			}
		}
		c.operator("S")
	}
	if it.Text != nil {
		c.text(*it.Text, it.Ink)
	}
}

func (c *content) outlines(it *render.Item) {
	colour := it.Fill.Colour()
	switch it.Fill {
	case render.Solid:
		colour = it.Ink.Colour()
	case render.Waste:
		c.setFill(render.Paper.Colour())
		c.closed(it.Outlines)
		c.operator("f*")
		c.hatch(it)
		colour = color.RGBA{}
	}
	filled := colour.A != 0
	if filled {
		c.setFill(colour)
	}
	stroked := c.use(it.Pen, it.Ink)
	if operator := painting(filled, stroked); operator != "" {
		c.closed(it.Outlines)
		c.operator(operator)
	}
}

// painting returns the operator that ends a closed path.
func painting(filled, stroked bool) string {
	switch {
	case filled && stroked:
		return "B*"
	case filled:
		return "f*"
	case stroked:
		return "S"
	}
	return ""
}

func (c *content) hatch(it *render.Item) {
	c.usePen(render.WastePen, it.Fill.Colour())
	for _, l := range it.WasteLines() {
		c.segment(l.Segment(), true)
	}
	c.operator("S")
}

// use sets pen and ink for the lines that follow, and reports whether there are
// any to be drawn.
func (c *content) use(pen render.Pen, ink render.Ink) bool {
	if pen == render.NoPen {
		return false
	}
	c.usePen(pen, ink.Colour())
	return true
}

func (c *content) usePen(pen render.Pen, colour color.RGBA) {
	if c.pen != pen {
		c.pen = pen
		c.numbers(pen.Width())
		c.operator("w")
		c.out = append(c.out, '[')
		c.numbers(pen.Dashes()...)
		c.operator("] 0 d")
	}
	if c.stroke != colour {
		c.stroke = colour
		c.colour(colour, "RG")
	}
}

func (c *content) setFill(colour color.RGBA) {
	if c.fill != colour {
		c.fill = colour
		c.colour(colour, "rg")
	}
}

func (c *content) colour(colour color.RGBA, operator string) {
	c.numbers(float64(colour.R)/0xFF, float64(colour.G)/0xFF, float64(colour.B)/0xFF)
	c.operator(operator)
}

// numbers writes operands; one that is no number spoils the page.
func (c *content) numbers(values ...float64) {
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			c.err = fmt.Errorf("the drawing has a coordinate that is no number")
			return
		}
		c.out = append(appendNumber(c.out, v), ' ')
	}
}

func (c *content) point(p geometry.Point) { c.numbers(p.X, p.Y) }

func (c *content) operator(name string) { c.out = append(append(c.out, name...), '\n') }
