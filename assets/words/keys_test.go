package words

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// keyed are the functions that take a key of the catalogue, and which of their
// arguments it is; −1 is the last.
var keyed = map[string]int{"Say": 0, "AtMost": -1, "AtLeast": -1, "Between": -1, "refuse": -1, "find": 2}

// placesOf are the places that a text may hold by what names its key. An open
// bound has no number to stand in its place.
var placesOf = map[string]string{
	"AtMost": "{value} {max}", "AtLeast": "{value} {min}", "Between": "{value} {min} {max}", "refuse": "{read}",
}

// use is a key that the program's source names outright.
type use struct{ key, by, at string }

func uses(t *testing.T) []use {
	var list []use
	walkSource(t, func(node ast.Node, at string) {
		if key, by := keyIn(node); key != "" {
			list = append(list, use{key, by, at})
		}
	})
	require.NotEmpty(t, list)
	return list
}

// walkSource visits every node of the program's own source, tests left out.
func walkSource(t *testing.T, visit func(node ast.Node, at string)) {
	err := filepath.WalkDir("../..", func(path string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		positions := token.NewFileSet()
		file, err := parser.ParseFile(positions, path, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(node ast.Node) bool {
			if node != nil {
				visit(node, positions.Position(node.Pos()).String())
			}
			return true
		})
		return nil
	})
	require.NoError(t, err)
}

// keyIn returns the key that a call, or a field Code of a literal, names, and
// what names it.
func keyIn(node ast.Node) (key, by string) {
	switch n := node.(type) {
	case *ast.CallExpr:
		by = called(n)
		at, ok := keyed[by]
		if at < 0 {
			at += len(n.Args)
		}
		if ok && at >= 0 && at < len(n.Args) {
			return text(n.Args[at]), by
		}
	case *ast.KeyValueExpr:
		if field, ok := n.Key.(*ast.Ident); ok && field.Name == "Code" {
			return text(n.Value), "Code"
		}
	}
	return "", ""
}

func called(call *ast.CallExpr) string {
	switch f := call.Fun.(type) {
	case *ast.SelectorExpr:
		return f.Sel.Name
	case *ast.Ident:
		return f.Name
	}
	return ""
}

// text returns what a literal text says; nothing for anything else.
func text(e ast.Expr) string {
	literal, ok := e.(*ast.BasicLit)
	if !ok || literal.Kind != token.STRING {
		return ""
	}
	said, _ := strconv.Unquote(literal.Value)
	return said
}

func TestTextsHoldNoPlaceThatIsLeftOpen(t *testing.T) {
	w := English()
	var open []string
	for _, u := range uses(t) {
		allowed, bounded := placesOf[u.by]
		for _, p := range placesIn(w.Say(u.key)) {
			if bounded && !strings.Contains(allowed, p) {
				open = append(open, u.key+" holds "+p+" but "+u.by+" gives "+allowed+" at "+u.at)
			}
		}
	}
	require.Empty(t, open)
}
