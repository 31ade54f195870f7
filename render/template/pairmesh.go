package template

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// meshing draws a pair where its teeth meet: what lies in a box of the work, in
// the driver's frame, at a scale, the pitch point at the origin of the paper.
type meshing struct {
	*Board
	pair  Pair
	place meshPlace
	box   geometry.Box
	scale float64
}

// How much of a pair is shown, in modules: no less and no more to each side of the
// line of centres, up to which height of the smaller part the whole of it, how much
// past its tips, and how much of the larger.
const (
	leastAside = 4.0
	mostAside  = 8.0
	mostOver   = 13.0
	pastTips   = 0.8
	intoLarger = 3.6
)

// newMeshing returns the picture of a pair at a place, no larger than size each way.
func newMeshing(b *Board, p Pair, place meshPlace, size float64) *meshing {
	m := &meshing{Board: b, pair: p, place: place, box: p.shown()}
	m.scale = size / math.Max(m.box.Width(), m.box.Height())
	return m
}

// standardScale returns the greatest scale of ISO 5455, 1, 2 or 5 times a power of ten,
// that is not over most, which must be more than nothing.
func standardScale(most float64) float64 {
	decade := math.Pow(10, math.Floor(math.Log10(most)))
	for _, k := range []float64{5, 2} {
		if k*decade <= most {
			return k * decade
		}
	}
	return decade
}

// scaleText writes a standard scale: "10 : 1" or "1 : 2".
func scaleText(scale float64, s Style) string {
	if scale < 1 {
		return "1 : " + s.Units.Number(1/scale, 0)
	}
	return s.Units.Number(scale, 0) + " : 1"
}

// shown returns the part of the work about the pitch point that is drawn: the whole
// of the smaller part, where that is not too large, and the teeth it meets.
func (p Pair) shown() geometry.Box {
	small := p.Follower
	if p.Driver.Count < small.Count {
		small = p.Driver
	}
	m := 2 * p.Driver.PitchRadius / float64(p.Driver.Count)
	aside := min(max(small.TipRadius()+pastTips*m, leastAside*m), mostAside*m)
	over := small.PitchRadius + small.TipRadius() + pastTips*m
	if over > mostOver*m {
		over = aside
	}
	at := p.pitchPoint()
	box := geometry.Box{Min: geometry.Point{X: -aside, Y: at.Y - intoLarger*m}, Max: geometry.Point{X: aside, Y: at.Y + over}}
	if small.Count == p.Driver.Count && p.Driver.Count < p.Follower.Count {
		box.Min.Y, box.Max.Y = at.Y-over, at.Y+intoLarger*m
	}
	return box
}

// paper brings a point of the work to the paper.
func (m *meshing) paper(p geometry.Point) geometry.Point {
	return p.Sub(m.pair.pitchPoint()).Times(m.scale)
}

// frame returns the drawn part's box on the paper.
func (m *meshing) frame() geometry.Box {
	return geometry.Box{Min: m.paper(m.box.Min), Max: m.paper(m.box.Max)}
}

// draw draws both parts, their pitch circles, the line of centres and the contact.
func (m *meshing) draw() {
	both := []meshed{m.driver(), m.follower()}
	for _, part := range both {
		m.shroud(part)
	}
	for _, part := range both {
		m.teeth(part)
	}
	for _, part := range both {
		m.pitchCircle(part)
		m.numbers(part)
	}
	frame := m.frame()
	m.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "centres", Pen: render.Centre, Ink: render.Blue},
		geometry.Line{From: geometry.Point{Y: frame.Min.Y}, To: geometry.Point{Y: frame.Max.Y}})
	m.contact()
	m.Rectangle(Stroke{Layer: render.LayerDimensions, Pen: render.Hair, Ink: render.Grey}, frame.Min, frame.Max)
}

// clipped draws what of an outline lies in the box: filled, with a line only where
// the outline itself runs.
func (m *meshing) clipped(s Stroke, o geometry.Outline) {
	bounds := o.Bounds()
	switch {
	case m.box.Contains(bounds.Min) && m.box.Contains(bounds.Max):
		m.Closed(s, m.onPaper(o))
		return
	case !m.box.Touches(bounds):
		return
	}
	if inside, ok := ClipOutline(o, m.box); ok && s.Fill != render.NoFill {
		m.Closed(Stroke{s.Layer, s.Quantity, render.NoPen, s.Ink, s.Fill}, m.onPaper(inside))
	}
	m.run(s, o)
}

func (m *meshing) onPaper(o geometry.Outline) geometry.Outline {
	return o.Move(m.pair.pitchPoint().Times(-1)).Scale(m.scale)
}

// run draws the line of an outline where it lies in the box.
func (m *meshing) run(s Stroke, o geometry.Outline) {
	s.Fill = render.NoFill
	edges := Edges(m.box)
	var chains []geometry.Chain
	var run []geometry.Vertex
	end := func() {
		if chain, err := geometry.NewChain(run); err == nil {
			chains = append(chains, chain)
		}
		run = nil
	}
	for i := range o.Len() {
		segment := o.Segment(i)
		for _, part := range Split(segment, edges) {
			if !m.box.Contains(part.At(0.5)) {
				end()
				continue
			}
			if n := len(run); n > 0 {
				run = run[:n-1]
			}
			run = append(run, geometry.Vertex{Point: m.paper(part.From), Bulge: part.Bulge}, geometry.Vertex{Point: m.paper(part.To)})
		}
	}
	end()
	m.Open(s, chains...)
}

// contact marks where the tooth at work touches, and the line along which it
// pushes, which runs through the pitch point where the speed is true.
func (m *meshing) contact() {
	at, through := m.paper(m.place.at), m.paper(m.pair.normal(m.place))
	s := Stroke{Layer: render.LayerDimensions, Quantity: "centres", Pen: render.Thin, Ink: render.Blue}
	if way := through.Sub(at); way.Norm() > 1 && m.box.Contains(m.pair.normal(m.place)) {
		way = way.Times(1 / way.Norm())
		m.Line(s, geometry.Line{From: at.Sub(way.Times(9)), To: through.Add(way.Times(9))})
	}
	m.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "centres", Ink: render.Black, Fill: render.Solid}, at, 0.7)
	m.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "centres", Pen: render.Visible, Ink: render.Blue}, at, 2)
	m.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "centres", Pen: render.Thin, Ink: render.Blue, Fill: render.Paper}, geometry.Point{}, 0.8)
}
