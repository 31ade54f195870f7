package keep

import (
	"bufio"
	"fmt"
	"io"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// writing names the file that this program, started again by its test, writes until it
// is killed.
const writing = "TIPLINE_TEST_WRITING"

func TestMain(m *testing.M) {
	if name := os.Getenv(writing); name != "" {
		from, upTo := 1, math.MaxInt
		if len(os.Args) == 3 {
			from, upTo = number(os.Args[1]), number(os.Args[2])
		}
		writeOnAndOn(name, from, upTo)
		os.Exit(0)
	}
	os.Exit(m.Run())
}

func number(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		panic(err)
	}
	return n
}

// lines is how many lines a version has: some hundred kilobytes, which no system writes
// at once.
const lines = 20000

func version(n int) string { return strings.Repeat(fmt.Sprintf("version %08d\n", n), lines) }

// writeOnAndOn writes version after version, and says which are on the disk.
func writeOnAndOn(name string, from, upTo int) {
	for n := from; n < upTo; n++ {
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
		require.GreaterOrEqual(t, wholeVersion(t, name), said, "case %d: what was said to be written is lost", i)
		beside, err := os.ReadDir(filepath.Dir(name))
		require.NoError(t, err)
		require.LessOrEqual(t, len(beside), 2, "case %d: one half-written file at most", i)
		require.NoError(t, Write(name, saying("new")))
		requireOnly(t, name, "new")
	}
}

// wholeVersion returns the version that a file holds, which must be whole.
func wholeVersion(t *testing.T, name string) (n int) {
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	_, err = fmt.Sscanf(string(data[:min(len(data), 20)]), "version %d", &n)
	require.NoError(t, err)
	require.True(t, string(data) == version(n), "version %d is not whole", n)
	return n
}

// Two programs write one file, over and over: whoever reads it meanwhile has a whole
// version of one or the other, and neither takes away what the other is writing.
func TestTwoWriteOneFile(t *testing.T) {
	name := filepath.Join(t.TempDir(), "job")
	require.NoError(t, Write(name, saying(version(0))))
	const many, apart = 15, 1000
	var both sync.WaitGroup
	var said [2]string
	for i := range said {
		from := 1 + i*apart
		again := exec.Command(os.Args[0], strconv.Itoa(from), strconv.Itoa(from+many))
		again.Env = append(os.Environ(), writing+"="+name)
		both.Go(func() {
			out, err := again.Output()
			said[i] = fmt.Sprint(string(out), err)
		})
	}
	done := make(chan struct{})
	go func() { both.Wait(); close(done) }()
	for read := false; !read; {
		select {
		case <-done:
			read = true
		default:
		}
		wholeVersion(t, name)
	}
	for i := range said {
		var want strings.Builder
		for n := range many {
			fmt.Fprintln(&want, 1+i*apart+n)
		}
		require.Equal(t, want.String()+"<nil>", said[i])
	}
	require.Contains(t, []int{many, apart + many}, wholeVersion(t, name), "who wrote last wins")
	requireOnly(t, name, version(wholeVersion(t, name)))
}

// What looks like a half-written file but is none, or is another file's, stays.
func TestWhatIsNotSwept(t *testing.T) {
	folder := t.TempDir()
	name := filepath.Join(folder, "job")
	for _, other := range []string{".job-0123abcd", ".job-0123abcd.half.bak", ".job-notes.half", ".jobs-0123abcd.half", "job-0123abcd.half"} {
		require.NoError(t, os.WriteFile(filepath.Join(folder, other), nil, 0o644))
	}
	require.NoError(t, os.WriteFile(filepath.Join(folder, ".job-0123abcd.half"), nil, 0o644))
	held, err := createBeside(name)
	require.NoError(t, err)
	require.NoError(t, Write(name, saying("new")))
	require.FileExists(t, held.Name(), "another writes it")
	require.NoFileExists(t, filepath.Join(folder, ".job-0123abcd.half"))
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	require.Len(t, entries, 5+2)
	require.NoError(t, held.Close())
	require.NoError(t, Write(name, saying("new")))
	require.NoFileExists(t, held.Name())
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
