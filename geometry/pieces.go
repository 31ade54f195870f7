package geometry

import (
	"cmp"
	"slices"
)

// piece is a stretch of a part between two cuts, which the offset keeps.
type piece struct {
	from, to cut
	start    int // node numbers
	end      int
	gone     bool
}

// cut is a place along a part where another part meets it.
type cut struct {
	part  int
	at    Point
	share float64
}

// cuts returns where the parts meet each other, by part.
func (f *offset) cuts() [][]cut {
	all := make([]cut, 0, 2*len(f.parts))
	add := func(i int, p Point) {
		if t := f.parts[i].share(p); t > 0 && t < 1 { // no end of it
			all = append(all, cut{i, p, t})
		}
	}
	newTree(f.parts).pairs(func(i, j int) bool {
		pts, n := meet(&f.parts[i], &f.parts[j])
		for _, p := range pts[:n] {
			add(i, p)
			add(j, p)
		}
		return true
	})
	return grouped(all, len(f.parts), func(c cut) int { return c.part })
}

// pieces returns the stretches between cuts that the offset keeps.
func (f *offset) pieces() []piece {
	kept := make([]piece, 0, len(f.parts))
	for i, cuts := range f.cuts() {
		c := &f.parts[i]
		slices.SortFunc(cuts, func(a, b cut) int { return cmp.Compare(a.share, b.share) })
		from := cut{i, c.From, 0}
		for k := range len(cuts) + 1 {
			to := cut{i, c.To, 1}
			if k < len(cuts) {
				to = cuts[k]
			}
			if from.at.near(to.at) && to.share-from.share < 0.5 {
				continue
			}
			if f.keeps(c.middle(from, to), f.over[i]) {
				kept = append(kept, piece{from: from, to: to})
			}
			from = to
		}
	}
	return kept
}

// middle returns the point of the curve half way between two cuts.
func (c *curve) middle(from, to cut) Point {
	share := (from.share + to.share) / 2
	if c.round {
		return c.Segment.At(share)
	}
	return c.From.Toward(c.To, share)
}

// grouped returns the items by their keys, 0 to n−1, each group in their order.
func grouped[T any](items []T, n int, key func(T) int) [][]T {
	count := make([]int, n)
	for _, item := range items {
		count[key(item)]++
	}
	all, groups := make([]T, len(items)), make([][]T, n)
	at := 0
	for k, many := range count {
		groups[k] = all[at : at : at+many]
		at += many
	}
	for _, item := range items {
		groups[key(item)] = append(groups[key(item)], item)
	}
	return groups
}
