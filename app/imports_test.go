package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// layers are the rooms of the house, the lowest first.
var layers = []string{"assets", "geometry", "render", "app"}

const module = "tipline/"

// trial is what tests alone may import: it reads the environment.
const trial = "geometry/trial"

// forbidden returns why a package may not import another, or "". The package is
// given by its folder, the import by its path.
func forbidden(folder, imported string) string {
	room, _, _ := strings.Cut(folder, "/")
	if within, ours := strings.CutPrefix(imported, module); ours {
		return upward(room, folder, within)
	}
	switch {
	case room == "app":
		return outsideOfApp(folder, imported)
	case strings.HasPrefix(imported, "fyne.io/"):
		return "knows of windows"
	case room == "assets" || folder == trial:
		return ""
	case imported == "os" || strings.HasPrefix(imported, "os/") || imported == "time" || imported == "net":
		return "knows of files on disk or of the clock"
	}
	return ""
}

func upward(room, folder, imported string) string {
	other, _, _ := strings.Cut(imported, "/")
	switch {
	case imported == trial:
		return "is for tests alone"
	case room == "assets":
		return "assets import nothing of ours"
	case slices.Index(layers, other) > slices.Index(layers, room):
		return "runs upward"
	case folder == "geometry" && strings.HasPrefix(imported, "geometry/"):
		return "geometry imports none of its subpackages"
	case folder == "geometry/cutter" && imported == "geometry/tooth":
		return "cutter knows no teeth"
	case folder == "geometry/depthing" && imported == "geometry/tooth":
		return "depthing knows no theory of teeth"
	}
	return ""
}

// outsideOfApp keeps the toolkit to the window, and what opens one to main, so that
// everything else builds without a C compiler.
//
// The program talks to no other machine, and press alone runs other programs, those that
// print and show a file.
func outsideOfApp(folder, imported string) string {
	switch {
	case imported == "net" || strings.HasPrefix(imported, "net/") && imported != "net/url":
		return "talks to other machines"
	case imported == "os/exec" && folder != "app/press" && folder != "app/speed":
		return "runs other programs"
	case !strings.HasPrefix(imported, "fyne.io/") || folder == "app":
		return ""
	case folder != "app/window":
		return "knows of windows"
	case imported == "fyne.io/fyne/v2/app":
		return "opens a window outside main"
	}
	return ""
}

func TestImportsRunDownwardOnly(t *testing.T) {
	files := 0
	err := filepath.WalkDir("..", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(name) != ".go" || strings.HasSuffix(name, "_test.go") {
			return err
		}
		files++
		folder := filepath.ToSlash(strings.TrimPrefix(filepath.Dir(name), ".."+string(filepath.Separator)))
		require.Contains(t, layers, strings.Split(folder, "/")[0], "%s stands in no room of the house", name)
		parsed, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, spec := range parsed.Imports {
			imported, err := strconv.Unquote(spec.Path.Value)
			require.NoError(t, err)
			require.Empty(t, forbidden(folder, imported), "%s imports %s", name, imported)
		}
		return nil
	})
	require.NoError(t, err)
	require.Greater(t, files, 50)
}

func TestForbiddenImportsAreSeen(t *testing.T) {
	for _, row := range []struct {
		folder, imported string
		want             string
	}{
		{"geometry", "tipline/render", "runs upward"},
		{"geometry/tooth", "tipline/app/job", "runs upward"},
		{"render/svg", "tipline/app/solve", "runs upward"},
		{"geometry", "tipline/geometry/tooth", "geometry imports none of its subpackages"},
		{"geometry/cutter", "tipline/geometry/tooth", "cutter knows no teeth"},
		{"geometry/depthing", "tipline/geometry/tooth", "depthing knows no theory of teeth"},
		{"geometry/crossing", "tipline/geometry/trial", "is for tests alone"},
		{"assets/words", "tipline/assets/tables", "assets import nothing of ours"},
		{"geometry/crossing", "os", "knows of files on disk or of the clock"},
		{"render/pdf", "time", "knows of files on disk or of the clock"},
		{"render/pdf", "os/exec", "knows of files on disk or of the clock"},
		{"render/screen", "fyne.io/fyne/v2", "knows of windows"},
		{"app/command", "fyne.io/fyne/v2", "knows of windows"},
		{"app/window/desk", "fyne.io/fyne/v2", "knows of windows"},
		{"app/window", "net/http", "talks to other machines"},
		{"app/command", "net", "talks to other machines"},
		{"app/window", "os/exec", "runs other programs"},
		{"app/press", "os/exec", ""},
		{"app/press", "net/url", ""},
		{"app/window", "fyne.io/fyne/v2/app", "opens a window outside main"},
		{"app/window", "fyne.io/fyne/v2/widget", ""},
		{"app", "fyne.io/fyne/v2/app", ""},
		{"app/solve", "tipline/geometry/tooth", ""},
		{"app/job", "os", ""},
		{"geometry/tooth", "tipline/geometry/cutter", ""},
		{"geometry/measure", "tipline/assets/tables", ""},
		{"render/pdf", "io", ""},
	} {
		require.Equal(t, row.want, forbidden(row.folder, row.imported), "%s imports %s", row.folder, row.imported)
	}
}
