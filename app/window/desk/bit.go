package desk

import (
	"cmp"
	"fmt"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// BitCorner is a corner of the bit as it was measured: its place and the radius of
// the arc that leads to it.
type BitCorner struct{ X, Y, Radius Field }

// HasBit reports whether the present step is one where a measured bit is typed.
func (d *Desk) HasBit() bool {
	t := tooling(d.of(d.part))
	return d.at() == Cutter && t != nil && t.Cut != nil
}

// Bit lists the corners of the bit as it was measured.
func (d *Desk) Bit() []BitCorner {
	c := d.cutterOf(d.part)
	if !d.HasBit() || c == nil || c.Bit == nil {
		return nil
	}
	corners := make([]BitCorner, len(c.Bit.Chain))
	for i := range corners {
		at := func(of string) Field { return d.itemField(corner(i, of)) }
		corners[i] = BitCorner{at("x"), at("y"), at("radius")}
	}
	return corners
}

func corner(i int, of string) geometry.Quantity {
	return geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].%s", i, of))
}

// itemField returns a field of an item of a list, such as one corner of the bit.
func (d *Desk) itemField(path geometry.Quantity) Field {
	f := Field{Part: d.part, Path: path}
	f.Text, _ = d.Job().Text(d.part, path)
	for _, found := range d.result.Findings {
		if found.Part == d.part && found.Field == path && found.Severity == "error" {
			f.Refusal, f.Grave = found.Sentence(d.words, d.Style().Units), true
			break
		}
	}
	return f
}

// Trouble returns the first thing that stands against a corner.
func (c BitCorner) Trouble() string { return cmp.Or(c.X.Refusal, c.Y.Refusal, c.Radius.Refusal) }

// StartBit begins the measured bit with the corners of the wanted form, to be
// changed to what is measured.
func (d *Desk) StartBit() {
	d.catchUp()
	t := tooling(d.of(d.part))
	if t == nil || t.Cut == nil {
		return
	}
	j := d.withoutBit()
	for i, c := range t.Cut.Form.Corners() {
		j = d.withCorner(j, i, c.X, c.Y, c.Radius)
	}
	d.do(j)
}

func (d *Desk) withCorner(j *job.Job, i int, x, y, radius float64) *job.Job {
	j = d.with(j, corner(i, "x"), d.fine(x))
	j = d.with(j, corner(i, "y"), d.fine(y))
	if radius != 0 {
		j = d.with(j, corner(i, "radius"), d.fine(radius))
	}
	return j
}

// fine writes a length in millimetres as a measured bit is typed: to some nanometres,
// so that a bit of the wanted form's own corners strays from it by nothing that is told.
func (d *Desk) fine(mm float64) string {
	text := number(mm, 6)
	if d.Style().Units.Unit == measure.Inch {
		text = number(mm/measure.MMPerInch, 7)
	}
	if text == "0" {
		return text
	}
	return text + " " + d.Style().Units.Name()
}

// with returns a job in which the present part has a text in a field; the same
// job where it cannot.
func (d *Desk) with(j *job.Job, path geometry.Quantity, text string) *job.Job {
	if next, err := j.Set(d.part, path, text); err == nil {
		return next
	}
	return j
}

// AddCorner adds a corner half way along the last piece of the edge.
func (d *Desk) AddCorner() {
	d.catchUp()
	n := len(d.Bit())
	last, before := geometry.Point{}, geometry.Point{}
	if t := tooling(d.of(d.part)); n >= 2 && t != nil && t.Ground != nil {
		edge := t.Ground.Form.Edge
		up := geometry.Point{Y: t.BitBase}
		last, before = edge.Vertex(edge.Len()).Point.Add(up), edge.Vertex(edge.Len()-1).Point.Add(up)
	}
	middle := last.Add(before).Times(0.5)
	j := d.Job()
	if n == 0 {
		d.do(d.withCorner(j, 0, 0, 0, 0))
		return
	}
	x, _ := j.Text(d.part, corner(n-1, "x"))
	y, _ := j.Text(d.part, corner(n-1, "y"))
	if last != before {
		j = d.with(j, corner(n-1, "x"), d.fine(middle.X))
		j = d.with(j, corner(n-1, "y"), d.fine(middle.Y))
	}
	j = d.with(j, corner(n, "x"), x)
	d.do(d.with(j, corner(n, "y"), y))
}

// DropCorner takes a corner out.
func (d *Desk) DropCorner(i int) {
	if j, err := d.Job().Remove(d.part, geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d]", i))); err == nil {
		d.do(j)
	}
}

// ClearBit takes the measured bit away; its photograph stays.
func (d *Desk) ClearBit() { d.do(d.withoutBit()) }

func (d *Desk) withoutBit() *job.Job {
	j := d.Job()
	for i := len(d.Bit()) - 1; i >= 0; i-- {
		if next, err := j.Remove(d.part, geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d]", i))); err == nil {
			j = next
		}
	}
	return j
}
