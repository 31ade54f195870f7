package command

import (
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
}

// DividingFigures are how a wheel is indexed.
type DividingFigures struct {
	Turns  int     `json:"turns"`
	Holes  int     `json:"holes"`
	Circle *int    `json:"circle,omitempty"`
	Error  float64 `json:"error_um"`
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
