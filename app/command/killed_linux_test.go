package command

import (
	"encoding/binary"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// watched tells of all that happens in a folder, as inotify(7) has it.
type watched struct{ file *os.File }

func watch(t *testing.T, folder string) watched {
	fd, err := syscall.InotifyInit1(syscall.IN_CLOEXEC | syscall.IN_NONBLOCK)
	require.NoError(t, err)
	_, err = syscall.InotifyAddWatch(fd, folder, syscall.IN_CREATE|syscall.IN_MODIFY|syscall.IN_ATTRIB|syscall.IN_MOVED_TO)
	require.NoError(t, err)
	return watched{os.NewFile(uintptr(fd), folder)}
}

// happened waits until something more has happened and returns how much.
func (w watched) happened() (n int, err error) {
	heard := make([]byte, syscall.SizeofInotifyEvent+syscall.PathMax)
	size, err := w.file.Read(heard)
	for at := 0; at < size; n++ {
		at += syscall.SizeofInotifyEvent + int(binary.NativeEndian.Uint32(heard[at+12:])) // the name's length
	}
	return n, err
}

// smallJob is a job that is soon printed.
const smallJob = `{"tipline": 1, "wheels": [{"id": "w", "thickness": "1.5 mm", "bore": "5 mm",
	"teeth": {"form": "measured", "count": 60, "tip_diameter": "50 mm", "root_diameter": "46 mm"},
	"crossing": {"arms": 5, "rim": "2 mm", "hub": "14 mm", "arm_at_rim": "2 mm", "arm_at_hub": "3 mm",
	             "fillet_at_rim": "0.5 mm", "fillet_at_hub": "0.5 mm"}}]}`

// A command that is killed, as by a power cut, at some moment between making its file and
// having it in place leaves the old one or the new one, whole; what it left beside it is
// swept by the next. In the full run a thousand are killed.
func TestKilledWhileExporting(t *testing.T) {
	job := jobFile(t, smallJob)
	random := trial.Rand(t, 23)
	exports := [][]string{
		{"packet", job, "-as", "pdf"},
		{"packet", job, "-as", "zip"},
		{"template", job, "-wheel", "w", "-kind", "crossing", "-as", "svg"},
	}
	var whole []string
	for _, args := range exports {
		out := filepath.Join(t.TempDir(), "out")
		require.Equal(t, Done, run(append(args, "-out", out)...).code)
		whole = append(whole, read(t, out))
	}
	var old, fresh int
	for i := range trial.Count(1000) {
		which := random.IntN(len(exports))
		out := filepath.Join(t.TempDir(), "out")
		require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
		args := append(exports[which][:len(exports[which]):len(exports[which])], "-out", out)
		killedExporting(t, args, filepath.Dir(out), 1+random.IntN(4))
		switch left := read(t, out); left {
		case "old":
			old++
		default:
			fresh++
			require.True(t, left == whole[which], "case %d: %v is not whole", i, args)
		}
		require.Equal(t, Done, run(args...).code)
		require.True(t, read(t, out) == whole[which], "case %d: %v", i, args)
		left, err := os.ReadDir(filepath.Dir(out))
		require.NoError(t, err)
		require.Len(t, left, 1, "case %d: %v", i, args)
	}
	t.Logf("killed with the old file in place: %d, with the new: %d", old, fresh)
}

// killedExporting has a program do what the words ask and kills it when so much has
// happened in the folder, wherever it has come to since.
func killedExporting(t *testing.T, args []string, folder string, happenings int) {
	seen := watch(t, folder)
	again := exec.Command(os.Args[0])
	again.Env = append(os.Environ(), stoppedWhile+"="+strings.Join(args, "\n"))
	require.NoError(t, again.Start())
	for happenings > 0 {
		n, err := seen.happened()
		require.NoError(t, err)
		happenings -= n
	}
	require.NoError(t, again.Process.Kill())
	_ = again.Wait() // killed, or done as it was killed
	require.NoError(t, seen.file.Close())
}
