package command

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

const tooLarge = "The file is larger than 16 MB, the most a job may be."

func id(i int) string { return fmt.Sprintf(`{"id":"%x"}`, i) }

// hostiles are the files that are tried.
func hostiles() []hostile {
	return append([]hostile{
		{name: "a gigabyte", make: sparse("job.tipline"), refused: tooLarge},
		{name: "a gigabyte of a job", text: wheels(""), make: sparseBehind, refused: tooLarge},
		{name: "a device without end", make: linked("/dev/zero", "job.tipline"), refused: tooLarge},
		{name: "a folder", make: folderThere, refused: "The job cannot be read: is a directory."},
		{name: "a link to itself", make: linked("job.tipline", "job.tipline"), refused: "The job cannot be read: too many levels of symbolic links."},
		{name: "lists 100,000 deep", text: deep("[", "", "]"), refused: tooDeep},
		{name: "groups 100,000 deep", text: deep(`{"wheels":`, "0", "}"), refused: tooDeep},
		{name: "lists 100,000 deep in a job", text: `{"tipline": 1, "x": ` + deep("[", "", "]") + "}", refused: tooDeep},
		{name: "lists that never end", text: strings.Repeat("[", 16_000_000), refused: tooDeep},
		{name: "a text that never ends", text: `{"tipline": 1, "title": "` + strings.Repeat(`\"`, 8_000_000), refused: "before the job is complete."},
		{name: "a million wheels", text: wheels(millions(1_000_000, id)), refused: "more than 250000 values, the most there may be."},
		{name: "a million nameless wheels", text: wheels(millions(1_000_000, func(int) string { return "{}" })), refused: "more than 250000 values, the most there may be."},
		{name: "2,001 wheels", text: wheels(millions(2001, id)), refused: "more than 2000 parts, the most there may be."},
		{name: "one id twice", text: wheels(`{"id": "w"}, {"id": "w"}`), refused: `wheels[1] has the id "w", which wheels[0] has already.`},
		{name: "one id in two lists", text: `{"tipline": 1, "wheels": [{"id": "w"}], "stacks": [{"id": "w"}]}`, refused: `stacks[0] has the id "w", which wheels[0] has already.`},
		{name: "not UTF-8", text: wheels(`{"id": "w` + "\xff" + `"}`), refused: "is not UTF-8 text."},
	}, append(findable(), photographs()...)...)
}

const tooLong = " has more than 2000 items, the most a list may have."

const tooDeep = "Line 1 is nested more than 100 levels deep, which no job is."

// findable are jobs that are read, whose values cannot be built.
func findable() []hostile {
	many := func(n int, of string) string { return "[" + strings.Repeat(of+",", n) + of + "]" }
	return []hostile{
		{name: "10^9 teeth", text: toothed("1000000000", ""), found: "w teeth.count: “1000000000” is far too large a count."},
		{name: "teeth beyond numbers", text: toothed("1e999", ""), found: "w teeth.count: "},
		{name: "10^9 leaves", text: wheels(`{"id": "w", "teeth": {"form": "cycloidal", "count": 60, "module": 1, "leaves": 1000000000}}`), found: "w teeth.leaves: "},
		{name: "10^9 arms", text: toothed("60", `, "crossing": {"arms": 1000000000, "rim": 2, "hub": 14, "arm_at_rim": 2, "arm_at_hub": 3}`), found: "w crossing.arms: "},
		{name: "10^9 screws", text: toothed("60", `, "mount": {"screws": 1000000000, "thread": "BA 10", "screw_circle": 10}`), found: "w mount.screws: "},
		{name: "10^9 holes of an addition", text: toothed("60", `, "additions": [{"kind": "hole", "radius": 12, "angle": 0, "diameter": 1, "repeat": 1000000000}]`), found: "w additions[0].repeat: "},
		{name: "a plate of 10^9 holes", text: toothed("60", `, "dividing": {"ratio": 60, "circles": [1000000000]}`), found: "w dividing.circles"},
		{name: "100,000 circles", text: toothed("61", `, "dividing": {"ratio": 60, "circles": `+many(100_000, "1")+`}`), refused: tooLong},
		{name: "50,000 additions", text: toothed("60", `, "additions": `+many(50_000, `{"kind": "hole"}`)), refused: tooLong},
		{name: "50,000 corners of a bit", text: toothed("60", `, "cutter": {"bit": {"chain": `+many(50_000, `{"x": 1, "y": 1}`)+`}}`), refused: tooLong},
		{name: "a name of 10 MB", text: strings.Replace(toothed("1", ""), `"w"`, `"w", "name": "`+strings.Repeat("wheel ", 1_700_000)+`"`, 1), found: "w teeth.count: "},
		{name: "3 wheels of 2,000 additions", text: wheels(millions(3, func(i int) string {
			return fmt.Sprintf(`{"id": "w%d", "thickness": 2, "bore": 4, "teeth": {"form": "measured", "count": 60, "tip_diameter": 60, "root_diameter": 56}, "additions": %s}`, i, many(1999, `{"kind": "hole"}`))
		})), found: "w1 additions[0].diameter: "},
		{name: "300 wheels upon each other", text: `{"tipline": 1, "wheels": [` + millions(300, id) + `], "stacks": [{"id": "w", "wheels": [` + millions(300, func(i int) string { return fmt.Sprintf(`"%x"`, i) }) + `]}]}`, found: "w wheels"},
		{name: "stacks of each other", text: `{"tipline": 1, "stacks": [{"id": "a", "wheels": ["b", "a"]}, {"id": "b", "wheels": ["a", "b"]}, {"id": "w", "wheels": ["w"]}]}`, found: "a wheels"},
		{name: "a stack of one wheel 100,000 times", text: `{"tipline": 1, "wheels": [{"id": "v"}], "stacks": [{"id": "w", "wheels": ` + many(100_000, `"v"`) + `}]}`, refused: tooLong},
		{name: "arbors of each other", text: `{"tipline": 1, "arbors": [{"id": "a", "parts": ["w", "a"]}, {"id": "w", "parts": ["a", "w"]}]}`, found: "a parts"},
		{name: "pairs of each other", text: `{"tipline": 1, "pairs": [{"id": "w", "wheel": "w", "pinion": "b"}, {"id": "b", "wheel": "w", "pinion": "w"}]}`, found: "w wheel"},
		{name: "a train that runs in a circle", text: circle(3), found: "w to"},
		{name: "300 trains of 300 wheels in a circle", text: circle(300), found: "w to"},
	}
}

// circle is a job of so many wheels, each in mesh with the next and the last with the
// first, and a train from each to the one before it.
func circle(n int) string {
	name := func(i int) string {
		if i %= n; i > 0 {
			return fmt.Sprint("w", i)
		}
		return "v"
	}
	train := func(i int) string {
		if i > 0 {
			return fmt.Sprintf(`{"id": "t%d", "from": %q, "to": %q}`, i, name(i), name(i+n-1))
		}
		return `{"id": "w", "from": "v", "to": "v"}`
	}
	return `{"tipline": 1, "wheels": [` + millions(n, func(i int) string {
		return fmt.Sprintf(`{"id": %q, "teeth": {"form": "measured", "count": %d}}`, name(i), 30+i)
	}) + `], "pairs": [` + millions(n, func(i int) string {
		return fmt.Sprintf(`{"id": "p%d", "wheel": %q, "pinion": %q}`, i, name(i), name(i+1))
	}) + `], "trains": [` + millions(n, train) + `]}`
}

// photographs are jobs with names of photographs that reach for other files, or with files
// that are none.
func photographs() []hostile {
	const none, notBare = `is no file that could hold a picture`, `is no name of a picture beside the job`
	list := []hostile{
		{name: "a pipe", text: photo("bit.png"), make: pipe, found: none},
		{name: "a link to a device", text: photo("bit.png"), make: linked("/dev/zero", "bit.png"), found: none},
		{name: "a link to another folder", text: photo("bit.png"), make: linkedOut, found: none},
		{name: "a link to nothing", text: photo("bit.png"), make: linked("gone", "bit.png"), found: "is not beside the job"},
		{name: "the job itself", text: photo("job.tipline"), found: "must be a PNG or a JPEG"},
		{name: "a picture of a gigabyte", text: photo("bit.png"), make: sparse("bit.png"), found: "is larger than 64 MB"},
		{name: "2^31 pixels squared", text: photo("bit.png"), make: put(header(1<<31-1, 1<<31-1), "bit.png"), found: "is damaged"},
		{name: "100,000 pixels squared", text: photo("bit.png"), make: put(header(100_000, 100_000), "bit.png"), found: "has more than 100 megapixels"},
		{name: "a picture of no width", text: photo("bit.png"), make: put(header(0, 10), "bit.png"), found: "is damaged"},
		{name: "100 megapixels that are not there", text: photo("bit.png"), make: put(header(10_000, 10_000), "bit.png"), found: "is damaged"},
		{name: "a photograph's name of a megabyte", text: photo(strings.Repeat("x", 1<<20)), found: "cannot be read: file name too long"},
	}
	for _, name := range []string{"../../etc/passwd", "/dev/zero", "/etc/passwd", `C:\x`, `..\..\x`, "C:x", "a\x00b", ".", ".."} {
		list = append(list, hostile{name: fmt.Sprintf("the photograph %q", name), text: photo(name), found: notBare})
	}
	return list
}

func pipe(t *testing.T, folder string) {
	require.NoError(t, syscall.Mkfifo(filepath.Join(folder, "bit.png"), 0o600))
}

func folderThere(t *testing.T, folder string) {
	require.NoError(t, os.Mkdir(filepath.Join(folder, "job.tipline"), 0o700))
}

// sparseBehind makes the job that is there a gigabyte long.
func sparseBehind(t *testing.T, folder string) {
	require.NoError(t, os.Truncate(filepath.Join(folder, "job.tipline"), 1<<30))
}

// linkedOut puts a picture into another folder and a link to it beside the job.
func linkedOut(t *testing.T, folder string) {
	elsewhere := t.TempDir()
	put(onePixel(t), "secret.png")(t, elsewhere)
	linked(filepath.Join(elsewhere, "secret.png"), "bit.png")(t, folder)
}
