package command

import (
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Every command writes where it is asked to and, of the user's folders, only a measured
// printer's profile; the present folder and the job's may be read-only.
func TestFilesAreWrittenOnlyWhereAsked(t *testing.T) {
	jobs, present, home := t.TempDir(), t.TempDir(), t.TempDir()
	job := filepath.Join(jobs, "job.tipline")
	require.NoError(t, os.WriteFile(job, []byte(smallJob), 0o444))
	for _, folder := range []string{jobs, present} {
		require.NoError(t, os.Chmod(folder, 0o555))
		t.Cleanup(func() { _ = os.Chmod(folder, 0o755) })
	}
	before := listed(t, jobs)
	for _, row := range []struct {
		args  string // OUT stands for a name in an empty folder
		wrote []string
	}{
		{"figures JOB", nil},
		{"figures JOB -json", nil},
		{"findings JOB", nil},
		{"stock JOB -csv", nil},
		{"packet JOB -out OUT/p.pdf", []string{"p.pdf"}},
		{"packet JOB -as zip -out OUT/p.zip", []string{"p.zip"}},
		{"template JOB -wheel w -kind crossing -out OUT/t.svg", []string{"t.svg"}},
		{"printer", nil},
		{"printer Shed -out OUT/s.pdf", []string{"s.pdf"}},
		{"sample", nil},
		{"sample signal-cabin", nil},
		{"guide", nil},
		{"version", nil},
		{"help", nil},
		{"packet JOB", nil},
		{"packet JOB -out OUT/none/p.pdf", nil},
	} {
		out := t.TempDir()
		words := strings.NewReplacer("JOB", job, "OUT", out).Replace(row.args)
		asked(t, present, home, strings.Fields(words))
		require.Equal(t, row.wrote, files(t, out), row.args)
		require.Empty(t, files(t, home), row.args)
		require.Empty(t, files(t, present), row.args)
		require.Equal(t, before, listed(t, jobs), row.args)
	}
	asked(t, present, home, strings.Fields("printer Shed -across 99.8mm -along 100.1mm"))
	kept := files(t, home)
	require.Len(t, kept, 1)
	require.Regexp(t, `^config/tipline/printers/shed-a4-[0-9a-f]+\.json$`, kept[0])
}

// asked has a program of its own do what the words ask, at home in one folder and started
// in another.
func asked(t *testing.T, present, home string, args []string) {
	again := exec.Command(os.Args[0])
	again.Dir = present
	again.Env = append(os.Environ(), stoppedWhile+"="+strings.Join(args, "\n"), "HOME="+home, "TMPDIR="+home)
	for _, kind := range []string{"CONFIG", "STATE", "DATA", "CACHE"} {
		again.Env = append(again.Env, "XDG_"+kind+"_HOME="+filepath.Join(home, strings.ToLower(kind)))
	}
	again.Env = append(again.Env, "XDG_RUNTIME_DIR="+home)
	again.Stdin = strings.NewReader("")
	if err := again.Run(); err != nil {
		var ended *exec.ExitError
		require.ErrorAs(t, err, &ended)
	}
}

// files returns the files below a folder by their names in it.
func files(t *testing.T, folder string) (names []string) {
	require.NoError(t, filepath.WalkDir(folder, func(name string, e fs.DirEntry, err error) error {
		if err == nil && !e.IsDir() {
			name, err = filepath.Rel(folder, name)
			names = append(names, filepath.ToSlash(name))
		}
		return err
	}))
	return names
}
