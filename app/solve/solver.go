package solve

import (
	"context"

	"tipline/app/job"
	"tipline/geometry/measure"
)

// Solver works jobs out and remembers the parts that did not change: an edit
// costs the edited part alone. It is not safe for use by two goroutines at once.
type Solver struct {
	units  string
	wheels map[*job.Wheel]*Wheel
}

// Solve works a job out from nothing.
func Solve(ctx context.Context, j *job.Job) *Result { return new(Solver).Solve(ctx, j) }

// Solve works a job out. When ctx is done it gives way and returns nil.
func (s *Solver) Solve(ctx context.Context, j *job.Job) *Result {
	known := s.wheels
	if s.units != j.Units {
		known = nil
	}
	next := make(map[*job.Wheel]*Wheel, len(j.Wheels))
	r := &Result{Job: j}
	for _, part := range j.Wheels {
		if ctx.Err() != nil {
			return nil
		}
		w, ok := known[part]
		if !ok {
			w = solveWheel(part, unitOf(j))
		}
		next[part] = w
		r.Wheels = append(r.Wheels, w)
	}
	s.units, s.wheels = j.Units, next
	r.Findings = jobFindings(j)
	for _, w := range r.Wheels {
		r.Findings = append(r.Findings, w.Findings...)
	}
	return r
}

// unitOf returns the unit of a number typed without one.
func unitOf(j *job.Job) measure.Unit {
	if j.Units == string(measure.Inch) {
		return measure.Inch
	}
	return measure.MM
}

// Units returns how a job's lengths are written.
func Units(j *job.Job) measure.Units { return measure.Units{Unit: unitOf(j)} }

// jobFindings says what is to be said of the job itself.
func jobFindings(j *job.Job) []Finding {
	var fs []Finding
	for _, field := range j.UnknownFields() {
		fs = append(fs, Finding{Note, "", "", "job.unknown-field", []Place{text("field", field)}})
	}
	return fs
}
