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
	// Waist is the width of a waisted arm at the radius WaistAt. At a WaistAt of 0 the
	// waist is where the arm is narrowest.
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

// Hole is a round hole through the wheel.
type Hole struct {
	Radius   float64        // of its centre, from the wheel's
	Angle    geometry.Angle // of its centre, clockwise from 12 o'clock
	Diameter float64
}

// Kind says what an addition is.
type Kind string

// The kinds of addition, as in the job file.
const (
	HoleKind   Kind = "hole"   // through the wheel, of Diameter
	CircleKind Kind = "circle" // scribed, of Diameter, about its place
	LineKind   Kind = "line"   // scribed, from its place to ToRadius and ToAngle
	NoteKind   Kind = "note"   // Text at its place
)

// Addition is something of the maker's own on a wheel, at Radius from the wheel's
// centre and Angle clockwise from 12 o'clock, Repeat times evenly round the wheel (0
// and 1 both once). Only holes take metal away.
type Addition struct {
	Kind     Kind
	Radius   float64
	Angle    geometry.Angle
	Diameter float64
	ToRadius float64
	ToAngle  geometry.Angle
	Repeat   int
	Text     string
}

// EvenlySpread returns the places at which the addition stands, each turned on by an
// equal part of the circle.
func (a Addition) EvenlySpread() []Addition {
	all := make([]Addition, max(1, a.Repeat))
	for i := range all {
		turn := geometry.FullTurn * geometry.Angle(i) / geometry.Angle(len(all))
		all[i] = a
		all[i].Repeat = 1
		all[i].Angle, all[i].ToAngle = a.Angle+turn, a.ToAngle+turn
	}
	return all
}
