package desk

import (
	"slices"

	"tipline/app/solve"
	"tipline/geometry"
	"tipline/render/template"
)

// Remark is a finding as it is shown.
type Remark struct {
	Severity solve.Severity
	Where    string // which step, or which part, it is about
	Sentence string
	Said     string // the sentence behind the place it is about
	Part     string
	Field    geometry.Quantity
	step     Step   // of what is said of the whole job
	waits    string // the part that must be mended first
}

// Remarks returns what there is to say: of the present part and of the job, the gravest
// first, what waits for another part after what is said of that, and otherwise the present
// step's own first; on paper of every part, but then no notes.
func (d *Desk) Remarks() []Remark {
	var rs []Remark
	for _, f := range d.result.Findings {
		if d.shown(f) {
			rs = append(rs, d.remark(f))
		}
	}
	slices.SortStableFunc(rs, func(a, b Remark) int {
		if by := rank(b.Severity) - rank(a.Severity); by != 0 {
			return by
		}
		if by := d.behind(a) - d.behind(b); by != 0 {
			return by
		}
		return d.here(b) - d.here(a)
	})
	return rs
}

func (d *Desk) shown(f solve.Finding) bool {
	if d.at() == Paper {
		return f.Severity != solve.Note
	}
	if f.Part == "" {
		return d.concerns(f.Code)
	}
	return f.Part == d.part || d.at() == Train && d.isArbor(f.Part)
}

// concerns reports whether what is said of the whole job is of a step that the
// present part goes through, or of none.
func (d *Desk) concerns(code string) bool {
	step, _ := stepNamed(code)
	return !slices.Contains(stepsOf[wheel], step) || slices.Contains(d.Steps(), step)
}

func rank(s solve.Severity) int {
	return slices.Index([]solve.Severity{solve.Note, solve.Caution, solve.Error}, s)
}

// here is 1 for a remark on the present step.
func (d *Desk) here(r Remark) int {
	if s, ok := d.StepOf(r.Field); ok && s == d.at() && r.Part == d.part {
		return 1
	}
	return 0
}

func (d *Desk) remark(f solve.Finding) Remark {
	r := Remark{Severity: f.Severity, Part: f.Part, Field: f.Field, Sentence: f.Sentence(d.words, d.Style().Units), waits: d.waited(f)}
	if step, ok := d.StepOf(f.Field); ok && f.Part != "" {
		r.Where = d.words.Say("step." + string(step))
	}
	if step, _ := stepNamed(f.Code); f.Part == "" && slices.Contains(d.Steps(), step) {
		r.step, r.Where = step, d.words.Say("step."+string(step))
	}
	if f.Part != "" && (d.at() == Paper || d.isArbor(f.Part)) {
		r.Where = d.Name(f.Part)
	}
	r.Said = f.Placed(r.Where, r.Sentence, d.words)
	return r
}

// causes returns what must be mended before what a remark is about, one after the other
// to the first cause; none where it waits for nothing.
func (d *Desk) causes(r Remark) []Remark {
	var list []Remark
	for seen := map[string]bool{}; r.waits != "" && !seen[r.waits]; {
		seen[r.waits] = true
		said, ok := d.gravest(r.waits)
		if !ok {
			break
		}
		r = Remark{Part: said.Part, Field: said.Field, waits: d.waited(said)}
		list = append(list, r)
	}
	return list
}

// gravest returns the first of the gravest findings on a part; false where there is
// nothing graver than a note.
func (d *Desk) gravest(part string) (solve.Finding, bool) {
	p := d.of(part)
	if p == nil {
		return solve.Finding{}, false
	}
	worst, _ := solve.Worst(p.Said())
	i := slices.IndexFunc(p.Said(), func(f solve.Finding) bool { return f.Severity == worst && worst != solve.Note })
	if i < 0 {
		return solve.Finding{}, false
	}
	return p.Said()[i], true
}

// cause returns what keeps the part from being worked out that a remark waits for, or
// the remark itself.
func (d *Desk) cause(r Remark) Remark {
	if list := d.causes(r); len(list) > 0 {
		return list[len(list)-1]
	}
	return r
}

// behind returns how many things must be mended before what a remark is about.
func (d *Desk) behind(r Remark) int { return len(d.causes(r)) }

// waited returns the part that a finding waits for, empty for none.
func (d *Desk) waited(f solve.Finding) string {
	if id := f.Waits(); d.of(id) != nil {
		return id
	}
	return ""
}

// Follow goes to the step and part of a remark's field and lights the field; where
// another part must be mended first, of that part's. It returns the remark it went to.
func (d *Desk) Follow(r Remark) Remark {
	r = d.cause(r)
	part := r.Part
	if d.isArbor(part) {
		part = d.besideArbors()
	}
	if part != "" && part != d.part {
		d.Choose(part)
	}
	if step, ok := d.StepOf(r.Field); ok {
		d.Go(step)
	} else if r.step != "" {
		d.Go(r.step)
	}
	d.Light(r.Field)
	return r
}

// Mark is what a step wears.
type Mark struct {
	Done            bool // worked out, and nothing stands against it
	Errors, Caution int
}

// Mark returns what a step of the present part wears.
func (d *Desk) Mark(s Step) Mark {
	var m Mark
	for _, f := range d.result.Findings {
		step, ok := d.StepOf(f.Field)
		mine := f.Part == d.part || s == Train && d.isArbor(f.Part)
		if !mine || !ok || step != s {
			continue
		}
		switch f.Severity {
		case solve.Error:
			m.Errors++
		case solve.Caution:
			m.Caution++
		}
	}
	m.Done = m.Errors+m.Caution == 0 && d.built(s)
	return m
}

func (d *Desk) built(s Step) bool {
	switch p := d.of(d.part).(type) {
	case solve.Made:
		return builtMade(p.Template(), s)
	case *solve.Pair:
		return s == Depthing && p.Turn != nil
	case *solve.Train:
		return s == Train && p.Way != nil
	case *solve.Stack:
		return s == Mounting && p.Stacked != nil
	}
	return false
}

func builtMade(t template.Wheel, s Step) bool {
	switch s {
	case Blank:
		return t.Teeth != nil
	case Shrouds:
		return t.Lantern != nil
	case Cutter:
		return t.Cut != nil
	case Dividing:
		return t.Dividing != nil
	case Crossing:
		return t.Crossing != nil
	case Mounting:
		return t.Mounting != nil
	}
	return false
}

// Trouble returns the gravest thing there is to say of a part, empty for nothing
// graver than a note.
func (d *Desk) Trouble(part string) solve.Severity {
	p := d.of(part)
	if p == nil {
		return ""
	}
	s, _ := solve.Worst(slices.Concat(p.Said(), d.unseenOf(part)))
	if s == solve.Note {
		return ""
	}
	return s
}
