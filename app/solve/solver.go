package solve

import (
	"context"

	"tipline/app/job"
	"tipline/assets/words"
	"tipline/geometry/measure"
)

// Solver works jobs out and remembers the parts that did not change: an edit
// costs the edited part, and the pairs and trains it stands in, alone. It is not
// safe for use by two goroutines at once.
type Solver struct {
	known map[measure.Unit]memory // of the job as it last was in each unit
}

// memory is what was worked out, by what it was worked out from.
type memory struct {
	wheels  map[wheelKey]*Wheel // without the holes of their stacks
	stacks  map[*job.Stack]*Stack
	pinions map[pinionKey]*Pinion
	pairs   map[pairKey]*Pair
	meshes  meshes // of the pairs
	trains  map[trainKey]*Train
	works   works // that the trains are made of
}

type wheelKey struct {
	part   *job.Wheel
	stands standing
}

type pinionKey struct {
	part   *job.Pinion
	driver int // teeth of the wheel it is paired with, where that counts
}

type pairKey struct {
	part          *job.Pair
	wheel, pinion Made
}

type trainKey struct {
	part     *job.Train
	from, to Made
	escape   *Wheel
}

// Solve works a job out from nothing.
func Solve(ctx context.Context, j *job.Job) *Result { return new(Solver).Solve(ctx, j) }

// Solve works a job out. When ctx is done it gives way and returns nil.
func (s *Solver) Solve(ctx context.Context, j *job.Job) *Result {
	r, next, unit := &Result{Job: j}, memory{}, j.Unit()
	known := s.known[unit]
	if !r.wheels(ctx, known, &next, unit) || !r.stacks(ctx, known, &next, unit) || !r.pinions(ctx, known, &next, unit) ||
		!r.pairs(ctx, known, &next, unit) || !r.trains(ctx, known, &next, unit) {
		return nil
	}
	if s.known == nil {
		s.known = map[measure.Unit]memory{}
	}
	s.known[unit] = next
	r.Findings = r.jobFindings(next.works)
	for _, p := range r.Parts() {
		r.Findings = append(r.Findings, p.Said()...)
	}
	return r
}

func (r *Result) wheels(ctx context.Context, known memory, next *memory, unit measure.Unit) bool {
	stands, before := standings(r.Job.Stacks), make(map[string]*Wheel, len(known.wheels))
	for _, w := range known.wheels {
		before[w.ID()] = w
	}
	var ok bool
	r.Wheels, next.wheels, ok = each(ctx, r.Job.Wheels, known.wheels,
		func(w *job.Wheel) wheelKey { return wheelKey{w, stands[w.ID]} },
		func(w *job.Wheel) *Wheel {
			return soundly(w.ID, func() *Wheel { return solveWheel(w, unit, stands[w.ID], before[w.ID]) },
				func(fs []Finding) *Wheel { return &Wheel{Part: w, worked: fs, Findings: fs} })
		})
	return ok
}

func (r *Result) pinions(ctx context.Context, known memory, next *memory, unit measure.Unit) bool {
	var ok bool
	r.Pinions, next.pinions, ok = each(ctx, r.Job.Pinions, known.pinions,
		func(p *job.Pinion) pinionKey { return pinionKey{p, r.driver(p)} },
		func(p *job.Pinion) *Pinion {
			return soundly(p.ID, func() *Pinion { return solvePinion(p, r.driver(p), unit) },
				func(fs []Finding) *Pinion { return &Pinion{Part: p, Findings: fs} })
		})
	return ok
}

// driver returns the count of the wheel that a pinion is paired with, where it says
// no ratio itself; 0 where there is none, or wheels of several counts.
func (r *Result) driver(p *job.Pinion) int {
	if !p.Ratio.Empty() {
		return 0
	}
	count := 0
	for _, pair := range r.Job.Pairs {
		if pair.Pinion != p.ID && pair.Wheel != p.ID {
			continue
		}
		w := r.Wheel(other(pair, p.ID))
		if w == nil || w.Teeth == nil {
			continue
		}
		if count != 0 && count != w.Teeth.Count {
			return 0
		}
		count = w.Teeth.Count
	}
	return count
}

func (r *Result) pairs(ctx context.Context, known memory, next *memory, unit measure.Unit) bool {
	made := r.made()
	var ok bool
	r.Pairs, next.pairs, ok = each(ctx, r.Job.Pairs, known.pairs,
		func(p *job.Pair) pairKey { return pairKey{p, made[p.Wheel], made[p.Pinion]} },
		func(p *job.Pair) *Pair {
			return soundly(p.ID, func() *Pair { return solvePair(p, made[p.Wheel], made[p.Pinion], unit, known.meshes) },
				func(fs []Finding) *Pair { return &Pair{Part: p, Findings: fs} })
		})
	next.meshes = meshesOf(r.Pairs)
	return ok
}

// other returns the other part of a pair.
func other(p *job.Pair, id string) string {
	if p.Pinion == id {
		return p.Wheel
	}
	return p.Pinion
}

// made returns the wheels and pinions by their ids.
func (r *Result) made() map[string]Made {
	by := make(map[string]Made, len(r.Wheels)+len(r.Pinions))
	for _, w := range r.Wheels {
		by[w.ID()] = w
	}
	for _, p := range r.Pinions {
		by[p.ID()] = p
	}
	return by
}

func (r *Result) trains(ctx context.Context, known memory, next *memory, unit measure.Unit) bool {
	w := newWorks(unit, r.made(), r.Pairs, r.Job.Arbors)
	next.works = w
	var ok bool
	r.Trains, next.trains, ok = each(ctx, r.Job.Trains, w.kept(known.works, known.trains),
		func(t *job.Train) trainKey { return trainKey{t, w.made[t.From], w.made[t.To], w.escapeOn(t.To)} },
		func(t *job.Train) *Train {
			return soundly(t.ID, func() *Train { return solveTrain(t, w) },
				func(fs []Finding) *Train { return &Train{Part: t, Findings: fs} })
		})
	return ok
}

// Units returns how a job's lengths are written in a language.
func Units(j *job.Job, w words.Words) measure.Units {
	return measure.Units{Unit: j.Unit(), Comma: w.Comma()}
}
