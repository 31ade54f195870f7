package solve

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/fault"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
)

// usualMisplacement is how far to the side, in mm, the smaller wheel's tips may come
// to stand when wheels are set in line by eye against a straight edge: common
// practice, no source.
const usualMisplacement = 0.05

// standing is how a wheel stands to stacks.
type standing int

const (
	alone      standing = iota
	stacked             // in one that has no mount of its own
	overridden          // in one that has
)

// standings returns how each wheel that is in a stack stands to it.
func standings(stacks []*job.Stack) map[string]standing {
	all := map[string]standing{}
	for _, s := range slices.Backward(stacks) {
		for _, id := range s.Wheels {
			if all[id] = stacked; s.Mount != nil {
				all[id] = overridden
			}
		}
	}
	return all
}

// stacks works the stacks out and puts the wheels with their holes into the result.
// A stack whose wheels are as they were is taken from memory with them.
func (r *Result) stacks(ctx context.Context, known memory, next *memory, unit measure.Unit) bool {
	r.Stacks = make([]*Stack, len(r.Job.Stacks))
	fault.All(len(r.Stacks), func(i int) {
		part := r.Job.Stacks[i]
		bare := make([]*Wheel, len(part.Wheels))
		for n, id := range part.Wheels {
			bare[n] = r.Wheel(id)
		}
		switch s := known.stacks[part]; {
		case ctx.Err() != nil:
		case s != nil && slices.Equal(s.bare, bare):
			r.Stacks[i] = s
		default:
			r.Stacks[i] = soundly(part.ID, func() *Stack { return solveStack(part, bare, unit) },
				func(fs []Finding) *Stack { return &Stack{Part: part, bare: bare, Findings: fs} })
		}
	})
	if ctx.Err() != nil {
		return false
	}
	next.stacks = make(map[*job.Stack]*Stack, len(r.Stacks))
	for _, s := range r.Stacks {
		next.stacks[s.Part] = s
		r.settle(s)
	}
	return true
}

// settle puts a stack's wheels in the place of the bare ones. A wheel stands in the
// first stack that has it.
func (r *Result) settle(s *Stack) {
	for n, drilled := range s.Wheels {
		if i := slices.Index(r.Wheels, s.bare[n]); i >= 0 {
			r.Wheels[i] = drilled
		}
	}
}

// solveStack works one stack out of its wheels, nil where the job has none.
func solveStack(part *job.Stack, bare []*Wheel, unit measure.Unit) *Stack {
	r := &reader{part: part.ID, unit: unit}
	s := &Stack{Part: part, bare: bare}
	s.put(r)
	s.Findings = sorted(r.findings)
	return s
}

func (s *Stack) put(r *reader) {
	mark := len(r.findings)
	s.there(r)
	var tips []int
	for _, v := range s.Part.Tips {
		tips = append(tips, r.count("tips", v, 0))
	}
	misplacement := r.length("misplacement", s.Part.Misplacement, usualMisplacement)
	m, from := s.mount(r)
	s.Collet = m.collet
	if !r.sound(mark) || !m.sound {
		return
	}
	seats := make([]mount.Seat, len(s.bare))
	for i, w := range s.bare {
		seats[i] = w.seat()
	}
	made, err := m.stack(seats, tips, misplacement)
	if s.refused(r, m, from, err) {
		return
	}
	s.Stacked = &made
	s.drill(r.unit)
	s.say(r, m, misplacement)
}

// stack puts wheels on the collet that is asked for.
func (a asked) stack(seats []mount.Seat, tips []int, misplacement float64) (mount.Stacked, error) {
	if a.screwed {
		return mount.Stack(seats, tips, a.collet, a.screws, misplacement)
	}
	for _, s := range seats {
		if err := a.collet.Check(s.Bore); err != nil {
			return mount.Stacked{}, err
		}
	}
	return mount.InLine(seats, tips, misplacement)
}

// there says which wheels are not there, or cannot be stacked.
func (s *Stack) there(r *reader) {
	for i, w := range s.bare {
		id := s.Part.Wheels[i]
		switch {
		case w == nil:
			r.find(Error, "wheels", "stack.no-such-wheel", text("read", id))
		case slices.Contains(s.Part.Wheels[:i], id):
			r.find(Error, "wheels", "stack.wheel-again", text("part", w.Name()))
		case !w.ready():
			r.find(Error, "wheels", "stack.unbuilt", waits(w))
		}
	}
}

// mount returns what is asked of the stack's mount, and whose it is: the stack's
// own, or where it has none that of its first wheel that has one.
func (s *Stack) mount(r *reader) (asked, string) {
	if s.Part.Mount != nil {
		return r.mount(s.Part.Mount, true), s.ID()
	}
	for _, w := range s.bare {
		if w != nil && w.Part.Mount != nil {
			return w.asked, w.ID()
		}
	}
	return asked{sound: true}, s.ID()
}

// refused keeps why the wheels cannot be stacked, on the part whose field is to
// blame.
func (s *Stack) refused(r *reader, m asked, from string, err error) bool {
	owner := &reader{part: from, unit: r.unit}
	if !owner.unmounted(m.screws.Thread, err) {
		return false
	}
	f := owner.findings[0]
	switch field := unindexed(f.Field); {
	case field == "tips", field == "wheels", field == "misplacement":
		f.Part, f.Field = s.ID(), field
	case !strings.HasPrefix(string(field), "mount."):
		f.Part, f.Field = s.ID(), "wheels"
	}
	r.findings = append(r.findings, f)
	return true
}

// drill makes the wheels with the stack's holes in them.
func (s *Stack) drill(unit measure.Unit) {
	for i, w := range s.bare {
		drilled, r := *w, &reader{part: w.ID(), unit: unit, findings: slices.Clone(w.worked)}
		drilled.Stack, drilled.Collet = s.ID(), s.Collet
		if s.Stacked.OnWheel != nil {
			m := s.Stacked.Mounting
			m.Places = s.Stacked.OnWheel[i]
			drilled.drill(r, m)
		}
		if w.Part.Mount != nil && s.Part.Mount != nil {
			r.find(Note, "mount.screws", "stack.overrides", text("stack", s.Name()))
		}
		drilled.say(r)
		s.Wheels = append(s.Wheels, &drilled)
	}
}

// say says how the stack goes together.
func (s *Stack) say(r *reader, m asked, misplacement float64) {
	if m.screwed {
		r.mountFindings(s.Stacked.Mounting)
		s.marksFinding(r)
	} else {
		r.find(Caution, "mount.screws", "stack.no-screws")
	}
	code := "stack.twist"
	if s.Part.Misplacement.Empty() {
		code = "stack.twist-usual"
	}
	r.find(Note, "misplacement", code, number("misplacement", misplacement, Length),
		number("twist", float64(s.Stacked.Twist), Angle), micrometres("error", s.Stacked.Error),
		text("smaller", s.bare[s.Stacked.Smaller].Name()), text("larger", s.bare[s.Stacked.Larger].Name()))
}

// marksFinding says which dots keep the parts in order.
func (s *Stack) marksFinding(r *reader) {
	var dots []string
	for _, m := range s.Stacked.Marks {
		if m.Part >= 0 {
			dots = append(dots, fmt.Sprintf("%s %d", s.bare[m.Part].Name(), m.Dots))
		}
	}
	r.find(Note, "wheels", "stack.marks", text("dots", list(dots)),
		number("at", float64(s.Stacked.Mounting.Places[0].Angle), Angle))
}

// unindexed returns the field of a list's item as it is typed, the whole list.
func unindexed(field geometry.Quantity) geometry.Quantity {
	whole, _, _ := strings.Cut(string(field), "[")
	return geometry.Quantity(whole)
}
