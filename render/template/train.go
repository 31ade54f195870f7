package template

import (
	"math/big"

	"tipline/geometry/depthing"
)

// Train is the way from one arbor to another through pairs, as a drawing needs it.
// Lengths in millimetres.
type Train struct {
	ID      string
	Arbors  []Arbor  // passed, in order
	Ratio   *big.Rat // turns of the last arbor to one of the first
	Reverse bool     // the last arbor turns against the first
	PerHour *big.Rat // turns of the last arbor an hour; nil where not known
	Beat    *depthing.Beat
}

// Arbor is one arbor of a train.
type Arbor struct {
	Name    string
	Driven  Toothed  // by the arbor before; nothing on the first
	Driver  Toothed  // of the arbor after, or the escape wheel; nothing on a last one without
	Centres float64  // distance to the arbor after
	Turns   *big.Rat // to one turn of the first
}

// Toothed is a wheel or pinion of a train; nothing if it has no teeth.
type Toothed struct {
	Name   string
	Count  int
	Radius float64 // of the pitch circle, or of the tips where the teeth have none
	Leaves bool    // a pinion
}

// title returns what the train is called: its ends.
func (t Train) title() string {
	if len(t.Arbors) == 0 {
		return t.ID
	}
	return t.Arbors[0].Name + " – " + t.Arbors[len(t.Arbors)-1].Name
}
