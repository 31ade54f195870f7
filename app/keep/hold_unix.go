//go:build unix

package keep

import (
	"errors"
	"os"
	"syscall"
)

// Take holds the named file, which is made if there is none, and returns ErrHeld where
// it is held already. What is in the file is left alone.
func Take(name string) (*Hold, error) {
	f, err := os.OpenFile(name, os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return nil, err
	}
	err = lock(f)
	if err == nil {
		return &Hold{f}, nil
	}
	if errors.Is(err, syscall.EWOULDBLOCK) {
		err = ErrHeld
	}
	return nil, errors.Join(err, f.Close())
}

func lock(f *os.File) error { return syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB) }

// holds takes a file that was just made for as long as it is open, and reports whether it
// is still there: one that sweeps may have been quicker. A disk that knows no locks keeps
// it, since nothing is swept there.
func holds(f *os.File) bool {
	if errors.Is(lock(f), syscall.EWOULDBLOCK) {
		return false
	}
	made, err := f.Stat()
	if err != nil {
		return true
	}
	there, err := os.Stat(f.Name())
	return err == nil && os.SameFile(made, there)
}

// removeAbandoned takes a file away that no running program holds.
func removeAbandoned(name string) {
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err != nil {
		return
	}
	defer f.Close()
	if lock(f) == nil {
		_ = os.Remove(name)
	}
}

// putInPlace renames a written file over the target and lets it go only then, so that
// nobody takes it for abandoned. It is on the disk already, so that closing loses nothing.
func putInPlace(f *os.File, target string) error {
	defer f.Close()
	return os.Rename(f.Name(), target)
}
