package desk

import (
	"io"
	"os"
	"path/filepath"

	"tipline/app/keep"
)

// welcomed is the file that says that this program's user was shown round.
func (r Recent) welcomed() string { return filepath.Join(filepath.Dir(r.File), "welcomed") }

// Newcomer reports whether the program is opened by one who has neither been shown
// round nor opened or saved a job.
func (d *Desk) Newcomer() bool {
	return d.recent.File != "" && !There(d.recent.File) && !There(d.recent.welcomed())
}

// Welcome remembers that the newcomer was shown round. That it cannot be remembered is
// no reason to stop anyone's work, so it keeps quiet.
func (d *Desk) Welcome() {
	if os.MkdirAll(filepath.Dir(d.recent.File), 0o755) == nil {
		_ = keep.Write(d.recent.welcomed(), func(io.Writer) error { return nil })
	}
}
