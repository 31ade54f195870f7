// Package template draws a worked-out wheel: the templates to glue on brass or
// to grind by, the drawings of each step, and the shop cards. Every drawing is in
// millimetres, on named layers, and each item says which field of which part
// made it.
package template

import (
	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Style is how text is made: in which words and which units.
type Style struct {
	Words words.Words
	Units measure.Units
}

// Wheel is a wheel or pinion worked out, as a template needs it. Lengths in
// millimetres. What could not be built or was not asked for is nil.
type Wheel struct {
	ID, Name  string
	Hand      string // "clockwise" or "anticlockwise", seen from the template's side
	Enters    string // "back" when the rake face enters from the template's back
	Bore      float64
	Thickness float64
	Oversize  float64 // on the blank's diameter
	Material  tables.Material
	Teeth     *tooth.Wheel         // or a pinion's leaves
	Lantern   *tooth.LanternPinion // nil unless it is a lantern pinion, which has no Teeth
	Cut       *cutter.Cut
	Relief    *cutter.Relief
	Crossing  *crossing.Layout
	Dividing  *dividing.Answer

	Mounting  *mount.Mounting     // in the wheel's own coordinates, in a stack too
	Collet    mount.Collet        // zero where nothing is said of it
	Thread    tables.Thread       // of its screws; zero unless it is mounted
	Additions []crossing.Addition // the maker's own

	Rake      geometry.Angle // top rake of the bit; 0 for none
	Formed    bool           // the relief is ground by a formed wheel, else edge by edge
	WheelEdge float64        // radius of the grinding wheel's edge; 0 when not said

	Ground     *cutter.Ground  // what the bit cuts as it was measured; nil unless it was
	BitBase    float64         // the y at which its lowest point was typed
	Photograph *render.Picture // of its rake face, cutting end down, at full size, the form's x = y = 0 at the origin; nil for none
}

// title returns what a wheel is called on its sheets: its id when it has no name.
func (w Wheel) title() string {
	if w.Name == "" {
		return w.ID
	}
	return w.Name
}
