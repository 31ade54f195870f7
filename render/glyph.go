package render

import (
	"github.com/tdewolff/font"

	"tipline/geometry"
)

// Contour is one closed outline of a letter, from Start along the curves and
// back to Start. A letter is filled by the non-zero rule: its counters run the
// other way round.
type Contour struct {
	Start  geometry.Point
	Curves []Curve
}

// Curve is a straight line to To, or a quadratic Bézier curve to it with one
// control point.
type Curve struct {
	Control, To geometry.Point
	Straight    bool
}

// shape is a letter's contours at a capital height of 1, and the box of its ink,
// empty for a blank.
type shape struct {
	contours []Contour
	ink      geometry.Box
}

// shape returns the glyph's shape, drawn once and then remembered.
func (f *Face) shape(glyph uint16) *shape {
	if known, ok := f.shapes.Load(glyph); ok {
		return known.(*shape)
	}
	pen := &shapePen{&shape{ink: geometry.NoBox()}}
	if err := f.file.GlyphPath(pen, glyph, 0, 0, 0, f.unit, font.NoHinting); err != nil {
		pen.shape = &shape{ink: geometry.NoBox()}
	}
	known, _ := f.shapes.LoadOrStore(glyph, pen.shape)
	return known.(*shape)
}

// shapePen takes down a glyph's outline as the font file tells it.
type shapePen struct{ *shape }

func (p *shapePen) MoveTo(x, y float64) {
	p.contours = append(p.contours, Contour{Start: p.reach(x, y)})
}

func (p *shapePen) LineTo(x, y float64) { p.add(Curve{To: p.reach(x, y), Straight: true}) }

// QuadTo takes the control point into the box, which is then a little wide at
// most.
func (p *shapePen) QuadTo(cx, cy, x, y float64) {
	p.add(Curve{Control: p.reach(cx, cy), To: p.reach(x, y)})
}

// CubeTo never happens in a TrueType file; its chord stands for it.
func (p *shapePen) CubeTo(_, _, _, _, x, y float64) { p.LineTo(x, y) }

func (p *shapePen) Close() {}

func (p *shapePen) add(c Curve) {
	last := &p.contours[len(p.contours)-1]
	last.Curves = append(last.Curves, c)
}

func (p *shapePen) reach(x, y float64) geometry.Point {
	at := geometry.Point{X: x, Y: y}
	p.ink = p.ink.With(at)
	return at
}
