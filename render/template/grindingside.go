package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
)

// Side is where on the bit a grinding template is laid.
type Side string

// The sides, as they are asked for.
const (
	RakeFace      Side = "rake"      // on the rake face
	ClearanceFace Side = "clearance" // square to the clearance face
)

// laid returns the form as it lies on a side: ErrNothing if there is no form, or for
// the clearance face no clearance.
func (w Wheel) laid(side Side) (cutter.Shrunk, error) {
	switch {
	case side != RakeFace && side != ClearanceFace:
		return cutter.Shrunk{}, fmt.Errorf("there is no side %q", side)
	case w.Cut == nil || side == ClearanceFace && w.Relief == nil:
		return cutter.Shrunk{}, ErrNothing
	case side == ClearanceFace:
		return w.Cut.SquareForm(w.Relief.Clearance, w.Rake)
	case w.Rake != 0:
		return w.Cut.FaceForm(w.Rake)
	}
	return cutter.Shrunk{Form: w.Cut.Form, Share: 1}, nil
}

// sideTitle returns the title and the line under it that say where the template is
// laid.
func (w Wheel) sideTitle(side Side, s Style) (title, line string) {
	switch {
	case side == ClearanceFace:
		return s.Words.Say("template.grinding.clearance.title", "name", w.title()), s.Words.Say("template.grinding.clearance")
	case w.Rake != 0:
		return s.Words.Say("template.grinding.title", "name", w.title()), s.Words.Say("template.grinding.raked", "rake", s.Units.Angle(w.Rake))
	}
	return s.Words.Say("template.grinding.title", "name", w.title()), s.Words.Say("template.grinding.rake")
}

// lay has the form drawn as it lies on a side.
func (e *enlargement) lay(laid cutter.Shrunk) {
	cut := *e.cut
	cut.Form = laid.Form
	e.cut, e.share = &cut, laid.Share
}

// hollows names what the grinding wheel's edge must get into: the first hollow that
// is smaller than the edge of the wheel that is used, or else, or where that is not
// known, the smallest there is.
func (e *enlargement) hollows(wheelEdge float64) {
	bare := e.Style.Units.Bare
	if tight := e.cut.Form.TooHollow(wheelEdge); len(tight) > 0 {
		e.call(e.at(tight[0].At), "cutter.wheel_edge", render.Black, e.Say("template.grinding.too-hollow", "edge", bare(wheelEdge)))
	} else if least := e.cut.Form.SmallestConcave(); least > 0 {
		e.call(e.smallestHollow(least), "cutter.wheel_edge", render.Grey, e.Say("template.grinding.wheel-edge", "radius", bare(least)))
	}
}

// smallestHollow returns a place on the paper on the first hollow of that radius, a
// third of the way along it, clear of where its radius is written.
func (e *enlargement) smallestHollow(radius float64) geometry.Point {
	for i := range e.cut.Form.Edge.Len() {
		s := e.cut.Form.Edge.Segment(i)
		if arc, ok := s.Arc(); ok && arc.Sweep < 0 && arc.Radius <= radius {
			return e.at(s.At(1.0 / 3))
		}
	}
	return geometry.Point{}
}
