// Package keep writes files so that what was there before stays whole until the
// new file is complete and on the disk.
package keep

import (
	"bufio"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// ErrProtected is returned for a file that its owner has marked read-only.
var ErrProtected = errors.New("the file is write-protected")

// ErrFolder is returned where the name given is a folder's.
var ErrFolder = errors.New("there is a folder of that name")

// Text writes a text into the named file, and makes the folder it lies in where there is
// none.
func Text(name, text string) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	return Write(name, func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return err
	})
}

// Write puts what write writes into the named file: beside it first, synced to
// the disk, then renamed over it. What a program that was killed left half-written
// beside it is swept away. A file that was there keeps its permissions, and
// a link still points at what it pointed at. On any error the old file, or its
// absence, is left as it was. A device or pipe is written to directly.
func Write(name string, write func(io.Writer) error) error {
	target, mode, plain, err := look(name)
	if err != nil {
		return err
	}
	if !plain {
		return writeDirect(target, write)
	}
	beside, err := writeBeside(target, mode, write)
	if err != nil {
		return err
	}
	if err := putInPlace(beside, target); err != nil {
		return errors.Join(ofFile(name, err), os.Remove(beside.Name()))
	}
	syncFolder(filepath.Dir(target))
	return nil
}

// ofFile says of the named file why another could not be put in its place.
func ofFile(name string, err error) error {
	var renaming *os.LinkError
	if errors.As(err, &renaming) {
		return &fs.PathError{Op: "write", Path: name, Err: renaming.Err}
	}
	return err
}

// look follows links and returns what stands at the end of them, its
// permissions (0 when nothing is there yet), and whether it may be renamed over.
func look(name string) (target string, mode fs.FileMode, plain bool, err error) {
	target = end(name)
	info, err := os.Stat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return target, 0, true, nil
	case err != nil:
		return "", 0, false, err
	case info.IsDir():
		return "", 0, false, &fs.PathError{Op: "write", Path: name, Err: ErrFolder}
	case info.Mode().IsRegular() && info.Mode().Perm()&0o222 == 0:
		return "", 0, false, &fs.PathError{Op: "write", Path: name, Err: ErrProtected}
	}
	return target, info.Mode().Perm(), info.Mode().IsRegular(), nil
}

// mostLinks is how many links in a row are followed, as many as Linux follows
// (path_resolution(7)).
const mostLinks = 40

// end follows links to what they point at, be it there or not.
func end(name string) string {
	if real, err := filepath.EvalSymlinks(name); err == nil {
		return real
	}
	for range mostLinks {
		to, err := os.Readlink(name)
		if err != nil {
			break
		}
		if !filepath.IsAbs(to) {
			to = filepath.Join(filepath.Dir(name), to)
		}
		name = to
	}
	return name
}

func writeDirect(name string, write func(io.Writer) error) error {
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return errors.Join(fill(f, write), f.Close())
}

// writeBeside writes a new file in the target's folder and returns its name.
func fill(f *os.File, write func(io.Writer) error) error {
	buffered := bufio.NewWriter(f)
	if err := write(buffered); err != nil {
		return err
	}
	return buffered.Flush()
}

// syncFolder makes the renaming itself last through a power cut, where that can be had:
// Windows has no way to sync a folder, nor have some disks on a network, and a folder
// that may be written need not be readable. The file stands all the same.
func syncFolder(folder string) {
	if f, err := os.Open(folder); err == nil {
		_ = f.Sync()
		_ = f.Close()
	}
}
