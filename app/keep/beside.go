package keep

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"strings"
)

// halfEnding ends the name of a file that is being written beside the one it is to replace.
const halfEnding = ".half"

// besideStart is what the names of all files written beside a target start with; the
// start of the target's name keeps them short enough for every disk.
func besideStart(base string) string { return fmt.Sprintf(".%.60s-", base) }

// writeBeside writes a file beside the target and returns it, on the disk and still held.
func writeBeside(target string, mode fs.FileMode, write func(io.Writer) error) (*os.File, error) {
	sweep(target)
	f, err := createBeside(target)
	if err != nil {
		return nil, err
	}
	err = fill(f, write)
	if err == nil && mode != 0 {
		err = f.Chmod(mode)
	}
	if err == nil {
		err = f.Sync()
	}
	if err != nil {
		return nil, errors.Join(err, f.Close(), os.Remove(f.Name()))
	}
	return f, nil
}

// createBeside makes a new hidden file in the target's folder, with the
// permissions that a new file has there, and holds it.
func createBeside(target string) (*os.File, error) {
	folder, base := filepath.Split(target)
	for range 100 {
		name := fmt.Sprintf("%s%s%08x%s", folder, besideStart(base), rand.Uint32(), halfEnding)
		f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
		switch {
		case errors.Is(err, fs.ErrExist):
			continue
		case err != nil || holds(f):
			return f, err
		}
		_ = f.Close() // swept by another before it could be held
	}
	return nil, &fs.PathError{Op: "create", Path: target, Err: fs.ErrExist}
}

// sweep takes away what was left half-written beside the target by programs that run no
// more. A folder that cannot be listed is left as it is.
func sweep(target string) {
	folder, base := filepath.Split(target)
	entries, _ := os.ReadDir(filepath.Clean(folder))
	for _, e := range entries {
		number, ours := strings.CutPrefix(e.Name(), besideStart(base))
		number, half := strings.CutSuffix(number, halfEnding)
		if _, err := strconv.ParseUint(number, 16, 32); ours && half && err == nil && e.Type().IsRegular() {
			removeAbandoned(folder + e.Name())
		}
	}
}
