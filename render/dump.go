package render

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"tipline/geometry"
)

// Dump writes the drawing as plain text, one line for each item and each corner,
// layer by layer, to four decimals of a millimetre: what golden drawings are
// compared by.
func (d *Drawing) Dump(w io.Writer) error {
	out := bufio.NewWriter(w)
	_, err := fmt.Fprintf(out, "drawing %q scale %.4g\n", d.Title, d.Scale)
	for _, level := range d.Levels() {
		for i := range level.Items {
			if err == nil {
				_, err = out.WriteString(level.Items[i].dump())
			}
		}
	}
	if err == nil {
		err = out.Flush()
	}
	if err != nil {
		return fmt.Errorf("dump: %w", err)
	}
	return nil
}

var (
	penNames   = [...]string{"none", "visible", "thin", "hidden", "centre", "hair"}
	inkNames   = [...]string{"black", "blue", "grey", "red", "green"}
	fillNames  = [...]string{"none", "brass", "steel", "waste", "paper", "solid"}
	alignments = [...]string{"left", "middle", "right"}
)

// String returns the pen's name in plain English.
func (p Pen) String() string { return named(penNames[:], int(p)) }

// String returns the ink's name in plain English.
func (i Ink) String() string { return named(inkNames[:], int(i)) }

// String returns the fill's name in plain English.
func (f Fill) String() string { return named(fillNames[:], int(f)) }

// String returns the alignment's name in plain English.
func (a Align) String() string { return named(alignments[:], int(a)) }

func named(names []string, i int) string {
	if i < 0 || i >= len(names) {
		return fmt.Sprint(i)
	}
	return names[i]
}

// dump returns the item's lines.
func (it Item) dump() string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s part=%q quantity=%q pen=%v ink=%v fill=%v\n", it.Layer, it.Part, it.Quantity, it.Pen, it.Ink, it.Fill)
	for _, o := range it.Outlines {
		b.WriteString("  outline\n")
		dumpVertices(&b, o.Vertices())
	}
	for _, c := range it.Chains {
		b.WriteString("  chain\n")
		dumpVertices(&b, c.Vertices())
	}
	if t := it.Text; t != nil {
		fmt.Fprintf(&b, "  text %q at %.4f %.4f height %.4f turn %.4f° %v centred=%t bold=%t",
			t.String, plain(t.At.X), plain(t.At.Y), t.Height, plain(t.Turn.Degrees()), t.Align, t.Centred, t.Bold)
		if t.Mirror {
			b.WriteString(" mirrored")
		}
		b.WriteByte('\n')
	}
	return b.String()
}

func dumpVertices(b *strings.Builder, vertices []geometry.Vertex) {
	for _, v := range vertices {
		fmt.Fprintf(b, "    %.4f %.4f", plain(v.X), plain(v.Y))
		if v.Bulge != 0 {
			fmt.Fprintf(b, " bulge %.6f", v.Bulge)
		}
		if v.Quantity != "" {
			fmt.Fprintf(b, " %s", v.Quantity)
		}
		b.WriteByte('\n')
	}
}

// plain keeps a value that rounds to nothing from being written as −0.
func plain(v float64) float64 {
	if v < 0 && v > -0.00005 {
		return 0
	}
	return v
}
