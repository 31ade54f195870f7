package keep

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// writing names the file that this program, started again by its test, writes until it
// is killed.
const writing = "TIPLINE_TEST_WRITING"

func TestMain(m *testing.M) {
	if name := os.Getenv(writing); name != "" {
		writeOnAndOn(name)
		os.Exit(0)
	}
	os.Exit(m.Run())
}

// lines is how many lines a version has: some hundred kilobytes, which no system writes
// at once.
const lines = 20000

func version(n int) string { return strings.Repeat(fmt.Sprintf("version %08d\n", n), lines) }

// writeOnAndOn writes version after version, and says which are on the disk.
func writeOnAndOn(name string) {
	for n := 1; ; n++ {
		if err := Write(name, func(w io.Writer) error { _, err := io.WriteString(w, version(n)); return err }); err != nil {
			fmt.Println(err)
			return
		}
		fmt.Println(n)
	}
}

// A program that is killed while it writes leaves what was written last or the next,
// whole. In the full run it is killed a thousand times.
func TestKilledWhileWriting(t *testing.T) {
	random := trial.Rand(t, 21)
	for i := range trial.Count(1000) {
		name := filepath.Join(t.TempDir(), "job")
		upTo := 1 + random.IntN(3)
		said := killedAfter(t, name, upTo)
		data, err := os.ReadFile(name)
		require.NoError(t, err)
		var n int
		_, err = fmt.Sscanf(string(data[:min(len(data), 20)]), "version %d", &n)
		require.NoError(t, err, "case %d", i)
		require.GreaterOrEqual(t, n, said, "case %d: what was said to be written is lost", i)
		require.True(t, string(data) == version(n), "case %d: version %d is not whole", i, n)
		beside, err := os.ReadDir(filepath.Dir(name))
		require.NoError(t, err)
		require.LessOrEqual(t, len(beside), 2, "case %d: one half-written file at most", i)
	}
}

// killedAfter has a program write and kills it when it has said so many times that a
// version is on the disk, as it goes on to the next; it returns the version said last.
func killedAfter(t *testing.T, name string, times int) (said int) {
	again := exec.Command(os.Args[0])
	again.Env = append(os.Environ(), writing+"="+name)
	out, err := again.StdoutPipe()
	require.NoError(t, err)
	require.NoError(t, again.Start())
	heard := bufio.NewScanner(out)
	for range times {
		require.True(t, heard.Scan())
		_, err := fmt.Sscan(heard.Text(), &said)
		require.NoError(t, err, heard.Text())
	}
	require.NoError(t, again.Process.Kill())
	require.Error(t, again.Wait(), "it was killed")
	return said
}
