package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
)

// Stage is one step of the work on the job since it was opened: what it did, and
// whether it stands or is undone.
type Stage struct {
	Sentence string
	Undone   bool
}

// Stages lists the steps that were taken, undone ones included, in their order, and
// tells how many of them stand.
func (d *Desk) Stages() (list []Stage, stand int) {
	all, stand := d.history.Steps()
	for n := 1; n <= all; n++ {
		list = append(list, Stage{d.stage(n), n > stand})
	}
	return list, stand
}

// staged are sentences of steps, each with the job that the step led to.
type staged map[int]struct {
	to       *job.Job
	sentence string
}

// stage says what a step did. It is looked at anew only when the step has become another.
func (d *Desk) stage(n int) string {
	to := d.history.After(n)
	if was, ok := d.staged[n]; ok && was.to == to {
		return was.sentence
	}
	if d.staged == nil {
		d.staged = staged{}
	}
	was := d.staged[n]
	was.to, was.sentence = to, d.account(d.took(n), d.history.After(n-1), to)
	d.staged[n] = was
	return was.sentence
}

// took returns what a step changed. Of two parts that changed places it names the one
// that was moved.
func (d *Desk) took(n int) []job.Change {
	changes := d.history.Step(n)
	for i, c := range changes {
		if by := d.moved[d.history.After(n)]; c.Act == job.Moved && c.Is == by && by != "" {
			changes[i].Part, changes[i].Is = by, c.Part
		}
	}
	return changes
}

// account says what a step did, the weightiest first and how much more there was.
func (d *Desk) account(changes []job.Change, before, after *job.Job) string {
	if len(changes) == 0 {
		return d.words.Say("history.nothing")
	}
	first, others := changes[0], len(changes)-1
	switch {
	case first.Act == job.Renamed || first.Act == job.Deleted || first.Act == job.Added:
		others = follow(first, changes[1:])
	case first.Field == UnitsField: // bare lengths were given their unit
		others = 0
	}
	sentence := d.change(first, before, after)
	if others > 0 {
		sentence += d.words.Say("history.more", "count", others)
	}
	return sentence
}

// follow counts, of the changes beside a part added, deleted or renamed, those of its
// kind: that other parts mention it or no longer do goes without saying.
func follow(first job.Change, others []job.Change) int {
	return len(slices.DeleteFunc(slices.Clone(others), func(c job.Change) bool { return c.Act != first.Act }))
}

func (d *Desk) change(c job.Change, before, after *job.Job) string {
	say := d.words.Say
	switch c.Act {
	case job.Deleted:
		return say("history.deleted", "name", before.Called(c.Part))
	case job.Added:
		return say("history.added", "name", after.Called(c.Part))
	case job.Moved:
		return say("history.moved", "name", after.Called(c.Part))
	case job.Renamed:
		return say("history.renamed", "was", c.Was, "is", c.Is)
	}
	field := d.fieldName(c.Field)
	if c.Part != "" {
		field = say("history.field-of", "field", field, "name", before.Called(c.Part))
	}
	return say("history.set", "field", field, "was", d.stood(c.Field, c.Was, before), "is", d.stood(c.Field, c.Is, after))
}

// fieldName returns what a field is called; its path where it has no name.
func (d *Desk) fieldName(path geometry.Quantity) string {
	if known, ok := job.FieldAt(path); ok {
		if label := d.say("field." + string(known.Path)); label != "" {
			return label
		}
	}
	return string(path)
}

// mostShown is how many letters of a text the list of steps shows.
const mostShown = 32

// stood writes what stood in a field: a choice by its name, parts by theirs.
func (d *Desk) stood(path geometry.Quantity, text string, j *job.Job) string {
	switch path {
	case "parts", "wheels", "wheel", "pinion", "from", "to", "hour":
		var names []string
		for id := range strings.SplitSeq(text, ", ") {
			names = append(names, j.Called(id))
		}
		text = strings.Join(names, ", ")
	default:
		if known, ok := job.FieldAt(path); ok && text != "" {
			text = d.choiceLabel(known.Path, text)
		}
	}
	if text == "" {
		return d.words.Say("history.empty")
	}
	if letters := []rune(text); len(letters) > mostShown {
		return string(letters[:mostShown-1]) + "…"
	}
	return text
}

// GoTo undoes or redoes until so many steps stand, and looks at the part and step where
// the last of them made its change.
func (d *Desk) GoTo(stand int) {
	all, now := d.history.Steps()
	if stand = min(max(stand, 0), all); stand == now {
		return
	}
	d.draft, d.refused, d.picking = nil, refused{}, nil
	undone := stand < now
	step := stand
	if undone {
		step++
	}
	changes := d.took(step)
	d.history.Go(stand)
	d.keepCopy()
	d.solve()
	if len(changes) > 0 {
		d.lookAt(changes[0], undone)
	}
	d.show()
}

// lookAt looks at where a change was made, or unmade.
func (d *Desk) lookAt(c job.Change, undone bool) {
	part := c.Part
	if c.Act == job.Renamed && undone {
		part = c.Was
	}
	if d.isArbor(part) {
		part = d.besideArbors()
	}
	if part != d.part && d.kindOf(part) != noPart {
		d.part, d.turn = part, 0
	}
	d.lit = c.Field
	if step, ok := d.StepOf(c.Field); ok {
		d.step = step
	} else if c.Part == "" && c.Field != "" {
		d.step = Paper
	} else if d.at() == Paper {
		d.step = shows(d.Steps()) // a part added, deleted or moved is not seen on a page
	}
}
