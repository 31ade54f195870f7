package keep

import (
	"errors"
	"io"
)

// ErrHeld is returned for a file that a running program holds.
var ErrHeld = errors.New("a running program holds the file")

// Hold is a file held by this program: no other can hold it until it is let go or the
// program ends, however that ends.
type Hold struct{ file io.Closer }

// LetGo lets the file go; it stays where it is.
func (h *Hold) LetGo() error { return h.file.Close() }
