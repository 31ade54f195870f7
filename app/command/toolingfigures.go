package command

import (
	"tipline/app/solve"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
)

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

	ClearanceNeeded *float64       `json:"clearance_needed_deg,omitempty"` // where the heel rubs, what would do
	SwingNeeded     *float64       `json:"swing_needed_mm,omitempty"`      // likewise
	SideClearance   *float64       `json:"side_clearance_deg,omitempty"`   // the least, on a bit ground by a formed wheel
	CuttingSpeed    []float64      `json:"cutting_speed_m_min,omitempty"`  // from, to
	SpindleSpeed    []float64      `json:"spindle_speed_rpm,omitempty"`    // likewise
	Ground          *GroundFigures `json:"ground,omitempty"`
}

// GroundFigures are what the bit cuts as it was measured. Places are x across and
// y up the form; metal left on is positive.
type GroundFigures struct {
	Deviation        float64     `json:"deviation_um"`
	At               []float64   `json:"deviation_at_mm"`
	Land             *float64    `json:"land_mm,omitempty"`
	RootRadius       float64     `json:"root_radius_mm"`
	NearestInfeed    float64     `json:"nearest_infeed_mm"`
	NearestDeviation float64     `json:"nearest_deviation_um"`
	NearestLand      *float64    `json:"nearest_land_mm,omitempty"`
	Undercut         [][]float64 `json:"undercut_at_mm,omitempty"`
}

// DividingFigures are how a wheel is indexed.
type DividingFigures struct {
	Turns  int     `json:"turns"`
	Holes  int     `json:"holes"`
	Circle *int    `json:"circle,omitempty"`
	Error  float64 `json:"error_um"`

	Compound *CompoundFigures `json:"compound,omitempty"` // where no circle is exact
}

// CompoundFigures are two moves on one plate: turns and holes by the crank over the
// plate, then holes, less than nothing backwards, by plate and crank together.
type CompoundFigures struct {
	Turns      int     `json:"turns"`
	Holes      int     `json:"holes"`
	Circle     int     `json:"circle"`
	ThenHoles  int     `json:"then_holes"`
	ThenCircle int     `json:"then_circle"`
	Every      int     `json:"every"` // teeth that a step leads on
	Error      float64 `json:"error_um"`
}

// cutterFigures returns nil where no cutter was asked for or can be built. The land
// is a pointed tooth's.
func cutterFigures(t *solve.Tooling, pointed bool) *CutterFigures {
	c := t.Cut
	if c == nil {
		return nil
	}
	f := &CutterFigures{
		SetOver: c.SetOver, TouchHeight: c.TouchHeight, Infeed: c.Infeed,
		RootRadius: c.RootRadius, BackRadius: some(c.BackRadius), BackAngle: some(c.BackAngle.Degrees()),
	}
	if pointed {
		f.Land = &c.Land
	}
	if r := t.Relief; r != nil {
		f.UsableThickness, f.SmallestConcave = &r.UsableThickness, some(r.SmallestConcave)
		f.HeelLimit = some(r.HeelLimit)
		if r.HeelLimit > 0 {
			f.SwingNeeded, f.ClearanceNeeded = some(r.LeastSwing), some(t.Clears.Degrees())
		}
	}
	if t.Formed && t.Relief != nil {
		side := t.Relief.LeastClearance.Degrees()
		f.SideClearance = &side
	}
	if v := t.Speed; v != nil {
		f.CuttingSpeed, f.SpindleSpeed = []float64{v.Low, v.High}, []float64{v.Slow, v.Fast}
	}
	f.Ground = groundFigures(t.Ground, pointed)
	return f
}

func groundFigures(g *cutter.Ground, pointed bool) *GroundFigures {
	if g == nil {
		return nil
	}
	f := &GroundFigures{
		Deviation: 1000 * g.Worst.Off, At: []float64{g.Worst.At.X, g.Worst.At.Y}, RootRadius: g.Cut.RootRadius,
		NearestInfeed: g.Best, NearestDeviation: 1000 * g.BestDeviation.Off,
	}
	if pointed {
		f.Land, f.NearestLand = &g.Cut.Land, &g.BestLand
	}
	for _, p := range g.Undercut {
		f.Undercut = append(f.Undercut, []float64{p.X, p.Y})
	}
	return f
}

func dividingFigures(a *dividing.Answer) *DividingFigures {
	f := &DividingFigures{Turns: a.Turns, Holes: a.Holes, Error: a.Error}
	if a.Circle != 0 {
		f.Circle = &a.Circle
	}
	if c := a.Compound; c != nil {
		f.Compound = &CompoundFigures{
			Turns: c.Turns, Holes: c.First.Holes, Circle: c.First.Circle,
			ThenHoles: c.Second.Holes, ThenCircle: c.Second.Circle, Every: c.Every, Error: c.Error,
		}
	}
	return f
}
