package depthing

import (
	"errors"
	"fmt"
	"math/big"
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

// Ratio follows pairs from one arbor to another. A train that comes round to an
// arbor at two different speeds cannot turn and is refused.
func Ratio(pairs []Engagement, from, to string) (Train, error) {
	for i, p := range pairs {
		if p.FromTeeth < 1 || p.ToTeeth < 1 || p.From == p.To {
			return Train{}, fmt.Errorf("pair %d: %w", i, ErrLocks)
		}
	}
	reached := map[string]Train{from: {Ratio: big.NewRat(1, 1)}}
	for queue := []string{from}; len(queue) > 0; queue = queue[1:] {
		for i, p := range pairs {
			next, train, ok := reached[queue[0]].over(p, queue[0], i)
			if !ok {
				continue
			}
			if known, seen := reached[next]; !seen {
				reached[next], queue = train, append(queue, next)
			} else if known.Ratio.Cmp(train.Ratio) != 0 || known.Reverse != train.Reverse {
				return Train{}, ErrLocks
			}
		}
	}
	if t, ok := reached[to]; ok {
		return t, nil
	}
	return Train{}, ErrNoWay
}

// over returns the arbor beyond a pair and the train to it; false where the pair
// does not stand on the arbor.
func (t Train) over(p Engagement, arbor string, index int) (string, Train, bool) {
	next, ratio := p.To, big.NewRat(int64(p.FromTeeth), int64(p.ToTeeth))
	switch arbor {
	case p.From:
	case p.To:
		next = p.From
		ratio.Inv(ratio)
	default:
		return "", Train{}, false
	}
	way := append(append([]int(nil), t.Pairs...), index)
	return next, Train{ratio.Mul(ratio, t.Ratio), !t.Reverse, way}, true
}
