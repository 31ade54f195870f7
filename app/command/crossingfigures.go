package command

import "tipline/geometry/crossing"

// CrossingFigures are a crossing's figures.
type CrossingFigures struct {
	ArmTips       []int         `json:"arm_tips"`
	ArmAngles     []float64     `json:"arm_angles_deg"`
	ArmDeviations []float64     `json:"arm_deviations_deg,omitempty"` // from the tips, clockwise, where they are off them
	WindowArea    Each          `json:"window_area_mm2"`
	Area          float64       `json:"area_mm2"`
	Mass          float64       `json:"mass_g"`
	Inertia       float64       `json:"inertia_g_mm2"`
	Unbalance     float64       `json:"unbalance_g_mm"`
	Heavy         *float64      `json:"heavy_deg,omitempty"` // the heavy side
	RemovedShare  float64       `json:"removed_share"`
	WindUp        float64       `json:"windup_um_per_n"`
	DividerChord  Each          `json:"divider_chord_mm"`
	CutLength     Each          `json:"cut_length_mm,omitempty"` // how far the saw goes round a window
	Narrowest     float64       `json:"arm_narrowest_mm"`
	NarrowestAt   float64       `json:"arm_narrowest_radius_mm"`
	LeastSection  float64       `json:"least_section_mm2"`
	Uncrossed     MetalFigures  `json:"uncrossed"` // the same wheel without windows
	Balancing     *PlaceFigures `json:"correcting_hole,omitempty"`
}

// MetalFigures are what a wheel comes to, net of bore and holes.
type MetalFigures struct {
	Area      float64       `json:"area_mm2"`
	Mass      float64       `json:"mass_g"`
	Inertia   float64       `json:"inertia_g_mm2"`
	Unbalance *float64      `json:"unbalance_g_mm,omitempty"`
	Heavy     *float64      `json:"heavy_deg,omitempty"`
	Balancing *PlaceFigures `json:"correcting_hole,omitempty"`
}

// PlaceFigures are a hole's.
type PlaceFigures struct {
	Radius   float64 `json:"radius_mm"`
	Angle    float64 `json:"angle_deg"`
	Diameter float64 `json:"diameter_mm"`
}

// AdditionFigures are an addition's. A circle or line takes no metal away.
type AdditionFigures struct {
	Kind     string    `json:"kind"`
	Radius   float64   `json:"radius_mm"`
	Angles   []float64 `json:"angles_deg"`
	Diameter *float64  `json:"diameter_mm,omitempty"`
	ToRadius *float64  `json:"to_radius_mm,omitempty"`
	ToAngles []float64 `json:"to_angles_deg,omitempty"`
	Text     string    `json:"text,omitempty"`
}

func crossingFigures(l *crossing.Layout) *CrossingFigures {
	f := &CrossingFigures{
		Area: l.Area, Mass: l.Mass, Inertia: l.Inertia, Unbalance: l.Unbalance, Heavy: heavy(l), Balancing: balancing(l),
		RemovedShare: l.RemovedShare, WindUp: l.WindUp,
		Narrowest: l.Narrowest.Width, NarrowestAt: l.Narrowest.Radius, LeastSection: l.Narrowest.Area,
		Uncrossed: MetalFigures{Area: l.Uncrossed.Area, Mass: l.Uncrossed.Mass, Inertia: l.Uncrossed.Inertia},
	}
	off := false
	for j, arm := range l.Arms {
		f.ArmTips = append(f.ArmTips, arm.Tip)
		f.ArmAngles = append(f.ArmAngles, armDegrees(l, j))
		f.ArmDeviations = append(f.ArmDeviations, arm.Deviation.Degrees())
		off = off || arm.Deviation != 0
	}
	if !off {
		f.ArmDeviations = nil
	}
	for _, window := range l.Windows {
		f.WindowArea = append(f.WindowArea, window.Area)
		f.DividerChord = append(f.DividerChord, window.Chord)
		if len(window.SawLine) > 0 {
			f.CutLength = append(f.CutLength, window.Cut)
		}
	}
	return f
}

// solidFigures are those of a wheel that is not crossed.
func solidFigures(l *crossing.Layout) *MetalFigures {
	return &MetalFigures{
		Area: l.Area, Mass: l.Mass, Inertia: l.Inertia,
		Unbalance: some(l.Unbalance), Heavy: heavy(l), Balancing: balancing(l),
	}
}

// heavy returns where the heavy side is; nil on a balanced wheel.
func heavy(l *crossing.Layout) *float64 {
	if l.Unbalance == 0 {
		return nil
	}
	v := clockwise(l.Heavy)
	return &v
}

func balancing(l *crossing.Layout) *PlaceFigures {
	if l.Balance == nil {
		return nil
	}
	return &PlaceFigures{l.Balance.Radius, clockwise(l.Balance.Angle), l.Balance.Diameter}
}

func additionFigures(list []crossing.Addition) []AdditionFigures {
	var all []AdditionFigures
	for _, a := range list {
		f := AdditionFigures{Kind: string(a.Kind), Radius: a.Radius, Diameter: some(a.Diameter), Text: a.Text}
		for _, one := range a.EvenlySpread() {
			f.Angles = append(f.Angles, clockwise(one.Angle))
			if a.Kind == crossing.LineKind {
				f.ToAngles = append(f.ToAngles, clockwise(one.ToAngle))
			}
		}
		if a.Kind == crossing.LineKind {
			f.ToRadius = &a.ToRadius
		}
		all = append(all, f)
	}
	return all
}

// armDegrees returns where arm j stands without the rounding of radians.
func armDegrees(l *crossing.Layout, j int) float64 {
	if l.Spec.Placing == crossing.Equal {
		return 360 * float64(j) / float64(len(l.Arms))
	}
	return 360 * float64(l.Arms[j].Tip) / float64(l.Blank.Count)
}
