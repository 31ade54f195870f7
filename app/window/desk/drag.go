package desk

import (
	"slices"

	"tipline/app/solve"
	"tipline/geometry"
	"tipline/render/template"
)

// Handles returns the handles of the present drawing, none where the drawing is an
// older one or measured. What is solved for has none.
func (d *Desk) Handles() []template.Handle {
	if _, stale := d.Drawing(); stale || d.picking != nil || d.rule.taken {
		return nil
	}
	var hs []template.Handle
	switch p := d.of(d.part).(type) {
	case solve.Made:
		hs = d.handlesOf(p.Template())
	case *solve.Stack:
		if t, ok := p.Template(); ok && d.at() == Mounting {
			hs = template.StackHandles(t)
		}
	}
	return slices.DeleteFunc(hs, func(h template.Handle) bool { return d.worked(h.Quantity) != "" })
}

// handlesOf returns the handles of what the present step shows of a wheel or pinion.
func (d *Desk) handlesOf(t template.Wheel) []template.Handle {
	switch d.at() {
	case Blank:
		if d.kindOf(d.part) == wheel {
			return template.BlankHandles(t)
		}
	case Cutter:
		return template.CutterHandles(t)
	case Crossing:
		return template.CrossingHandles(t)
	case Mounting:
		if t.Mounting != nil {
			return template.MountHandles(t)
		}
	}
	return nil
}

// Drag sets what a handle sets to what a point of the drawing means, each field in
// its own unit and steps. Until Drop it is no step of undoing.
func (d *Desk) Drag(h template.Handle, to geometry.Point) {
	settings, err := h.Set(to)
	if err != nil {
		return
	}
	j := d.mounted(d.history.Job())
	for _, s := range settings {
		old, _ := j.Text(d.part, s.Quantity)
		if next, err := j.Set(d.part, s.Quantity, d.stepped(s.Quantity, old, s.Value)); err == nil {
			j = next
		}
	}
	d.lit, d.draft = h.Quantity, j
	d.workAside()
}

// Dragging reports whether a handle is being dragged.
func (d *Desk) Dragging() bool { return d.draft != nil }

// Drop makes what was dragged one step of undoing.
func (d *Desk) Drop() {
	if j := d.draft; j != nil {
		d.draft = nil
		d.do(j)
	}
}

// PutBack forgets what was dragged.
func (d *Desk) PutBack() {
	if d.draft != nil {
		d.draft = nil
		d.work()
	}
}
