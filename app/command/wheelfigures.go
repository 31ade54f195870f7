package command

import (
	"tipline/app/solve"
	"tipline/geometry/crossing"
)

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

func wheelFigures(w *solve.Wheel) (WheelFigures, bool) {
	if w.Teeth == nil {
		return WheelFigures{}, false
	}
	f := WheelFigures{
		ID: w.Part.ID, Teeth: w.Teeth.Count,
		TipDiameter: 2 * w.Teeth.TipRadius, RootDiameter: 2 * w.Teeth.RootRadius, PitchDiameter: some(2 * w.Teeth.PitchRadius),
	}
	if w.Crossing != nil {
		f.Crossing = crossingFigures(w.Crossing)
	}
	f.Cutter = cutterFigures(&w.Tooling, w.Pointed())
	if w.Dividing != nil {
		f.Dividing = dividingFigures(w.Dividing)
	}
	return f, true
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
