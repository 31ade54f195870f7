package template

import (
	"errors"
	"math"

	"tipline/geometry"
)

// Handle is a dimension of a drawing that can be dragged: where it stands, and
// what the drawing's point it is dragged to means.
type Handle struct {
	// Quantity is the field that it sets, the first of them where it sets several.
	Quantity geometry.Quantity
	// At is where it stands on the drawing.
	At geometry.Point
	// Set returns the fields with the values that a point of the drawing means, in
	// millimetres or radians, unrounded and held to what a field can hold by itself:
	// whether it can be built with is the solver's to say. At At it returns the
	// present values. A point that is nowhere is ErrNowhere.
	Set func(geometry.Point) ([]Setting, error)
	// Span is what the dimension is measured between, in a straight line on the drawing;
	// its ends are the same where it is no distance, or has its dimension drawn.
	Span [2]geometry.Point
}

// Setting is a field and the value that it is to have, in millimetres or radians.
type Setting struct {
	Quantity geometry.Quantity
	Value    float64
}

// ErrNowhere says that a handle was dragged to a point without finite coordinates.
var ErrNowhere = errors.New("template: a handle was dragged nowhere")

// Value returns the value that a point means for the handle's first field.
func (h Handle) Value(p geometry.Point) (float64, error) {
	settings, err := h.Set(p)
	if err != nil {
		return 0, err
	}
	return settings[0].Value, nil
}

// aside returns the handle standing aside of what it sets, by that much.
func (h Handle) aside(by geometry.Point) Handle {
	return Handle{Quantity: h.Quantity, At: h.At.Add(by), Set: func(p geometry.Point) ([]Setting, error) { return h.Set(p.Sub(by)) }}
}

// from returns the handle measured from a place to where it stands.
func (h Handle) from(p geometry.Point) Handle { return h.between(p, h.At) }

// between returns the handle measured between two places.
func (h Handle) between(p, q geometry.Point) Handle {
	h.Span = [2]geometry.Point{p, q}
	return h
}

// The range that a dragged length is held to.
const (
	leastLength    = geometry.LeastLength
	greatestLength = geometry.MostLength
)

// lengthHandle is a handle of one length, from least to the greatest there is.
func lengthHandle(q geometry.Quantity, at geometry.Point, least float64, value func(geometry.Point) float64) Handle {
	return oneHandle(q, at, least, greatestLength, value)
}

// diameterHandle is a handle of the diameter of a circle about the wheel's centre.
func diameterHandle(q geometry.Quantity, at geometry.Point) Handle {
	return lengthHandle(q, at, leastLength, func(p geometry.Point) float64 { return 2 * p.Norm() }).from(at.Times(-1))
}

// angleHandle is a handle of one angle, from 0 to below a quarter turn.
func angleHandle(q geometry.Quantity, at geometry.Point, value func(geometry.Point) float64) Handle {
	return oneHandle(q, at, 0, 0.49*math.Pi, value)
}

func oneHandle(q geometry.Quantity, at geometry.Point, least, most float64, value func(geometry.Point) float64) Handle {
	return Handle{Quantity: q, At: at, Set: func(p geometry.Point) ([]Setting, error) {
		if !p.Finite() {
			return nil, ErrNowhere
		}
		return []Setting{{q, min(max(value(p), least), most)}}, nil
	}}
}

// roundingHandle stands half way round an arc that rounds a corner and sets its
// radius. An arc of radius r between tangents that enclose an angle w stands
// r·(1/sin(w/2) − 1) off their corner (plane geometry). scale is how many times
// larger than the work the arc is drawn. False for an arc of half a turn or more.
func roundingHandle(q geometry.Quantity, s geometry.Segment, scale float64) (Handle, bool) {
	arc, ok := s.Arc()
	if turn := math.Abs(float64(arc.Sweep)); !ok || turn >= math.Pi {
		return Handle{}, false
	}
	half := math.Abs(float64(arc.Sweep)) / 2
	middle := s.At(0.5)
	out := middle.Sub(arc.Centre).Times(1 / arc.Radius)
	corner := arc.Centre.Add(out.Times(arc.Radius / math.Cos(half)))
	return cornerHandle(q, corner, out.Times(-1), middle, half, scale).from(arc.Centre), true
}

// sharpHandle stands at the corner between two segments that no arc rounds yet.
// False where there is no corner.
func sharpHandle(q geometry.Quantity, before, after geometry.Segment, scale float64) (Handle, bool) {
	in, out := before.Tangent(1), after.Tangent(0)
	half := math.Abs(float64(in.Angle(out))) / 2
	inward := out.Sub(in)
	if half < leastLean || inward.Norm() == 0 {
		return Handle{}, false
	}
	return cornerHandle(q, after.From, inward.Times(1/inward.Norm()), after.From, half, scale), true
}

// cornerHandle sets the radius of the rounding of a corner by how far inward from
// the corner a point lies; half is half the angle that the edge turns there.
func cornerHandle(q geometry.Quantity, corner, inward, at geometry.Point, half, scale float64) Handle {
	share := (1/math.Cos(half) - 1) * scale
	return lengthHandle(q, at, 0, func(p geometry.Point) float64 { return p.Sub(corner).Dot(inward) / share })
}
