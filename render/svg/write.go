// Package svg writes a drawing as SVG in millimetres, with true arcs, for other
// drawing programs and for laser and plotter.
package svg

import (
	"bufio"
	"errors"
	"fmt"
	"image/color"
	"io"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// margin is what is added round the drawing's lines for the width of the pens.
const margin = 1.0

// Write writes the drawing. One user unit is a millimetre of paper and the origin
// is the drawing's own; y runs down as SVG wants it. Each layer is a group by its
// name, a closed outline one closed path, and each element carries the part and
// quantity that made it. Letters are outlines, so that they look the same
// everywhere; what they say stands beside them. A drawing without items and a
// coordinate that is no number are refused, perhaps after part has been written.
func Write(w io.Writer, d *render.Drawing) error {
	p := &pencil{out: bufio.NewWriterSize(w, 1<<16), decimals: decimals}
	if d == nil || len(d.Items) == 0 {
		return errors.New("svg: the drawing is empty")
	}
	p.sheet(d, d.Bounds().Grow(margin))
	for _, level := range d.Levels() {
		p.printf("<g id=\"%s\">\n", escape(string(level.Layer)))
		for i := range level.Items {
			p.item(&level.Items[i])
		}
		p.printf("</g>\n")
	}
	return p.end()
}

// end writes the end of the file.
func (p *pencil) end() error {
	p.printf("</svg>\n")
	if p.err == nil {
		p.err = p.out.Flush()
	}
	if p.err != nil {
		return fmt.Errorf("svg: %w", p.err)
	}
	return nil
}

// pencil writes marks and keeps the first fault.
type pencil struct {
	out      *bufio.Writer
	line     []byte // of numbers, used again
	decimals int    // of a coordinate
	lettered bool   // texts are left to the reader's letters
	err      error
}

// sheet writes the sheet: its box, its title, and the hatching of waste.
func (p *pencil) sheet(d *render.Drawing, box geometry.Box) {
	width, height := box.Width(), box.Height()
	p.printf("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" ")
	p.printf("width=\"%smm\" height=\"%smm\" viewBox=\"%s %s %s %s\" ", p.number(width), p.number(height),
		p.number(box.Min.X), p.number(-box.Max.Y), p.number(width), p.number(height))
	p.printf("fill=\"none\" stroke-linejoin=\"round\">\n")
	if d.Title != "" {
		p.printf("<title>%s</title>\n", escape(d.Title))
	}
	if d.Description != "" {
		p.printf("<desc>%s</desc>\n", escape(d.Description))
	}
	if hasWaste(d) {
		p.hatching()
	}
}

func hasWaste(d *render.Drawing) bool {
	for i := range d.Items {
		if d.Items[i].Fill == render.Waste {
			return true
		}
	}
	return false
}

// hatching defines the pattern of waste, whose lines run where render.Hatch draws
// them.
func (p *pencil) hatching() {
	step := p.number(render.WasteSpacing)
	half := p.number(render.WasteSpacing / 2)
	p.printf("<defs><pattern id=\"waste\" patternUnits=\"userSpaceOnUse\" width=\"%s\" height=\"%s\" "+
		"patternTransform=\"rotate(%s) translate(0 -%s)\">", step, step, p.number(-render.WasteAngle.Degrees()), half)
	p.printf("<path fill=\"%s\" d=\"M0 0H%sV%sH0Z\"/>", hex(render.Paper.Colour()), step, step)
	p.printf("<path stroke=\"%s\" stroke-width=\"%s\" d=\"M0 %sH%s\"/></pattern></defs>\n",
		hex(render.Waste.Colour()), p.number(render.WastePen.Width()), half, step)
}

func (p *pencil) printf(format string, values ...any) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.out, format, values...)
	}
}

// number returns v to the pencil's decimals, and keeps a fault if it is no number.
func (p *pencil) number(v float64) string {
	p.line = p.appendNumber(p.line[:0], v)
	return string(p.line)
}

// flip turns a point of the drawing, y up, into one of SVG, y down. Everything
// that is written passes through here, except the sheet and the pattern.
func flip(at geometry.Point) geometry.Point { return geometry.Point{X: at.X, Y: -at.Y} }

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }

func hex(c color.RGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }
