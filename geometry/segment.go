package geometry

import "math"

// Segment is one piece of an outline: a straight line, or a circular arc given
// by its bulge, tan(sweep/4), positive anticlockwise. Bulge 0 is a line, and so is
// one less than flattest; ±1 is a half circle; no segment turns a full circle.
type Segment struct {
	From, To Point
	Bulge    float64
	Quantity Quantity // what made it; empty where no field did
}

// flattest is the least bulge of an arc, and roundest the greatest. An arc rises
// bulge·chord/2 over its chord, at flattest by 1e-17 mm on a chord of MostLength,
// less than the last place of any coordinate that matters; much below it, the square
// of its radius is no number. The last float64 before a quarter turn has the tangent
// 1.6e16: more is a full circle.
const (
	flattest = 1e-20
	roundest = 1e16
)

// Line is a straight segment.
type Line struct{ From, To Point }

// Segment returns the line as a segment.
func (l Line) Segment() Segment { return Segment{From: l.From, To: l.To} }

// Arc is a circular arc: it starts in direction Start from the centre and turns
// by Sweep, positive anticlockwise, less than a full turn.
type Arc struct {
	Centre       Point
	Radius       float64
	Start, Sweep Angle
}

// From returns the point where the arc starts.
func (a Arc) From() Point { return a.Centre.Add(Polar(a.Radius, a.Start)) }

// To returns the point where the arc ends.
func (a Arc) To() Point { return a.Centre.Add(Polar(a.Radius, a.Start+a.Sweep)) }

// At returns the point a share t of the way along the arc.
func (a Arc) At(t float64) Point {
	return a.Centre.Add(Polar(a.Radius, a.Start+Angle(t)*a.Sweep))
}

// Segment returns the arc as a segment.
func (a Arc) Segment() Segment {
	return Segment{From: a.From(), To: a.To(), Bulge: math.Tan(float64(a.Sweep) / 4)}
}

// IsLine reports whether the segment is straight.
func (s Segment) IsLine() bool { return math.Abs(s.Bulge) < flattest }

// Arc returns the segment as an arc, and false for a straight one.
func (s Segment) Arc() (Arc, bool) {
	if s.IsLine() {
		return Arc{}, false
	}
	chord := s.To.Sub(s.From)
	b := s.Bulge
	centre := s.From.Toward(s.To, 0.5).Add(chord.Left().Times((1 - b*b) / (4 * b)))
	return Arc{
		Centre: centre,
		Radius: chord.Norm() * (1 + b*b) / (4 * math.Abs(b)),
		Start:  s.From.Sub(centre).Direction(),
		Sweep:  Angle(4 * math.Atan(b)),
	}, true
}

// Length returns the length along the segment.
func (s Segment) Length() float64 {
	if a, ok := s.Arc(); ok {
		return a.Radius * math.Abs(float64(a.Sweep))
	}
	return s.From.Dist(s.To)
}

// Reverse returns the segment run the other way.
func (s Segment) Reverse() Segment { return Segment{s.To, s.From, -s.Bulge, s.Quantity} }

// Rotate returns the segment turned anticlockwise by a about the origin.
func (s Segment) Rotate(a Angle) Segment {
	return Segment{s.From.Rotate(a), s.To.Rotate(a), s.Bulge, s.Quantity}
}

// Move returns the segment moved by d.
func (s Segment) Move(d Point) Segment {
	return Segment{s.From.Add(d), s.To.Add(d), s.Bulge, s.Quantity}
}

// Mirror returns the segment mirrored left to right.
func (s Segment) Mirror() Segment {
	return Segment{s.From.Mirror(), s.To.Mirror(), -s.Bulge, s.Quantity}
}

// Scale returns the segment enlarged k times about the origin.
func (s Segment) Scale(k float64) Segment {
	return Segment{s.From.Times(k), s.To.Times(k), s.Bulge, s.Quantity}
}
