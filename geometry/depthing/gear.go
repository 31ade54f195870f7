// Package depthing puts a wheel and its pinion in mesh and turns them, and works
// out trains of such pairs. It finds contact from the outlines alone and knows
// nothing of the theory that made them.
package depthing

import (
	"math"

	"tipline/geometry"
)

// Gear is a wheel or pinion as its neighbour meets it: one tooth, leaf or trundle
// at 12 o'clock of the gear's own coordinates, centre at the origin, and how many
// there are of it.
type Gear struct {
	Tooth       geometry.Chain // anticlockwise, metal to the left: floor to floor of a tooth, all round a trundle
	Count       int            // 3 to 2000
	PitchRadius float64        // mm; where backlash and gaps are measured
	Floor       float64        // mm, how near the centre the spaces reach; 0 where nothing stands in the way
}

// What a job may ask of a gear.
const (
	fewestTeeth = 3
	mostTeeth   = 2000
)

// Toothed returns the gear of a whole wheel's outline, centre at the origin and a
// tooth at 12 o'clock, run either way round. The outline must repeat count times
// to 1 µm.
func Toothed(outline geometry.Outline, count int, pitchRadius float64) (Gear, error) {
	if err := checkCount(count); err != nil {
		return Gear{}, err
	}
	if outline.Area() < 0 {
		outline = outline.Reverse()
	}
	each, ok := outline.Repeats(count, sameTooth)
	if !ok {
		return Gear{}, geometry.Between("teeth.count", float64(count), fewestTeeth, mostTeeth, "depthing.uneven")
	}
	at, share, floor := deepest(outline, each)
	tooth, err := pitchFrom(outline, at, each, share)
	if err != nil {
		return Gear{}, err
	}
	g := Gear{topmost(tooth, count), count, pitchRadius, floor}
	return g, g.check()
}

// Lantern returns the gear of trundles of that diameter on a pitch circle. Its
// floor is 0: between the shrouds nothing stands in the way of a tip.
func Lantern(count int, pitchRadius, trundle float64) (Gear, error) {
	if err := checkCount(count); err != nil {
		return Gear{}, err
	}
	if err := checkPitchRadius(pitchRadius); err != nil {
		return Gear{}, err
	}
	apart := 2 * pitchRadius * math.Sin(math.Pi/float64(count))
	if !(trundle > 0 && trundle < apart) {
		return Gear{}, geometry.Between("teeth.trundle", trundle, 0, apart, "depthing.trundle")
	}
	circle, err := geometry.Circle(geometry.Point{Y: pitchRadius}, trundle/2, "teeth.trundle")
	if err != nil {
		return Gear{}, err
	}
	vertices := circle.Vertices()
	chain, err := geometry.NewChain(append(vertices, vertices[0]))
	if err != nil {
		return Gear{}, err
	}
	g := Gear{chain, count, pitchRadius, 0}
	return g, g.check()
}

// Mirror returns the gear mirrored left to right: a pair of mirrored gears is the
// pair driven the other way.
func (g Gear) Mirror() Gear {
	g.Tooth = g.Tooth.Mirror().Reverse()
	return g
}

// Pitch returns the angle from one tooth to the next.
func (g Gear) Pitch() geometry.Angle { return geometry.FullTurn / geometry.Angle(g.Count) }

// TipRadius returns how far from the centre the tooth reaches, in mm.
func (g Gear) TipRadius() float64 {
	most := 0.0
	for i := range g.Tooth.Len() {
		_, far := radii(g.Tooth.Segment(i))
		most = math.Max(most, far)
	}
	return most
}

func (g Gear) check() error {
	if err := checkCount(g.Count); err != nil {
		return err
	}
	if err := checkPitchRadius(g.PitchRadius); err != nil {
		return err
	}
	if tip := g.TipRadius(); !(tip > 0 && tip <= 2*geometry.MostLength) {
		return geometry.Refused("teeth.count", float64(g.Count), "depthing.no-tooth")
	}
	return nil
}

func checkCount(count int) error {
	if count < fewestTeeth || count > mostTeeth {
		return geometry.Between("teeth.count", float64(count), fewestTeeth, mostTeeth, "depthing.count")
	}
	return nil
}

func checkPitchRadius(radius float64) error {
	if !(radius > 0 && radius <= geometry.MostLength) {
		return geometry.Between("teeth.module", radius, 0, geometry.MostLength, "depthing.pitch-radius")
	}
	return nil
}
