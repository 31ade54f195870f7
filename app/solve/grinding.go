package solve

import (
	"math"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/cutter"
)

// solveGrinding says what the grinding wheel's edge must reach into.
func (t *Tooling) solveGrinding(r *reader, c *job.Cutter) {
	t.WheelEdge = r.length("cutter.wheel_edge", c.WheelEdge, 0)
	if t.Relief == nil {
		return
	}
	if least := t.Relief.SmallestConcave; least > 0 && t.WheelEdge > least {
		r.find(Caution, "cutter.wheel_edge", "cutter.edge-too-round",
			number("value", t.WheelEdge, Length), atMost("max", least, Length))
	}
	hollow := hollowCorners(t.Cut.Form)
	if len(hollow) == 0 {
		return
	}
	code := "cutter.hollow-corners"
	if t.WheelEdge > 0 {
		code = "cutter.hollow-corners-rounded"
	}
	r.find(Note, "cutter.wheel_edge", code, number("count", float64(len(hollow)), Count),
		number("x", hollow[0].X, Length), number("y", hollow[0].Y, Length), number("edge", t.WheelEdge, Length))
}

// corner is how much a form must turn, in radians, for its corner to be one: a
// tenth of a degree, less than can be seen on a ground edge.
const corner = math.Pi / 1800

// hollowCorners returns the corners of a form that a wheel must be brought into,
// from the front on.
func hollowCorners(f cutter.Form) []geometry.Point {
	var hollow []geometry.Point
	for i := 1; i < f.Edge.Len(); i++ {
		before, after := f.Edge.Segment(i-1).Tangent(1), f.Edge.Segment(i).Tangent(0)
		if math.Atan2(before.Cross(after), before.Dot(after)) < -corner {
			hollow = append(hollow, f.Edge.Vertex(i).Point)
		}
	}
	return hollow
}

// depthFinding says what is left of the land at depth and how far past it the teeth
// begin to get shorter.
func (w *Wheel) depthFinding(r *reader) {
	row := w.Cut.DepthAt(w.Cut.Infeed)
	gone, ok := w.Cut.InfeedFor(0)
	if !ok {
		return
	}
	fall := number("fall", 1000*row.Fall.Hundredth, Micrometre)
	if w.Cut.Land == 0 {
		r.find(Caution, "teeth.land", "cutter.no-land", fall)
		return
	}
	r.find(Note, "teeth.land", "cutter.past-depth", number("land", w.Cut.Land, Length), fall,
		number("past", gone-w.Cut.Infeed, Length))
}
