package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// The proportions of a wheel for a lantern pinion, in modules and in pitches
// (common practice, no source).
const (
	rootClearance = 0.1  // between a trundle on the line of centres and the root circle
	sidePlay      = 0.05 // of a trundle in its space, along the pitch circle
	wantedContact = 1.1  // pitches that a tooth drives, if its point lets it
)

// noLand is the land, in mm, under which a tooth is a point: 1 µm.
const noLand = 1e-3

// LanternDriver is a wheel that drives a lantern pinion. Its flanks are exactly
// what the trundles leave it, cut off where the next trundle has taken over.
type LanternDriver struct {
	Count   int     // teeth, 3 to 2000
	Module  float64 // mm, 0.01 and more
	Leaves  int     // trundles of the pinion driven, 3 to 2000
	Trundle float64 // diameter of a trundle in mm; 0 for the usual one
	Play    float64 // of a trundle in its space, in mm along the pitch circle; 0 for the usual 0.05 modules
}

// Driving is a wheel for a lantern pinion worked out, with how it drives.
type Driving struct {
	Wheel   Wheel
	Contact float64        // contact ratio: the pitches through which one tooth drives one trundle, 1 at least
	Begins  geometry.Angle // how far past the line of centres, about the wheel, a trundle is first driven
	Ends    geometry.Angle // and how far it is driven last
	Land    float64        // width of the tip along its circle in mm; 0 for a point
	Off     float64        // greatest distance in mm of the flanks' arcs from the exact curve, 1 µm at most
	Arbor   float64        // diameter in mm of the thickest arbor inside the trundles that the tips clear; 0 for none
}

// TrundleDiameter returns the diameter of the trundles in mm.
func (d LanternDriver) TrundleDiameter() float64 {
	return Lantern{Leaves: d.Leaves, Module: d.Module, Trundle: d.Trundle}.TrundleDiameter()
}

// SidePlay returns the play of a trundle in its space, in mm along the pitch
// circle, half of it on either side.
func (d LanternDriver) SidePlay() float64 {
	if d.Play == 0 {
		return sidePlay * d.Module
	}
	return d.Play
}

// PitchRadius returns the radius of the pitch circle in mm.
func (d LanternDriver) PitchRadius() float64 { return d.Module * float64(d.Count) / 2 }

// RootRadius returns the radius of the root circle in mm: a tenth of a module
// below a trundle on the line of centres.
func (d LanternDriver) RootRadius() float64 {
	return d.PitchRadius() - d.TrundleDiameter()/2 - rootClearance*d.Module
}

// Wheel returns the wheel, as Drive does.
func (d LanternDriver) Wheel() (Wheel, error) {
	w, err := d.Drive()
	return w.Wheel, err
}

// Drive works the wheel out. Its outline runs anticlockwise from tip 0, a flank, a
// straight side, the root, a side, a flank and, where the tooth is no point, the
// land; with a land its middle stands at 12 o'clock. Its space runs clockwise,
// without lands. A wheel whose tooth ends before the next trundle is driven is a
// *geometry.Limit.
func (d LanternDriver) Drive() (Driving, error) {
	if err := d.check(); err != nil {
		return Driving{}, err
	}
	a := d.action()
	side, off := d.side(a)
	tooth := d.around(a, side)
	outline, err := around(d.Count, tooth)
	if err != nil {
		return Driving{}, err
	}
	space, err := d.space(a, tooth)
	tip := a.tipRadius()
	return Driving{
		Wheel: Wheel{
			Form: "lantern driver", Count: d.Count,
			TipRadius: tip, RootRadius: d.RootRadius(), PitchRadius: d.PitchRadius(),
			Outline: outline, Space: space,
		},
		Contact: a.contact(), Begins: a.wheelTurn(a.from), Ends: a.wheelTurn(a.to),
		Land: a.land(), Off: off, Arbor: math.Max(2*(a.wheel+a.pinion-tip), 0),
	}, err
}

// SpaceForm returns the form that cuts the wheel's spaces, fed in without
// set-over to the root circle, ground on a bit of that width in mm; 0 is no
// width. A bit narrower than the space is a *geometry.Limit.
func (d LanternDriver) SpaceForm(stockWidth float64) (cutter.Cut, error) {
	w, err := d.Wheel()
	if err != nil {
		return cutter.Cut{}, err
	}
	return cutter.Space(w.Space, d.Count, w.TipRadius, stockWidth)
}

// side returns the left side of a space whose middle is at 12 o'clock, from the
// root outwards, and how far its arcs are from the curve. Below the flank it goes
// straight down: that clears the trundle, for a flank begins below the trundle's
// widest place.
func (d LanternDriver) side(a action) ([]geometry.Vertex, float64) {
	f := a.fitted(a.from, a.to)
	side := append(make([]geometry.Vertex, 0, len(f.vertices)+1), geometry.Vertex{Quantity: "teeth.module"})
	for _, v := range f.vertices {
		side = append(side, geometry.Vertex{Point: v.Rotate(a.eased), Bulge: v.Bulge, Quantity: "teeth.trundle"})
	}
	foot := &side[0].Point
	foot.X = side[1].X
	foot.Y = math.Sqrt((d.RootRadius() - foot.X) * (d.RootRadius() + foot.X))
	return side, f.off
}

// around returns the vertices of a tooth from tip 0 anticlockwise to before the
// next tip: the space's right side inwards, its floor, its left side outwards, and
// the next tooth's land.
func (d LanternDriver) around(a action, side []geometry.Vertex) []geometry.Vertex {
	half := math.Pi / geometry.Angle(d.Count)
	n := len(side)
	tooth := make([]geometry.Vertex, 0, 2*n)
	for i := n - 1; i >= 0; i-- {
		v := geometry.Vertex{Point: side[i].Mirror()}
		if i > 0 {
			v.Bulge, v.Quantity = side[i-1].Bulge, side[i-1].Quantity
		}
		tooth = append(tooth, v)
	}
	floor := math.Asin(-side[0].X / d.RootRadius())
	tooth[n-1].Bulge, tooth[n-1].Quantity = math.Tan(floor/2), "teeth.module"
	tooth = append(tooth, side...)
	for i := range tooth {
		tooth[i].Point = tooth[i].Rotate(half)
	}
	if a.pointed() {
		tooth[0].Point = geometry.Polar(a.tipRadius(), geometry.Clock(0))
		return tooth[:2*n-1]
	}
	tooth[2*n-1].Bulge, tooth[2*n-1].Quantity = math.Tan(float64(a.landAngle())/4), "teeth.leaves"
	return tooth
}

func (d LanternDriver) space(a action, tooth []geometry.Vertex) (geometry.Chain, error) {
	if a.pointed() {
		return spaceTo(d.Count, tooth, tooth[0].Point)
	}
	pitch := geometry.FullTurn / geometry.Angle(d.Count)
	last := len(tooth) - 1
	return spaceTo(d.Count, tooth[:last], tooth[last].Rotate(-pitch))
}
