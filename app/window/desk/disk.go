package desk

import (
	"crypto/sha256"
	"errors"
	"io"
	"io/fs"
	"os"
	"time"

	"tipline/app/job"
)

// Fate is what has become of the job's file since it was last read or written here.
type Fate int

// Kept is a file that is as it was, or of which nothing can be told; Altered one that
// another program has written; Gone one that is no longer there.
const (
	Kept Fate = iota
	Altered
	Gone
)

// freshly is how old a file must be before its time and size alone tell that it is the
// same: two writings within it may bear one time (FAT counts in 2 s).
const freshly = 2 * time.Second

// sum is what a file's contents are known by.
type sum [sha256.Size]byte

// imprint is what a file is known by. Its time is the zero time where only its contents
// are known.
type imprint struct {
	sum  sum
	size int64
	time time.Time
	gone bool // it was not there when it was last looked for
}

// imprintOf returns the imprint of what Save writes of a job.
func imprintOf(j *job.Job) (p imprint) {
	h := sha256.New()
	if j.Write(h) == nil {
		h.Sum(p.sum[:0])
	}
	return p
}

// look returns what has become of a file since it left the imprint, and its imprint now.
func (p imprint) look(file string) (Fate, imprint) {
	info, err := os.Stat(file)
	switch {
	case errors.Is(err, fs.ErrNotExist) && !p.gone:
		return Gone, imprint{sum: p.sum, gone: true}
	case err != nil || info.Size() == p.size && info.ModTime().Equal(p.time):
		return Kept, p
	}
	now, err := taken(file)
	switch {
	case err != nil:
		return Kept, p
	case now.sum == p.sum:
		return Kept, now
	}
	return Altered, now
}

// enough is how much of a file is looked at: more than any job has, so that one that is
// longer is none of ours.
const enough = 16<<20 + 1

// errNoFile is returned for what is read but once, such as a pipe.
var errNoFile = errors.New("not a regular file")

// taken takes the imprint of a file.
func taken(file string) (p imprint, err error) {
	info, err := os.Stat(file)
	if err == nil && !info.Mode().IsRegular() {
		err = errNoFile
	}
	if err != nil {
		return p, err
	}
	f, err := os.Open(file)
	if err != nil {
		return p, err
	}
	defer f.Close()
	h := sha256.New()
	if _, err = io.Copy(h, io.LimitReader(f, enough)); err != nil {
		return p, err
	}
	h.Sum(p.sum[:0])
	p.size = info.Size()
	if time.Since(info.ModTime()) > freshly {
		p.time = info.ModTime()
	}
	return p, nil
}

// Look returns what has become of the job's file. Whoever is told of another fate than
// Kept answers with Reload, Leave or Save; until then Look says the same again.
func (d *Desk) Look() Fate {
	if d.file == "" || d.saving != nil {
		return Kept
	}
	fate, now := d.imprint.look(d.file)
	if fate == Kept {
		d.imprint = now
	}
	return fate
}

// LookAside is Look beside the window, where there is an Aside: told is called with
// another fate than Kept if it is still the file's when that is over.
func (d *Desk) LookAside(told func(Fate)) {
	look := func() {
		if fate := d.Look(); fate != Kept {
			told(fate)
		}
	}
	if d.Aside == nil || d.file == "" {
		look()
		return
	}
	file, before := d.file, d.imprint
	fate, now := Kept, before
	d.Aside(func() { fate, now = before.look(file) }, func() {
		switch {
		case fate != Kept:
			look()
		case file == d.file && before == d.imprint:
			d.imprint = now
		}
	})
}

// Leave leaves the job on the desk as it is though its file has become another: it is
// not saved then, and saving writes over what is there.
func (d *Desk) Leave() {
	_, d.imprint = d.imprint.look(d.file)
	d.strayed = true
	d.keepCopy()
	d.Changed()
}

// Reload brings the job as it now stands in its file and puts it on the desk; undo goes
// back to what was on the desk. That stays where the file cannot be read, which then is
// told, and where it has been saved meanwhile.
func (d *Desk) Reload(then func(error)) {
	file, was := d.file, d.imprint
	d.Bring(FromFileAnyway(file), func(b *Brought, err error) {
		if err == nil && d.file == file && d.imprint == was {
			d.leave()
			d.history.Do(b.history.Job())
			d.history.MarkSaved(d.history.Job())
			d.imprint, d.strayed, d.photos = b.imprint, false, photos{}
			d.stand(b)
		}
		then(err)
	})
}
