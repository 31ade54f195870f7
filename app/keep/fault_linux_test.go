package keep

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
)

// nobody is the user and the group that have no file of their own.
const nobody = 65534

// powerless does something as one whom the permissions of files bind: this thread leaves
// the superuser's files to it where that is who runs the tests.
func powerless(t *testing.T, do func()) {
	if os.Geteuid() != 0 {
		do()
		return
	}
	runtime.LockOSThread()
	require.NoError(t, syscall.Setfsuid(nobody))
	defer func() {
		require.NoError(t, syscall.Setfsuid(0))
		runtime.UnlockOSThread()
	}()
	do()
}

// folderOf returns a folder that powerless owns, with a file in it.
func folderOf(t *testing.T) (folder, file string) {
	folder = t.TempDir()
	require.NoError(t, os.Chmod(filepath.Dir(folder), 0o755))
	file = filepath.Join(folder, "job.tipline")
	require.NoError(t, os.WriteFile(file, []byte("old"), 0o644))
	if os.Geteuid() == 0 {
		require.NoError(t, os.Chown(file, nobody, nobody))
		require.NoError(t, os.Chown(folder, nobody, nobody))
	}
	return folder, file
}

// What the permissions of a folder forbid is refused with a reason in a few words, and
// the file is as it was.
func TestFoldersThatMayNotBeWritten(t *testing.T) {
	for _, row := range []struct {
		name string
		mode os.FileMode
		lose bool // the permission, while the file is being written
	}{{"read-only", 0o555, false}, {"locked", 0, false}, {"lost while it is written", 0o555, true}} {
		t.Run(row.name, func(t *testing.T) {
			folder, file := folderOf(t)
			take := func() { require.NoError(t, os.Chmod(folder, row.mode)) }
			defer func() { require.NoError(t, os.Chmod(folder, 0o755)) }()
			var err error
			powerless(t, func() {
				if !row.lose {
					take()
				}
				err = Write(file, func(w io.Writer) error {
					if row.lose {
						take()
					}
					return saying("new")(w)
				})
			})
			require.ErrorIs(t, err, fs.ErrPermission)
			var path *fs.PathError
			require.ErrorAs(t, err, &path)
			require.Equal(t, "permission denied", path.Err.Error())
			require.NoError(t, os.Chmod(folder, 0o755))
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			require.Equal(t, "old", string(data))
		})
	}
}

// A folder that may be written but not listed takes the file.
func TestAFolderThatMayNotBeListed(t *testing.T) {
	folder, file := folderOf(t)
	powerless(t, func() {
		require.NoError(t, os.Chmod(folder, 0o300))
		require.NoError(t, Write(file, saying("new")))
	})
	require.NoError(t, os.Chmod(folder, 0o755))
	requireOnly(t, file, "new")
}

// Another's file in a folder for all, as the system's for passing files is, may be
// written by nobody else; the reason names the file and not what was written beside it.
func TestAnotherOnesFileInAFolderForAll(t *testing.T) {
	if os.Geteuid() != 0 { // two owners can be had by root alone; the reason can be had by all
		err := ofFile("job", &os.LinkError{Op: "rename", Old: ".job-1", New: "job", Err: syscall.EPERM})
		require.EqualError(t, err, "write job: operation not permitted")
		return
	}
	folder, file := folderOf(t)
	require.NoError(t, os.Chown(file, 0, 0))
	require.NoError(t, os.Chmod(file, 0o666))
	require.NoError(t, os.Chown(folder, 0, 0))
	require.NoError(t, os.Chmod(folder, 0o777|os.ModeSticky))
	var err error
	powerless(t, func() { err = Write(file, saying("new")) })
	require.EqualError(t, err, "write "+file+": operation not permitted")
	requireOnly(t, file, "old")
}

// The file, or its folder, is taken away while another is written in its place.
func TestWhatVanishesMeanwhile(t *testing.T) {
	for _, row := range []struct {
		name string
		take func(folder, file string) error
		kept bool
	}{
		{"the file", func(_, file string) error { return os.Remove(file) }, true},
		{"the folder", func(folder, _ string) error { return os.RemoveAll(folder) }, false},
		{"the folder, moved", func(folder, _ string) error { return os.Rename(folder, folder+"-moved") }, false},
	} {
		t.Run(row.name, func(t *testing.T) {
			folder := filepath.Join(t.TempDir(), "jobs")
			require.NoError(t, os.Mkdir(folder, 0o755))
			file := filepath.Join(folder, "job")
			require.NoError(t, os.WriteFile(file, []byte("old"), 0o644))
			err := Write(file, func(w io.Writer) error {
				require.NoError(t, row.take(folder, file))
				return saying("new")(w)
			})
			if row.kept {
				require.NoError(t, err)
				requireOnly(t, file, "new")
				return
			}
			require.ErrorIs(t, err, fs.ErrNotExist)
			var path *fs.PathError
			require.ErrorAs(t, err, &path)
			require.Equal(t, "no such file or directory", path.Err.Error())
		})
	}
}

// A folder has meanwhile taken the file's name.
func TestAFolderInTheFilesPlace(t *testing.T) {
	file := filepath.Join(t.TempDir(), "job")
	err := Write(file, func(w io.Writer) error {
		require.NoError(t, os.MkdirAll(filepath.Join(file, "in it"), 0o755))
		return saying("new")(w)
	})
	var path *fs.PathError
	require.ErrorAs(t, err, &path)
	require.Equal(t, file, path.Path)
	require.DirExists(t, filepath.Join(file, "in it"))
	entries, err := os.ReadDir(filepath.Dir(file))
	require.NoError(t, err)
	require.Len(t, entries, 1)
}

// A link to what is not there yet, as to a stick that is not plugged in, stays a link.
func TestALinkToNothing(t *testing.T) {
	folder := t.TempDir()
	link := filepath.Join(folder, "link")
	require.NoError(t, os.Symlink("stick/job", link))
	require.ErrorIs(t, Write(link, saying("new")), fs.ErrNotExist)
	require.NoError(t, os.Mkdir(filepath.Join(folder, "stick"), 0o755))
	require.NoError(t, Write(link, saying("new")))
	requireOnly(t, filepath.Join(folder, "stick", "job"), "new")
	to, err := os.Readlink(link)
	require.NoError(t, err)
	require.Equal(t, "stick/job", to)

	round := filepath.Join(folder, "round")
	require.NoError(t, os.Symlink("round", round))
	require.Error(t, Write(round, saying("new")))
}

// A disk, or what the shell leaves of it, that is full half-way through.
func TestAFullDisk(t *testing.T) {
	file := filepath.Join(t.TempDir(), "job")
	require.NoError(t, os.WriteFile(file, []byte("old"), 0o644))
	again := exec.Command("sh", "-c", `ulimit -f 16 && exec "$0"`, os.Args[0])
	again.Env = append(os.Environ(), writing+"="+file)
	said, err := again.Output()
	require.NoError(t, err)
	require.True(t, strings.HasSuffix(string(said), "file too large\n"), "%s", said)
	require.NotContains(t, string(said), "1\n", "nothing was written")
	requireOnly(t, file, "old")
	err = Write("/dev/full", saying("new"))
	require.ErrorIs(t, err, syscall.ENOSPC)
}

// What is half-written is told by whether a program still holds it, whatever the clock says
// or said.
func TestLeftoversOfAnyTime(t *testing.T) {
	name := filepath.Join(t.TempDir(), "job")
	for _, when := range []time.Time{time.Unix(0, 0), time.Date(2201, 2, 3, 4, 5, 6, 0, time.UTC)} {
		left := filepath.Join(filepath.Dir(name), ".job-0123abcd.half")
		require.NoError(t, os.WriteFile(left, nil, 0o644))
		held, err := createBeside(name)
		require.NoError(t, err)
		for _, half := range []string{left, held.Name()} {
			require.NoError(t, os.Chtimes(half, when, when))
		}
		require.NoError(t, os.WriteFile(name, []byte("old"), 0o644))
		require.NoError(t, os.Chtimes(name, when, when))
		require.NoError(t, Write(name, saying("new")))
		require.NoFileExists(t, left)
		require.FileExists(t, held.Name())
		require.NoError(t, errors.Join(held.Close(), os.Remove(held.Name())))
		requireOnly(t, name, "new")
	}
}
