package solve

import "math"

// againFindings says which pairs are in mesh under another id before.
func againFindings(pairs []*Pair) []Finding {
	var fs []Finding
	first := map[[2]string]*Pair{}
	for _, p := range pairs {
		if p.Wheel == nil || p.Pinion == nil || p.Wheel == p.Pinion {
			continue
		}
		parts := unordered(p.Wheel.ID(), p.Pinion.ID())
		if before := first[parts]; before != nil {
			fs = append(fs, Finding{Note, p.ID(), "pinion", "pair.again", []Place{
				text("wheel", p.Wheel.Name()), text("pinion", p.Pinion.Name()), text("pair", before.Name()),
			}})
			continue
		}
		first[parts] = p
	}
	return fs
}

// centresFindings says which pairs stand on the same two arbors as one before, at
// another distance.
func (w works) centresFindings() []Finding {
	var fs []Finding
	first := map[[2]string]*Pair{}
	for i, p := range w.engages {
		if p.Turn == nil {
			continue
		}
		arbors := unordered(w.engaged[i].From, w.engaged[i].To)
		before := first[arbors]
		switch {
		case before == nil:
			first[arbors] = p
		case math.Abs(before.Turn.Centres-p.Turn.Centres) > sameSize:
			fs = append(fs, Finding{Caution, p.ID(), "centres", "pair.other-centres", []Place{
				text("pair", before.Name()), number("has", before.Turn.Centres, FineLength), number("centres", p.Turn.Centres, FineLength),
			}})
		}
	}
	return fs
}

// unordered returns two ids in the same order whichever comes first.
func unordered(a, b string) [2]string { return [2]string{min(a, b), max(a, b)} }
