// Package crossing lays out the arms and windows of a wheel: arms on tooth tips,
// filleted windows, saw lines and start holes, and what the crossing does to
// mass, balance and stiffness.
package crossing

import "tipline/geometry"

// Blank is the wheel the crossing is cut in.
type Blank struct {
	Count      int
	TipRadius  float64
	RootRadius float64
	Bore       float64          // diameter; 0 for none
	Outline    geometry.Outline // teeth; of a wheel known only by measurement the circle that weighs the same
	Thickness  float64
	Density    float64 // kg/m³
	Young      float64 // GPa

	Area, Polar float64 // of the outline, mm² and mm⁴, as Weighed works them out; 0 until then
}

// Arm is one arm of a layout.
type Arm struct {
	Tip       int            // the tip it stands on, or nearest to
	Angle     geometry.Angle // clockwise from 12 o'clock
	Deviation geometry.Angle // from that tip, clockwise positive; 0 on tips
}

// Window is the opening between arm j and arm j+1.
type Window struct {
	Outline   geometry.Outline   // anticlockwise
	SawLine   []geometry.Outline // the window inset by the allowance; none when the allowance is 0
	StartHole geometry.Outline   // a circle; empty when none fits
	Start     geometry.Point     // its centre
	Area      float64            // mm²
	Cut       float64            // how far the saw goes: round the saw lines, or the window where nothing is left for filing, mm
	Chord     float64            // dividers from arm j's tip to arm j+1's, mm
}

// Section is a place along an arm, between hub and rim circle, fillets not counted.
type Section struct {
	Radius float64 // from the wheel's centre, of the place on the arm's centre line
	Width  float64 // square to the centre line
	Area   float64 // width × thickness, mm²
}

// Figures are what a wheel comes to, net of bore, windows and holes.
type Figures struct {
	Area    float64 // mm²
	Mass    float64 // g
	Inertia float64 // g·mm² about the axis
}

// Layout is a crossing worked out.
type Layout struct {
	Spec    Spec
	Blank   Blank
	Arms    []Arm
	Windows []Window

	RimRadius float64 // of the windows' outer edge
	HubRadius float64

	Area         float64        // of metal, mm²
	Mass         float64        // g
	Inertia      float64        // g·mm² about the axis
	Unbalance    float64        // g·mm
	Heavy        geometry.Angle // direction of the heavy side, clockwise from 12 o'clock
	RemovedShare float64        // windows ÷ (tooth outline − bore), 0 to 1
	WindUp       float64        // µm of rim movement per newton at the rim
	Narrowest    Section        // of an arm
	Balance      *Hole          // that would balance the wheel; nil when it is balanced or no place takes one
	Uncrossed    Figures        // of the same wheel without windows
	Divides      []int          // the nearest arm counts that divide the teeth, when Arms does not
	Notes        []*geometry.Limit
}
