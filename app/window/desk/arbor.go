package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
)

// Arbor is an arbor as it is shown: the parts that turn together, and those that
// can be put on it.
type Arbor struct {
	ID    string
	Parts []Choice
	Free  []Choice
}

// Arbors lists the job's arbors, on the step of a train only.
func (d *Desk) Arbors() []Arbor {
	if d.at() != Train {
		return nil
	}
	all := d.madeChoices()
	var as []Arbor
	for _, a := range d.Job().Arbors {
		shown := Arbor{ID: a.ID}
		for _, id := range a.Parts {
			shown.Parts = append(shown.Parts, labelled(all, id))
		}
		for _, c := range all {
			if !slices.Contains(a.Parts, c.Value) {
				shown.Free = append(shown.Free, c)
			}
		}
		as = append(as, shown)
	}
	return as
}

// labelled returns the choice of a value, or one named for the value itself.
func labelled(all []Choice, value string) Choice {
	if i := slices.IndexFunc(all, func(c Choice) bool { return c.Value == value }); i >= 0 {
		return all[i]
	}
	return Choice{value, value}
}

func (d *Desk) isArbor(id string) bool {
	return slices.ContainsFunc(d.Job().Arbors, func(a *job.Arbor) bool { return a.ID == id })
}

// besideArbors returns a train, on whose step the arbors stand: the present one if there
// is one, empty where the job has none.
func (d *Desk) besideArbors() string {
	trains := idsOf(d.result.Trains)
	if len(trains) == 0 || d.kindOf(d.part) == train {
		return d.part
	}
	return trains[0]
}

// AddArbor adds an arbor, with the first pinion and wheel that are on none.
func (d *Desk) AddArbor() error {
	j, _, err := d.Job().Add("arbor", d.words.Say("part.new.arbor"))
	if err == nil {
		d.do(j)
	}
	return err
}

// DropArbor takes an arbor away; its parts stay.
func (d *Desk) DropArbor(id string) error {
	j, err := d.Job().Delete(id)
	if err == nil {
		d.do(j)
	}
	return err
}

// PutOn puts a part on an arbor, and off any other.
func (d *Desk) PutOn(arbor, part string) {
	j := d.Job()
	for _, a := range j.Arbors {
		parts := slices.DeleteFunc(slices.Clone(a.Parts), func(p string) bool { return p == part })
		if a.ID == arbor {
			parts = append(parts, part)
		}
		if next, err := j.Set(a.ID, "parts", strings.Join(parts, ", ")); err == nil {
			j = next
		}
	}
	d.do(j)
}

// TakeOff takes a part off an arbor.
func (d *Desk) TakeOff(arbor, part string) {
	for _, a := range d.Job().Arbors {
		if a.ID != arbor {
			continue
		}
		parts := slices.DeleteFunc(slices.Clone(a.Parts), func(p string) bool { return p == part })
		if j, err := d.Job().Set(arbor, "parts", strings.Join(parts, ", ")); err == nil {
			d.do(j)
		}
	}
}
