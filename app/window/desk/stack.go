package desk

import (
	"fmt"
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// Layer is one wheel of the present stack, and which of its tips stands in line.
type Layer struct {
	Wheel Choice
	Tip   Field
}

// stackAt returns the present stack as typed, on its step of mounting; else nil.
func (d *Desk) stackAt() *job.Stack {
	if d.kindOf(d.part) != stack || d.at() != Mounting {
		return nil
	}
	i := slices.IndexFunc(d.Job().Stacks, func(s *job.Stack) bool { return s.ID == d.part })
	return d.Job().Stacks[i]
}

// Layers lists the wheels of the present stack from the collet up, and the wheels
// that can be put on it; false where no stack is mounted.
func (d *Desk) Layers() (layers []Layer, free []Choice, ok bool) {
	s := d.stackAt()
	if s == nil {
		return nil, nil, false
	}
	all := d.madeChoices()[:len(d.result.Wheels)]
	for i, id := range s.Wheels {
		layers = append(layers, Layer{labelled(all, id), d.tipField(s, i)})
	}
	for _, c := range all {
		if !slices.Contains(s.Wheels, c.Value) {
			free = append(free, c)
		}
	}
	return layers, free, true
}

// mounted returns a job in which the present stack has what it took from one of its
// wheels as a mount of its own, so that one field of it can be another.
func (d *Desk) mounted(j *job.Job) *job.Job {
	i := slices.IndexFunc(j.Stacks, func(s *job.Stack) bool { return s.ID == d.part })
	if i < 0 || j.Stacks[i].Mount != nil {
		return j
	}
	lender := lenderTo(j, j.Stacks[i])
	for _, path := range mountFields {
		if text, _ := j.Text(lender, path); text != "" {
			j = d.with(j, path, text)
		}
	}
	return j
}

// lenderTo returns the wheel whose mount a stack without one takes, empty for none.
func lenderTo(j *job.Job, s *job.Stack) string {
	for _, id := range s.Wheels {
		if w := j.Wheel(id); w != nil && w.Mount != nil {
			return id
		}
	}
	return ""
}

// lent returns what a stack without a mount of its own takes for a field of it from
// its first wheel that has one, and whose that is.
func (d *Desk) lent(part string, path geometry.Quantity) string {
	s, ok := d.of(part).(*solve.Stack)
	if !ok || s.Part.Mount != nil || !slices.Contains(mountFields, path) {
		return ""
	}
	id := lenderTo(d.Job(), s.Part)
	text, _ := d.Job().Text(id, path)
	if id == "" || text == "" {
		return ""
	}
	return d.words.Say("stack.lent", "text", text, "name", d.Name(id))
}

func tipPath(i int) geometry.Quantity { return geometry.Quantity(fmt.Sprintf("tips[%d]", i)) }

func (d *Desk) tipField(s *job.Stack, i int) Field {
	f := Field{Part: s.ID, Path: tipPath(i), Text: tipsOf(s)[i]}
	if r := d.refused; r.part == f.Part && r.field == f.Path {
		f.Text, f.Refusal, f.Grave = r.text, r.why, true
	}
	return f
}

// tipsOf returns the reference tip of each wheel as typed, 0 where none is.
func tipsOf(s *job.Stack) []string {
	tips := make([]string, len(s.Wheels))
	for i := range tips {
		if tips[i] = "0"; i < len(s.Tips) {
			tips[i] = s.Tips[i].Text
		}
	}
	return tips
}

// LayersTrouble returns the first thing that stands against the wheels of the
// present stack and their tips, and whether it is an error.
func (d *Desk) LayersTrouble() (sentence string, grave bool) {
	if r := d.refused; strings.HasPrefix(string(r.field), "tips[") {
		return r.why, true
	}
	for _, field := range []geometry.Quantity{"wheels", "tips"} {
		if sentence, grave = d.refusal(d.part, field); sentence != "" {
			return sentence, grave
		}
	}
	return "", false
}

// TypeTip puts a text in the box of a wheel's reference tip. The tips are one list,
// so a text that is empty or holds a comma stays in its box with the reason.
func (d *Desk) TypeTip(i int, text string) {
	s := d.stackAt()
	if s == nil || i >= len(s.Wheels) {
		return
	}
	d.refused = refused{}
	if strings.TrimSpace(text) == "" || strings.Contains(text, ",") {
		d.refused = refused{s.ID, tipPath(i), text, d.words.Say("stack.tip-refused")}
		d.Changed()
		return
	}
	tips := tipsOf(s)
	tips[i] = text
	if j := d.restacked(s.Wheels, tips); j != d.Job() {
		d.history.Type(j, s.ID, tipPath(i))
		d.workAside()
	}
}

// PutOnStack puts a wheel on top of the present stack.
func (d *Desk) PutOnStack(wheel string) {
	if s := d.stackAt(); s != nil {
		d.do(d.restacked(append(slices.Clone(s.Wheels), wheel), append(tipsOf(s), "0")))
	}
}

// TakeOffStack takes a wheel off the present stack, and its tip with it.
func (d *Desk) TakeOffStack(i int) {
	if s := d.stackAt(); s != nil {
		d.do(d.restacked(slices.Delete(slices.Clone(s.Wheels), i, i+1), slices.Delete(tipsOf(s), i, i+1)))
	}
}

// Raise changes a wheel of the present stack with the one above it.
func (d *Desk) Raise(i int) {
	s := d.stackAt()
	if s == nil || i+1 >= len(s.Wheels) {
		return
	}
	wheels, tips := slices.Clone(s.Wheels), tipsOf(s)
	wheels[i], wheels[i+1] = wheels[i+1], wheels[i]
	tips[i], tips[i+1] = tips[i+1], tips[i]
	d.do(d.restacked(wheels, tips))
}

// restacked returns a job in which the present stack is of these wheels and tips;
// tips that say nothing are left out.
func (d *Desk) restacked(wheels, tips []string) *job.Job {
	for len(tips) > 0 && tips[len(tips)-1] == "0" {
		tips = tips[:len(tips)-1]
	}
	j := d.with(d.Job(), "wheels", strings.Join(wheels, ", "))
	return d.with(j, "tips", strings.Join(tips, ", "))
}
