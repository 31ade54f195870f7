package solve

import (
	"tipline/app/job"
	"tipline/geometry/depthing"
)

// Train is the way from one part of a job to another through its pairs, from
// arbor to arbor. What could not be worked out is nil, and a finding says why.
type Train struct {
	Part     *job.Train
	Way      *depthing.Train
	Pairs    []*Pair        // passed, in order
	Beat     *depthing.Beat // where the train ends at an escape wheel
	Findings []Finding
}

// ID returns the train's id.
func (t *Train) ID() string { return t.Part.ID }

// Name returns what the train is called.
func (t *Train) Name() string { return t.Part.ID }

// Said returns what there is to say of the train.
func (t *Train) Said() []Finding { return t.Findings }
