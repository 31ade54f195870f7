package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/render"
)

// Start is a part to start from: its kind, what it is called and what it is.
type Start struct{ Kind, Name, Line string }

// Kinds lists the kinds of part that can be added to the rail.
func Kinds() []string {
	return slices.DeleteFunc(job.Kinds(), func(kind string) bool { return kind == "arbor" })
}

// Starts lists the parts of those kinds.
func (d *Desk) Starts() []Start {
	var list []Start
	for _, kind := range Kinds() {
		key := strings.ReplaceAll(kind, " ", "-")
		list = append(list, Start{kind, d.words.Say("part.kind." + key), d.words.Say("part.line." + key)})
	}
	return list
}

// Add adds a part of a kind, and first what it cannot be without, and looks at its first
// step. All of it is one step of undoing.
func (d *Desk) Add(kind string) error {
	j, err := d.ready(d.Job(), kind)
	if err != nil {
		return err
	}
	j, id, err := d.added(j, kind)
	return d.became(j, id, err, d.firstStep)
}

// Sketch returns the small picture of a part of a kind as it is when it is added, nil where
// none can be drawn.
func (d *Desk) Sketch(kind string) *render.Drawing {
	blank := New(d.words, Recent{})
	if err := blank.Add(kind); err != nil {
		return nil
	}
	return blank.Picture(blank.Part())
}

func (d *Desk) added(j *job.Job, kind string) (*job.Job, string, error) {
	name := d.words.Say("part.new." + strings.ReplaceAll(kind, " ", "-"))
	return j.Add(kind, j.FreeName(name))
}

// ready returns a job that has what a part of the kind cannot be without: for a pair a
// wheel and a pinion that meet, for a stack two wheels, as a
// great wheel and its click wheel, for a train a pair and an escape
// wheel on the pinion's arbor.
func (d *Desk) ready(j *job.Job, kind string) (*job.Job, error) {
	var err error
	switch kind {
	case "pair":
		return d.readyToPair(j)
	case "stack":
		for len(j.Wheels) < 2 && err == nil {
			j, _, err = d.added(j, [...]string{"cycloidal", "ratchet"}[len(j.Wheels)])
		}
	case "train":
		return d.readyForTrain(j)
	}
	return j, err
}

func (d *Desk) readyToPair(j *job.Job) (*job.Job, error) {
	var err error
	if !slices.ContainsFunc(j.Wheels, drives) {
		if j, _, err = d.added(j, "cycloidal"); err != nil {
			return nil, err
		}
	}
	if len(j.Pinions) > 0 {
		return j, nil
	}
	w := j.Wheels[slices.IndexFunc(j.Wheels, drives)]
	kind := "pinion"
	if formOf(w.Teeth) == "lantern driver" {
		kind = "lantern pinion"
	}
	j, id, err := d.added(j, kind)
	if err != nil {
		return nil, err
	}
	return d.meeting(j, w, id)
}

// meeting returns a job in which a pinion has the leaves and the module that a wheel
// asks for.
func (d *Desk) meeting(j *job.Job, w *job.Wheel, pinion string) (*job.Job, error) {
	var err error
	if text := w.Teeth.Leaves.Text; text != "" {
		if j, err = j.Set(pinion, "leaves", text); err != nil {
			return nil, err
		}
	}
	if text := w.Teeth.Module.Text; text != "" {
		j, err = j.Set(pinion, "module", text)
	}
	return j, err
}

func drives(w *job.Wheel) bool {
	return formOf(w.Teeth) == "cycloidal" || formOf(w.Teeth) == "lantern driver"
}

func (d *Desk) readyForTrain(j *job.Job) (*job.Job, error) {
	if len(j.Wheels) > 1 {
		return j, nil
	}
	j, err := d.readyToPair(j)
	for _, kind := range []string{"pair", "pointed", "arbor"} {
		if err == nil && (kind != "pair" || len(j.Pairs) == 0) {
			j, _, err = d.added(j, kind)
		}
	}
	return j, err
}
