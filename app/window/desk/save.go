package desk

import (
	"maps"
	"path/filepath"

	"tipline/app/job"
)

// saving is the job being written beside the window.
type saving struct{ after []func() }

// keptJob is what was written: the job with the names that its photographs have in their
// new folder, by the ids of their parts, and what its file is known by.
type keptJob struct {
	job     *job.Job
	photos  map[string]string
	imprint imprint
}

// Save writes the job to its file, as SaveAs. It must have one.
func (d *Desk) Save(then func(error)) {
	d.AfterSaving(func() { d.write(d.file, then) })
}

// SaveAs writes the job as it now stands, beside the window, to a file of another name,
// which from then on is its own, and then calls then at the window. A name without an
// ending is given the job file's. What is done to the job meanwhile is not saved.
func (d *Desk) SaveAs(name string, then func(error)) {
	if filepath.Ext(name) == "" {
		name += Extension
	}
	d.AfterSaving(func() { d.write(name, then) })
}

// AfterSaving does something at once, or once the job is written.
func (d *Desk) AfterSaving(do func()) {
	if s := d.saving; s != nil {
		s.after = append(s.after, do)
		return
	}
	do()
}

func (d *Desk) write(name string, then func(error)) {
	d.PutBack()
	d.history.EndRun()
	s, before := &saving{}, d.Job()
	d.saving = s
	from, photos, recent, prints := d.photoFolder(), d.photographs(), d.recent, maps.Clone(d.prints.of)
	var w keptJob
	var err error
	run := func() {
		w.photos = bringAll(photos, from, filepath.Dir(name))
		w.job = rephotographed(before, w.photos)
		if err = job.Save(name, w.job); err != nil {
			return
		}
		w.imprint = imprintOf(w.job)
		recent.writePrints(name, prints)
		recent.Add(name)
	}
	done := func() {
		if s != d.saving {
			return
		}
		if d.saving = nil; err == nil {
			d.saved(name, before, w)
		}
		then(err)
		for _, do := range s.after {
			d.AfterSaving(do)
		}
	}
	if d.Aside == nil {
		run()
		done()
		return
	}
	d.Aside(run, done)
}

// saved has the job be the one that is kept in a file, as far as nothing has been done
// to it since it was given to be written.
func (d *Desk) saved(name string, before *job.Job, w keptJob) {
	if d.Job() == before {
		d.history.Do(w.job)
	} else if len(w.photos) > 0 {
		d.draft = nil
		d.history.Do(rephotographed(d.Job(), w.photos))
	}
	if !d.Holds(name) || d.held.hold == nil {
		d.held.letGo()
		d.held, _ = d.recent.hold(name)
	}
	d.file, d.imprint, d.strayed = name, w.imprint, false
	d.history.MarkSaved(w.job)
	d.work()
}
