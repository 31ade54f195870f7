package crossing

import "tipline/geometry"

// Placing says how arms stand when their number does not divide the teeth.
type Placing string

// The placings, as in the job file.
const (
	OnTips Placing = "on tips" // each arm on the nearest tip
	Equal  Placing = "equal"   // arms evenly spread
)

// Style says how an arm's sides run.
type Style string

// The styles, as in the job file.
const (
	Straight Style = "straight" // both sides straight, from hub to rim
	Swept    Style = "swept"    // the centre line an arc that leaves the hub radially
	Waisted  Style = "waisted"  // each side the arc through its hub, waist and rim points
)

// Spec is what the maker asks of a crossing. Lengths in millimetres. The zero
// Style is Straight, the zero Placing OnTips.
type Spec struct {
	Arms        int
	Placing     Placing
	Style       Style
	Rim         float64 // radial, from root circle to the windows
	Hub         float64 // diameter
	ArmAtRim    float64 // width
	ArmAtHub    float64
	FilletAtRim float64 // radius
	FilletAtHub float64

	// Sweep is the angle, seen from the wheel's centre, from the hub end of a swept
	// arm's centre line to its rim end, clockwise positive. The rim end stands on the
	// tip.
	Sweep geometry.Angle
	// Waist is the width of a waisted arm at the distance WaistAt from the wheel's
	// centre, and no more than at either end. At a WaistAt of 0 the waist is where the
	// arm is narrowest; elsewhere the arc through the three points may be a little
	// narrower beside it, which is noted.
	Waist, WaistAt float64
	// OuterRadius is the radius of the arc that is each window's outer edge; 0 for the
	// rim's own circle. The rim is nowhere narrower than Rim: an arc of less than that
	// circle's radius touches it in the window's middle, one of more meets it where
	// the arms do.
	OuterRadius float64

	Allowance    float64 // left for filing, window to saw line
	StartHole    float64 // diameter
	BladeTurning float64 // least radius the blade turns in; 0 when not known
	BladePitch   float64 // of the blade's teeth, from one to the next; 0 when not known

	Screws    []Hole     // weighed; that they find metal is the mount's to check
	Additions []Addition // the maker's own
}
