package render

import "tipline/geometry"

// Letter is one letter of a text: its glyph in the text's face, and where along
// the baseline it starts, in millimetres from the text's left end.
type Letter struct {
	Rune  rune
	Glyph uint16
	X     float64
}

// Face returns the face the text is set in.
func (t Text) Face() *Face { return FaceOf(t.Bold) }

// Letters returns the text's letters in order, kerned, and the width of the whole.
// Tabs, new lines and the like count as spaces; a letter that the font does not
// have is shown by the sign for one.
func (t Text) Letters() (letters []Letter, width float64) {
	letters = make([]Letter, 0, len(t.String))
	width = t.walk(func(l Letter) { letters = append(letters, l) })
	return letters, width
}

// Width returns how far the text runs along its baseline, in millimetres.
func (t Text) Width() float64 { return t.Face().extent(t.String).width * t.Height }

// walk goes from letter to letter and returns the width of the whole.
func (t Text) walk(at func(Letter)) (width float64) {
	line := NewLine(t.Bold)
	line.write(t.String, func(l Letter) {
		l.X *= t.Height
		at(l)
	})
	return line.width * t.Height
}

// Origin returns the left end of the baseline.
func (t Text) Origin() geometry.Point { return t.origin(t.Width()) }

func (t Text) origin(width float64) geometry.Point {
	back := geometry.Point{}
	switch t.Align {
	case Middle:
		back.X = -width / 2
	case Right:
		back.X = -width
	}
	if t.Centred {
		back.Y = -t.Height / 2
	}
	along, up := t.Ways()
	return t.At.Add(along.Times(back.X)).Add(up.Times(back.Y))
}

// Ways returns the unit vectors along the baseline, the way the text is written,
// and up the letters.
func (t Text) Ways() (along, up geometry.Point) {
	along = geometry.Polar(1, t.Turn)
	up = along.Left()
	if t.Mirror {
		along = along.Times(-1)
	}
	return along, up
}

// Bounds returns the box of the text's ink; a text without ink has the box of its
// place alone.
func (t Text) Bounds() geometry.Box {
	face := t.Face()
	whole := face.extent(t.String)
	base := t.baseline(whole.width * t.Height)
	switch along, _ := t.Ways(); {
	case whole.ink.Empty():
		return geometry.NoBox().With(base.start)
	case upright(along):
		return base.around(whole.ink)
	}
	bounds := geometry.NoBox()
	t.walk(func(l Letter) {
		if ink := face.shape(l.Glyph).ink; !ink.Empty() {
			bounds = bounds.Union(base.letter(l).around(ink))
		}
	})
	return bounds
}

// Glyphs returns the outlines of the text's letters where they stand on the
// drawing.
func (t Text) Glyphs() []Contour {
	letters, width := t.Letters()
	base, face := t.baseline(width), t.Face()
	var all []Contour
	for _, l := range letters {
		at := base.letter(l)
		for _, c := range face.shape(l.Glyph).contours {
			all = append(all, at.contour(c))
		}
	}
	return all
}

// baseline is where letters stand: their origin, and the ways along and up, each
// as long as a capital is high.
type baseline struct{ start, along, up geometry.Point }

func (t Text) baseline(width float64) baseline {
	along, up := t.Ways()
	return baseline{t.origin(width), along.Times(t.Height), up.Times(t.Height)}
}

// letter returns the baseline from the letter on.
func (b baseline) letter(l Letter) baseline {
	if height := b.along.Norm(); height > 0 {
		b.start = b.start.Add(b.along.Times(l.X / height))
	}
	return b
}

// place brings a point of a letter, in capital heights, to the drawing.
func (b baseline) place(p geometry.Point) geometry.Point {
	return geometry.Point{
		X: b.start.X + p.X*b.along.X + p.Y*b.up.X,
		Y: b.start.Y + p.X*b.along.Y + p.Y*b.up.Y,
	}
}

// around returns the box of a box in capital heights, as it is placed.
func (b baseline) around(ink geometry.Box) geometry.Box {
	bounds := geometry.NoBox()
	for _, corner := range ink.Corners() {
		bounds = bounds.With(b.place(corner))
	}
	return bounds
}

func (b baseline) contour(c Contour) Contour {
	placed := Contour{b.place(c.Start), make([]Curve, len(c.Curves))}
	for i, curve := range c.Curves {
		placed.Curves[i] = Curve{b.place(curve.Control), b.place(curve.To), curve.Straight}
	}
	return placed
}
