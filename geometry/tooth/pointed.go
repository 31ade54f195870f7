package tooth

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// The hands of a pointed wheel: which way the acting faces point, seen from the
// side on which the template is glued.
const (
	Clockwise     = "clockwise"
	Anticlockwise = "anticlockwise"
)

// Pointed returns the wheel that a form leaves: on every tooth the face, straight
// along the path of the form's foremost point, the floor and back as the form is
// ground, and the land as an arc of the tip circle. Tip 0 is a front tip and
// stands at 12 o'clock. The hand is Clockwise or Anticlockwise.
func Pointed(cut cutter.Cut, hand string) (Wheel, error) {
	if hand != Clockwise && hand != Anticlockwise {
		return Wheel{}, fmt.Errorf("tooth: hand %q is neither %s nor %s", hand, Clockwise, Anticlockwise)
	}
	space, err := cut.Space()
	if err != nil {
		return Wheel{}, err
	}
	outline, err := geometry.NewOutline(pointedVertices(space, cut))
	if err != nil {
		return Wheel{}, err
	}
	// The tool's front lies to the left of the space it cuts, so the face before
	// it looks clockwise.
	if hand == Anticlockwise {
		outline = outline.Mirror()
		pitch := geometry.FullTurn / geometry.Angle(cut.Count)
		space = space.Mirror().Reverse().Rotate(-pitch)
	} else {
		outline = outline.Reverse()
	}
	return Wheel{
		Form: "pointed", Count: cut.Count,
		TipRadius: cut.TipRadius, RootRadius: cut.RootRadius,
		Outline: outline, Space: space,
	}, nil
}

// pointedVertices runs clockwise round the wheel from tip 0, a space and a land
// at a time.
func pointedVertices(space geometry.Chain, cut cutter.Cut) []geometry.Vertex {
	one := space.Vertices()
	last := len(one) - 1
	one[last].Quantity = cutter.Land
	one[last].Bulge = -math.Tan(cut.Land / cut.TipRadius / 4)
	if cut.Land == 0 {
		one = one[:last]
	}
	all := make([]geometry.Vertex, 0, cut.Count*len(one))
	for i := range cut.Count {
		turn := -geometry.FullTurn * geometry.Angle(i) / geometry.Angle(cut.Count)
		sin, cos := math.Sincos(float64(turn))
		for _, v := range one {
			v.Point = geometry.Point{X: cos*v.X - sin*v.Y, Y: sin*v.X + cos*v.Y}
			all = append(all, v)
		}
	}
	return all
}
