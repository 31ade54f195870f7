package template

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/render"
)

// A small crossing template, item by item, as testdata/drawings has it. When it is
// meant to change, look at what was drawn and put the actual file there.
func TestGoldenCrossing(t *testing.T) {
	teeth, err := tooth.Measured{Count: 12, TipRadius: 20, RootRadius: 18}.Wheel()
	require.NoError(t, err)
	w := finished(t, Wheel{ID: "small", Name: "Small wheel", Hand: "clockwise", Teeth: &teeth}, 3, 12)
	d, err := Crossing(w, metric)
	require.NoError(t, err)
	actual := dump(d)
	golden := filepath.Join("..", "..", "testdata", "drawings", "crossing-12.txt")
	want, err := os.ReadFile(golden)
	if err == nil && string(want) == actual {
		return
	}
	out := filepath.Join(t.ArtifactDir(), "crossing-12.txt")
	require.NoError(t, os.WriteFile(out, []byte(actual), 0o644))
	require.NoError(t, err, "the drawing as it is now: %s", out)
	require.Fail(t, "the drawing has changed", "as it is now: %s\n%s", out, difference(string(want), actual))
}

// dump writes a drawing as text, an item a line, coordinates to a tenth of a
// micrometre.
func dump(d *render.Drawing) string {
	var b strings.Builder
	for _, it := range d.Items {
		fmt.Fprintf(&b, "%s %s %s pen %d ink %d fill %d\n", it.Layer, it.Part, it.Quantity, it.Pen, it.Ink, it.Fill)
		for _, o := range it.Outlines {
			b.WriteString("  closed" + vertices(o.Vertices()) + "\n")
		}
		for _, c := range it.Chains {
			b.WriteString("  open" + vertices(c.Vertices()) + "\n")
		}
		if it.Text != nil {
			fmt.Fprintf(&b, "  %q %s height %g\n", it.Text.String, place(it.Text.At), it.Text.Height)
		}
	}
	return b.String()
}

func vertices(vs []geometry.Vertex) string {
	var b strings.Builder
	for _, v := range vs {
		b.WriteString(" " + place(v.Point))
		if v.Bulge != 0 {
			fmt.Fprintf(&b, "(%.4f)", v.Bulge)
		}
	}
	return b.String()
}

func place(p geometry.Point) string {
	return strings.ReplaceAll(fmt.Sprintf("%.4f,%.4f", p.X, p.Y), "-0.0000", "0.0000")
}

// difference lists the first lines that differ.
func difference(want, got string) string {
	a, b := strings.Split(want, "\n"), strings.Split(got, "\n")
	var lines []string
	for i := 0; i < max(len(a), len(b)) && len(lines) < 20; i++ {
		var x, y string
		if i < len(a) {
			x = a[i]
		}
		if i < len(b) {
			y = b[i]
		}
		if x != y {
			lines = append(lines, fmt.Sprintf("%d\n- %s\n+ %s", i+1, x, y))
		}
	}
	return strings.Join(lines, "\n")
}
