package mount

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// In each wheel's own coordinates the holes of a stack are clear of its edges,
// however the wheels are turned; and where a stack is refused for its screws, they
// break out of one of the wheels, turned by its reference tip.
func TestRandomStacksClearEveryWheel(t *testing.T) {
	random := trial.Rand(t, 8)
	fitted, refused := 0, 0
	for range trial.Count(5000) {
		below, c, screws := some(random)
		above, _, _ := some(random)
		above.Bore, above.Hub = below.Bore, max(above.Hub, below.Bore+2)
		wheels, tips := []Seat{below, above}, []int{random.IntN(below.Teeth), random.IntN(above.Teeth)}
		name := fmt.Sprintf("%+v %v %+v %+v", wheels, tips, c, screws)
		s, err := Stack(wheels, tips, c, screws, 0.1)
		if err == nil {
			fitted++
			for i, w := range wheels {
				onWheel := s.Mounting
				onWheel.Places = s.OnWheel[i]
				require.Greater(t, clearances(w, c, onWheel), -1e-6, name)
			}
			continue
		}
		if l := limitOf(t, err); l.Quantity == ofCircle && screws.Start != nil {
			refused++
			require.Less(t, worstOfStack(wheels, tips, c, screws), near, name)
		}
	}
	require.Greater(t, fitted, 10)
	require.Greater(t, refused, 10)
}

// worstOfStack returns the least sampled clearance over a stack's wheels, with
// the screws turned into each wheel's own coordinates here.
func worstOfStack(wheels []Seat, tips []int, c Collet, screws Screws) float64 {
	worst := near
	for i, w := range wheels {
		onWheel := screws
		start := *screws.Start + geometry.FullTurn*geometry.Angle(tips[i])/geometry.Angle(w.Teeth)
		onWheel.Start = &start
		b := bench{seats: []Seat{w}, collet: c, screws: onWheel, clear: clearance(screws.Thread), start: start}
		worst = min(worst, clearances(w, c, b.mounting(nil)))
	}
	return worst
}
