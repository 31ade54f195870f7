package render

import (
	"math"

	"tipline/geometry"
)

// AngleBetween returns the dimension of an angle: an arc of the given radius about
// its vertex, from direction start on by sweep (positive anticlockwise), with
// arrowheads and the text outside its middle. The legs themselves are not drawn.
// A radius that is not positive, or a sweep of nothing, gives no items.
func AngleBetween(vertex geometry.Point, start, sweep geometry.Angle, radius float64, text string) []Item {
	if !(radius > 0) || sweep == 0 || math.Abs(float64(sweep)) >= float64(geometry.FullTurn) {
		return nil
	}
	if sweep < 0 {
		start, sweep = start+sweep, -sweep
	}
	var s sketch
	arc := geometry.Arc{Centre: vertex, Radius: radius, Start: start, Sweep: sweep}
	head := geometry.Angle(arrowLength / radius)
	if sweep >= 3*head {
		s.openingArrow(arc, start, head)
		s.openingArrow(arc, start+sweep, -head)
		arc.Start, arc.Sweep = start+head, sweep-2*head
	} else {
		s.openingArrow(arc, start, -head)
		s.openingArrow(arc, start+sweep, head)
		arc.Start, arc.Sweep = start-2*head, sweep+4*head
	}
	if arc.Sweep < geometry.FullTurn {
		s.lines = append(s.lines, geometry.ChainOf(arc.Segment()))
	}
	s.openingFigure(vertex, start+sweep/2, float64(sweep)*radius, radius, text)
	return s.items()
}

// openingArrow puts an arrowhead on the arc with its tip in direction at and its
// base back further round.
func (s *sketch) openingArrow(arc geometry.Arc, at, back geometry.Angle) {
	tip := arc.Centre.Add(geometry.Polar(arc.Radius, at))
	base := arc.Centre.Add(geometry.Polar(arc.Radius, at+back))
	if tip != base {
		s.arrow(tip, unit(tip.Sub(base)))
	}
}

// openingFigure writes the angle outside the arc: along it where it fits, else
// level beside it.
func (s *sketch) openingFigure(vertex geometry.Point, middle geometry.Angle, length, radius float64, text string) {
	t := Text{Height: DimensionHeight, Align: Middle, Centred: true, String: text}
	away := figureGap + DimensionHeight/2
	if t.Width() <= length {
		t.Turn = readable(middle - geometry.FullTurn/4)
	} else {
		away += DimensionHeight / 2
		switch cos := math.Cos(float64(middle)); {
		case cos > 0.3:
			t.Align = Left
		case cos < -0.3:
			t.Align = Right
		}
	}
	t.At = vertex.Add(geometry.Polar(radius+away, middle))
	s.texts = append(s.texts, t)
}

// CentreLine returns a centre line between the points: chain, thin and blue.
// Points that coincide give an item that draws nothing.
func CentreLine(from, to geometry.Point) Item {
	it := Item{Layer: LayerCentreLines, Pen: Centre, Ink: Blue}
	if chain, err := geometry.NewChain([]geometry.Vertex{{Point: from}, {Point: to}}); err == nil {
		it.Chains = []geometry.Chain{chain}
	}
	return it
}
