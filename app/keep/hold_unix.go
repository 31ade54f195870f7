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
	err = syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	if err == nil {
		return &Hold{f}, nil
	}
	if errors.Is(err, syscall.EWOULDBLOCK) {
		err = ErrHeld
	}
	return nil, errors.Join(err, f.Close())
}
