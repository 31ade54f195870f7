package command

import (
	"tipline/app/solve"
	"tipline/geometry/tooth"
)

// PinionFigures are one pinion's figures. Tip, root and ratio are those of cut
// leaves, trundles, shrouds and holes those of a lantern pinion; the holes run
// clockwise from 12 o'clock.
type PinionFigures struct {
	ID              string           `json:"id"`
	Form            string           `json:"form"`
	Leaves          int              `json:"leaves"`
	PitchDiameter   float64          `json:"pitch_diameter_mm"`
	TipDiameter     *float64         `json:"tip_diameter_mm,omitempty"`
	RootDiameter    *float64         `json:"root_diameter_mm,omitempty"`
	Ratio           *float64         `json:"ratio,omitempty"`
	TrundleDiameter *float64         `json:"trundle_diameter_mm,omitempty"`
	TrundleDrill    string           `json:"trundle_drill,omitempty"`
	TrundleDrillMM  *float64         `json:"trundle_drill_mm,omitempty"`
	ShroudDiameter  *float64         `json:"shroud_diameter_mm,omitempty"`
	HoleAngles      []float64        `json:"hole_angles_deg,omitempty"`
	StepChord       *float64         `json:"step_chord_mm,omitempty"`
	Cutter          *CutterFigures   `json:"cutter,omitempty"`
	Dividing        *DividingFigures `json:"dividing,omitempty"`
}

func pinionFigures(p *solve.Pinion) (PinionFigures, bool) {
	f := PinionFigures{ID: p.ID(), Form: p.Part.Form.Text}
	switch {
	case p.Leaves != nil:
		f.leaves(p.Leaves, p.Ratio)
	case p.Lantern != nil:
		f.lantern(p.Lantern)
	default:
		return f, false
	}
	f.Cutter = cutterFigures(&p.Tooling, false)
	if p.Dividing != nil {
		f.Dividing = dividingFigures(p.Dividing)
	}
	return f, true
}

func (f *PinionFigures) leaves(w *tooth.Wheel, ratio float64) {
	f.Leaves, f.PitchDiameter = w.Count, 2*w.PitchRadius
	f.TipDiameter, f.RootDiameter, f.Ratio = some(2*w.TipRadius), some(2*w.RootRadius), &ratio
}

func (f *PinionFigures) lantern(l *tooth.LanternPinion) {
	f.Leaves, f.PitchDiameter = len(l.Holes), 2*l.PitchRadius
	f.TrundleDiameter, f.TrundleDrill, f.TrundleDrillMM = &l.TrundleDiameter, l.Drill.Name, &l.Drill.MM
	f.ShroudDiameter, f.StepChord = &l.Shroud, &l.Step
	for i := range l.Holes {
		f.HoleAngles = append(f.HoleAngles, 360*float64(i)/float64(len(l.Holes)))
	}
}
