package cutter

import (
	"errors"
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// measuredBit returns corners as a maker might measure them on a bit that was
// ground after a form: off by up to a few hundredths of the pitch, with arcs of
// other radii, some the other way, and now and then a nick that no plunge cuts.
func measuredBit(r *rand.Rand, c Cut) []Corner {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	off := 2 * math.Pi * c.TipRadius / float64(c.Count) * math.Exp(between(-7, -3))
	corners := c.Form.Corners()
	last := len(corners) - 1
	for i := range corners {
		corners[i].X += between(-off, off)
		if i > 0 && i < last {
			corners[i].Y += between(-off, off)
		}
		corners[i].Radius *= between(0.9, 1.2)
		if r.IntN(6) == 0 {
			corners[i].Radius *= -1
		}
		if half := math.Hypot(corners[i].X-corners[max(i-1, 0)].X, corners[i].Y-corners[max(i-1, 0)].Y) / 2; r.IntN(6) == 0 {
			corners[i].Radius = math.Copysign(half*between(1.05, 20), between(-1, 1))
		}
	}
	if r.IntN(4) == 0 { // a hook in the back
		a, b := corners[last-1], corners[last]
		lip := Corner{X: a.X + 0.3*(b.X-a.X) + 3*off, Y: a.Y + 0.25*(b.Y-a.Y)}
		corners = append(corners[:last:last], lip, Corner{X: lip.X - 2*off, Y: lip.Y + off}, Corner{X: b.X, Y: b.Y})
	}
	return corners
}

// beside is a bit's edge as points close together, worked out from its corners by
// the centres of their arcs, its lowest point at 0.
func beside(corners []Corner, steps int) []geometry.Point {
	pts := []geometry.Point{{X: corners[0].X, Y: corners[0].Y}}
	for i := 1; i < len(corners); i++ {
		a, b, r := pts[len(pts)-1], geometry.Point{X: corners[i].X, Y: corners[i].Y}, corners[i].Radius
		half := a.Dist(b) / 2
		// Half the arc's turn, and where its centre is from the chord's middle,
		// along the chord's left.
		turn, height := math.Asin(math.Min(half/math.Abs(r), 1)), math.Copysign(math.Sqrt(math.Max(r*r-half*half, 0)), r)
		centre := a.Toward(b, 0.5).Add(b.Sub(a).Left().Times(height / (2 * half)))
		for k := 1; k < steps; k++ {
			t := float64(k) / float64(steps)
			if r == 0 {
				pts = append(pts, a.Toward(b, t))
			} else {
				pts = append(pts, centre.Add(a.Sub(centre).Rotate(geometry.Angle(math.Copysign(2*turn*t, r)))))
			}
		}
		pts = append(pts, b)
	}
	return stood(pts)
}

func stood(pts []geometry.Point) []geometry.Point {
	least := math.Inf(1)
	for _, p := range pts {
		least = math.Min(least, p.Y)
	}
	for i := range pts {
		pts[i].Y -= least
	}
	return pts
}

// eachBit gives bits that can be measured, and what they cut, to look.
func eachBit(t *testing.T, seed uint64, full int, look func(say string, c Cut, corners []Corner, g Ground)) {
	r := trial.Rand(t, seed)
	for done := 0; done < trial.Count(full); {
		p := randomPointed(r)
		c, err := p.Cut()
		if err != nil {
			continue
		}
		corners := measuredBit(r, c)
		edge, err := NewEdge(corners)
		var g Ground
		if err == nil {
			g, err = c.Ground(edge)
		}
		var limit *geometry.Limit
		if errors.As(err, &limit) {
			continue
		}
		require.NoError(t, err)
		done++
		look(fmt.Sprintf("bit %d: %+v of %+v", done, corners, p), c, corners, g)
	}
}

// onward adds to an edge's points how it goes on where it ends outermost.
func onward(pts []geometry.Point, reach float64) []geometry.Point {
	least, most := math.Inf(1), math.Inf(-1)
	for _, p := range pts {
		least, most = math.Min(least, p.X), math.Max(most, p.X)
	}
	n := len(pts) - 1
	out := append([]geometry.Point(nil), pts...)
	if way := pts[0].Sub(pts[1]); pts[0].X == least && way.X < 0 && way.Y > -way.X {
		out = append([]geometry.Point{pts[0].Add(way.Times(reach / way.Norm()))}, out...)
	}
	if way := pts[n].Sub(pts[n-1]); pts[n].X == most && way.X > 0 && way.Y > way.X {
		out = append(out, pts[n].Add(way.Times(reach/way.Norm())))
	}
	return out
}

// The land, the depth and the undercut places of random bits are what their points
// say, looked at from below column by column.
func TestGroundAgainstColumns(t *testing.T) {
	named := 0
	eachBit(t, 74, 1000, func(say string, c Cut, corners []Corner, g Ground) {
		pts := onward(beside(corners, 400), 8*c.TipRadius)
		slack := 1e-5 * c.TipRadius
		touch := highestTouch(pts, c.SetOver, c.TipRadius)
		require.InDelta(t, touch, g.Cut.TouchHeight, slack, say)
		height := touch - c.Infeed
		centre := geometry.Point{X: c.SetOver, Y: -height}
		nearest := math.Inf(1)
		for _, p := range pts {
			nearest = math.Min(nearest, p.Dist(centre))
		}
		require.InDelta(t, nearest, g.Cut.RootRadius, slack, say)

		gone := func(w float64) bool {
			x, y := centre.X+c.TipRadius*math.Sin(w), centre.Y+c.TipRadius*math.Cos(w)
			return y >= lowestPoint(pts, x)
		}
		first, last := spanOf(gone, 1500)
		land := c.TipRadius * (2*math.Pi/float64(c.Count) - (last - first))
		require.InDelta(t, land, g.Cut.LandAt(c.Infeed), 100*slack, say)

		inside, deepest := geometry.Point{}, 0.0
		for i, p := range pts {
			if c.Form.fronted() && i <= frontEnd(pts) {
				continue
			}
			// What reaches less than a few µm across the tool counts for nothing.
			over := p.Y - max(lowestPoint(pts, p.X), lowestPoint(pts, p.X-0.004), lowestPoint(pts, p.X+0.004))
			if over > deepest && p.Dist(centre) < c.TipRadius-0.01 && !math.IsInf(over, 0) {
				inside, deepest = p, over
			}
		}
		if deepest > 0.05 {
			require.NotEmpty(t, g.Undercut, "%v over by %g: %s", inside, deepest, say)
		}
		for _, u := range g.Undercut {
			require.True(t, turnsBack(pts, u), "%v: %s", u, say)
			named++
		}
	})
	require.NotZero(t, named)
}

// frontEnd returns the index of the foremost point.
func frontEnd(pts []geometry.Point) int {
	at := 0
	for i, p := range pts {
		if p.X < pts[at].X {
			at = i
		}
	}
	return at
}

// turnsBack reports whether an edge has at a place a part that lies over another,
// within a hundredth of a millimetre.
func turnsBack(pts []geometry.Point, u geometry.Point) bool {
	for i := 1; i+1 < len(pts); i++ {
		if pts[i].Dist(u) > 0.05 {
			continue
		}
		a, b := pts[i].X-pts[i-1].X, pts[i+1].X-pts[i].X
		if a < 0 || b < 0 {
			return true
		}
	}
	return false
}

// spanOf returns the first and the last angle at which the tip is gone.
func spanOf(gone func(float64) bool, steps int) (first, last float64) {
	at := func(i int) float64 { return -math.Pi/2 + math.Pi*(float64(i)+0.5)/float64(steps) }
	lo, hi := -1, -1
	for i := range steps {
		if gone(at(i)) {
			if lo < 0 {
				lo = i
			}
			hi = i
		}
	}
	edge := func(yes, no float64) float64 {
		for range 50 {
			if mid := (yes + no) / 2; gone(mid) {
				yes = mid
			} else {
				no = mid
			}
		}
		return yes
	}
	if lo < 0 {
		return 0, 0
	}
	return edge(at(lo), at(lo-1)), edge(at(hi), at(hi+1))
}
