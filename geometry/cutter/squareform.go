package cutter

import (
	"math"

	"tipline/geometry"
)

// Rake is the field of the bit's top rake.
const Rake geometry.Quantity = "cutter.rake"

// mostRake is the most rake, either way, that a bit can have and still cut
// (common practice, no source).
var mostRake = geometry.Degrees(30)

// Shrunk is a form whose depths are measured another way than along the infeed.
type Shrunk struct {
	Form  Form
	Share float64 // of the depths along the infeed
	Off   float64 // greatest distance of its arcs from the curve they stand for, mm; 0 where there are only lines
}

// SquareForm returns the form as it is measured square to the clearance face,
// where a formed wheel or a dressed radius grinds it: every depth is shrunk to
// T = D·cos(C+G)/cos G, with clearance C, 1° to 30°, and rake G, −30° to 30°
// (SquareDepth). Widths stay. Lines stay lines; an arc becomes part of an
// ellipse, fitted with arcs to 1 µm. What is out of range is a *geometry.Limit.
func (c Cut) SquareForm(clearance, rake geometry.Angle) (Shrunk, error) {
	if err := checkAngles(clearance, rake); err != nil {
		return Shrunk{}, err
	}
	return c.Form.shrunk(SquareDepth(1, clearance, rake))
}

// FaceForm returns the form as it lies on a rake face that is ground at a rake G,
// −30° to 30°: every depth is drawn out to D/cos G.
func (c Cut) FaceForm(rake geometry.Angle) (Shrunk, error) {
	if err := checkAngles(leastClearance, rake); err != nil {
		return Shrunk{}, err
	}
	return c.Form.shrunk(1 / math.Cos(float64(rake)))
}

// checkAngles refuses a clearance and a rake that no bit is ground with.
func checkAngles(clearance, rake geometry.Angle) error {
	for _, v := range []bounds{
		{Clearance, float64(clearance), float64(leastClearance), float64(mostClearance), "cutter.clearance"},
		{Rake, float64(rake), -float64(mostRake), float64(mostRake), "cutter.rake"},
	} {
		if !(v.value >= v.least && v.value <= v.most) {
			return geometry.Between(v.field, v.value, v.least, v.most, v.code)
		}
	}
	return nil
}

// shrunk returns the form with every y times a share.
func (f Form) shrunk(share float64) (Shrunk, error) {
	s := Shrunk{Share: share}
	var edge sweep
	for i := range f.Edge.Len() {
		pieces, off := squeezed(f.Edge.Segment(i), share)
		edge = append(edge, pieces...)
		s.Off = math.Max(s.Off, off)
	}
	chain, err := edge.chain()
	s.Form = Form{Edge: chain, StockWidth: f.StockWidth, StockFront: f.StockFront, Top: f.Top * share}
	return s, err
}
