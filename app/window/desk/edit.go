package desk

import (
	"tipline/app/job"
	"tipline/geometry"
)

// Type puts a text in a field, as it is typed: further typing in the same field
// belongs to the same step of undoing.
func (d *Desk) Type(part string, field geometry.Quantity, text string) {
	if d.setPacket(field, text) {
		return
	}
	j, err := d.Job().Set(part, field, text)
	if err != nil || j == d.Job() {
		return
	}
	d.history.Type(j, part, field)
	d.work()
}

// Undo goes back a step.
func (d *Desk) Undo() {
	if d.CanUndo() {
		d.history.Undo()
		d.work()
	}
}

// Redo goes forward again.
func (d *Desk) Redo() {
	if d.CanRedo() {
		d.history.Redo()
		d.work()
	}
}

// CanUndo reports whether there is a step to go back.
func (d *Desk) CanUndo() bool { return d.history.CanUndo() }

// CanRedo reports whether there is an undone step.
func (d *Desk) CanRedo() bool { return d.history.CanRedo() }

// Kinds lists the kinds of part that can be added.
func Kinds() []string { return []string{"cycloidal", "pointed", "measured"} }

// Add adds a part of a kind and looks at its blank.
func (d *Desk) Add(kind string) error {
	j, id, err := d.Job().Add(kind, d.words.Say("part.new."+kind))
	return d.became(j, id, err)
}

// Duplicate adds a copy of the present part after it.
func (d *Desk) Duplicate() error {
	j, id, err := d.Job().Duplicate(d.part)
	return d.became(j, id, err)
}

// became makes an edited job the present one and looks at a part of it.
func (d *Desk) became(j *job.Job, part string, err error) error {
	if err != nil {
		return err
	}
	d.history.Do(j)
	d.part, d.step, d.lit = part, Blank, ""
	d.work()
	return nil
}

// Delete takes the present part away and looks at the next.
func (d *Desk) Delete() error {
	wheels, next := d.Job().Wheels, ""
	for i, w := range wheels {
		if w.ID == d.part && len(wheels) > 1 {
			next = wheels[min(i+1, len(wheels)-1)].ID
			if i+1 == len(wheels) {
				next = wheels[i-1].ID
			}
		}
	}
	j, err := d.Job().Delete(d.part)
	if err != nil {
		return err
	}
	d.history.Do(j)
	d.part, d.lit = next, ""
	d.work()
	return nil
}

// Move moves the present part by places down the list.
func (d *Desk) Move(by int) error {
	j, err := d.Job().Move(d.part, by)
	if err != nil {
		return err
	}
	d.history.Do(j)
	d.work()
	return nil
}
