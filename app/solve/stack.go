package solve

import (
	"strings"

	"tipline/app/job"
	"tipline/geometry/mount"
	"tipline/render/template"
)

// Stack is wheels on one collet with their tips in line. What could not be worked
// out is nil, and a finding says why.
type Stack struct {
	Part     *job.Stack
	Wheels   []*Wheel // from the collet up, with the stack's holes in them
	Collet   mount.Collet
	Stacked  *mount.Stacked // without places where no screws hold it
	Findings []Finding

	bare []*Wheel // those it was worked out from, nil where the job has none
}

// ID returns the stack's id.
func (s *Stack) ID() string { return s.Part.ID }

// Name returns what the stack is called: its wheels' names.
func (s *Stack) Name() string {
	var names []string
	for _, w := range s.bare {
		if w == nil {
			return s.Part.ID
		}
		names = append(names, w.Name())
	}
	return named(strings.Join(names, " + "), s.Part.ID)
}

// Said returns what there is to say of the stack.
func (s *Stack) Said() []Finding { return s.Findings }

// Template hands the stack over to be drawn, false where it cannot be.
func (s *Stack) Template() (template.Stack, bool) {
	if s.Stacked == nil {
		return template.Stack{}, false
	}
	t := template.Stack{ID: s.ID(), Name: s.Name(), Stacked: *s.Stacked, Collet: s.Collet}
	for _, w := range s.Wheels {
		t.Wheels = append(t.Wheels, w.Template())
	}
	return t, true
}
