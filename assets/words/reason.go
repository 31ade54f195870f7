package words

import (
	"errors"
	"io/fs"
	"os"
)

// Reason says why the system refused something, without what was to be done and to which
// file: in the language's own words where it has some, else as the system says it. Nothing
// is said of no error.
func (w Words) Reason(err error) string {
	if err == nil {
		return ""
	}
	said := Plainly(err)
	if word, ok := w.choice("system", said); ok {
		return word
	}
	switch { // as systems say it that speak otherwise
	case errors.Is(err, fs.ErrNotExist):
		return w.Choice("system", "no such file or directory")
	case errors.Is(err, fs.ErrPermission):
		return w.Choice("system", "permission denied")
	}
	return said
}

// Plainly drops from an error of the system what was to be done and to which file.
func Plainly(err error) string {
	var path *fs.PathError
	var link *os.LinkError
	var call *os.SyscallError
	switch {
	case errors.As(err, &path):
		return path.Err.Error()
	case errors.As(err, &link):
		return link.Err.Error()
	case errors.As(err, &call):
		return call.Err.Error()
	}
	return err.Error()
}
