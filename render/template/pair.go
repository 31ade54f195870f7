package template

import "tipline/geometry/depthing"

// Pair is a wheel and pinion in mesh, as a drawing needs it. Lengths in
// millimetres.
type Pair struct {
	ID, Name         string
	Wheel, Pinion    Wheel // what drives and what is driven
	Driver, Follower depthing.Gear
	Nominal          float64 // the distance of centres at which the pitch circles touch
	Turn             depthing.Turn
}
