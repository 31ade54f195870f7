package desk

import (
	"bufio"
	"crypto/sha256"
	"encoding/hex"
	"io"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/keep"
)

// prints remembers, of each part that was printed, a digest of what it was then: in a
// file of ours that is named for the job's, so that the job itself says nothing of it.
// That it cannot be read or written is no reason to stop anyone's work, so it keeps
// quiet.
type prints struct {
	of   map[string]string // digest by the part's id
	seen map[string]seen
}

// seen is a part's digest as it is now, worked out anew when the part has changed.
type seen struct {
	from   any
	digest string
}

// file returns where the prints of a job's file are remembered, empty for nowhere.
func (r Recent) printsOf(file string) string {
	whole, err := filepath.Abs(file)
	if r.File == "" || file == "" || err != nil {
		return ""
	}
	sum := sha256.Sum256([]byte(whole))
	return filepath.Join(filepath.Dir(r.File), "printed", hex.EncodeToString(sum[:8]))
}

// readPrints reads what is remembered of a job's file.
func (r Recent) readPrints(file string) prints {
	p := prints{of: map[string]string{}, seen: map[string]seen{}}
	f, err := os.Open(r.printsOf(file))
	if err != nil {
		return p
	}
	defer f.Close()
	for lines := bufio.NewScanner(f); lines.Scan(); {
		if digest, id, ok := strings.Cut(lines.Text(), " "); ok {
			p.of[id] = digest
		}
	}
	return p
}

// writePrints remembers the prints of a job's file: a digest and the part's id a line.
func (r Recent) writePrints(file string, of map[string]string) {
	name := r.printsOf(file)
	if name == "" || len(of) == 0 || os.MkdirAll(filepath.Dir(name), 0o700) != nil {
		return
	}
	_ = keep.Write(name, func(w io.Writer) error {
		for _, id := range slices.Sorted(maps.Keys(of)) {
			if _, err := io.WriteString(w, of[id]+" "+id+"\n"); err != nil {
				return err
			}
		}
		return nil
	})
}

// Printed remembers that parts were printed, or written to be printed, as they are now;
// all of them where none is named. What is typed from then on is a step of its own, so
// that undoing comes back to what was printed.
func (d *Desk) Printed(parts ...string) {
	if len(parts) == 0 {
		parts = d.order()
	}
	for _, id := range parts {
		if d.of(id) != nil {
			d.prints.of[id] = d.Job().Digest(id)
		}
	}
	d.history.EndRun()
	d.recent.writePrints(d.file, d.prints.of)
	d.Changed()
}

// Reprint reports whether a part has changed since it was last printed; false for one
// that never was.
func (d *Desk) Reprint(part string) bool {
	was, ok := d.prints.of[part]
	if !ok {
		return false
	}
	now := d.prints.seen[part]
	if from := d.Pictured(part); now.from != from {
		now = seen{from, d.result.Job.Digest(part)}
		d.prints.seen[part] = now
	}
	return now.digest != was
}
