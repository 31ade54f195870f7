package desk

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"tipline/app/keep"
)

// ErrElsewhere is returned for a job that is open on another desk, of this program or
// of another one that runs.
var ErrElsewhere = errors.New("the job is open elsewhere")

// held is the sign, on this machine, that a job's file is being worked on: a file in a
// folder of ours that is named for it. The zero held holds nothing.
type held struct {
	hold *keep.Hold
	sign string
}

// hold takes the sign of a job's file; ErrElsewhere where another desk has it. That
// there can be no signs is no reason to stop anyone's work, so it keeps quiet.
func (r Recent) hold(file string) (held, error) {
	if r.File == "" {
		return held{}, nil
	}
	folder := filepath.Join(filepath.Dir(r.File), "open")
	if os.MkdirAll(folder, 0o700) != nil {
		return held{}, nil
	}
	sign := filepath.Join(folder, fmt.Sprintf("%.16x", sha256.Sum256([]byte(whole(file)))))
	hold, err := keep.Take(sign)
	switch {
	case errors.Is(err, keep.ErrHeld):
		return held{}, ErrElsewhere
	case err != nil:
		return held{}, nil
	}
	return held{hold, sign}, nil
}

// letGo takes the sign away.
func (h *held) letGo() {
	if h.hold != nil {
		_ = os.Remove(h.sign)
		_ = h.hold.LetGo()
	}
	*h = held{}
}

// whole returns a file's full name, with no links on the way to it.
func whole(file string) string {
	if full, err := filepath.Abs(file); err == nil {
		file = full
	}
	if real, err := filepath.EvalSymlinks(file); err == nil {
		return real
	}
	return file
}

// Holds reports whether the desk's job is kept in a file, whatever that is called.
func (d *Desk) Holds(file string) bool {
	return d.file != "" && whole(d.file) == whole(file)
}
