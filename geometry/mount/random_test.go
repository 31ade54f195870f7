package mount

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// sector is a window between two arms, without fillets: bounded by two circles
// and two lines towards the centre.
func sector(inner, outer float64, from, to geometry.Angle) geometry.Outline {
	bulge := math.Tan(float64(to-from) / 4)
	o, err := geometry.NewOutline([]geometry.Vertex{
		{Point: geometry.Polar(inner, geometry.Clock(from)), Bulge: -bulge},
		{Point: geometry.Polar(inner, geometry.Clock(to))},
		{Point: geometry.Polar(outer, geometry.Clock(to)), Bulge: bulge},
		{Point: geometry.Polar(outer, geometry.Clock(from))},
	})
	if err != nil {
		panic(err)
	}
	return o.Reverse()
}

// crossed is a wheel of that many arms, each taking up half as much of the turn
// as each window.
func crossed(bore, hub, root float64, arms int) Seat {
	s := Seat{Bore: bore, Hub: hub, Root: root, Tip: root + 4, Teeth: 12 * arms, Thickness: 2}
	each := geometry.FullTurn / geometry.Angle(arms)
	for j := range arms {
		at := geometry.Angle(j) * each
		s.Arms = append(s.Arms, at)
		s.Windows = append(s.Windows, sector(hub/2, root/2-2, at+each/6, at+5*each/6))
	}
	return s
}

// some returns a seat, a collet and screws of any proportion: many go together, a
// good part do not.
func some(r *rand.Rand) (Seat, Collet, Screws) {
	root := 15 + 80*r.Float64()
	share := func(low, high float64) float64 { return root * (low + (high-low)*r.Float64()) }
	bore := share(0.02, 0.3)
	s := crossed(bore, bore+share(0.05, 0.5), root, 3+r.IntN(6))
	if s.Hub > root-6 || r.IntN(4) == 0 {
		s = Seat{Bore: bore, Root: root, Tip: root + 3, Teeth: 60, Thickness: 2}
	}
	for range r.IntN(3) {
		s.Holes = append(s.Holes, Hole{At: geometry.Polar(share(0, 0.5), geometry.Angle(7*r.Float64())), Diameter: share(0.01, 0.1)})
	}
	c := Collet{}
	if r.IntN(2) == 0 {
		c = Collet{Bore: bore / 2, Register: bore, Flange: bore + share(0.05, 0.6)}
	}
	threads := tables.Threads()
	screws := Screws{Count: 1 + r.IntN(8), Thread: threads[r.IntN(len(threads))], Circle: share(0.01, 1)}
	if r.IntN(2) == 0 {
		start := geometry.Angle(14*r.Float64() - 7)
		screws.Start = &start
	}
	return s, c, screws
}

// clearances returns, by dense sampling of every edge, the least distance from a
// screw's hole to it: less than nothing where the hole breaks out.
func clearances(s Seat, c Collet, m Mounting) float64 {
	through, tapped := m.Clear.MM/2, m.Tap.MM/2
	least := math.Inf(1)
	for i, p := range m.Places {
		r := p.At.Norm()
		if s.Bore > 0 {
			least = min(least, r-s.Bore/2-through)
		}
		if core := max(c.Bore, c.Register); core > 0 {
			least = min(least, r-core/2-tapped)
		}
		if c.Flange > 0 {
			least = min(least, c.Flange/2-r-tapped)
		}
		least = min(least, s.Root/2-r-through)
		for _, q := range m.Places[:i] {
			least = min(least, p.At.Dist(q.At)-2*through)
		}
		for _, h := range s.Holes {
			least = min(least, p.At.Dist(h.At)-h.Diameter/2-through)
		}
		for _, w := range s.Windows {
			least = min(least, sampled(w, p.At)-through)
		}
	}
	return least
}

// samples is how many points of each side of a window are looked at.
const samples = 100

// sampled returns the least distance of a point from an outline's sampled edge,
// negative where a ray from it crosses that edge an odd number of times.
func sampled(o geometry.Outline, p geometry.Point) float64 {
	least, inside := math.Inf(1), false
	var last geometry.Point
	for i := range o.Len() * samples {
		q := o.Segment(i / samples).At(float64(i%samples) / samples)
		least = min(least, p.Dist(q))
		if i > 0 && (q.Y > p.Y) != (last.Y > p.Y) && p.X < q.X+(last.X-q.X)*(p.Y-q.Y)/(last.Y-q.Y) {
			inside = !inside
		}
		last = q
	}
	if first := o.Vertex(0).Point; (first.Y > p.Y) != (last.Y > p.Y) && p.X < first.X+(last.X-first.X)*(p.Y-first.Y)/(last.Y-first.Y) {
		inside = !inside
	}
	if inside {
		return -least
	}
	return least
}

// near is how far a sampled distance may be off: half a step along the longest
// side, some 50 mm of arc.
const near = 0.3

func TestRandomMountingsClearEveryEdge(t *testing.T) {
	random := trial.Rand(t, 1)
	fitted, refused := 0, 0
	for range trial.Count(3000) {
		s, c, screws := some(random)
		name := fmt.Sprintf("%+v %+v %+v", s, c, screws)
		m, err := Fit(s, c, screws)
		if err == nil {
			fitted++
			require.Greater(t, clearances(s, c, m), -1e-6, name)
			mountingIsSound(t, m, name)
			continue
		}
		refused++
		refusalIsTrue(t, s, c, screws, err, name)
	}
	require.Greater(t, fitted, 10)
	require.Greater(t, refused, 10)
}

func mountingIsSound(t *testing.T, m Mounting, name string) {
	require.Len(t, m.Places, m.Screws.Count, name)
	require.Greater(t, m.Clear.MM, m.Screws.Thread.Major, name)
	require.Less(t, m.Tap.MM, m.Screws.Thread.Major, name)
	require.Less(t, m.Starter.MM, m.Tap.MM, name)
	for _, p := range m.Places {
		require.InDelta(t, m.Screws.Circle/2, p.At.Norm(), 1e-9, name)
		require.True(t, p.Angle >= 0 && p.Angle < geometry.FullTurn, name)
	}
	for _, l := range m.Notes {
		require.True(t, words.English().Has(l.Code), l.Code)
		require.False(t, math.IsNaN(l.Value) || math.IsNaN(l.Min) || math.IsNaN(l.Max), "%s: %v", name, l)
	}
}

// refusalIsTrue checks that the bound of a refusal does, that what was asked for
// breaks out by the sampled edges too, and that nothing between them would do.
func refusalIsTrue(t *testing.T, s Seat, c Collet, screws Screws, err error, name string) {
	var l *geometry.Limit
	require.True(t, errors.As(err, &l), name)
	require.True(t, words.English().Has(l.Code), l.Code)
	if l.Quantity == "mount.collet.flange" {
		return
	}
	asked := bench{seats: []Seat{s}, collet: c, screws: screws, clear: clearance(screws.Thread), start: first([]Seat{s}, screws)}
	at := func(circle float64) float64 {
		b := asked
		b.screws.Circle = circle
		return clearances(s, c, b.mounting(nil))
	}
	require.Less(t, at(screws.Circle), near, name)
	bound, farther := l.Min, screws.Circle
	switch {
	case l.Quantity != ofCircle || l.Code == "mount.no-room":
		bound, farther = 0, s.Root
	case math.IsInf(bound, -1):
		bound = l.Max
		fallthrough
	default:
		mended := screws
		mended.Circle = bound
		_, err = Fit(s, c, mended)
		require.NoError(t, err, "%s: %v", name, l)
	}
	for i := 1; i < 15; i++ {
		between := bound + (farther-bound)*float64(i)/15
		require.Less(t, at(between), near, "%s: %v would do, against %v", name, between, l)
	}
}
