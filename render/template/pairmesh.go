package template

import (
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/depthing"
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

// driver and follower return the two parts as they stand.
func (m *meshing) driver() meshed {
	return meshed{m.pair.Driver, m.pair.Wheel, geometry.Point{}, m.place.driver, "wheel", render.Brass}
}

func (m *meshing) follower() meshed {
	return meshed{
		m.pair.Follower, m.pair.Pinion, geometry.Point{Y: m.pair.Turn.Centres},
		geometry.FullTurn/2 + m.place.follower, "pinion", render.Steel,
	}
}

// meshed is one part of a pair as it stands: where its centre is and how far it is
// turned from having tooth 0 at 12 o'clock.
type meshed struct {
	gear     depthing.Gear
	part     Wheel
	centre   geometry.Point
	turn     geometry.Angle
	quantity geometry.Quantity
	fill     render.Fill
}

// wholeCount is the count up to which a part is drawn whole; of a larger one only
// the teeth near the box are.
const wholeCount = 24

// teeth draws a part's teeth in one outline, or its trundles.
func (m *meshing) teeth(part meshed) {
	s := Stroke{render.LayerTeeth, part.quantity, render.Visible, render.Black, part.fill}
	if part.part.Lantern != nil {
		s.Layer = render.LayerTrundles
	}
	for _, o := range m.outlines(part) {
		m.clipped(s, o)
	}
}

// outlines returns a part's teeth as they stand, in one outline, or its trundles
// one by one.
func (m *meshing) outlines(part meshed) []geometry.Outline {
	if part.part.Lantern == nil {
		if o, err := m.outline(part); err == nil {
			return []geometry.Outline{o}
		}
		return nil
	}
	o, err := closed(part.gear.Tooth)
	if err != nil {
		return nil
	}
	var trundles []geometry.Outline
	for _, k := range m.near(part) {
		trundles = append(trundles, o.Rotate(part.turn-geometry.Angle(k)*part.gear.Pitch()).Move(part.centre))
	}
	return trundles
}

// near returns the teeth of a part that may reach into the box, counted clockwise,
// those farthest clockwise first.
func (m *meshing) near(part meshed) []int {
	count := part.gear.Count
	if count <= wholeCount {
		return downFrom(count-1, count)
	}
	middle, aside := m.box.Centre().Sub(part.centre), math.Hypot(m.box.Width(), m.box.Height())/2
	span := geometry.FullTurn / 2
	if away := middle.Norm(); away > aside {
		span = geometry.Angle(math.Asin(aside / away))
	}
	pitch := part.gear.Pitch()
	first := geometry.Clock(0) + part.turn - middle.Direction() // of tooth 0, past the middle
	high := int(math.Ceil(float64((first.Normal() + span) / pitch)))
	low := int(math.Floor(float64((first.Normal() - span) / pitch)))
	return downFrom(high, min(high-low+1, count))
}

// downFrom returns n whole numbers, from on downwards.
func downFrom(from, n int) []int {
	list := make([]int, n)
	for i := range list {
		list[i] = from - i
	}
	return list
}

// outline returns a part's teeth as they stand: all of them, or those near the box
// closed through the part's centre.
func (m *meshing) outline(part meshed) (geometry.Outline, error) {
	near := m.near(part)
	tooth := part.gear.Tooth.Vertices()
	vertices := make([]geometry.Vertex, 0, len(near)*len(tooth)+1)
	for _, k := range near {
		sin, cos := math.Sincos(float64(part.turn - geometry.Angle(k)*part.gear.Pitch()))
		for _, v := range tooth[:len(tooth)-1] {
			v.Point = geometry.Point{X: cos*v.X - sin*v.Y, Y: sin*v.X + cos*v.Y}.Add(part.centre)
			vertices = append(vertices, v)
		}
	}
	if len(near) < part.gear.Count {
		vertices = append(vertices, geometry.Vertex{Point: part.centre})
	}
	return geometry.NewOutline(vertices)
}

// closed returns a chain that ends where it starts as an outline.
func closed(c geometry.Chain) (geometry.Outline, error) {
	v := c.Vertices()
	return geometry.NewOutline(v[:max(len(v)-1, 0)])
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

// shroud draws the disc behind a lantern pinion's trundles.
func (m *meshing) shroud(part meshed) {
	if part.part.Lantern == nil {
		return
	}
	if o, err := geometry.Circle(part.centre, part.part.Lantern.Shroud/2, "leaves"); err == nil {
		m.clipped(Stroke{render.LayerTeeth, part.quantity, render.Thin, render.Grey, render.Paper}, o)
	}
}

// pitchCircle draws what shows of a part's pitch circle.
func (m *meshing) pitchCircle(part meshed) {
	if o, err := geometry.Circle(part.centre, part.gear.PitchRadius, part.quantity); err == nil {
		m.clipped(Stroke{Layer: render.LayerPitchCircle, Quantity: part.quantity, Pen: render.Centre, Ink: render.Blue}, o)
	}
}

// offLine is how far, on the paper, a tooth's number keeps off the line of centres.
const offLine = 2.4

// numbers writes the teeth's numbers inside the root, that of the one at work bold.
func (m *meshing) numbers(part meshed) {
	inset := m.box.Grow(-2.2 / m.scale)
	r := part.gear.Floor - 2.4/m.scale
	if part.part.Lantern != nil {
		r = part.gear.PitchRadius - part.part.Lantern.TrundleDiameter/2 - 2/m.scale
	}
	if 2*math.Pi*r*m.scale/float64(part.gear.Count) < leastNumbers {
		return
	}
	for _, k := range m.near(part) {
		at := part.centre.Add(geometry.Polar(r, geometry.Clock(0)+part.turn-geometry.Angle(k)*part.gear.Pitch()))
		if !inset.Contains(at) || math.Abs(at.X)*m.scale < offLine {
			continue
		}
		m.Write(Stroke{Layer: render.LayerText, Quantity: part.quantity, Ink: render.Blue}, render.Text{
			At: m.paper(at), Height: 2.5, Align: render.Middle, Centred: true,
			Bold: part.quantity == "wheel" && k == m.place.tooth, String: strconv.Itoa(around(k, part.gear.Count)),
		})
	}
}

// around counts a tooth round a part of that many.
func around(k, count int) int { return (k%count + count) % count }

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
