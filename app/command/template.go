package command

import (
	"context"
	"io"
	"maps"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/dxf"
	"tipline/render/pdf"
	"tipline/render/svg"
	"tipline/render/template"
)

// kinds are the templates and cards by the names they are asked for.
var kinds = map[string]packet.Kind{
	"crossing": packet.Crossing, "grinding": packet.Grinding, "setting": packet.Setting, "depth": packet.Depth,
	"dividing": packet.Dividing, "blank": packet.Blank, "shroud": packet.Shroud,
	"scribing": packet.Scribing, "drilling": packet.Drilling, "stack": packet.Stack, "depthing": packet.Depthing, "train": packet.Train,
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
	return untilStopped(o.out, func(ctx context.Context) (int, error) {
		r, err := c.solved(ctx)
		if err != nil {
			return Nothing, err
		}
		p, err := partNamed(r, id)
		if err != nil {
			return Nothing, err
		}
		if err := c.misplaced(p, c.flags["kind"]); err != nil {
			return Nothing, err
		}
		if !o.kind.Needs(p) {
			return Nothing, c.unbuildable(r, p, o.step)
		}
		return Done, c.writeTemplate(ctx, r, p, o)
	})
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
	o.kind, o.step = kinds[name], stepOf(name)
	if o.kind, err = c.sided(o.kind); err != nil {
		return o, err
	}
	if o.as, err = c.format(o.out, "pdf", "svg", "dxf", "png"); err != nil {
		return o, err
	}
	if o.scale, err = c.number("scale", leastScale, mostScale, 1); err != nil {
		return o, err
	}
	if o.scale != 1 && !o.kind.Scales() {
		return o, refuse("command.not-scaled")
	}
	return o, nil
}

// stepOf returns the step of the job that a kind of template shows.
func stepOf(kind string) string {
	switch kind {
	case "grinding", "setting", "depth":
		return "cutter"
	case "scribing":
		return "crossing"
	case "drilling", "stack":
		return "mount"
	}
	return kind
}

// sided returns the kind for the side of the bit that is asked for.
func (c *call) sided(k packet.Kind) (packet.Kind, error) {
	side, err := c.choice("side", string(template.RakeFace), string(template.ClearanceFace))
	switch {
	case err != nil || side == string(template.RakeFace):
		return k, err
	case k != packet.Grinding:
		return k, refuse("command.not-sided")
	}
	return packet.Clearance, nil
}

// format returns what kind of file to write, of those there are: what is asked for,
// else what the name ends with, else the first.
func (c *call) format(out string, formats ...string) (string, error) {
	if _, given := c.flags["as"]; given {
		return c.choice("as", formats...)
	}
	ending := strings.ToLower(strings.TrimPrefix(filepath.Ext(out), "."))
	if slices.Contains(formats, ending) {
		return ending, nil
	}
	return formats[0], nil
}

func (c *call) writeTemplate(ctx context.Context, r *solve.Result, p solve.Part, o order) error {
	if o.as == "pdf" {
		options, err := c.options(r)
		if err != nil {
			return err
		}
		doc, err := packet.One(ctx, r, p, o.kind, o.scale, options)
		if err != nil {
			return c.drawing(err)
		}
		return c.write(ctx, o.out, func(file io.Writer) error { return pdf.Write(file, doc) })
	}
	d, err := drawnAlone(r, p, o.kind, o.scale, c.style(r))
	if err != nil {
		return c.drawing(err)
	}
	return c.write(ctx, o.out, func(file io.Writer) error {
		switch o.as {
		case "svg":
			return svg.Write(file, d)
		case "dxf":
			return dxf.Write(file, d)
		}
		return writePNG(file, d)
	})
}

// drawnAlone draws a template or card by itself, its origin at its centre.
func drawnAlone(r *solve.Result, p solve.Part, k packet.Kind, scale float64, s template.Style) (*render.Drawing, error) {
	d, err := packet.Draw(r, p, k, scale, s)
	if err == nil && !k.Centred() {
		d = d.Centred()
	}
	return d, err
}
