package render

import "tipline/geometry"

// Linear returns the dimension of the distance between two points, drawn offset
// millimetres to the left of the way from one to the other (to the right if
// negative), with extension lines from the points. The text is written as given,
// over the middle of the line, or beside it where it does not fit. Points that
// coincide give no items.
func Linear(from, to geometry.Point, offset float64, text string) []Item {
	if from == to {
		return nil
	}
	var s sketch
	side := unit(to.Sub(from)).Left()
	if offset != 0 {
		away := side
		if offset < 0 {
			away = side.Times(-1)
		}
		shift := side.Times(offset)
		for _, p := range [2]geometry.Point{from, to} {
			if gap := min(extensionGap, shift.Norm()); gap > 0 {
				s.line(p.Add(away.Times(gap)), p.Add(shift).Add(away.Times(extensionPast)))
			}
		}
		from, to = from.Add(shift), to.Add(shift)
	}
	s.span(from, to, text)
	return s.items()
}

// Radius returns the dimension of an arc's radius: a line from its centre with an
// arrowhead on the arc, in the direction given, or, where the text does not fit
// along it, a leader from outside.
func Radius(centre geometry.Point, radius float64, direction geometry.Angle, text string) []Item {
	var s sketch
	out := geometry.Polar(1, direction)
	end := centre.Add(out.Times(radius))
	if radius >= figureWidth(text)+2*arrowLength {
		s.line(centre, end.Sub(out.Times(arrowLength)))
		s.arrow(end, out)
		s.figure(centre.Add(out.Times((radius-arrowLength)/2)), direction, text)
	} else {
		s.leader(end, end.Add(out.Times(2*tail)), text)
	}
	return s.items()
}

// span draws a dimension line with its arrowheads and figure. Where the line is
// too short the arrows stand outside; where the text is too long it stands over
// the tail beyond to.
func (s *sketch) span(from, to geometry.Point, text string) {
	way := unit(to.Sub(from))
	length, width := from.Dist(to), figureWidth(text)
	middle, start, end := from.Toward(to, 0.5), from, to
	if length >= 3*arrowLength {
		s.arrow(from, way.Times(-1))
		s.arrow(to, way)
		start, end = from.Add(way.Times(arrowLength)), to.Sub(way.Times(arrowLength))
	} else {
		s.arrow(from, way)
		s.arrow(to, way.Times(-1))
		start, end = from.Sub(way.Times(tail)), to.Add(way.Times(tail))
	}
	if width > length {
		end = to.Add(way.Times(tail + width))
		middle = to.Add(way.Times(tail + width/2))
	}
	s.line(start, end)
	s.figure(middle, way.Direction(), text)
}

// leader draws an arrow onto at from elbow, and a shelf with the text on it, to
// the side that elbow lies.
func (s *sketch) leader(at, elbow geometry.Point, text string) {
	if at == elbow {
		return
	}
	toward := unit(at.Sub(elbow))
	shelf := geometry.Point{X: figureWidth(text)}
	if elbow.X < at.X {
		shelf.X = -shelf.X
	}
	s.arrow(at, toward)
	s.run(geometry.Vertex{Point: at.Sub(toward.Times(arrowLength))}, geometry.Vertex{Point: elbow},
		geometry.Vertex{Point: elbow.Add(shelf)})
	s.figure(elbow.Add(shelf.Times(0.5)), 0, text)
}

// unit returns v at length 1; v must not be zero.
func unit(v geometry.Point) geometry.Point { return v.Times(1 / v.Norm()) }
