package render

import (
	"math"
	"sync"
	"sync/atomic"

	"tipline/geometry"
)

// Line is a text measured while it grows: what is added costs what is added alone.
type Line struct {
	face   *Face
	before int     // the last glyph; -1 where there is none
	width  float64 // in capital heights
}

// NewLine returns a line without a letter, in the face of plain or of bold lettering.
func NewLine(bold bool) Line { return Line{face: FaceOf(bold), before: -1} }

// With returns the line with a text added.
func (l Line) With(text string) Line {
	l.write(text, func(Letter) {})
	return l
}

// Width returns how far the line runs in letters of a height.
func (l Line) Width(height float64) float64 { return l.width * height }

// write adds a text to the line, and tells each letter, in capital heights.
func (l *Line) write(text string, at func(Letter)) {
	for _, r := range text {
		form := l.face.legible(r)
		if l.before >= 0 {
			l.width += l.face.Kern(uint16(l.before), form.glyph)
		}
		at(Letter{form.rune, form.glyph, l.width})
		l.width += l.face.Advance(form.glyph)
		l.before = int(form.glyph)
	}
}

// extent is what a text takes, in capital heights: how far it runs, and the box of its
// ink from the left end of the baseline; NoBox where it has none.
type extent struct {
	width float64
	ink   geometry.Box
}

// remembered is of how many texts a face knows the extent before it begins anew: more
// than a packet has, and in all about 1 MB. Templates that share sheets, are tried in
// several scales or are painted again and again ask for the same texts each time.
const remembered = 1 << 13

// extents remembers what texts take in one face. Many goroutines may use it at once.
type extents struct {
	known sync.Map // string → extent
	count atomic.Int32
}

// extent returns what a text takes in the face.
func (f *Face) extent(text string) extent {
	if known, ok := f.extents.known.Load(text); ok {
		return known.(extent)
	}
	e, line := extent{ink: geometry.NoBox()}, Line{face: f, before: -1}
	line.write(text, func(l Letter) {
		if ink := f.shape(l.Glyph).ink; !ink.Empty() {
			along := geometry.Point{X: l.X}
			e.ink = e.ink.Union(geometry.Box{Min: ink.Min.Add(along), Max: ink.Max.Add(along)})
		}
	})
	e.width = line.width
	if f.extents.count.Add(1) > remembered {
		f.extents.known.Clear()
		f.extents.count.Store(1)
	}
	f.extents.known.Store(text, e)
	return e
}

// upright reports whether a way lies along x or y, so that the box of a text that is
// written along it is that of its ink turned.
func upright(way geometry.Point) bool { return math.Min(math.Abs(way.X), math.Abs(way.Y)) < 1e-12 }
