package render

import "tipline/geometry"

// The proportions of dimensions on paper, in millimetres: ISO 129-1, with the
// arrowhead closed and filled, 15° wide.
const (
	DimensionHeight = 2.5 // of figures' capitals, ISO 3098
	arrowLength     = 2.5
	arrowHalfWidth  = 0.33 // 2.5·tan 7.5°
	figureGap       = 0.8  // between dimension line and figure
	extensionGap    = 1    // between the work and its extension line
	extensionPast   = 1.5  // extension line beyond the dimension line
	tail            = 5    // of an arrow that stands outside
)

// sketch gathers the lines, arrowheads and text of one dimension.
type sketch struct {
	lines  []geometry.Chain
	arrows []geometry.Outline
	texts  []Text
}

// line adds a straight line; one without length is left out.
func (s *sketch) line(from, to geometry.Point) {
	s.run(geometry.Vertex{Point: from}, geometry.Vertex{Point: to})
}

// run adds a chain; one that cannot be drawn is left out.
func (s *sketch) run(vertices ...geometry.Vertex) {
	if chain, err := geometry.NewChain(vertices); err == nil {
		s.lines = append(s.lines, chain)
	}
}

// arrow adds an arrowhead at tip that points along toward, a unit vector.
func (s *sketch) arrow(tip, toward geometry.Point) {
	base := tip.Sub(toward.Times(arrowLength))
	side := toward.Left().Times(arrowHalfWidth)
	head, err := geometry.NewOutline([]geometry.Vertex{{Point: tip}, {Point: base.Add(side)}, {Point: base.Sub(side)}})
	if err == nil {
		s.arrows = append(s.arrows, head)
	}
}

// figure adds the text standing over a dimension line at its place, turned so
// that it reads from below or from the right.
func (s *sketch) figure(at geometry.Point, along geometry.Angle, text string) {
	turn := readable(along)
	up := geometry.Polar(figureGap, turn).Left()
	s.texts = append(s.texts, Text{At: at.Add(up), Height: DimensionHeight, Align: Middle, Turn: turn, String: text})
}

// items returns what was gathered on the layer of dimensions.
func (s *sketch) items() []Item {
	var items []Item
	if len(s.lines) > 0 {
		items = append(items, Item{Layer: LayerDimensions, Pen: Thin, Ink: Blue, Chains: s.lines})
	}
	if len(s.arrows) > 0 {
		items = append(items, Item{Layer: LayerDimensions, Ink: Blue, Fill: Solid, Outlines: s.arrows})
	}
	for i := range s.texts {
		items = append(items, Item{Layer: LayerDimensions, Ink: Blue, Text: &s.texts[i]})
	}
	return items
}

// readable returns the direction or its opposite, whichever lets lettering along
// it be read from below or, standing upright, from the right.
func readable(along geometry.Angle) geometry.Angle {
	const hair = 1e-9 // so that a vertical line does not flip by rounding
	a := along.Normal()
	if a > geometry.FullTurn/4+hair {
		return a - geometry.FullTurn/2
	}
	if a <= -geometry.FullTurn/4+hair {
		return a + geometry.FullTurn/2
	}
	return a
}

// figureWidth returns the width of a dimension's text.
func figureWidth(text string) float64 { return Text{Height: DimensionHeight, String: text}.Width() }
