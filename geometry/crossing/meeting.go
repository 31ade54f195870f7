package crossing

import (
	"math"

	"tipline/geometry"
)

// Meeting is the Limit of a hole of the maker's own that runs into another: the one
// that is listed later is to blame.
type Meeting struct {
	*geometry.Limit
	Other int // of the additions, the one it runs into
}

// Unwrap returns the Limit.
func (m *Meeting) Unwrap() error { return m.Limit }

// meetings are the codes of holes that run into another, by those of holes that find
// no metal.
var meetings = map[string]string{
	"crossing.addition-too-large":   "crossing.addition-meets-hole",
	"crossing.addition-too-far-out": "crossing.addition-meets-hole-outside",
	"crossing.addition-too-far-in":  "crossing.addition-meets-hole-inside",
	"crossing.addition-no-room":     "crossing.addition-meets-hole-anywhere",
}

// meeting says which of the holes listed before hole i it runs into the most.
func (l *Layout) meeting(i int, limit *geometry.Limit) *Meeting {
	m, least := &Meeting{limit, 0}, math.Inf(1)
	limit.Code = meetings[limit.Code]
	for j, other := range l.Spec.Additions[:i] {
		for _, a := range other.holes() {
			for _, b := range l.Spec.Additions[i].holes() {
				if gap := a.Centre().Dist(b.Centre()) - (a.Diameter+b.Diameter)/2; gap < least {
					least, m.Other = gap, j
				}
			}
		}
	}
	return m
}
