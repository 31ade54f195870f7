package keep

import (
	"errors"
	"os"
	"syscall"
	"time"
)

// sharingViolation is Windows' error 32, ERROR_SHARING_VIOLATION.
const sharingViolation syscall.Errno = 32

// Take holds the named file, which is made if there is none, and returns ErrHeld where
// it is held already. What is in the file is left alone.
func Take(name string) (*Hold, error) {
	path, err := syscall.UTF16PtrFromString(name)
	if err != nil {
		return nil, err
	}
	h, err := syscall.CreateFile(path, syscall.GENERIC_READ|syscall.GENERIC_WRITE, 0, nil, syscall.OPEN_ALWAYS, syscall.FILE_ATTRIBUTE_NORMAL, 0)
	if errors.Is(err, sharingViolation) {
		return nil, ErrHeld
	}
	if err != nil {
		return nil, &os.PathError{Op: "hold", Path: name, Err: err}
	}
	return &Hold{os.NewFile(uintptr(h), name)}, nil
}

// holds reports that an open file is held: Windows removes none.
func holds(*os.File) bool { return true }

// longestWriting is how long a file may be in the writing before it is taken for
// abandoned (common practice, no source).
const longestWriting = time.Hour

// removeAbandoned takes a file away that no running program writes. It may be closed and
// about to be renamed, so only an old one is.
func removeAbandoned(name string) {
	if info, err := os.Stat(name); err == nil && time.Since(info.ModTime()) > longestWriting {
		_ = os.Remove(name)
	}
}

// putInPlace renames a written file over the target; Windows wants it closed for that.
func putInPlace(f *os.File, target string) error {
	if err := f.Close(); err != nil {
		return err
	}
	return os.Rename(f.Name(), target)
}
