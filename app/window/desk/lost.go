package desk

import (
	"bufio"
	"encoding/hex"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"tipline/app/job"
	"tipline/app/keep"
)

// Lost is a job that was not saved when the program that had it open ended.
type Lost struct {
	Title string
	File  string    // the job's own; empty where it had none
	When  time.Time // it was last kept
	name  string    // of the copy, without its ending
	hold  *keep.Hold
	job   *job.Job
	sum   sum // of the file as it was
}

// Lost lists the jobs that can be had back, the latest first. Those of running
// programs are not among them. They are held until they are taken up or thrown away, so
// that no other program offers them.
func (d *Desk) Lost() []*Lost {
	copies, err := filepath.Glob(filepath.Join(d.unsaved.folder, "*"+copyEnding))
	if err != nil || d.unsaved.folder == "" {
		return nil
	}
	var list []*Lost
	for _, c := range copies {
		if l := d.lost(strings.TrimSuffix(c, copyEnding)); l != nil {
			list = append(list, l)
		}
	}
	slices.SortFunc(list, func(a, b *Lost) int { return b.When.Compare(a.When) })
	return list
}

// lost returns the job in a copy, nil where it is held or cannot be read.
func (d *Desk) lost(name string) *Lost {
	hold, err := keep.Take(name + lockEnding)
	if err != nil {
		return nil
	}
	l := &Lost{name: name, hold: hold}
	if l.read() != nil {
		_ = hold.LetGo()
		return nil
	}
	l.Title = d.titled(l.job, l.File)
	return l
}

func (l *Lost) read() error {
	f, err := os.Open(l.name + copyEnding)
	if err != nil {
		return err
	}
	defer f.Close()
	info, err := f.Stat()
	if err != nil {
		return err
	}
	l.When = info.ModTime()
	in := bufio.NewReader(f)
	line, err := in.ReadString('\n')
	if err != nil {
		return err
	}
	quoted, err := strconv.QuotedPrefix(line)
	if err != nil {
		return err
	}
	if l.File, err = strconv.Unquote(quoted); err != nil {
		return err
	}
	known, err := hex.DecodeString(strings.TrimSpace(line[len(quoted):]))
	if err != nil {
		return err
	}
	copy(l.sum[:], known)
	l.job, err = job.Read(in)
	return err
}

// takeUp takes over the copy of a lost job that is about to be put on the desk, and the
// sign of its file; the job has no file where another desk has that.
func (d *Desk) takeUp(b *Brought) {
	d.unsaved.forget()
	d.held.letGo()
	if b.file != "" {
		var err error
		if b.held, err = d.recent.hold(b.file); err != nil {
			b.file, b.imprint = "", imprint{}
		}
	}
	d.unsaved.disk.Lock()
	defer d.unsaved.disk.Unlock()
	d.unsaved.hold, d.unsaved.name = b.lost.hold, b.lost.name
}

// ThrowAway takes the copy of a lost job away.
func (d *Desk) ThrowAway(l *Lost) { drop(l.name, l.hold) }
