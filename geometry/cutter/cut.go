// Package cutter works out single-point form cutters: the form as it is drawn on
// the rake face, how the cutter is set, what it leaves, and how it must be
// relieved. It knows outlines, no teeth.
//
// Tool frame: x across the tool, y along the infeed from the cutting end to the
// shank. x = 0 is a pointed form's foremost extent and the middle of a space's
// form; y = 0 is the form's lowest point. The wheel's centre lies at
// (SetOver, −Height).
package cutter

import "tipline/geometry"

// Form is the outline ground on the bit, seen on its rake face.
type Form struct {
	// Edge is what is ground: from the front at the shank's end, down, through
	// the cutting end, and up the back to the shank's end.
	Edge geometry.Chain
	// StockWidth is the width of the bit the form is ground from; 0 when not said.
	StockWidth float64
	// StockFront is the x of the stock's front side; the other stands StockWidth
	// beyond it. A pointed form is ground from the front of its stock, a space's
	// form from the middle.
	StockFront float64
	// Top is the y at which the drawing of the form is cut off.
	Top float64
}

// Cut is a form, its setting, and the space it leaves in a wheel of Count teeth.
type Cut struct {
	Form      Form
	Count     int
	TipRadius float64 // R

	SetOver     float64        // e, sideways offset of the cutter from the wheel's centre
	Undercut    geometry.Angle // u, sin u = e/R
	TouchHeight float64        // H at which form and blank first meet
	Infeed      float64        // D, travel from first touch to depth
	Land        float64        // t, arc length left on the tip
	RootRadius  float64        // least distance from the wheel's centre to the form at depth
	BackRadius  float64        // R_b; 0 for a straight back
	BackAngle   geometry.Angle // lean of a straight back from the infeed; 0 for an arc

	swept sweep // what the form leaves, whole
}

// Height returns H, how far the wheel's centre lies below the form's lowest
// point at depth.
func (c Cut) Height() float64 { return c.TouchHeight - c.Infeed }

// Relief is what the clearance makes of a form.
type Relief struct {
	Clearance geometry.Angle
	Thickness float64 // of the stock
	Swing     float64 // radius from spindle axis to cutting end; 0 when not swung

	Heel            []geometry.Outline // the section at the thickness, or at UsableThickness if less; none where all of it ends there
	UsableThickness float64            // where the inset pinches out, else Thickness
	HeelLimit       float64            // greatest depth behind the rake face as far as which every section clears; 0 when not swung, or when nothing fouls
	HeelAt          geometry.Point     // the point of the edge where that happens
	LeastSwing      float64            // least swing at which every section as far as UsableThickness clears
	LeastClearance  geometry.Angle     // the least along the cutting edge, measured square to it
	LeastAt         geometry.Point     // where; the zero point where it is the same all along

	SmallestConcave float64 // least radius of a concave arc of the edge; 0 when there is none
}
