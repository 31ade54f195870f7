package render

import (
	"fmt"
	"sync"
	"sync/atomic"
	"unicode"

	"github.com/tdewolff/canvas"
	"github.com/tdewolff/font"

	"tipline/assets/fonts"
	"tipline/geometry"
)

// Face is one weight of the lettering, parsed once in a run of the program. All
// its lengths are shares of the height of capitals, so that a text's Height
// times them gives millimetres. A Face may be used by many goroutines at once.
type Face struct {
	name   string
	file   *canvas.Font
	unit   float64  // capital heights in one font unit
	shapes sync.Map // glyph number → *shape
	latin  [common]letterform
	kerns  [common * common]atomic.Int32 // of two glyph numbers: what the font says, with known added

	extents extents
}

// common is how many letters, counted by their numbers in Unicode, and how many glyphs, by
// theirs in the font, are looked up in the font once only: those of Latin-1, which
// nearly all texts are made of. known marks a kerning that has been looked up.
const (
	common = 256
	known  = 1 << 20
)

// letterform is what stands for a letter, and its glyph.
type letterform struct {
	rune  rune
	glyph uint16
}

var (
	regular  = sync.OnceValue(func() *Face { return parseFace("OpenSans-Regular", fonts.Regular()) })
	semibold = sync.OnceValue(func() *Face { return parseFace("OpenSans-SemiBold", fonts.Semibold()) })
)

// FaceOf returns the face of plain or of bold lettering.
func FaceOf(bold bool) *Face {
	if bold {
		return semibold()
	}
	return regular()
}

// parseFace reads a font that is built into the program; one that cannot be read
// is a fault of the build and stops the program.
func parseFace(name string, file []byte) *Face {
	loaded, err := canvas.LoadFont(file, 0, canvas.FontRegular)
	if err != nil {
		panic(fmt.Sprintf("render: the built-in font %s cannot be read: %v", name, err))
	}
	f := &Face{name: name, file: loaded, unit: 1 / float64(loaded.OS2.SCapHeight)}
	for r := range f.latin {
		f.latin[r] = f.lookUp(rune(r))
	}
	return f
}

// Name returns the face's PostScript name.
func (f *Face) Name() string { return f.name }

// Em returns the size of the font's em square in capital heights, about 1.4.
func (f *Face) Em() float64 { return float64(f.file.Head.UnitsPerEm) * f.unit }

// Rise returns how far the tallest letters stand above the baseline, and Drop how
// far the lowest hang below it, both positive, in capital heights.
func (f *Face) Rise() float64 { return float64(f.file.Hhea.Ascender) * f.unit }

// Drop is described with Rise.
func (f *Face) Drop() float64 { return -float64(f.file.Hhea.Descender) * f.unit }

// Box returns the box that holds every letter of the face set at the origin, in
// capital heights.
func (f *Face) Box() geometry.Box {
	h := f.file.Head
	return geometry.Box{
		Min: geometry.Point{X: float64(h.XMin) * f.unit, Y: float64(h.YMin) * f.unit},
		Max: geometry.Point{X: float64(h.XMax) * f.unit, Y: float64(h.YMax) * f.unit},
	}
}

// Glyph returns the number of the letter's shape in the font file; 0, an empty
// frame, stands for a letter that the font does not have.
func (f *Face) Glyph(r rune) uint16 { return f.file.GlyphIndex(r) }

// legible returns what stands for a letter of any script, and its glyph.
func (f *Face) legible(r rune) letterform {
	if r >= 0 && r < common {
		return f.latin[r]
	}
	return f.lookUp(r)
}

func (f *Face) lookUp(r rune) letterform {
	if unicode.IsControl(r) {
		r = ' '
	}
	if glyph := f.Glyph(r); glyph != 0 {
		return letterform{r, glyph}
	}
	return letterform{unicode.ReplacementChar, f.Glyph(unicode.ReplacementChar)}
}

// Advance returns how far the pen moves on after the glyph.
func (f *Face) Advance(glyph uint16) float64 {
	return float64(f.file.GlyphAdvance(glyph)) * f.unit
}

// Kern returns what is added between two neighbours; mostly 0 or negative.
func (f *Face) Kern(left, right uint16) float64 {
	if left >= common || right >= common {
		return float64(f.file.Kerning(left, right)) * f.unit
	}
	place := &f.kerns[int(left)*common+int(right)]
	kern := place.Load()
	if kern == 0 {
		kern = int32(f.file.Kerning(left, right)) + known
		place.Store(kern)
	}
	return float64(kern-known) * f.unit
}

// Subset returns a TrueType file of the glyphs alone, numbered in the order given.
// The first must be 0.
func (f *Face) Subset(glyphs []uint16) ([]byte, error) {
	own := *f.file.SFNT // the library writes the new counts into these three
	maxp, head, hhea := *own.Maxp, *own.Head, *own.Hhea
	own.Maxp, own.Head, own.Hhea = &maxp, &head, &hhea
	part, err := own.Subset(append([]uint16(nil), glyphs...), font.SubsetOptions{Tables: font.KeepPDFTables})
	if err != nil {
		return nil, fmt.Errorf("subset of %s: %w", f.name, err)
	}
	return undated(part.Write()), nil
}
