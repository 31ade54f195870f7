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

// solve has the job solved as it now stands: by Aside, and then shown, the last results
// standing for its parts until that is done. What is done to the job meanwhile is solved
// next, all but the newest passed over. Without Aside it is solved at once.
func (d *Desk) solve() {
	if d.Aside == nil {
		d.solveNow()
		return
	}
	d.have(d.standing(d.result))
	if d.solving == nil {
		d.start()
	}
}

func (d *Desk) solveNow() { d.take(d.solver.Solve(context.Background(), d.Job())) }

// workAside is work for what is typed or dragged: nothing else changes before it is
// solved.
func (d *Desk) workAside() {
	if d.Aside == nil {
		d.work()
		return
	}
	d.keepCopy()
	d.solve()
}

// start has the job solved as it now stands.
func (d *Desk) start() {
	ctx, cancel := context.WithCancel(context.Background())
	s, solver := &solving{job: d.Job(), cancel: cancel, over: make(chan struct{})}, d.solver
	d.solving = s
	d.Aside(func() {
		defer close(s.over)
		s.result = solver.Solve(ctx, s.job)
	}, func() { d.came(s) })
}

// came shows what a job came to, unless it gave way, and goes on with what was done
// since.
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

// giveWay ends what is being solved aside; it is read no more.
func (d *Desk) giveWay() {
	if s := d.solving; s != nil {
		s.cancel()
		d.solving = nil
	}
}

// catchUp has the result be that of the job as it now stands.
func (d *Desk) catchUp() {
	if s := d.solving; s != nil {
		d.giveWay()
		<-s.over
		d.solveNow()
		d.show()
	}
}
