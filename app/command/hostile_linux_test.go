package command

import (
	"bytes"
	"context"
	"encoding/binary"
	"encoding/json"
	"errors"
	"fmt"
	"hash/crc32"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	printers "tipline/app/printer"
	"tipline/app/window/desk"
	"tipline/assets/words"
	"tipline/geometry/trial"
	"tipline/render/sheet"
)

// hostileJob names the job file that this program, started again by its test, does all it
// can with, in little memory.
const hostileJob = "TIPLINE_TEST_HOSTILE_JOB"

// The bounds for all that can be done with a hostile file. None is a goal of speed: whoever
// takes longer hangs, and who takes more was led to it by the file. What may be written to is
// more than what is, since Go maps ahead of it.
const (
	mostMapped = 2 << 30 // bytes
	mostUsed   = 1 << 30 // bytes
	patience   = time.Minute
)

// tried is a command and what it came to; without words it is the window's opening.
type tried struct {
	Args     []string
	Code     int
	Out, Err string
}

// came is what all of them came to, and how Linux says the program stands after them,
// proc_pid_status(5).
type came struct {
	All    []tried
	Status string
}

// most returns the most memory that the program had, in kilobytes.
func (c came) most(t *testing.T) (kilobytes int64) {
	_, peak, found := strings.Cut(c.Status, "VmHWM:")
	require.True(t, found)
	_, err := fmt.Sscan(peak, &kilobytes)
	require.NoError(t, err)
	return kilobytes
}

// tryAll does all that can be done with a job file, within mostMapped, and tells of it on
// stdout.
func tryAll(name string) {
	if err := syscall.Setrlimit(syscall.RLIMIT_DATA, &syscall.Rlimit{Cur: mostMapped, Max: mostMapped}); err != nil {
		panic(err)
	}
	commands := [][]string{
		{"figures", name},
		{"findings", name},
		{"stock", name},
		{"packet", name, "-out", "out.pdf"},
		{"packet", name, "-out", "shaped.pdf", "-printer", "Workshop"},
		{"template", name, "-wheel", "w", "-kind", "crossing", "-out", "out.svg"},
	}
	if trial.Count(2) == 2 {
		commands = append(commands, [][]string{
			{"figures", name, "-json"},
			{"stock", name, "-csv"},
			{"packet", name, "-out", "out.zip", "-together"},
			{"template", name, "-wheel", "w", "-kind", "depth", "-out", "depth.pdf"},
			{"template", name, "-wheel", "w", "-kind", "grinding", "-out", "out.png"},
		}...)
	}
	var all []tried
	for _, args := range commands {
		var out, err bytes.Buffer
		code := Run(words.English(), args, strings.NewReader(""), &out, &err)
		all = append(all, tried{args, code, out.String(), err.String()})
	}
	opened := tried{}
	if err := desk.New(words.English(), desk.Recent{}).Open(name); err != nil {
		opened.Code, opened.Err = Nothing, "tipline: "+sentence(err, words.English())+"\n"
	}
	status, err := os.ReadFile("/proc/self/status")
	if err == nil {
		err = json.NewEncoder(os.Stdout).Encode(came{append(all, opened), string(status)})
	}
	if err != nil {
		panic(err)
	}
}

// hostile is a file that is no honest job. What lies beside it is made in the same folder.
type hostile struct {
	name    string
	text    string
	make    func(t *testing.T, folder string) // what else there is, or the file itself where there is no text
	refused string                            // the sentence in which every command refuses it
	found   string                            // else what findings says of it
}

func wheels(text string) string { return `{"tipline": 1, "wheels": [` + text + `]}` }

// toothed is a wheel with teeth and whatever else.
func toothed(count, more string) string {
	return wheels(`{"id": "w", "thickness": "2 mm", "bore": "4 mm", "teeth": {"form": "cycloidal", "count": ` + count + `, "module": "1 mm", "leaves": 8}` + more + `}`)
}

// millions are as many groups as fit into a file.
func millions(n int, group func(i int) string) string {
	var b strings.Builder
	for i := range n {
		if i > 0 {
			b.WriteString(",")
		}
		b.WriteString(group(i))
	}
	return b.String()
}

func deep(open, middle, shut string) string {
	const levels = 100_000
	return strings.Repeat(open, levels) + middle + strings.Repeat(shut, levels)
}

func sparse(name string) func(*testing.T, string) {
	return func(t *testing.T, folder string) {
		require.NoError(t, os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o700))
		f, err := os.Create(filepath.Join(folder, name))
		require.NoError(t, err)
		require.NoError(t, errors.Join(f.Truncate(1<<30), f.Close()))
	}
}

func photo(file string) string {
	name, err := json.Marshal(file)
	if err != nil {
		panic(err)
	}
	return fmt.Sprintf(strings.Replace(photographed, `"%s"`, "%s", 1), name)
}

// header is how a PNG of so many pixels begins, of 8-bit colours with opacity.
func header(width, height uint32) string {
	chunk := binary.BigEndian.AppendUint32(binary.BigEndian.AppendUint32([]byte("IHDR"), width), height)
	chunk = append(chunk, 8, 6, 0, 0, 0)
	sum := binary.BigEndian.AppendUint32(nil, crc32.ChecksumIEEE(chunk))
	return "\x89PNG\r\n\x1a\n\x00\x00\x00\x0d" + string(chunk) + string(sum)
}

func linked(to, name string) func(*testing.T, string) {
	return func(t *testing.T, folder string) { require.NoError(t, os.Symlink(to, filepath.Join(folder, name))) }
}

func put(text, name string) func(*testing.T, string) {
	return func(t *testing.T, folder string) {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte(text), 0o644))
	}
}

// Whatever a file holds, all that can be done with it takes bounded memory and time and
// ends in a sentence, never in a fault; nothing is read elsewhere or written unasked.
func TestHostileFiles(t *testing.T) {
	const some = 14 // of them in the plain run, where the whole takes a second or two
	for _, h := range trial.Some(t, 31, some, hostiles()) {
		t.Run(h.name, func(t *testing.T) {
			folder := t.TempDir()
			if h.text != "" {
				put(h.text, "job.tipline")(t, folder)
			}
			if h.make != nil {
				h.make(t, folder)
			}
			before := listed(t, folder)
			for _, r := range triedIn(t, folder, t.TempDir()) {
				h.judge(t, r)
			}
			require.Equal(t, before, listed(t, folder), "files beside the job")
		})
	}
}

// A profile of a printer that is no honest one refuses what asks for the printer.
func TestHostileProfile(t *testing.T) {
	for name, make := range map[string]func(*testing.T, string){
		"a gigabyte": func(t *testing.T, file string) { sparse("")(t, file) },
		"deep":       func(t *testing.T, file string) { put(deep("[", "", "]"), "")(t, file) },
		"enormous": func(t *testing.T, file string) {
			put(`{"printer": "Workshop", "paper": "a4", "x": 1e300, "y": -1}`, "")(t, file)
		},
	} {
		t.Run(name, func(t *testing.T) {
			folder, config := t.TempDir(), t.TempDir()
			put(smallJob, "job.tipline")(t, folder)
			f := printers.Folder{Path: filepath.Join(config, "tipline", "printers")}
			require.NoError(t, f.Save(sheet.Profile{Name: "Workshop", Paper: "a4", X: 0.99, Y: 1}))
			kept, err := filepath.Glob(filepath.Join(f.Path, "*.json"))
			require.NoError(t, err)
			require.Len(t, kept, 1)
			make(t, kept[0])
			for _, r := range triedIn(t, folder, config) {
				if slices.Contains(r.Args, "-printer") {
					require.Equal(t, Nothing, r.Code)
					require.Contains(t, r.Err, "workshop")
				}
			}
		})
	}
}

// listed returns the files of a folder, and of those that lie in it, by how they are.
func listed(t *testing.T, folder string) (list []string) {
	require.NoError(t, filepath.WalkDir(folder, func(name string, e os.DirEntry, err error) error {
		if err != nil {
			return err
		}
		info, err := e.Info()
		list = append(list, fmt.Sprint(name, info.Mode(), info.Size(), info.ModTime()))
		return err
	}))
	return list
}

// triedIn has a program of its own do all that can be done with the job in a folder, in an
// empty folder, and returns what that came to: each in one sentence, or done with its file
// written. What the program takes is bounded.
func triedIn(t *testing.T, folder, config string) []tried {
	ctx, stop := context.WithTimeout(t.Context(), patience)
	defer stop()
	again := exec.CommandContext(ctx, os.Args[0])
	again.Dir = t.TempDir()
	again.Env = append(os.Environ(), hostileJob+"="+filepath.Join(folder, "job.tipline"), "XDG_CONFIG_HOME="+config)
	var said bytes.Buffer
	again.Stderr = &said
	out, err := again.Output()
	require.NoError(t, err, "%s", said.String())
	require.Empty(t, said.String())
	var c came
	require.NoError(t, json.Unmarshal(out, &c))
	require.Less(t, c.most(t), int64(mostUsed>>10), "kilobytes of memory")
	written := 0
	for _, r := range c.All {
		require.NotRegexp(t, `panic|goroutine|runtime error|\(\w+/\w+\.go:`, r.Out+r.Err, "%v", r.Args)
		if r.Code == Nothing {
			require.Regexp(t, "^tipline: [^\n]+\\.\n$", r.Err, "%v", r.Args)
			require.Empty(t, r.Out, "%v", r.Args)
			continue
		}
		require.Empty(t, r.Err, "%v", r.Args)
		if i := slices.Index(r.Args, "-out"); i > 0 {
			require.FileExists(t, filepath.Join(again.Dir, r.Args[i+1]))
			written++
		}
	}
	there, err := os.ReadDir(again.Dir)
	require.NoError(t, err)
	require.Len(t, there, written, "files that were written")
	return c.All
}

// judge holds a command to what a job comes to.
func (h hostile) judge(t *testing.T, r tried) {
	command := strings.Join(r.Args, " ")
	switch {
	case h.refused != "":
		require.Equal(t, Nothing, r.Code, command)
		require.Contains(t, r.Err, h.refused, command)
	case len(r.Args) == 0, r.Args[0] == "figures", r.Args[0] == "stock":
		require.Equal(t, Done, r.Code, command)
	case r.Args[0] == "findings":
		require.Equal(t, Faulty, r.Code)
		require.Contains(t, r.Out, h.found)
	}
}
