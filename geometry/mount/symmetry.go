package mount

import (
	"math"

	"tipline/geometry"
)

// symmetryNotes says that the screws do not stand alike to the arms of a crossed
// wheel: their number has no simple share in the arms', or the first stands
// neither on an axis of the arms nor midway between two.
func (b bench) symmetryNotes() []*geometry.Limit {
	var all []*geometry.Limit
	if b.screws.Count == 1 {
		all = append(all, geometry.AtLeast(ofScrews, 1, 2, "mount.single-screw"))
	}
	for _, s := range b.seats {
		if len(s.Arms) < 2 {
			continue
		}
		if l := b.offSymmetry(s.Arms); l != nil {
			return append(all, l)
		}
	}
	return all
}

// onAxis is how near an axis, in radians, a screw stands on it: rounding, a million
// times over.
const onAxis = 1e-9

// offSymmetry returns what is wrong with the screws beside the arms; nil where they
// stand alike to them.
func (b bench) offSymmetry(arms []geometry.Angle) *geometry.Limit {
	n, k := b.screws.Count, len(arms)
	if n > 1 && n%k != 0 && k%n != 0 {
		return geometry.Refused(ofScrews, float64(n), "mount.screws-off-symmetry")
	}
	// Axes of the arms and of the screws coincide where the first screw stands a
	// whole number of these steps from arm 0.
	step := geometry.Angle(math.Pi) / geometry.Angle(max(n, k))
	from := (b.start - arms[0]).Turn()
	steps := math.Floor(float64(from / step))
	past := from - geometry.Angle(steps)*step
	if off := min(past, step-past); off <= uneven(arms)+onAxis {
		return nil
	}
	low := (arms[0] + geometry.Angle(steps)*step).Turn()
	return geometry.Between(ofStart, float64(b.start), float64(low), float64(low+step), "mount.start-off-symmetry")
}

// uneven returns the most by which an arm stands off an even spread from arm 0.
func uneven(arms []geometry.Angle) geometry.Angle {
	worst := 0.0
	for i, a := range arms {
		even := arms[0] + geometry.FullTurn*geometry.Angle(i)/geometry.Angle(len(arms))
		worst = max(worst, math.Abs(float64((a - even).Normal())))
	}
	return geometry.Angle(worst)
}
