package dividing

import (
	"slices"

	"tipline/assets/tables"
)

// plates returns the circles as they lie together on plates, which decides what
// two moves can be made with. A list is typed without its plates. Where a handbook
// set has every circle of it, they lie as in that set. Else those handbook plates
// that are typed whole are plates, and the rest is taken to be one more.
func (h Head) plates() [][]int {
	sets := [][][]int{tables.PlatesOf(tables.ThreePlates), tables.PlatesOf(tables.OnePlate)}
	for _, set := range sets {
		if together := common(set, h.Circles); len(slices.Concat(together...)) == len(h.Circles) {
			return together
		}
	}
	var whole [][]int
	for _, plate := range slices.Concat(sets...) {
		if len(common([][]int{h.Circles}, plate)[0]) == len(plate) {
			whole = append(whole, plate)
		}
	}
	used := slices.Concat(whole...)
	rest := slices.DeleteFunc(slices.Clone(h.Circles), func(c int) bool { return slices.Contains(used, c) })
	return append(whole, rest)
}

// common returns what each plate of a set has of some circles.
func common(set [][]int, circles []int) [][]int {
	have := make([][]int, len(set))
	for i, plate := range set {
		have[i] = slices.DeleteFunc(slices.Clone(circles), func(c int) bool { return !slices.Contains(plate, c) })
	}
	return have
}
