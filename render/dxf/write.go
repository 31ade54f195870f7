// Package dxf writes a drawing as DXF of release 12 in ASCII, which every program
// for drawing and for cutting reads. Units are millimetres of paper; that release
// has no variable to say so, and a comment at the head does.
package dxf

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/render"
)

// Write writes the drawing: layers by their names, true arcs, and a closed outline
// as one closed entity, a CIRCLE or a POLYLINE with bulges. Fills and hatching are
// left out. Texts are TEXT, their height that of capitals; y runs up as in the
// drawing. A drawing without items and a coordinate that is no number are refused,
// perhaps after part has been written.
func Write(w io.Writer, d *render.Drawing) error {
	p := &plotter{out: bufio.NewWriterSize(w, 1<<16)}
	if d == nil || len(d.Items) == 0 {
		return errors.New("dxf: the drawing is empty")
	}
	p.header(d)
	p.tables(d)
	p.name(0, "SECTION")
	p.name(2, "ENTITIES")
	for _, level := range d.Levels() {
		for i := range level.Items {
			p.item(&level.Items[i])
		}
	}
	p.name(0, "ENDSEC")
	p.name(0, "EOF")
	if p.err == nil {
		p.err = p.out.Flush()
	}
	if p.err != nil {
		return fmt.Errorf("dxf: %w", p.err)
	}
	return nil
}

// plotter writes pairs of a group code and a value, and keeps the first fault.
type plotter struct {
	out *bufio.Writer
	err error
}

// decimals of a coordinate in millimetres, and of a bulge or an angle: at a radius
// of 1 m both are then good to less than 0.1 µm.
const decimals = 9

func (p *plotter) name(code int, value string) {
	if p.err == nil {
		_, p.err = fmt.Fprintf(p.out, "%3d\n%s\n", code, value)
	}
}

func (p *plotter) whole(code, value int) { p.name(code, strconv.Itoa(value)) }

func (p *plotter) number(code int, value float64) {
	if (math.IsNaN(value) || math.IsInf(value, 0)) && p.err == nil {
		p.err = errors.New("the drawing has a coordinate that is no number")
	}
	p.name(code, strconv.FormatFloat(value, 'f', decimals, 64))
}

// point writes a place; its x has the code given, and y and z those that go with
// it.
func (p *plotter) point(code int, at geometry.Point) {
	p.number(code, at.X)
	p.number(code+10, at.Y)
	p.number(code+20, 0)
}

// header tells the release and the drawing's bounds.
func (p *plotter) header(d *render.Drawing) {
	box := d.Bounds()
	p.name(999, "Tipline: units are millimetres")
	if d.Title != "" {
		p.name(999, ascii(d.Title))
	}
	p.name(0, "SECTION")
	p.name(2, "HEADER")
	p.name(9, "$ACADVER")
	p.name(1, "AC1009")
	p.name(9, "$INSBASE")
	p.point(10, geometry.Point{})
	p.name(9, "$EXTMIN")
	p.point(10, box.Min)
	p.name(9, "$EXTMAX")
	p.point(10, box.Max)
	p.name(9, "$LUNITS") // 2: decimal
	p.whole(70, 2)
	p.name(9, "$LTSCALE")
	p.number(40, 1)
	p.name(0, "ENDSEC")
}
