package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// struck is a tooth with radial flanks and a tip of two arcs, each struck through
// the point where a flank meets the pitch circle and through the tip. Wheels and
// leaves have it. Radii in mm.
type struck struct {
	count            int
	tip, pitch, root float64        // of the circles
	half             geometry.Angle // half the tooth's thickness at the pitch circle
	arc              float64        // of the tip's arcs

	arcs, flanks, floor geometry.Quantity // what makes each
}

// around returns the vertices from tip 0 anticlockwise to before the next tip.
func (s struck) around() []geometry.Vertex {
	top, pitch := geometry.Clock(0), geometry.FullTurn/geometry.Angle(s.count)
	tip := geometry.Polar(s.tip, top)
	left, right := top+s.half, top+pitch-s.half // of the space
	bulge := arcBulge(tip, geometry.Polar(s.pitch, left), s.arc)
	return []geometry.Vertex{
		{Point: tip, Bulge: bulge, Quantity: s.arcs},
		{Point: geometry.Polar(s.pitch, left), Quantity: s.flanks},
		{Point: geometry.Polar(s.root, left), Bulge: math.Tan(float64(right-left) / 4), Quantity: s.floor},
		{Point: geometry.Polar(s.root, right), Quantity: s.flanks},
		{Point: geometry.Polar(s.pitch, right), Bulge: bulge, Quantity: s.arcs},
	}
}

// wheel returns the wheel of such teeth. Its outline runs anticlockwise from tip
// 0, five segments a tooth: arc, flank, root, flank, arc. Its space runs clockwise
// from tip 0 to tip 1.
func (s struck) wheel() (Wheel, error) {
	tooth := s.around()
	outline, err := around(s.count, tooth)
	if err != nil {
		return Wheel{}, err
	}
	space, err := spaceTo(s.count, tooth, tooth[0].Point)
	return Wheel{
		Form: "cycloidal", Count: s.count,
		TipRadius: s.tip, RootRadius: s.root, PitchRadius: s.pitch,
		Outline: outline, Space: space,
	}, err
}

func (s struck) spaceForm(stockWidth float64) (cutter.Cut, error) {
	tooth := s.around()
	space, err := spaceTo(s.count, tooth, tooth[0].Point)
	if err != nil {
		return cutter.Cut{}, err
	}
	return cutter.Space(space, s.count, s.tip, stockWidth)
}

// arcBulge returns the bulge of the arc, less than half a circle and
// anticlockwise, from one point to another with that radius, at least half their
// distance.
func arcBulge(from, to geometry.Point, radius float64) float64 {
	half := from.Dist(to) / 2
	return half / (radius + math.Sqrt(radius*radius-half*half))
}
