package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The most lines of a file and of a function: past them there is a piece to be named.
const (
	mostOfFile     = 300
	mostOfFunction = 40
)

// Tests are longer where a table is, and each of these says why: a file by its path, a
// function by its path and name.
var longer = map[string]string{
	"app/packet/packet_test.go":        "one packet's order of sheets, row by row",
	"app/solve/tooling_test.go":        "tables of bits and of divisions",
	"app/window/desk/desk_test.go":     "a job's whole way across the desk",
	"app/window/keyspage.go keyGroups": "the table of all keys",
	"app/window/work_test.go":          "a job's whole way through the window",
	"render/template/scribing_test.go": "every line of a scribing view against its own reckoning",
}

func TestFilesAndFunctionsAreShort(t *testing.T) {
	found := map[string]bool{}
	err := filepath.WalkDir("..", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || path.Ext(name) != ".go" {
			return err
		}
		files := token.NewFileSet()
		parsed, err := parser.ParseFile(files, name, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		name = strings.TrimPrefix(filepath.ToSlash(name), "../")
		short := func(what string, lines, most int) {
			if _, known := longer[what]; known {
				found[what] = lines > most
				return
			}
			if lines > most {
				t.Errorf("%s has %d lines, %d at most", what, lines, most)
			}
		}
		short(name, files.File(parsed.Pos()).LineCount()-1, mostOfFile)
		for _, d := range parsed.Decls {
			f, ok := d.(*ast.FuncDecl)
			if !ok || strings.HasSuffix(name, "_test.go") {
				continue // a test is its table
			}
			short(name+" "+f.Name.Name, files.Position(f.End()).Line-files.Position(f.Pos()).Line+1, mostOfFunction)
		}
		return nil
	})
	require.NoError(t, err)
	for what, why := range longer {
		require.NotEmpty(t, why, what)
		require.True(t, found[what], "%s is short, or no longer there: take it off the list", what)
	}
}
