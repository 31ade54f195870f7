// Package tooth makes the outlines of toothed wheels: cycloidal wheels, pointed
// wheels and wheels known only by measurement.
package tooth

import "tipline/geometry"

// Wheel is a toothed wheel, centre at the origin, tip 0 at 12 o'clock, tips
// numbered clockwise.
type Wheel struct {
	Form        string // as in the job file: "cycloidal", "pointed", …
	Count       int
	TipRadius   float64
	RootRadius  float64
	PitchRadius float64          // 0 where the form has none
	Outline     geometry.Outline // the whole wheel without bore; the tip circle for a measured wheel
	Space       geometry.Chain   // one space, at 12 o'clock + half a pitch, in the wheel's coordinates
}

// Tip returns the direction of tip i, clockwise from 12 o'clock.
func (w Wheel) Tip(i int) geometry.Angle {
	return geometry.Clock(geometry.FullTurn * geometry.Angle(i) / geometry.Angle(w.Count))
}
