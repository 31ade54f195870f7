package job

import (
	"bytes"
	"encoding/json"
	"strings"
	"unicode/utf8"
)

// pageWidth is the number of columns a line of a job file is kept to where it can
// be.
const pageWidth = 120

// quote returns a text as JSON; what is not UTF-8 becomes the replacement
// character.
func quote(s string) string {
	var b bytes.Buffer
	out := json.NewEncoder(&b)
	out.SetEscapeHTML(false)
	if err := out.Encode(s); err != nil {
		panic(err) // a string always encodes, a buffer always takes it
	}
	return strings.TrimSuffix(b.String(), "\n")
}

// flat reports whether none of the items holds items.
func (n *node) flat() bool {
	items := n.open().items
	for i := range items {
		if items[i].nested() {
			return false
		}
	}
	return true
}

func (n *node) brackets() (opening, closing string) {
	if n.shape == list {
		return "[", "]"
	}
	return "{", "}"
}

// lead returns what stands before item i on its line.
func (n *node) lead(i int) string {
	if n.shape == object {
		return quote(n.open().names[i]) + ": "
	}
	return ""
}

// writeInline writes the piece on one line.
func writeInline(b *strings.Builder, n *node) {
	if !n.nested() {
		b.WriteString(n.raw)
		return
	}
	opening, closing := n.brackets()
	b.WriteString(opening)
	items := n.open().items
	for i := range items {
		if i > 0 {
			b.WriteString(", ")
		}
		b.WriteString(n.lead(i))
		writeInline(b, &items[i])
	}
	b.WriteString(closing)
}

// room returns how many of the columns are left after the piece on one line;
// less than zero when it does not fit.
func (n *node) room(columns int) int {
	if !n.nested() {
		return columns - utf8.RuneCountInString(n.raw)
	}
	columns -= 2
	items := n.open().items
	for i := range items {
		if columns < 0 {
			break
		}
		if i > 0 {
			columns -= 2
		}
		columns = items[i].room(columns - utf8.RuneCountInString(n.lead(i)))
	}
	return columns
}

// write lays the piece out, its first line beginning at the column: on one line
// where it fits, else filled lines of plain values, else a line for each item. The
// job and its lists of parts, depth 0 and 1, always have a line for each item.
func write(b *strings.Builder, n *node, depth, column int) {
	split := depth < 2 && n.nested() && len(n.open().items) > 0 && (depth == 0 || !n.flat())
	switch {
	case !split && n.room(pageWidth-column) > 0 || !n.nested():
		writeInline(b, n)
	case !split && n.flat():
		writeFilled(b, n, column+1)
	default:
		writeSplit(b, n, depth)
	}
}

func writeSplit(b *strings.Builder, n *node, depth int) {
	opening, closing := n.brackets()
	b.WriteString(opening)
	indent := strings.Repeat("  ", depth+1)
	items := n.open().items
	for i := range items {
		if i > 0 {
			b.WriteString(",")
		}
		lead := indent + n.lead(i)
		b.WriteString("\n" + lead)
		write(b, &items[i], depth+1, utf8.RuneCountInString(lead))
	}
	b.WriteString("\n" + indent[2:] + closing)
}

// writeFilled writes as many items on each line as fit, the lines after the first
// beginning at the column.
func writeFilled(b *strings.Builder, n *node, column int) {
	opening, closing := n.brackets()
	b.WriteString(opening)
	used := column
	for i, item := range n.open().items {
		piece := n.lead(i) + item.raw
		width := utf8.RuneCountInString(piece) + 2
		switch {
		case i > 0 && used+width > pageWidth:
			b.WriteString(",\n" + strings.Repeat(" ", column))
			used = column
		case i > 0:
			b.WriteString(", ")
		}
		b.WriteString(piece)
		used += width
	}
	b.WriteString(closing)
}
