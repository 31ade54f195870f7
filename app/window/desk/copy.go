package desk

import (
	"errors"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
)

// Copied returns the present part, with what it needs, as a job file: a text that can be
// pasted into any job.
func (d *Desk) Copied() (string, error) {
	cut, err := d.Job().Excerpt(d.part)
	if err != nil {
		return "", err
	}
	var b strings.Builder
	err = cut.Write(&b)
	return b.String(), err
}

// Paste adds the part in a text to the job, in one step of undoing, and looks at it. What
// holds no part is refused in one sentence, and nothing is done.
func (d *Desk) Paste(text string) error {
	from, err := job.Read(strings.NewReader(text))
	var refusal *job.Refusal
	if errors.As(err, &refusal) && refusal.Code != "job.newer" {
		return &job.Refusal{Code: "job.nothing-to-paste"}
	}
	if err != nil {
		return err
	}
	j, id, err := d.Job().Paste(from)
	return d.became(j, id, err, d.firstStep)
}

// NameField returns the field that a part is renamed by: its name, or its id where it
// is called by the parts it is of.
func (d *Desk) NameField(part string) geometry.Quantity {
	if _, named := d.Job().Text(part, "name"); named {
		return "name"
	}
	return "id"
}

// Rename gives the present part another name, in a step of undoing of its own.
func (d *Desk) Rename(name string) error {
	field := d.NameField(d.part)
	j, err := d.Job().Set(d.part, field, strings.TrimSpace(name))
	if err != nil {
		return err
	}
	if d.history.Do(j); field == "id" {
		d.part = strings.TrimSpace(name)
	}
	d.work()
	return nil
}

// Parting is what becomes of the other parts when one is deleted: those that go with it
// and those that no longer name it.
type Parting struct{ Go, Stay []string }

// Parting tells what deleting the present part does to the others, by their names.
func (d *Desk) Parting() Parting {
	var p Parting
	j, err := d.Job().Delete(d.part)
	if err != nil {
		return p
	}
	told := map[string]bool{d.part: true}
	for _, c := range job.Changes(d.Job(), j) {
		if told[c.Part] {
			continue
		}
		told[c.Part] = true
		if c.Act == job.Deleted {
			p.Go = append(p.Go, d.Name(c.Part))
		} else {
			p.Stay = append(p.Stay, d.Name(c.Part))
		}
	}
	return p
}
