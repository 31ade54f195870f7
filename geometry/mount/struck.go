package mount

import (
	"math"

	"tipline/geometry"
)

// Struck is the Limit of screws of which one runs into a hole of the wheel's own.
type Struck struct {
	*geometry.Limit
	Addition int // that the hole is of, from 0
}

// Unwrap returns the Limit.
func (s *Struck) Unwrap() error { return s.Limit }

// struck names, of holes that screws run into, the one they run into the most.
func (b bench) struck(l *geometry.Limit) *Struck {
	found, least := &Struck{l, 0}, math.Inf(1)
	for _, place := range b.places() {
		for _, s := range b.seats {
			for _, h := range s.Holes {
				if gap := place.At.Dist(h.At) - h.Diameter/2; gap < least {
					least, found.Addition = gap, h.Addition
				}
			}
		}
	}
	return found
}
