package desk

import (
	"slices"

	"tipline/app/job"
	"tipline/app/solve"
)

// standing returns what stands for the job as it now is until that is solved: of each
// part what the result says, of a part that is new nothing, and nothing of those that are
// no more. It is the result itself where the job has the same parts.
func (d *Desk) standing(r *solve.Result) *solve.Result {
	j := d.Job()
	if r.Job == j {
		return r
	}
	known := partsOf(r)
	now := solve.Result{
		Job:     j,
		Wheels:  stood(d, j.Wheels, known, func(p *job.Wheel) *solve.Wheel { return &solve.Wheel{Part: p} }),
		Pinions: stood(d, j.Pinions, known, func(p *job.Pinion) *solve.Pinion { return &solve.Pinion{Part: p} }),
		Pairs:   stood(d, j.Pairs, known, func(p *job.Pair) *solve.Pair { return &solve.Pair{Part: p} }),
		Trains:  stood(d, j.Trains, known, func(p *job.Train) *solve.Train { return &solve.Train{Part: p} }),
		Stacks:  stood(d, j.Stacks, known, func(p *job.Stack) *solve.Stack { return &solve.Stack{Part: p} }),
	}
	if slices.Equal(now.Parts(), r.Parts()) {
		return r
	}
	there := partsOf(&now)
	for _, f := range r.Findings {
		if known[f.Part] == nil || there[f.Part] != nil {
			now.Findings = append(now.Findings, f)
		}
	}
	return &now
}

// stood returns what stands for the parts of one kind; those of which nothing is known
// are awaited.
func stood[P any, S solve.Part](d *Desk, parts []P, known map[string]solve.Part, blank func(P) S) []S {
	var list []S
	for _, p := range parts {
		s := blank(p)
		if was, ok := known[s.ID()].(S); ok {
			s = was
		} else {
			d.awaited[s.ID()] = true
		}
		list = append(list, s)
	}
	return list
}

func partsOf(r *solve.Result) map[string]solve.Part {
	known := make(map[string]solve.Part)
	for _, p := range r.Parts() {
		known[p.ID()] = p
	}
	return known
}

// Awaits reports whether nothing is worked out yet of the part that is looked at.
func (d *Desk) Awaits() bool { return d.awaited[d.part] }
