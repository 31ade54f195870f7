package crossing

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// Kind says what an addition is.
type Kind string

// The kinds of addition, as in the job file.
const (
	HoleKind   Kind = "hole"   // through the wheel, of Diameter
	CircleKind Kind = "circle" // scribed, of Diameter, about its place
	LineKind   Kind = "line"   // scribed, from its place to ToRadius and ToAngle
	NoteKind   Kind = "note"   // Text at its place
	LeftOut    Kind = ""       // nothing: one that cannot be read, or is refused, and keeps its place in the list
)

// Addition is something of the maker's own on a wheel, at Radius from the wheel's
// centre and Angle clockwise from 12 o'clock, Repeat times evenly round the wheel (0
// and 1 both once). Only holes take metal away.
type Addition struct {
	Kind     Kind
	Radius   float64 // mm
	Angle    geometry.Angle
	Diameter float64        // mm; of holes and circles
	ToRadius float64        // mm; of lines, as ToAngle
	ToAngle  geometry.Angle // clockwise from 12 o'clock
	Repeat   int            // 0 to MostRepeats
	Text     string
}

// MostRepeats is how often an addition may be repeated.
const MostRepeats = 360

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

// holes returns the holes of the addition, none unless it is one.
func (a Addition) holes() []Hole {
	if a.Kind != HoleKind {
		return nil
	}
	var all []Hole
	for _, one := range a.EvenlySpread() {
		all = append(all, Hole{one.Radius, one.Angle, one.Diameter})
	}
	return all
}

// additionField names a field of addition i.
func additionField(i int, name string) geometry.Quantity {
	return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, name))
}

// inRange refuses values that no addition may have.
func (a Addition) inRange(i int) error {
	of := func(name string) geometry.Quantity { return additionField(i, name) }
	switch a.Kind {
	case HoleKind, CircleKind:
		if !(a.Diameter >= geometry.LeastLength) || math.IsInf(a.Diameter, 1) {
			return geometry.AtLeast(of("diameter"), a.Diameter, geometry.LeastLength, "crossing.addition-diameter")
		}
	case LineKind:
		if !(a.ToRadius >= 0) || math.IsInf(a.ToRadius, 1) {
			return geometry.AtLeast(of("to_radius"), a.ToRadius, 0, "crossing.addition-radius-negative")
		}
	case NoteKind:
	case LeftOut:
		return nil
	default:
		return geometry.Refused(of("kind"), 0, "crossing.addition-kind-unknown")
	}
	switch {
	case !(a.Radius >= 0) || math.IsInf(a.Radius, 1):
		return geometry.AtLeast(of("radius"), a.Radius, 0, "crossing.addition-radius-negative")
	case a.Repeat < 0 || a.Repeat > MostRepeats:
		return geometry.Between(of("repeat"), float64(a.Repeat), 0, MostRepeats, "crossing.addition-repeat")
	}
	return nil
}

func (s Spec) additionsInRange() error {
	for i, a := range s.Additions {
		if err := a.inRange(i); err != nil {
			return err
		}
	}
	return nil
}

// edgeShare is how many diameters the middle of a hole should keep from an edge:
// common practice, no source.
const edgeShare = 1.5

// checkAdditions refuses, to within what counts as the same place, holes of the
// maker's own that run into the bore, a window, the teeth, a screw's hole or a hole
// listed before them, and notes those that leave little metal.
func (l *Layout) checkAdditions() error {
	for i, a := range l.Spec.Additions {
		if a.Kind != HoleKind {
			continue
		}
		d := drilling{l.metal(), a}
		d.metal.holes = l.Spec.Screws
		bare := d.largest(2, geometry.LeastLength)
		d.metal.holes = l.otherHoles(i, i)
		if most := d.largest(2, geometry.LeastLength); a.Diameter > most+same {
			limit := d.refusal(i, most)
			if a.Diameter > bare+same {
				return limit
			}
			return l.meeting(i, limit)
		}
		d.metal.holes = l.otherHoles(i, len(l.Spec.Additions))
		if most := d.largest(1/edgeShare, 0); a.Diameter > most+same {
			l.Notes = append(l.Notes, geometry.AtMost(additionField(i, "diameter"), a.Diameter, most, "crossing.addition-near-edge"))
		}
	}
	return nil
}

// otherHoles returns the screws' holes and those of the first so many additions but i.
func (l *Layout) otherHoles(i, first int) []Hole {
	all := append([]Hole(nil), l.Spec.Screws...)
	for j, other := range l.Spec.Additions[:first] {
		if j != i {
			all = append(all, other.holes()...)
		}
	}
	return all
}

// drilling is a hole, repeated, about to be drilled.
type drilling struct {
	metal    metal
	addition Addition
}

// largest returns the largest diameter that leaves so much metal that the edge is
// at least the diameter/share + over away from the hole's middle; 0 or less when
// none does.
func (d drilling) largest(share, over float64) float64 {
	places := d.addition.holes()
	most := math.Inf(1)
	for _, h := range places {
		most = min(most, share*(d.metal.edge(h.Centre())-over))
	}
	if n := len(places); n > 1 {
		// a twin's edge lies half the diameter before its middle
		apart := 2 * d.addition.Radius * math.Sin(math.Pi/float64(n))
		most = min(most, (apart-over)/(1/share+0.5))
	}
	return most
}

// refusal says what is wrong with a hole larger than the most its place has room
// for: its diameter, or where there is no room at all its radius.
func (d drilling) refusal(i int, most float64) *geometry.Limit {
	a := d.addition
	if most >= geometry.LeastLength {
		return geometry.AtMost(additionField(i, "diameter"), a.Diameter, most, "crossing.addition-too-large")
	}
	radius := additionField(i, "radius")
	in, below := d.nearest(a.Radius, 0)
	out, above := d.nearest(a.Radius, d.metal.root)
	switch {
	case below && (!above || a.Radius-in <= out-a.Radius):
		return geometry.AtMost(radius, a.Radius, in, "crossing.addition-too-far-out")
	case above:
		return geometry.AtLeast(radius, a.Radius, out, "crossing.addition-too-far-in")
	}
	return geometry.Refused(radius, a.Radius, "crossing.addition-no-room")
}

// nearest returns the radius nearest to one from which a hole has room, on the way
// to another; false when there is none.
func (d drilling) nearest(from, to float64) (float64, bool) {
	fits := func(r float64) bool {
		d.addition.Radius = r
		return d.addition.Diameter <= d.largest(2, geometry.LeastLength)+same
	}
	from = min(from, d.metal.root)
	for i := 1; i <= steps; i++ {
		if at := from + (to-from)*float64(i)/steps; fits(at) {
			return seek.Last(at, from+(to-from)*float64(i-1)/steps, picometre, fits), true
		}
	}
	return 0, false
}
