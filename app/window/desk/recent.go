package desk

import (
	"bufio"
	"bytes"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/keep"
)

// mostRecent is how many recent jobs are remembered.
const mostRecent = 10

// Recent remembers which jobs were open last, in a file with a name a line. The
// zero Recent remembers nothing. That it cannot be read or written is no reason
// to stop anyone's work, so it keeps quiet.
type Recent struct{ File string }

// photographs is the folder beside the file that photographs of unsaved jobs lie
// in, the system's for passing files when nothing is remembered.
func (r Recent) photographs() string {
	if r.File == "" {
		return filepath.Join(os.TempDir(), "tipline-photographs")
	}
	return filepath.Join(filepath.Dir(r.File), "photographs")
}

// List returns the names, the latest first.
func (r Recent) List() []string {
	data, err := os.ReadFile(r.File)
	if err != nil {
		return nil
	}
	var names []string
	for lines := bufio.NewScanner(bytes.NewReader(data)); lines.Scan(); {
		if name := lines.Text(); name != "" {
			names = append(names, name)
		}
	}
	return names[:min(len(names), mostRecent)]
}

// Add puts a name first.
func (r Recent) Add(name string) {
	if r.File == "" {
		return
	}
	if whole, err := filepath.Abs(name); err == nil {
		name = whole
	}
	names := slices.DeleteFunc(r.List(), func(n string) bool { return n == name })
	names = append([]string{name}, names...)
	if err := os.MkdirAll(filepath.Dir(r.File), 0o755); err != nil {
		return
	}
	_ = keep.Write(r.File, func(w io.Writer) error {
		_, err := io.WriteString(w, strings.Join(names[:min(len(names), mostRecent)], "\n")+"\n")
		return err
	})
}
