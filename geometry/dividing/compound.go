package dividing

import "tipline/geometry"

// mostRounds is how many times the work may go round while it is divided.
// mostOnPlate and finest are how many circles of a plate, and of how many holes,
// are tried in pairs: beyond any that are made.
const (
	mostRounds  = 12
	mostOnPlate = 40
	finest      = 400
)

// Move is a number of holes on a circle, fewer than the circle has.
type Move struct{ Holes, Circle int }

// Compound is a step made of two moves on one plate: whole turns and the first
// move by the crank over the plate, then the second by the plate together with
// the crank, pulled back from the stop behind it; less than nothing is backwards.
// The step is repeated for every tooth, so that its error adds up. Each leads
// Every teeth on, and as Every has no factor in common with the number of
// divisions, every tooth is come to when the work has gone round Every times.
type Compound struct {
	Every  int // 1 for the next tooth
	Turns  int
	First  Move
	Second Move
	Exact  bool
	Error  float64        // greatest error at the tip circle in µm, 0 when exact
	Off    geometry.Angle // by which one step turns the work too far
}

// Backwards reports whether the second move goes against the first. The slack of
// worm and wheel must then be taken up by going past and coming on again.
func (c Compound) Backwards() bool { return c.Second.Holes < 0 }

// Order returns the teeth in the order in which the Compound comes to them; one
// after the other where there is none.
func (a Answer) Order() []int {
	every := 1
	if a.Compound != nil {
		every = a.Compound.Every
	}
	order := make([]int, a.Divisions)
	for i := range order {
		order[i] = i * every % a.Divisions
	}
	return order
}

// Advice returns the catalogue's keys for what the maker must mind while indexing.
func (a Answer) Advice() []string {
	keys := []string{"dividing.one-way"}
	if a.Compound != nil && a.Compound.Backwards() {
		keys = append(keys, "dividing.compound-backwards")
	}
	return keys
}

// step is a Compound that is being weighed against others.
type step struct {
	every, of, n  int // leads to of/n of a crank turn
	turns         int
	first, second Move
	reach, parts  int // takes reach/parts of a turn
	off           int // which is off/(parts·n) of one too far
}

// better reports whether t is nearer than u, or as near with fewer holes. Both
// are of the same number of divisions.
func (t step) better(u step) bool {
	if t.farther(u) || u.farther(t) {
		return u.farther(t)
	}
	if t.every != u.every {
		return t.every < u.every
	}
	return t.holes() < u.holes()
}

// farther reports whether t misses its place by more than u does.
func (t step) farther(u step) bool { return abs(t.off)*u.parts > abs(u.off)*t.parts }

func (t step) holes() int { return t.first.Holes + abs(t.second.Holes) }

// compound returns the compound step that comes nearest; nil where no plate has
// two circles. An exact one, if there is any, leads from tooth to tooth: going
// round more often only helps where none is exact.
func (h Head) compound(n int, tipRadius float64) *Compound {
	var best *step
	for every := 1; every <= mostRounds && every <= n; every++ {
		if gcd(every, n) != 1 {
			continue
		}
		for _, plate := range h.plates() {
			best = nearer(plate, step{every: every, of: every * h.Ratio, n: n}, best)
		}
		if best != nil && best.off == 0 {
			break
		}
	}
	if best == nil {
		return nil
	}
	off := geometry.FullTurn * geometry.Angle(float64(best.off)/float64(best.parts)/float64(n)/float64(h.Ratio))
	c := &Compound{Every: best.every, Turns: best.turns, First: best.first, Second: best.second, Exact: best.off == 0, Off: off}
	c.Error = 1000 * tipRadius * float64(n-1) * max(float64(off), -float64(off))
	return c
}

// nearer returns the step on two circles of a plate that is better than the best
// so far, or that one. asked says what the step is to lead to.
func nearer(plate []int, asked step, best *step) *step {
	plate = plate[:min(len(plate), mostOnPlate)]
	for i, a := range plate {
		for _, b := range plate[:i] {
			if a == b || max(a, b) > finest {
				continue
			}
			t := asked.among(a, b)
			if best != nil && t.farther(*best) {
				continue
			}
			if t, ok := t.split(a, b); ok && (best == nil || t.better(*best)) {
				best = &t
			}
		}
	}
	return best
}

// among returns the step in the parts of a turn that circles of a and b holes
// together reach: as many as their least common multiple.
func (t step) among(a, b int) step {
	t.parts = a / gcd(a, b) * b
	t.reach = (2*t.of*t.parts + t.n) / (2 * t.n)
	t.off = t.reach*t.n - t.of*t.parts
	return t
}

// split makes the step of two moves, the fewest holes moved; false where one of
// the two would do without the other.
func (t step) split(a, b int) (step, bool) {
	best, found := t, false
	for x := 1; x < a; x++ {
		rest := t.reach - x*(t.parts/a)
		if mod(rest, t.parts/b) != 0 {
			continue
		}
		y := rest / (t.parts / b) // holes of b, whole turns among them
		for _, holes := range []int{mod(y, b), mod(y, b) - b} {
			t.turns, t.first, t.second = (y-holes)/b, Move{x, a}, Move{holes, b}
			if t.turns >= 0 && holes != 0 && holes != -b && (!found || t.better(best)) {
				best, found = t, true
			}
		}
	}
	return best, found
}

func abs(v int) int { return max(v, -v) }

// mod returns the remainder of v, never less than nothing.
func mod(v, m int) int { return (v%m + m) % m }
