package pdf

import (
	"crypto/sha256"
	"fmt"
	"strings"
	"unicode/utf16"

	"tipline/render"
)

// face is one font of the file and the glyphs used of it, numbered in the order
// they are first met; number 0 is the empty frame.
type face struct {
	*render.Face
	object  object
	numbers map[uint16]int
	glyphs  []uint16
	runes   []rune
}

// face returns the font of plain or bold lettering, in the file from now on.
func (b *book) face(bold bool) *face {
	i := 0
	if bold {
		i = 1
	}
	if b.faces[i] == nil {
		b.faces[i] = &face{
			Face: render.FaceOf(bold), object: b.file.reserve(),
			numbers: map[uint16]int{0: 0}, glyphs: []uint16{0}, runes: []rune{'\uFFFD'},
		}
	}
	return b.faces[i]
}

// number returns the glyph's number within the file.
func (f *face) number(glyph uint16, r rune) int {
	n, ok := f.numbers[glyph]
	if !ok {
		n = len(f.glyphs)
		f.numbers[glyph] = n
		f.glyphs, f.runes = append(f.glyphs, glyph), append(f.runes, r)
	}
	return n
}

// text writes one line of lettering.
func (c *content) text(t render.Text, ink render.Ink) {
	if t.String == "" {
		return
	}
	f := c.book.face(t.Bold)
	c.setFill(ink.Colour())
	c.printf("BT/%s ", resourceName(f.object))
	c.numbers(t.Height * f.Em())
	c.out = append(c.out, "Tf "...)
	along, up := t.Ways()
	c.point(along)
	c.point(up)
	c.point(t.Origin())
	c.out = append(c.out, "Tm["...)
	c.letters(t, f)
	c.operator("]TJ ET")
}

const hex = "0123456789ABCDEF"

// letters writes the glyphs, with the kerning between them in thousandths of the
// font's size, taken away.
func (c *content) letters(t render.Text, f *face) {
	letters, _ := t.Letters()
	for i, l := range letters {
		if i > 0 {
			if kern := f.Kern(letters[i-1].Glyph, l.Glyph); kern != 0 {
				c.numbers(-1000 * kern / f.Em())
			}
		}
		n := f.number(l.Glyph, l.Rune)
		c.out = append(c.out, '<', hex[n>>12&0xF], hex[n>>8&0xF], hex[n>>4&0xF], hex[n&0xF], '>')
	}
}

// writeFaces writes the fonts that were used, cut down to their glyphs.
func (b *book) writeFaces() error {
	for _, f := range b.faces {
		if f == nil {
			continue
		}
		program, err := f.Subset(f.glyphs)
		if err != nil {
			return err
		}
		f.write(b.file, program)
	}
	return nil
}

func (f *face) write(file *file, program []byte) {
	descendant, descriptor := file.reserve(), file.reserve()
	font, unicode := file.reserve(), file.reserve()
	name := f.subsetName(program)
	file.begin(f.object)
	file.printf("<</Type/Font/Subtype/Type0/BaseFont/%s/Encoding/Identity-H/DescendantFonts[%d 0 R]/ToUnicode %d 0 R>>",
		name, descendant, unicode)
	file.end()
	file.begin(descendant)
	file.printf("<</Type/Font/Subtype/CIDFontType2/BaseFont/%s/CIDToGIDMap/Identity/FontDescriptor %d 0 R"+
		"/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>/W[0[%s]]>>", name, descriptor, f.widths())
	file.end()
	file.begin(descriptor)
	f.describe(file, name, font)
	file.end()
	file.begin(font)
	file.stream(fmt.Sprintf("/Length1 %d", len(program)), program)
	file.end()
	file.begin(unicode)
	file.stream("", []byte(f.toUnicode()))
	file.end()
}

// describe writes the descriptor; lengths are in thousandths of the font's size.
func (f *face) describe(file *file, name string, font object) {
	const symbolic = 4 // glyphs are named by number
	k := 1000 / f.Em()
	box := f.Box()
	file.printf("<</Type/FontDescriptor/FontName/%s/Flags %d/FontBBox[%.0f %.0f %.0f %.0f]/ItalicAngle 0"+
		"/Ascent %.0f/Descent %.0f/CapHeight %.0f/StemV 80/FontFile2 %d 0 R>>", name, symbolic,
		k*box.Min.X, k*box.Min.Y, k*box.Max.X, k*box.Max.Y, k*f.Rise(), -k*f.Drop(), k, font)
}

// subsetName returns the font's name after six letters that tell this subset from
// any other.
func (f *face) subsetName(program []byte) string {
	sum := sha256.Sum256(program)
	tag := make([]byte, 6)
	for i := range tag {
		tag[i] = 'A' + sum[i]%26
	}
	return string(tag) + "+" + f.Name()
}

func (f *face) widths() string {
	widths := make([]string, len(f.glyphs))
	for i, glyph := range f.glyphs {
		widths[i] = number(1000 * f.Advance(glyph) / f.Em())
	}
	return strings.Join(widths, " ")
}

// toUnicode returns the map from glyph numbers to letters, by which a reader
// searches and copies.
func (f *face) toUnicode() string {
	const most = 100 // lines in one block
	var b strings.Builder
	b.WriteString("/CIDInit/ProcSet findresource begin 12 dict begin begincmap\n" +
		"/CIDSystemInfo<</Registry(Adobe)/Ordering(UCS)/Supplement 0>>def\n" +
		"/CMapName/Adobe-Identity-UCS def/CMapType 2 def\n" +
		"1 begincodespacerange<0000><FFFF>endcodespacerange\n")
	for from := 0; from < len(f.runes); from += most {
		to := min(from+most, len(f.runes))
		fmt.Fprintf(&b, "%d beginbfchar\n", to-from)
		for n := from; n < to; n++ {
			fmt.Fprintf(&b, "<%04X><", n)
			for _, unit := range utf16.Encode(f.runes[n : n+1]) {
				fmt.Fprintf(&b, "%04X", unit)
			}
			b.WriteString(">\n")
		}
		b.WriteString("endbfchar\n")
	}
	b.WriteString("endcmap CMapName currentdict/CMap defineresource pop end end\n")
	return b.String()
}
