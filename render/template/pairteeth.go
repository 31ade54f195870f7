package template

import (
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/depthing"
	"tipline/render"
)

// driver and follower return the two parts as they stand.
func (m *meshing) driver() meshed {
	return meshed{m.pair.Driver, m.pair.Wheel, geometry.Point{}, m.place.driver, "wheel", render.Brass}
}

func (m *meshing) follower() meshed {
	return meshed{
		m.pair.Follower, m.pair.Pinion,
		geometry.Point{Y: m.pair.Turn.Centres},
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

// Where a tooth's number stands, in mm on the paper: its middle so far inside the
// root, or inside a trundle, from the frame, and from the line of centres.
const (
	numberInside  = 2.4
	numberTrundle = 2.0
	numberFrame   = 2.2
	offLine       = 2.4
)

// numbers writes the teeth's numbers inside the root, that of the one at work bold.
func (m *meshing) numbers(part meshed) {
	inset := m.box.Grow(-numberFrame / m.scale)
	r := part.gear.Floor - numberInside/m.scale
	if part.part.Lantern != nil {
		r = part.gear.PitchRadius - part.part.Lantern.TrundleDiameter/2 - numberTrundle/m.scale
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
