package desk

import (
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"sync"

	"tipline/app/job"
	"tipline/app/keep"
)

// The endings of a copy of an unsaved job, and of the file that the program which
// writes it holds.
const (
	copyEnding = ".unsaved"
	lockEnding = ".lock"
)

// unsaved keeps a copy of the job on the desk while it is not saved. The copy begins
// with a line that holds the quoted name of the job's file and what the file's contents
// were known by. That it cannot be written is no reason to stop anyone's work, so it
// keeps quiet.
type unsaved struct {
	folder string // empty to keep nothing

	mu      sync.Mutex // for the next four
	job     *job.Job   // to be kept; nil for none
	file    string
	sum     sum  // of the file
	waiting bool // for its moment

	disk sync.Mutex // for the next two and what they name
	hold *keep.Hold // nil until there is a copy
	name string     // of the copy, without its ending
}

// note has a job kept a moment later, or for none the copy taken away, all but the newest
// passed over.
func (u *unsaved) note(j *job.Job, file string, s sum, later func(func())) {
	u.mu.Lock()
	defer u.mu.Unlock()
	if u.folder == "" || j != nil && j == u.job && file == u.file && s == u.sum {
		return
	}
	u.job, u.file, u.sum = j, file, s
	if !u.waiting {
		u.waiting = true
		later(u.write)
	}
}

// write writes what is to be kept, or takes the copy away where that is nothing. It may be called on any goroutine.
func (u *unsaved) write() {
	u.disk.Lock()
	defer u.disk.Unlock()
	u.mu.Lock()
	j, file, s := u.job, u.file, u.sum
	u.waiting = false
	u.mu.Unlock()
	if j == nil {
		u.drop()
	}
	if j == nil || u.hold == nil && !u.begin() {
		return
	}
	_ = keep.Write(u.name+copyEnding, func(w io.Writer) error {
		if _, err := fmt.Fprintf(w, "%q %x\n", file, s); err != nil {
			return err
		}
		return j.Write(w)
	})
}

// begin takes a name for the copy; false where none can be had.
func (u *unsaved) begin() bool {
	if os.MkdirAll(u.folder, 0o700) != nil {
		return false
	}
	name := filepath.Join(u.folder, fmt.Sprintf("%08x", rand.Uint32()))
	hold, err := keep.Take(name + lockEnding)
	if err != nil {
		return false
	}
	u.hold, u.name = hold, name
	return true
}

// forget takes the copy away at once.
func (u *unsaved) forget() {
	u.mu.Lock()
	u.job = nil
	u.mu.Unlock()
	u.disk.Lock()
	defer u.disk.Unlock()
	u.drop()
}

func (u *unsaved) drop() {
	if u.hold != nil {
		drop(u.name, u.hold)
		u.hold = nil
	}
}

// drop takes a copy and its lock away, and what a kill left half-written beside them.
func drop(name string, hold *keep.Hold) {
	_ = os.Remove(name + copyEnding)
	half, _ := filepath.Glob(filepath.Join(filepath.Dir(name), "."+filepath.Base(name)+copyEnding+"-*"))
	for _, h := range half {
		_ = os.Remove(h)
	}
	_ = hold.LetGo()
	_ = os.Remove(name + lockEnding)
}

// keepCopy has the job as it now stands kept until it is saved. What is being dragged
// is kept once it is dropped.
func (d *Desk) keepCopy() {
	switch {
	case d.Saved() && d.Later != nil:
		d.unsaved.note(nil, "", sum{}, d.Later)
	case d.Saved():
		d.unsaved.forget()
	case d.Later != nil:
		d.unsaved.note(d.history.Job(), d.file, d.imprint.sum, d.Later)
	}
}

// KeepNow keeps the job, where it is not saved, at once: the program is about to end.
func (d *Desk) KeepNow() {
	if !d.Saved() {
		d.unsaved.note(d.history.Job(), d.file, d.imprint.sum, func(func()) {})
		d.unsaved.write()
	}
}

// Close ends the work on the job as it is meant to end: nothing of it is offered back,
// and its file is free.
func (d *Desk) Close() {
	d.dropBringing()
	d.unsaved.forget()
	d.held.letGo()
}
