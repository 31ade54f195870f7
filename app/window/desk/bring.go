package desk

import (
	"bytes"
	"context"
	"path/filepath"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
)

// Brought is a job that was read and solved, ready to be put on a desk.
type Brought struct {
	history *job.History
	file    string // that it is kept in; empty for none
	imprint imprint
	held    held
	lost    *Lost // that it was; nil for none
	solver  *solve.Solver
	result  *solve.Result
}

// Source is where a job is brought from.
type Source struct {
	name  string // said while it is brought
	sole  string // the file that no other desk may have; empty for none
	bring func() (*Brought, error)
}

// FromNothing is the source of an empty job.
func FromNothing() Source {
	return Source{bring: func() (*Brought, error) { return unfiled(job.New("mm"), nil) }}
}

// FromFile is the source of the job in a file: ErrElsewhere where that is open on another
// desk.
func FromFile(name string) Source {
	s := FromFileAnyway(name)
	s.sole = name
	return s
}

// FromFileAnyway is FromFile for a job that is open elsewhere too.
func FromFileAnyway(name string) Source {
	return Source{name: name, bring: func() (*Brought, error) {
		before, _ := taken(name) // a change from here on is noticed
		j, err := job.Load(name)
		if err != nil {
			return nil, err
		}
		return &Brought{history: job.NewHistory(j), file: name, imprint: before}, nil
	}}
}

// FromCopy is the source of the job in a file as one that has no file yet.
func FromCopy(name string) Source {
	return Source{name: name, bring: func() (*Brought, error) { return unfiled(job.Load(name)) }}
}

// FromSample is the source of a sample job, to be saved under a name of its own.
func FromSample(name string) Source {
	return Source{name: name, bring: func() (*Brought, error) {
		data, err := samples.Read(name)
		if err != nil {
			return nil, err
		}
		return unfiled(job.Read(bytes.NewReader(data)))
	}}
}

// unfiled returns a job that has no file yet.
func unfiled(j *job.Job, err error) (*Brought, error) {
	if err != nil {
		return nil, err
	}
	return &Brought{history: job.NewHistory(j)}, nil
}

// FromLost is the source of a lost job as it was: not saved, in its own file's name, or in
// none where that file is open on another desk. What undo goes back to is the file.
func FromLost(l *Lost) Source {
	return Source{name: l.Title, bring: func() (*Brought, error) {
		before, err := job.Load(l.File)
		if err != nil {
			before = job.New("mm")
		}
		b := &Brought{history: job.NewHistory(before), file: l.File, imprint: imprint{sum: l.sum}, lost: l}
		b.history.Do(l.job)
		return b, nil
	}}
}

// work reads and solves; nothing is solved once ctx is done.
func (s Source) work(ctx context.Context) (*Brought, error) {
	b, err := s.bring()
	if err == nil {
		b.solver = new(solve.Solver)
		b.result = b.solver.Solve(ctx, b.history.Job())
	}
	return b, err
}

// sign takes the sign of the file that no other desk may have.
func (d *Desk) sign(s Source) (held, error) {
	switch {
	case s.sole == "":
		return held{}, nil
	case d.Holds(s.sole):
		return d.held, nil
	}
	return d.recent.hold(s.sole)
}

// bringing is a job being brought.
type bringing struct {
	source Source
	cancel context.CancelFunc
	held   held
}

// Bring reads a job and solves it beside the window, where there is an Aside, and calls
// then at the window with what is to be Put on a desk, or what kept it from being
// brought. What is on the desk stays meanwhile. What was asked for before and has not
// come is given up.
func (d *Desk) Bring(s Source, then func(*Brought, error)) {
	d.GiveUp()
	sign, err := d.sign(s)
	if err != nil {
		then(nil, err)
		return
	}
	ctx, cancel := context.WithCancel(context.Background())
	g := &bringing{s, cancel, sign}
	d.coming = g
	var b *Brought
	run := func() { b, err = s.work(ctx) }
	done := func() {
		if d.coming != g {
			return
		}
		d.coming = nil
		cancel()
		d.Changed()
		if err != nil {
			d.release(sign)
		} else {
			b.held = sign
		}
		then(b, err)
	}
	if d.Aside == nil {
		run()
		done()
		return
	}
	d.Aside(run, done)
	d.Changed()
}

// Take puts a job on the desk at once; what was there stays if it cannot be had.
func (d *Desk) Take(s Source) error {
	d.GiveUp()
	sign, err := d.sign(s)
	if err != nil {
		return err
	}
	b, err := s.work(context.Background())
	if err != nil {
		d.release(sign)
		return err
	}
	b.held = sign
	d.Put(b)
	return nil
}

// Put puts a job that was brought on the desk.
func (d *Desk) Put(b *Brought) {
	switch {
	case b.lost != nil:
		d.takeUp(b)
	case b.file != "":
		d.recent.Add(b.file)
	}
	d.lay(b)
}

// Bringing reports whether a job is being brought, and what is said of that.
func (d *Desk) Bringing() (line string, ok bool) {
	if d.coming == nil {
		return "", false
	}
	return d.words.Say("window.opening", "file", filepath.Base(d.coming.source.name)), true
}

// Brings reports whether the job in a file is being brought, to be worked on.
func (d *Desk) Brings(file string) bool {
	return d.coming != nil && d.coming.source.sole != "" && whole(d.coming.source.sole) == whole(file)
}

// GiveUp gives up what is being brought; false where there is nothing.
func (d *Desk) GiveUp() bool {
	if !d.dropBringing() {
		return false
	}
	d.Changed()
	return true
}

func (d *Desk) dropBringing() bool {
	g := d.coming
	if g == nil {
		return false
	}
	d.coming = nil
	g.cancel()
	d.release(g.held)
	return true
}

// release lets a sign go that is not the desk's own.
func (d *Desk) release(sign held) {
	if sign != d.held {
		sign.letGo()
	}
}
