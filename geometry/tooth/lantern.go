package tooth

import (
	"math"

	"tipline/assets/tables"
	"tipline/geometry"
)

// Lantern is a lantern pinion: trundles, round pins, on a circle between two
// shrouds.
type Lantern struct {
	Leaves  int     // trundles, 3 to 2000
	Module  float64 // mm, 0.01 and more
	Trundle float64 // diameter of a trundle in mm; 0 for the usual one
}

// UsualTrundle returns the diameter of a trundle in mm where none is said: 1.05
// modules up to 10 trundles, 1.25 above. That is the thickness of the leaf of a
// pinion of the same count, the rule of the factories in Goodrich, The Modern
// Clock (1905), ch. XIV; the figures are common practice.
func UsualTrundle(leaves int, module float64) float64 {
	return proportionOf(leaves).thickness * module
}

// TrundleDiameter returns the diameter of the trundles in mm.
func (l Lantern) TrundleDiameter() float64 {
	if l.Trundle == 0 {
		return UsualTrundle(l.Leaves, l.Module)
	}
	return l.Trundle
}

// PitchRadius returns the radius in mm of the circle on which the trundles stand.
func (l Lantern) PitchRadius() float64 { return l.Module * float64(l.Leaves) / 2 }

// LanternPinion is a lantern pinion worked out: what its shrouds are drilled and
// turned to, in mm.
type LanternPinion struct {
	PitchRadius     float64
	TrundleDiameter float64
	Holes           []TrundleHole     // clockwise from 12 o'clock, seen from the shroud's outside
	Step            float64           // chord from a hole to the next, for the dividers
	Between         float64           // metal between neighbouring holes
	Shroud          float64           // least diameter of a shroud
	LargestBore     float64           // largest bore of a shroud; 0 where there is no room for one
	Drill           tables.TwistDrill // nearest to the trundles' diameter
}

// TrundleHole is the hole of one trundle.
type TrundleHole struct {
	At    geometry.Point // its centre, the pinion's at the origin
	Turn  geometry.Angle // clockwise from the first hole
	Chord float64        // straight from the first hole, in mm
}

// Pinion works the lantern pinion out. Between a hole and the edge of its shroud,
// or the bore, half a trundle of metal is left (common practice, no source).
func (l Lantern) Pinion() (LanternPinion, error) {
	if err := l.check(); err != nil {
		return LanternPinion{}, err
	}
	d, r := l.TrundleDiameter(), l.PitchRadius()
	p := LanternPinion{
		PitchRadius: r, TrundleDiameter: d, Holes: make([]TrundleHole, l.Leaves),
		Step: l.step(), Between: l.step() - d,
		Shroud: 2 * (r + d), LargestBore: math.Max(2*(r-d), 0),
		Drill: tables.NearestDrill(d),
	}
	for i := range p.Holes {
		turn := geometry.FullTurn * geometry.Angle(i) / geometry.Angle(l.Leaves)
		p.Holes[i] = TrundleHole{
			At: geometry.Polar(r, geometry.Clock(turn)), Turn: turn,
			Chord: 2 * r * math.Sin(float64(turn)/2),
		}
	}
	return p, nil
}

// CheckBore refuses a bore of the shrouds, a diameter in mm, that leaves less than
// half a trundle of metal to the holes, or is less than nothing; 0 is no bore.
func (p LanternPinion) CheckBore(bore float64) error {
	if !(bore >= 0 && bore <= p.LargestBore) {
		return geometry.Between("bore", bore, 0, p.LargestBore, "tooth.shroud-bore")
	}
	return nil
}

// step returns the chord between neighbouring trundles.
func (l Lantern) step() float64 {
	return 2 * l.PitchRadius() * math.Sin(math.Pi/float64(l.Leaves))
}

// check refuses a count or size outside what a job may have and trundles whose
// holes would meet.
func (l Lantern) check() error {
	if l.Leaves < fewestLeaves || l.Leaves > mostLeaves {
		return geometry.Between(pinionLeaves, float64(l.Leaves), fewestLeaves, mostLeaves, "tooth.trundles")
	}
	most := geometry.MostLength / (float64(l.Leaves) + 2*UsualTrundle(l.Leaves, 1))
	if !(l.Module >= geometry.LeastLength && l.Module <= most) {
		return geometry.Between(pinionModule, l.Module, geometry.LeastLength, most, "tooth.pinion-module")
	}
	thickest := math.Min(l.thickestTrundle(), geometry.MostLength/2-l.PitchRadius())
	if d := l.TrundleDiameter(); !(d >= geometry.LeastLength && d <= thickest) {
		return geometry.Between(pinionTrundle, d, geometry.LeastLength, thickest, "tooth.trundles-meet")
	}
	return nil
}

// thickestTrundle returns the greatest diameter that leaves metal between the
// holes; with three leaves or more it is more than the least module.
func (l Lantern) thickestTrundle() float64 { return l.step() - geometry.LeastLength }
