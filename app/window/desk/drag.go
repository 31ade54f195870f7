package desk

import (
	"slices"

	"tipline/app/solve"
	"tipline/geometry"
	"tipline/render/template"
)

// Handles returns the handles of the present drawing, none where the drawing is an
// older one. What is solved for has none.
func (d *Desk) Handles() []template.Handle {
	made, ok := d.of(d.part).(solve.Made)
	if _, stale := d.Drawing(); !ok || stale || d.picking != nil {
		return nil
	}
	var hs []template.Handle
	switch d.at() {
	case Blank:
		if d.kindOf(d.part) == wheel {
			hs = template.BlankHandles(made.Template())
		}
	case Cutter:
		hs = template.CutterHandles(made.Template())
	case Crossing:
		hs = template.CrossingHandles(made.Template())
	}
	return slices.DeleteFunc(hs, func(h template.Handle) bool { return d.worked(h.Quantity) != "" })
}

// Drag sets what a handle sets to what a point of the drawing means, each field in
// its own unit and steps. Until Drop it is no step of undoing.
func (d *Desk) Drag(h template.Handle, to geometry.Point) {
	settings, err := h.Set(to)
	if err != nil {
		return
	}
	j := d.history.Job()
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
