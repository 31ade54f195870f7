package geometry

// Simple reports whether the outline neither crosses nor touches itself. An empty
// outline is simple.
func (o Outline) Simple() bool {
	_, crosses := o.SelfCrossing()
	return !crosses
}

// SelfCrossing returns a point where the outline crosses or touches itself, and
// whether there is one. Points within 1e-9 mm of each other count as one.
func (o Outline) SelfCrossing() (at Point, crosses bool) {
	cs := o.curves()
	newTree(cs).pairs(func(i, j int) bool {
		at, crosses = meetsAgain(cs, i, j)
		return !crosses
	})
	return at, crosses
}

// meetsAgain reports where curves i < j of a closed run meet otherwise than at
// the vertices they share as neighbours.
func meetsAgain(cs []curve, i, j int) (Point, bool) {
	pts, n := meet(&cs[i], &cs[j])
	for _, p := range pts[:n] {
		joint := j == i+1 && p.near(cs[j].From)
		closing := i == 0 && j == len(cs)-1 && p.near(cs[0].From)
		if !joint && !closing {
			return p, true
		}
	}
	return Point{}, false
}
