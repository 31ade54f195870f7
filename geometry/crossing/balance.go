package crossing

import (
	"math"

	"tipline/geometry"
)

// balancePlaces is how many places between bore and teeth are tried for a hole that
// balances the wheel.
const balancePlaces = 60

// balance finds the hole that balances the wheel: on its heavy side, where of all
// places the edge is furthest off for the diameter the hole must have there, and at
// least as far as leaves enough metal.
func (l *Layout) balance() {
	if l.Unbalance == 0 {
		return
	}
	m := l.metal()
	m.holes = l.Spec.holes()
	each := l.Unbalance / (math.Pi / 4 * l.weight())
	best := edgeShare
	for i := range balancePlaces {
		r := m.bore + (m.root-m.bore)*(float64(i)+0.5)/balancePlaces
		h := Hole{r, l.Heavy, math.Sqrt(each / r)}
		if min(m.root-r, r-m.bore) < best*h.Diameter {
			continue
		}
		if spare := m.edge(h.Centre()) / h.Diameter; spare >= best {
			best, l.Balance = spare, &h
		}
	}
	if l.Balance == nil {
		l.Notes = append(l.Notes, geometry.Refused(ofPlacing, l.Unbalance, "crossing.no-balance-hole"))
	}
}
