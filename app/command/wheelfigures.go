package command

import "tipline/app/solve"

// WheelFigures are one wheel's figures.
type WheelFigures struct {
	ID            string            `json:"id"`
	Teeth         int               `json:"teeth"`
	TipDiameter   float64           `json:"tip_diameter_mm"`
	RootDiameter  float64           `json:"root_diameter_mm"`
	PitchDiameter *float64          `json:"pitch_diameter_mm,omitempty"`
	Contact       *float64          `json:"contact_ratio,omitempty"` // of teeth for a lantern pinion
	FitError      *float64          `json:"fit_error_um,omitempty"`  // of their flanks' arcs
	Crossing      *CrossingFigures  `json:"crossing,omitempty"`
	Solid         *MetalFigures     `json:"solid,omitempty"` // of a wheel that is not crossed
	Additions     []AdditionFigures `json:"additions,omitempty"`
	Cutter        *CutterFigures    `json:"cutter,omitempty"`
	Dividing      *DividingFigures  `json:"dividing,omitempty"`
	Mount         *MountFigures     `json:"mount,omitempty"`
}

func wheelFigures(w *solve.Wheel) (WheelFigures, bool) {
	if w.Teeth == nil {
		return WheelFigures{}, false
	}
	f := WheelFigures{
		ID: w.Part.ID, Teeth: w.Teeth.Count,
		TipDiameter: 2 * w.Teeth.TipRadius, RootDiameter: 2 * w.Teeth.RootRadius, PitchDiameter: some(2 * w.Teeth.PitchRadius),
	}
	if d := w.Driving; d != nil {
		fit := 1000 * d.Off
		f.Contact, f.FitError = &d.Contact, &fit
	}
	if w.Crossing != nil {
		f.Crossing = crossingFigures(w.Crossing)
	}
	if w.Uncrossed != nil {
		f.Solid = solidFigures(w.Uncrossed)
	}
	f.Additions = additionFigures(w.Additions())
	f.Cutter = cutterFigures(&w.Tooling, w.Pointed())
	if w.Dividing != nil {
		f.Dividing = dividingFigures(w.Dividing)
	}
	f.Mount = mountFigures(w)
	return f, true
}
