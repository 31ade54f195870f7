package desk

import (
	"context"

	"tipline/app/job"
	"tipline/app/solve"
)

// solving is a job being solved beside the window. Its result is read once over is
// closed.
type solving struct {
	job    *job.Job
	cancel context.CancelFunc
	over   chan struct{}
	result *solve.Result // nil where it gave way
}

// workAside has what was typed or dragged solved by Aside and shown when that is
// done; until then the last result stands. What is typed meanwhile is solved next,
// all but the newest passed over. Without Aside it is solved at once.
func (d *Desk) workAside() {
	if d.Aside == nil {
		d.work()
		return
	}
	d.keepCopy()
	if d.solving == nil {
		d.start()
	}
}

// start has the job solved as it now stands.
func (d *Desk) start() {
	ctx, cancel := context.WithCancel(context.Background())
	s := &solving{job: d.Job(), cancel: cancel, over: make(chan struct{})}
	d.solving = s
	d.Aside(func() {
		defer close(s.over)
		s.result = d.solver.Solve(ctx, s.job)
	}, func() { d.came(s) })
}

// came shows what a job came to, unless it was overtaken, and goes on with what was
// typed since.
func (d *Desk) came(s *solving) {
	if s != d.solving {
		return
	}
	s.cancel()
	d.solving = nil
	d.take(s.result)
	if d.Job() != s.job {
		d.start()
	}
	d.show()
}

// overtake ends what is being solved aside: the job is about to be solved anew.
func (d *Desk) overtake() {
	if s := d.solving; s != nil {
		s.cancel()
		<-s.over
		d.solving = nil
	}
}

// catchUp has the result be that of the job as it now stands.
func (d *Desk) catchUp() {
	if d.solving != nil {
		d.work()
	}
}
