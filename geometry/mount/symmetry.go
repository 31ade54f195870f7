package mount

import (
	"math"
	"slices"

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
		if b.screws.Start == nil && len(axes(s.Arms)) == 0 {
			return append(all, geometry.Refused(ofStart, float64(b.start), "mount.arms-without-symmetry"))
		}
		if b.screws.Start == nil && b.shared(len(s.Arms)) {
			if best := s.alike(b.start, b.screws.Count); math.Abs(float64((best - b.start).Normal())) > onAxis {
				return append(all, geometry.AtLeast(ofStart, float64(b.start), float64(best), "mount.start-lopsided"))
			}
		}
		if l := b.offSymmetry(s.Arms); l != nil {
			return append(all, l)
		}
	}
	return all
}

// alike returns the place nearest to one in which the first of so many screws stands so
// that wheel and screws are their own mirror image, about an axis of the arms.
func (s Seat) alike(start geometry.Angle, screws int) geometry.Angle {
	best, least := start, math.Inf(1)
	step := geometry.Angle(math.Pi) / geometry.Angle(screws)
	for _, axis := range axes(s.Arms) {
		past := start - axis
		off := past - step*geometry.Angle(math.Round(float64(past/step)))
		if far := math.Abs(float64(off)); far < least-onAxis {
			best, least = (start - off).Turn(), far
		}
	}
	return best
}

// axes returns the axes about which the arms are their own mirror image, each by one
// of its two directions.
func axes(arms []geometry.Angle) []geometry.Angle {
	var all []geometry.Angle
	for _, other := range arms {
		axis := (arms[0] + other) / 2
		mirrored := func(a geometry.Angle) bool {
			return slices.ContainsFunc(arms, func(b geometry.Angle) bool {
				return math.Abs(float64((2*axis - a - b).Normal())) <= onAxis
			})
		}
		if !slices.ContainsFunc(arms, func(a geometry.Angle) bool { return !mirrored(a) }) {
			all = append(all, axis)
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
	if !b.shared(k) {
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

// shared reports whether the number of screws has a simple share in that of the arms.
func (b bench) shared(arms int) bool {
	n := b.screws.Count
	return n <= 1 || n%arms == 0 || arms%n == 0
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
