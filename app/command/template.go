package command

import (
	"io"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render/dxf"
	"tipline/render/pdf"
	"tipline/render/svg"
)

// kinds are the templates and cards by the names they are asked for.
var kinds = map[string]packet.Kind{
	"crossing": packet.Crossing, "grinding": packet.Grinding, "depth": packet.Setting,
	"dividing": packet.Dividing, "blank": packet.Blank, "shroud": packet.Shroud,
	"depthing": packet.Depthing, "train": packet.Train,
}

// The scales a grinding template is drawn at.
const (
	leastScale = 0.1
	mostScale  = 100
)

// order is a template as it was asked for.
type order struct {
	kind    packet.Kind
	step    string // of the job that it shows
	scale   float64
	as, out string
}

// templateCommand writes one template or card of one part.
func templateCommand(c *call) (int, error) {
	o, err := c.ordered()
	if err != nil {
		return Nothing, err
	}
	id, err := c.needed("wheel")
	if err != nil {
		return Nothing, err
	}
	r, err := c.solved()
	if err != nil {
		return Nothing, err
	}
	p, err := partNamed(r, id)
	if err != nil {
		return Nothing, err
	}
	w, wheel := p.(*solve.Wheel)
	if !o.kind.Needs(p) || o.kind == packet.Crossing && wheel && w.Crossing == nil && w.Part.Crossing != nil {
		return Nothing, c.unbuildable(r, p, o.step)
	}
	return Done, c.writeTemplate(r, p, o)
}

// ordered reads what is asked for.
func (c *call) ordered() (o order, err error) {
	if o.out, err = c.needed("out"); err != nil {
		return o, err
	}
	name, err := c.needed("kind")
	if err != nil {
		return o, err
	}
	if _, err = c.choice("kind", slices.Sorted(maps.Keys(kinds))...); err != nil {
		return o, err
	}
	if _, err = c.choice("side", "rake"); err != nil {
		return o, err
	}
	o.kind, o.step = kinds[name], map[string]string{"grinding": "cutter", "depth": "cutter"}[name]
	if o.step == "" {
		o.step = name
	}
	if o.as, err = c.format(o.out); err != nil {
		return o, err
	}
	if o.scale, err = c.number("scale", leastScale, mostScale, 1); err != nil {
		return o, err
	}
	if o.scale != 1 && o.kind != packet.Grinding {
		return o, refuse("command.not-scaled")
	}
	return o, nil
}

// format returns what kind of file to write: what is asked for, else what the
// name ends with, else PDF.
func (c *call) format(out string) (string, error) {
	formats := []string{"pdf", "svg", "dxf", "png"}
	if _, given := c.flags["as"]; given {
		return c.choice("as", formats...)
	}
	ending := strings.ToLower(strings.TrimPrefix(filepath.Ext(out), "."))
	if slices.Contains(formats, ending) {
		return ending, nil
	}
	return "pdf", nil
}

func (c *call) writeTemplate(r *solve.Result, p solve.Part, o order) error {
	if o.as == "pdf" {
		options, err := c.options(r)
		if err != nil {
			return err
		}
		doc, err := packet.One(r, p, o.kind, o.scale, options)
		if err != nil {
			return c.drawing(err)
		}
		return c.write(o.out, func(file io.Writer) error { return pdf.Write(file, doc) })
	}
	d, err := packet.Draw(r, p, o.kind, o.scale, c.style(r))
	if err != nil {
		return c.drawing(err)
	}
	if o.kind != packet.Crossing && o.kind != packet.Shroud {
		d = d.Centred() // the work's own centre is the origin of these two already
	}
	return c.write(o.out, func(file io.Writer) error {
		switch o.as {
		case "svg":
			return svg.Write(file, d)
		case "dxf":
			return dxf.Write(file, d)
		}
		return writePNG(file, d)
	})
}
