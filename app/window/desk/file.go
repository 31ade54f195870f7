package desk

import (
	"os"
	"path/filepath"
	"strings"

	"tipline/app/job"
	"tipline/app/keep"
	"tipline/app/solve"
)

// Extension ends the name of a job file.
const Extension = ".tipline"

// Begin puts an empty job on the desk.
func (d *Desk) Begin() { d.lay(&Brought{history: job.NewHistory(job.New("mm"))}) }

// Untouched reports whether the desk has an empty job or a sample on it that nothing
// has been done to, so that another may take its place.
func (d *Desk) Untouched() bool {
	return d.file == "" && d.saving == nil && d.Saved() && !d.CanUndo() && !d.CanRedo() && !d.Dragging()
}

// Open puts the job in a file on the desk; what was there stays if it cannot be
// read, and, with ErrElsewhere, if it is open on another desk.
func (d *Desk) Open(name string) error { return d.Take(FromFile(name)) }

// File returns where the job is kept, empty until it is saved.
func (d *Desk) File() string { return d.file }

// Saved reports whether the job stands as it is kept.
func (d *Desk) Saved() bool { return d.history.Saved() && !d.strayed }

// Title returns the job's title, else its file's name, else that it has none.
func (d *Desk) Title() string { return d.titled(d.Job(), d.file) }

func (d *Desk) titled(j *job.Job, file string) string {
	switch {
	case j.Title != "":
		return solve.Shown(j.Title)
	case file != "":
		return strings.TrimSuffix(filepath.Base(file), Extension)
	}
	return d.words.Say("window.untitled")
}

// FileName returns the name to be offered for a file with the ending, of letters
// that every disk takes.
func (d *Desk) FileName(ending string) string {
	name := keep.Name(d.Title())
	if name == "" {
		name = d.words.Say("window.untitled")
	}
	return name + ending
}

// Recent lists the files of recent jobs, the latest first.
func (d *Desk) Recent() []string { return d.recent.List() }

// Folder returns where files are looked for and offered: the job's folder, else
// that of the latest recent job, else the maker's own.
func (d *Desk) Folder() string {
	if d.file != "" {
		if whole, err := filepath.Abs(d.file); err == nil {
			return filepath.Dir(whole)
		}
	}
	if recent := d.Recent(); len(recent) > 0 && There(filepath.Dir(recent[0])) {
		return filepath.Dir(recent[0])
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	return home
}

// Path returns the file's whole name, with its ending if it has none.
func Path(folder, name, ending string) string {
	name = strings.TrimSpace(name)
	if !strings.EqualFold(filepath.Ext(name), ending) {
		name += ending
	}
	if filepath.IsAbs(name) {
		return name
	}
	return filepath.Join(folder, name)
}

// There reports whether there is a file of the name.
func There(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}
