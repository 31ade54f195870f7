package depthing

import (
	"errors"
	"fmt"
	"math/big"
	"slices"
)

// Engagement is a pair of a train: two toothed parts in mesh and the arbors they
// stand on.
type Engagement struct {
	From, To  string // arbors
	FromTeeth int    // of the part on From
	ToTeeth   int    // of the part on To
}

// Train is the way from one arbor to another through pairs.
type Train struct {
	Ratio   *big.Rat // turns of the last arbor to one of the first, exact, always positive
	Reverse bool     // the last arbor turns against the first
	Pairs   []int    // the pairs passed, in order
}

// What can be wrong with a train; each is a key of the catalogue.
var (
	ErrNoWay = errors.New("depthing.no-way")      // no pairs lead from the one arbor to the other
	ErrLocks = errors.New("depthing.train-locks") // two ways between arbors ask for different speeds
)

// Gearing is pairs looked through once, so that any number of trains can be followed
// through them.
type Gearing struct {
	pairs []Engagement
	on    map[string][]int // the pairs that stand on an arbor, in their order
	turns map[string]speed // of every arbor that a pair stands on
	stuck error
}

// speed is how an arbor turns to the first of those that it is in gear with.
type speed struct {
	ratio   *big.Rat
	against bool
	group   int // which arbors are in gear with each other
	locks   *bool
}

// Geared looks through pairs.
func Geared(pairs []Engagement) *Gearing {
	g := &Gearing{pairs: pairs, on: map[string][]int{}, turns: map[string]speed{}}
	for i, p := range pairs {
		if p.FromTeeth < 1 || p.ToTeeth < 1 || p.From == p.To {
			g.stuck = fmt.Errorf("pair %d: %w", i, ErrLocks)
			return g
		}
		g.on[p.From] = append(g.on[p.From], i)
		g.on[p.To] = append(g.on[p.To], i)
	}
	for i, p := range pairs {
		if _, known := g.turns[p.From]; !known {
			g.turn(p.From, i)
		}
	}
	return g
}

// turn finds how the arbors turn that are in gear with one.
func (g *Gearing) turn(first string, group int) {
	locks := new(bool)
	g.turns[first] = speed{big.NewRat(1, 1), false, group, locks}
	for queue := []string{first}; len(queue) > 0; queue = queue[1:] {
		here := g.turns[queue[0]]
		for _, i := range g.on[queue[0]] {
			next, ratio := g.pairs[i].beyond(queue[0])
			there := speed{ratio.Mul(ratio, here.ratio), !here.against, group, locks}
			if known, seen := g.turns[next]; !seen {
				g.turns[next], queue = there, append(queue, next)
			} else if known.ratio.Cmp(there.ratio) != 0 || known.against != there.against {
				*locks = true
			}
		}
	}
}

// beyond returns the arbor at the other end of a pair, and its turns to one of this one.
func (e Engagement) beyond(arbor string) (string, *big.Rat) {
	ratio := big.NewRat(int64(e.FromTeeth), int64(e.ToTeeth))
	if arbor != e.From {
		ratio.Inv(ratio)
	}
	return e.other(arbor), ratio
}

// Train follows pairs from one arbor to another, through as few as lead there. A train
// that comes round to an arbor at two different speeds cannot turn and is refused.
func (g *Gearing) Train(from, to string) (Train, error) {
	first, last := g.turns[from], g.turns[to]
	switch {
	case g.stuck != nil:
		return Train{}, g.stuck
	case first.ratio != nil && *first.locks:
		return Train{}, ErrLocks
	case from == to:
		return Train{Ratio: big.NewRat(1, 1)}, nil
	case first.ratio == nil || last.ratio == nil || first.group != last.group:
		return Train{}, ErrNoWay
	}
	return Train{new(big.Rat).Quo(last.ratio, first.ratio), first.against != last.against, g.way(from, to)}, nil
}

// way returns the pairs that are passed between two arbors in gear.
func (g *Gearing) way(from, to string) (way []int) {
	over := map[string]int{from: -1} // the pair by which an arbor was come to
	for queue := []string{from}; len(queue) > 0; queue = queue[1:] {
		for _, i := range g.on[queue[0]] {
			next := g.pairs[i].other(queue[0])
			if _, seen := over[next]; !seen {
				over[next], queue = i, append(queue, next)
			}
		}
	}
	for at := to; at != from; at = g.pairs[way[len(way)-1]].other(at) {
		way = append(way, over[at])
	}
	slices.Reverse(way)
	return way
}

// other returns the arbor at the other end of a pair.
func (e Engagement) other(arbor string) string {
	if arbor == e.From {
		return e.To
	}
	return e.From
}
