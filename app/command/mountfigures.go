package command

import (
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/mount"
)

// MountFigures are how a wheel is screwed to its collet: the holes in the wheel's
// own coordinates. Drills that go by a name have it beside their size.
type MountFigures struct {
	HoleAngles  []float64 `json:"hole_angles_deg"`
	ScrewCircle float64   `json:"screw_circle_mm"`
	Thread      string    `json:"thread"`
	Drill       float64   `json:"drill_mm"`
	DrillName   string    `json:"drill,omitempty"`
	TapDrill    float64   `json:"tap_drill_mm"`
	TapName     string    `json:"tap_drill,omitempty"`
	Starter     *float64  `json:"starter_mm,omitempty"` // the point of the centre drill
	Depth       float64   `json:"depth_mm"`             // of metal above the collet
	Chord       *float64  `json:"chord_mm,omitempty"`
	Edge        float64   `json:"edge_mm"` // the least from a screw's centre
	Stack       string    `json:"stack,omitempty"`
}

func mountFigures(w *solve.Wheel) *MountFigures {
	m := w.Mounting
	if m == nil {
		return nil
	}
	return &MountFigures{
		HoleAngles: holeAngles(m.Places), ScrewCircle: m.Screws.Circle, Thread: m.Screws.Thread.Name(),
		Drill: m.Clear.MM, DrillName: m.Clear.Name, TapDrill: m.Tap.MM, TapName: m.Tap.Name, Starter: some(m.Starter.MM),
		Depth: m.Depth, Chord: some(m.Chord), Edge: m.Edge, Stack: w.Stack,
	}
}

// StackFigures are how wheels go together on one collet. Turns and twist are in
// degrees, the turns of each wheel clockwise out of its own coordinates; the holes
// run clockwise from the tips in line.
type StackFigures struct {
	ID          string    `json:"id"`
	Wheels      []string  `json:"wheels"`
	Turns       []float64 `json:"turns_deg"`
	HoleAngles  []float64 `json:"hole_angles_deg,omitempty"`
	ScrewCircle *float64  `json:"screw_circle_mm,omitempty"`
	Thread      string    `json:"thread,omitempty"`
	Depth       *float64  `json:"depth_mm,omitempty"`
	Edge        *float64  `json:"edge_mm,omitempty"`
	Twist       float64   `json:"twist_deg"`
	Error       float64   `json:"error_mm"`
	Smaller     string    `json:"smaller"`
	Larger      string    `json:"larger"`
	Marks       []int     `json:"marks,omitempty"` // dots on each wheel; the collet has one
}

func stackFigures(s *solve.Stack) (StackFigures, bool) {
	if s.Stacked == nil {
		return StackFigures{}, false
	}
	f := StackFigures{
		ID: s.ID(), Wheels: s.Part.Wheels, Twist: s.Stacked.Twist.Degrees(), Error: s.Stacked.Error,
		Smaller: s.Wheels[s.Stacked.Smaller].ID(), Larger: s.Wheels[s.Stacked.Larger].ID(),
	}
	for _, turn := range s.Stacked.Turns {
		f.Turns = append(f.Turns, clockwise(turn))
	}
	if m := s.Stacked.Mounting; len(m.Places) > 0 {
		f.HoleAngles, f.ScrewCircle, f.Thread = holeAngles(m.Places), &m.Screws.Circle, m.Screws.Thread.Name()
		f.Depth, f.Edge = &m.Depth, &m.Edge
		for _, mark := range s.Stacked.Marks {
			if mark.Part >= 0 {
				f.Marks = append(f.Marks, mark.Dots)
			}
		}
	}
	return f, true
}

func holeAngles(places []mount.Place) []float64 {
	angles := make([]float64, len(places))
	for i, p := range places {
		angles[i] = clockwise(p.Angle)
	}
	return angles
}

// wholeTurn is how near to a full turn, in degrees, an angle is none: what rounding
// leaves of one.
const wholeTurn = 1e-9

// clockwise returns a direction in degrees from 12 o'clock, 0 to 360.
func clockwise(a geometry.Angle) float64 {
	v := a.Turn().Degrees()
	if v > 360-wholeTurn || v < wholeTurn {
		return 0
	}
	return v
}
