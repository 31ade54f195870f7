package render

import (
	"github.com/tdewolff/canvas"
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

// shape returns the glyph's shape, drawn once and then remembered; a glyph that
// the font tells wrongly is blank.
func (f *Face) shape(glyph uint16) *shape {
	if drawn, ok := f.shapes.Load(glyph); ok {
		return drawn.(*shape)
	}
	path := &canvas.Path{}
	if err := f.file.GlyphPath(path, glyph, 0, 0, 0, f.unit, font.NoHinting); err != nil {
		path.Reset()
	}
	drawn, _ := f.shapes.LoadOrStore(glyph, shapeOf(path))
	return drawn.(*shape)
}

// shapeOf takes a glyph's path down as contours. The control points are taken
// into the box, which is then a little wide at most. A TrueType file has no cubic
// curves.
func shapeOf(path *canvas.Path) *shape {
	s := &shape{ink: geometry.NoBox()}
	for scan := path.Scanner(); scan.Scan(); {
		to := s.reach(scan.End())
		switch scan.Cmd() {
		case canvas.MoveToCmd:
			s.contours = append(s.contours, Contour{Start: to})
		case canvas.QuadToCmd:
			s.add(Curve{Control: s.reach(scan.CP1()), To: to})
		default:
			s.add(Curve{To: to, Straight: true})
		}
	}
	return s
}

func (s *shape) add(c Curve) {
	last := &s.contours[len(s.contours)-1]
	last.Curves = append(last.Curves, c)
}

func (s *shape) reach(p canvas.Point) geometry.Point {
	at := geometry.Point{X: p.X, Y: p.Y}
	s.ink = s.ink.With(at)
	return at
}
