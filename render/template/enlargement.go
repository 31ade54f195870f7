package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
)

// enlargement draws a cutter's form, which lies in the tool frame, at a scale on
// a board, mirrored where the wheel's acting faces point the other way.
type enlargement struct {
	*Board
	cut    *cutter.Cut
	relief *cutter.Relief
	scale  float64
	share  float64 // of depths along the infeed that they are drawn with; 1 in the plane of the wheel
	mirror bool
	notes  callouts
	tops   []render.Text // notes above the form
	past   float64       // how far circles and centre lines run on past the form; as sighting lines do if nought
	rim    float64       // how much of the rim is shown below the teeth, in heights of a tooth
	bare   bool          // nothing is filled, so that a photograph is seen
}

// Distances in millimetres of paper.
const (
	sightPast  = 13.0 // a sighting line runs on so far past the form
	columnPast = 15.0 // the column of callouts stands so far off the form
	calloutGap = 5.4  // least distance between two callouts

	sightPastNarrow  = 8.0 // past a form that is lettered but narrow
	columnPastNarrow = 10.0
)

func newEnlargement(w Wheel, s Style, scale float64) *enlargement {
	b := NewBoard(w.ID, s)
	b.Drawing.Scale = scale
	return &enlargement{Board: b, cut: w.Cut, relief: w.Relief, scale: scale, share: 1, rim: rimShown, mirror: w.Mirrored(), notes: callouts{past: columnPast}}
}

// Mirrored reports whether the form is drawn mirrored. The tool frame is a
// clockwise wheel's seen from the template's side. A rake face leads the cutter
// through the wheel, so one that enters from the template's side faces away from
// there, and whoever looks at it looks from the wheel's back and sees the tool
// frame mirrored; one that enters from the back is seen from the template's side.
// An anticlockwise wheel mirrors it once more.
func (w Wheel) Mirrored() bool { return (w.Hand == "anticlockwise") == (w.Enters == "back") }

// call adds a callout beside the form.
func (e *enlargement) call(at geometry.Point, q geometry.Quantity, ink render.Ink, text string) {
	e.notes.call(e.box(), at, q, ink, text)
}

// at brings a point of the tool frame to the paper.
func (e *enlargement) at(p geometry.Point) geometry.Point {
	if e.mirror {
		p = p.Mirror()
	}
	return p.Times(e.scale)
}

// segment brings a segment of the tool frame to the paper.
func (e *enlargement) segment(s geometry.Segment) geometry.Segment {
	if e.mirror {
		s = s.Mirror()
	}
	return s.Scale(e.scale)
}

// outlines brings outlines of the tool frame to the paper.
func (e *enlargement) outlines(in []geometry.Outline) []geometry.Outline {
	out := make([]geometry.Outline, len(in))
	for i, o := range in {
		if e.mirror {
			o = o.Mirror()
		}
		out[i] = o.Scale(e.scale)
	}
	return out
}

// box returns the box of the form and the sides of its stock on the paper.
func (e *enlargement) box() geometry.Box {
	bounds, f := e.cut.Form.Edge.Bounds(), e.cut.Form
	if f.StockWidth > 0 {
		bounds.Min.X = min(bounds.Min.X, f.StockFront)
		bounds.Max.X = max(bounds.Max.X, f.StockFront+f.StockWidth)
	}
	p, q := e.at(bounds.Min), e.at(bounds.Max)
	return geometry.Box{
		Min: geometry.Point{X: min(p.X, q.X), Y: min(p.Y, q.Y)},
		Max: geometry.Point{X: max(p.X, q.X), Y: max(p.Y, q.Y)},
	}
}

// form draws the form in steel, closed along its top.
func (e *enlargement) form() {
	o, err := e.cut.Form.Outline()
	if err != nil {
		return
	}
	e.Closed(Stroke{render.LayerForm, "cutter", render.Visible, render.Black, e.filled(render.Steel)}, e.outlines([]geometry.Outline{o})...)
}

// filled returns the fill, or none where nothing is filled.
func (e *enlargement) filled(f render.Fill) render.Fill {
	if e.bare {
		return render.NoFill
	}
	return f
}

// circleAtDepth draws the part of a circle about the wheel's centre that passes
// the form, and returns its ends, the left one first; false where none passes.
func (e *enlargement) circleAtDepth(radius float64, q geometry.Quantity) (left, right geometry.Point, ok bool) {
	past := e.past
	if past == 0 {
		past = e.sightPast()
	}
	box := e.box().Grow(past)
	centre := e.at(geometry.Point{X: e.cut.SetOver, Y: -e.cut.Height()})
	r := radius * e.scale
	reach := 0.95 * r
	if up := box.Min.Y - centre.Y; up > 0 {
		reach = min(reach, math.Sqrt(max(0, r*r-up*up)))
	}
	from, to := max(box.Min.X, centre.X-reach), min(box.Max.X, centre.X+reach)
	if from >= to {
		return left, right, false
	}
	a := math.Acos((to - centre.X) / r)
	sweep := math.Acos((from-centre.X)/r) - a
	arc := geometry.Arc{Centre: centre, Radius: r, Start: geometry.Angle(a), Sweep: geometry.Angle(sweep)}
	e.Arc(Stroke{Layer: render.LayerPitchCircle, Quantity: q, Pen: render.Centre, Ink: render.Blue}, arc)
	return arc.To(), arc.From(), true
}

// runsOn returns how far centre lines run on past the form.
func (e *enlargement) runsOn() float64 {
	if e.past > 0 {
		return e.past
	}
	return sightPast
}

// through returns the part of the infinite line through p in direction d that
// lies in the box; false when it misses.
func through(p, d geometry.Point, box geometry.Box) (geometry.Line, bool) {
	lo, hi := math.Inf(-1), math.Inf(1)
	for _, axis := range [2][4]float64{{p.X, d.X, box.Min.X, box.Max.X}, {p.Y, d.Y, box.Min.Y, box.Max.Y}} {
		at, along, low, high := axis[0], axis[1], axis[2], axis[3]
		if along == 0 {
			if at < low || at > high {
				return geometry.Line{}, false
			}
			continue
		}
		t0, t1 := (low-at)/along, (high-at)/along
		lo, hi = max(lo, min(t0, t1)), min(hi, max(t0, t1))
	}
	if lo >= hi || math.IsInf(lo, 0) || math.IsInf(hi, 0) {
		return geometry.Line{}, false
	}
	return geometry.Line{From: p.Add(d.Times(lo)), To: p.Add(d.Times(hi))}, true
}
