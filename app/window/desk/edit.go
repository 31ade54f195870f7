package desk

import (
	"errors"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// refused is a text that the job would not take, kept in its field until the field
// is left.
type refused struct {
	part  string
	field geometry.Quantity
	text  string
	why   string
}

// Type puts a text in a field, as it is typed: further typing in the same field
// belongs to the same step of undoing. A text that the job cannot take stays in
// the field with the reason.
func (d *Desk) Type(part string, field geometry.Quantity, text string) {
	d.refused = refused{}
	if d.setPacket(field, text) {
		return
	}
	j, err := d.Job().Set(part, field, text)
	if err != nil {
		d.refused = refused{part, field, text, d.sentence(err)}
		d.Changed()
		return
	}
	if j == d.Job() {
		return
	}
	if field == "crossing.style" {
		j = d.begun(j, part, text)
	}
	if field == "id" {
		d.rename(j, part, text)
		return
	}
	d.history.Type(j, part, field)
	d.workAside()
}

// startingSweep is the sweep that swept arms begin with, and startingWaist how wide
// a waist begins beside the arm's lesser end.
const (
	startingSweep = "20°"
	startingWaist = 0.75
)

// begun returns a job in which a style of arms that has just been chosen has what it
// alone needs.
func (d *Desk) begun(j *job.Job, part, style string) *job.Job {
	w, _ := d.of(part).(*solve.Wheel)
	var field geometry.Quantity
	var text string
	switch {
	case style == "swept":
		field, text = "crossing.sweep", startingSweep
	case style == "waisted" && w != nil && w.Crossing != nil:
		s := w.Crossing.Spec
		field, text = "crossing.waist", d.stepped("crossing.waist", "", startingWaist*min(s.ArmAtRim, s.ArmAtHub))
	}
	if old, ok := j.Text(part, field); !ok || old != "" {
		return j
	}
	if next, err := j.Set(part, field, text); err == nil {
		return next
	}
	return j
}

// rename makes a job present in which a part has another id. A run of typing in
// the field of an id belongs to no part, since the part's id changes with it.
func (d *Desk) rename(j *job.Job, part, fresh string) {
	if part == d.part {
		d.part = fresh
	}
	d.history.Type(j, "", "id")
	d.work()
}

// sentence says an error in the catalogue's words.
func (d *Desk) sentence(err error) string {
	var refusal *job.Refusal
	if errors.As(err, &refusal) {
		return refusal.Sentence(d.words)
	}
	return d.words.Reason(err)
}

// Undo goes back a step, to where it was taken.
func (d *Desk) Undo() {
	_, now := d.history.Steps()
	d.GoTo(now - 1)
}

// Redo goes forward again.
func (d *Desk) Redo() {
	_, now := d.history.Steps()
	d.GoTo(now + 1)
}

// CanUndo reports whether there is a step to go back.
func (d *Desk) CanUndo() bool { return d.history.CanUndo() }

// CanRedo reports whether there is an undone step.
func (d *Desk) CanRedo() bool { return d.history.CanRedo() }

// Duplicate adds a copy of the present part after it, and goes on in it at the same step.
func (d *Desk) Duplicate() error {
	j, id, err := d.Job().Duplicate(d.part)
	step := d.Step()
	return d.became(j, id, err, func() Step { return step })
}

// firstStep returns the step that the work on the present part begins with.
func (d *Desk) firstStep() Step { return d.Steps()[0] }

// became makes an edited job the present one and looks at a step of one of its parts.
func (d *Desk) became(j *job.Job, part string, err error, step func() Step) error {
	if err != nil {
		return err
	}
	d.draft = nil
	d.history.Do(j)
	d.leave()
	d.part, d.turn = part, 0
	d.keepCopy()
	d.solve()
	d.step = step()
	d.show()
	return nil
}

// Delete takes the present part away, with the pairs and trains that name it.
func (d *Desk) Delete() error {
	j, err := d.Job().Delete(d.part)
	if err != nil {
		return err
	}
	d.leave()
	d.do(j)
	return nil
}

// Move moves the present part by places down the list of its kind.
func (d *Desk) Move(by int) error {
	j, err := d.Job().Move(d.part, by)
	if err != nil {
		return err
	}
	d.moved[j] = d.part
	d.do(j)
	return nil
}

// do makes an edited job the present one.
func (d *Desk) do(j *job.Job) {
	d.history.Do(j)
	d.work()
}
