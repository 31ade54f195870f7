package keep

import (
	"errors"
	"os"
	"syscall"
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
