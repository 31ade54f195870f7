package command

import (
	"encoding/json"
	"math"

	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry/crossing"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
)

// Figures are a job's computed figures as they are printed: unrounded, in the
// units their names end with; angles run clockwise from 12 o'clock. What does not
// apply is nil and left out.
type Figures struct {
	Wheels   []WheelFigures `json:"wheels"`
	Pinions  []struct{}     `json:"pinions"`
	Pairs    []struct{}     `json:"pairs"`
	Trains   []struct{}     `json:"trains"`
	Stacks   []struct{}     `json:"stacks"`
	Findings []Finding      `json:"findings"`
}

// Finding is a finding as it is printed.
type Finding struct {
	Severity string `json:"severity"`
	Wheel    string `json:"wheel,omitempty"`
	Field    string `json:"field,omitempty"`
	Code     string `json:"code"`
	Text     string `json:"text"`
}

// WheelFigures are one wheel's figures.
type WheelFigures struct {
	ID            string           `json:"id"`
	Teeth         int              `json:"teeth"`
	TipDiameter   float64          `json:"tip_diameter_mm"`
	RootDiameter  float64          `json:"root_diameter_mm"`
	PitchDiameter *float64         `json:"pitch_diameter_mm,omitempty"`
	Crossing      *CrossingFigures `json:"crossing,omitempty"`
	Cutter        *CutterFigures   `json:"cutter,omitempty"`
	Dividing      *DividingFigures `json:"dividing,omitempty"`
}

// CrossingFigures are a crossing's figures.
type CrossingFigures struct {
	ArmTips      []int     `json:"arm_tips"`
	ArmAngles    []float64 `json:"arm_angles_deg"`
	WindowArea   Each      `json:"window_area_mm2"`
	Area         float64   `json:"area_mm2"`
	Mass         float64   `json:"mass_g"`
	Inertia      float64   `json:"inertia_g_mm2"`
	Unbalance    float64   `json:"unbalance_g_mm"`
	RemovedShare float64   `json:"removed_share"`
	WindUp       float64   `json:"windup_um_per_n"`
	DividerChord Each      `json:"divider_chord_mm"`
}

// CutterFigures are a cutter's figures.
type CutterFigures struct {
	SetOver         float64  `json:"set_over_mm"`
	TouchHeight     float64  `json:"touch_height_mm"`
	Infeed          float64  `json:"infeed_mm"`
	Land            *float64 `json:"land_mm,omitempty"`
	RootRadius      float64  `json:"root_radius_mm"`
	BackRadius      *float64 `json:"back_radius_mm,omitempty"`
	BackAngle       *float64 `json:"back_angle_deg,omitempty"`
	HeelLimit       *float64 `json:"heel_limit_mm,omitempty"`
	UsableThickness *float64 `json:"usable_thickness_mm,omitempty"`
	SmallestConcave *float64 `json:"smallest_concave_radius_mm,omitempty"`
}

// DividingFigures are how a wheel is indexed.
type DividingFigures struct {
	Turns  int     `json:"turns"`
	Holes  int     `json:"holes"`
	Circle *int    `json:"circle,omitempty"`
	Error  float64 `json:"error_um"`
}

// Each is a figure of every window, arm j to arm j+1: printed as one number where
// they are all alike, else as a list.
type Each []float64

// alike is how far, as a share, figures that are equal in exact arithmetic may
// differ: closed forms over some thousand segments, each good to 1e-15.
const alike = 1e-9

// One returns the figure that all have, and false where they differ.
func (e Each) One() (float64, bool) {
	for _, v := range e {
		if math.Abs(v-e[0]) > alike*math.Abs(e[0]) {
			return 0, false
		}
	}
	return e[0], true
}

// MarshalJSON writes one number or a list.
func (e Each) MarshalJSON() ([]byte, error) {
	if v, one := e.One(); one {
		return json.Marshal(v)
	}
	return json.Marshal([]float64(e))
}

// FiguresOf gathers the figures of a job worked out. A wheel that could not be
// built is left out.
func FiguresOf(r *solve.Result, w words.Words) Figures {
	f := Figures{
		Wheels: []WheelFigures{}, Pinions: []struct{}{}, Pairs: []struct{}{}, Trains: []struct{}{}, Stacks: []struct{}{},
		Findings: findingsOf(r, w),
	}
	for _, wheel := range r.Wheels {
		if wheel.Teeth != nil {
			f.Wheels = append(f.Wheels, wheelFigures(wheel))
		}
	}
	return f
}

func findingsOf(r *solve.Result, w words.Words) []Finding {
	units := solve.Units(r.Job)
	list := []Finding{}
	for _, f := range r.Findings {
		list = append(list, Finding{string(f.Severity), f.Part, string(f.Field), f.Code, f.Sentence(w, units)})
	}
	return list
}

func wheelFigures(w *solve.Wheel) WheelFigures {
	f := WheelFigures{
		ID: w.Part.ID, Teeth: w.Teeth.Count,
		TipDiameter: 2 * w.Teeth.TipRadius, RootDiameter: 2 * w.Teeth.RootRadius, PitchDiameter: some(2 * w.Teeth.PitchRadius),
	}
	if w.Crossing != nil {
		f.Crossing = crossingFigures(w.Crossing)
	}
	if w.Cut != nil {
		f.Cutter = cutterFigures(w.Cut, w.Relief)
		if w.Teeth.Form == "pointed" || w.Teeth.Form == "ratchet" {
			f.Cutter.Land = &w.Cut.Land
		}
	}
	if w.Dividing != nil {
		f.Dividing = dividingFigures(w.Dividing)
	}
	return f
}

func crossingFigures(l *crossing.Layout) *CrossingFigures {
	f := &CrossingFigures{
		Area: l.Area, Mass: l.Mass, Inertia: l.Inertia, Unbalance: l.Unbalance,
		RemovedShare: l.RemovedShare, WindUp: l.WindUp,
	}
	for j, arm := range l.Arms {
		f.ArmTips = append(f.ArmTips, arm.Tip)
		f.ArmAngles = append(f.ArmAngles, armDegrees(l, j))
	}
	for _, window := range l.Windows {
		f.WindowArea = append(f.WindowArea, window.Area)
		f.DividerChord = append(f.DividerChord, window.Chord)
	}
	return f
}

// armDegrees returns where arm j stands without the rounding of radians.
func armDegrees(l *crossing.Layout, j int) float64 {
	if l.Spec.Placing == crossing.Equal {
		return 360 * float64(j) / float64(len(l.Arms))
	}
	return 360 * float64(l.Arms[j].Tip) / float64(l.Blank.Count)
}

func cutterFigures(c *cutter.Cut, r *cutter.Relief) *CutterFigures {
	f := &CutterFigures{
		SetOver: c.SetOver, TouchHeight: c.TouchHeight, Infeed: c.Infeed,
		RootRadius: c.RootRadius, BackRadius: some(c.BackRadius), BackAngle: some(c.BackAngle.Degrees()),
	}
	if r != nil {
		f.UsableThickness, f.SmallestConcave = &r.UsableThickness, some(r.SmallestConcave)
		f.HeelLimit = some(r.HeelLimit)
	}
	return f
}

func dividingFigures(a *dividing.Answer) *DividingFigures {
	f := &DividingFigures{Turns: a.Turns, Holes: a.Holes, Error: a.Error}
	if a.Circle != 0 {
		f.Circle = &a.Circle
	}
	return f
}

// some returns nil for a figure of 0, which stands for none.
func some(v float64) *float64 {
	if v == 0 {
		return nil
	}
	return &v
}
