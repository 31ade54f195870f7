//go:build unix

package command

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"os"
	"os/exec"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry/fault"
)

// stoppedWhile names what this program, started again by its test, is asked to do until a
// signal comes: its words, a line each.
const stoppedWhile = "TIPLINE_TEST_STOPPED_WHILE"

func TestMain(m *testing.M) {
	if name := os.Getenv(hostileJob); name != "" {
		tryAll(name)
		os.Exit(0)
	}
	if args := os.Getenv(stoppedWhile); args != "" {
		c := &call{words: words.English(), in: os.Stdin, terminal: newCue(os.Stdout)}
		os.Exit(c.run(strings.Split(args, "\n"), io.Discard, os.Stderr))
	}
	os.Exit(m.Run())
}

// cue passes on what is told of the work; after the first it waits for the signal.
type cue struct {
	to     io.Writer
	signal chan os.Signal
	told   bool
}

func newCue(to io.Writer) *cue {
	c := &cue{to: to, signal: make(chan os.Signal, 1)}
	signal.Notify(c.signal, os.Interrupt, syscall.SIGTERM)
	return c
}

func (c *cue) Write(p []byte) (int, error) {
	n, err := c.to.Write(p)
	if !c.told {
		c.told = true
		<-c.signal
	}
	return n, err
}

// A packet that is stopped by the system leaves the old file whole and no other beside it.
func TestStoppedBySignal(t *testing.T) {
	for _, row := range []struct {
		signal os.Signal
		name   string
	}{{os.Interrupt, "out.pdf"}, {syscall.SIGTERM, "out.pdf"}, {syscall.SIGTERM, "out.zip"}} {
		t.Run(fmt.Sprint(row.signal, " ", row.name), func(t *testing.T) {
			out := filepath.Join(t.TempDir(), row.name)
			require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
			again := exec.Command(os.Args[0])
			again.Env = append(os.Environ(), stoppedWhile+"="+strings.Join([]string{"packet", sampleJob(t), "-out", out, "-copies", "5"}, "\n"))
			var said bytes.Buffer
			again.Stderr = &said
			told, err := again.StdoutPipe()
			require.NoError(t, err)
			require.NoError(t, again.Start())
			first := make([]byte, len("\rSheet 1 of "))
			_, err = io.ReadFull(told, first)
			require.NoError(t, err)
			require.Equal(t, "\rSheet 1 of ", string(first))
			require.NoError(t, again.Process.Signal(row.signal))
			_, err = io.ReadAll(told)
			require.NoError(t, err)
			var ended *exec.ExitError
			require.ErrorAs(t, again.Wait(), &ended)
			require.Equal(t, Nothing, ended.ExitCode())
			require.Equal(t, "tipline: Stopped. "+out+" is as it was before.\n", said.String())
			untouched(t, out)
		})
	}
}

// A command that is stopped while it still reads the job, which comes in and does not end,
// says so too and has written nothing.
func TestStoppedWhileReading(t *testing.T) {
	for _, args := range [][]string{{"packet", "-"}, {"template", "-", "-wheel", "w", "-kind", "crossing"}} {
		for _, asked := range []os.Signal{os.Interrupt, syscall.SIGTERM} {
			out := filepath.Join(t.TempDir(), "out.pdf")
			require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
			again := exec.Command(os.Args[0])
			again.Env = append(os.Environ(), stoppedWhile+"="+strings.Join(append(args, "-out", out), "\n"))
			var said bytes.Buffer
			again.Stderr = &said
			comes, err := again.StdinPipe()
			require.NoError(t, err)
			require.NoError(t, again.Start())
			_, err = io.WriteString(comes, strings.Repeat(" ", 1<<20)) // more than any pipe holds, so it is being read
			require.NoError(t, err)
			require.NoError(t, again.Process.Signal(asked))
			var ended *exec.ExitError
			require.ErrorAs(t, again.Wait(), &ended)
			require.Equal(t, Nothing, ended.ExitCode())
			require.Equal(t, "tipline: Stopped. "+out+" is as it was before.\n", said.String())
			untouched(t, out)
		}
	}
}

// What does not look up when it is asked to stop is not waited for; its fault is raised
// where it was asked for.
func TestWhatDoesNotStopIsGivenUp(t *testing.T) {
	ctx, stop := context.WithCancel(t.Context())
	never := make(chan int)
	_, err := unlessStopped(ctx, func() (int, error) {
		stop()
		return <-never, nil
	})
	require.ErrorIs(t, err, context.Canceled)
	f := fault.Caught(func() {
		_, _ = unlessStopped(t.Context(), func() (int, error) { panic("at once") })
	})
	require.Equal(t, "at once", f.What)
	n, err := unlessStopped(t.Context(), func() (int, error) { return 7, nil })
	require.NoError(t, err)
	require.Equal(t, 7, n)
}

// What is stopped while the file is being written leaves the old one whole too.
func TestStoppedWhileWriting(t *testing.T) {
	out := filepath.Join(t.TempDir(), "out.pdf")
	require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
	c := &call{words: words.English()}
	code, err := untilStopped(out, func(ctx context.Context) (int, error) {
		ctx, stop := context.WithCancel(ctx)
		return Done, c.write(ctx, out, func(w io.Writer) error {
			stop()
			_, err := io.WriteString(w, "new")
			return err
		})
	})
	require.Equal(t, Nothing, code)
	require.EqualError(t, err, "Stopped. "+out+" is as it was before.")
	untouched(t, out)
}
