package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/internal/trial"
)

// levelForm is a wide flat floor square to the infeed between upright sides.
func levelForm(t *testing.T) Cut {
	t.Helper()
	p := Pointed{Count: 12, TipRadius: 20, Floor: 6, BackRadius: leastLength, RootRadius: 18, Solve: Land}
	c, err := p.Cut()
	require.NoError(t, err)
	return c
}

// The heel of a flat floor square to the infeed clears to z = ρ·sin 2c: there
// (ρ − z·tan c)² + z² = ρ² (plane geometry).
func TestHeelOfLevelFloor(t *testing.T) {
	c := levelForm(t)
	for _, clearance := range []float64{5, 8, 10, 12} {
		for _, swing := range []float64{8, 15, 22} {
			a := geometry.Degrees(clearance)
			r, err := c.Relieve(a, 2, swing)
			require.NoError(t, err)
			want := swing * math.Sin(2*float64(a))
			require.InDelta(t, want, r.HeelLimit, 1e-8, "clearance %g, swing %g", clearance, swing)
			require.InDelta(t, 2/math.Sin(2*float64(a)), r.LeastSwing, 1e-8)
			require.Zero(t, r.HeelAt.Y)
		}
	}
}

// inside reports whether a point of the form is at least d from every ground
// edge, given as points close together, and so in the section.
func inside(q geometry.Point, edge []geometry.Point, d float64) bool {
	for _, x := range edge {
		if q.Dist(x) < d {
			return false
		}
	}
	return true
}

// fouls reports whether any point of the section at depth z, taken on a grid
// below the infeed, leaves what the edge sweeps.
func fouls(c Cut, edge []geometry.Point, z, clearance, swing float64, steps int) (fouled, empty bool) {
	empty = true
	d := z * math.Tan(clearance)
	for i := range steps {
		front, back, ok := c.Form.Width(math.Min(c.Infeed, c.Form.Top) * (float64(i) + 0.5) / float64(steps))
		if !ok {
			continue
		}
		y := c.Infeed * (float64(i) + 0.5) / float64(steps)
		for k := range steps {
			q := geometry.Point{X: front + (back-front)*(float64(k)+0.5)/float64(steps), Y: y}
			if !inside(q, edge, d) {
				continue
			}
			empty = false
			if math.Hypot(swing-y, z) > swing-lowestPoint(edge, q.X) {
				return true, false
			}
		}
	}
	return false, empty
}

// lowestPoint is the height of the edge at x, between the two points beside it.
func lowestPoint(edge []geometry.Point, x float64) float64 {
	least := math.Inf(1)
	for i := 1; i < len(edge); i++ {
		a, b := edge[i-1], edge[i]
		if (a.X <= x) != (b.X <= x) {
			least = math.Min(least, a.Toward(b, (x-a.X)/(b.X-a.X)).Y)
		}
	}
	return least
}

// Swept sections, point by point, foul where the heel limit says and not before;
// and the section vanishes where the usable thickness says.
func TestHeelAgainstSweptSections(t *testing.T) {
	r := trial.Rand(t, 61)
	checked := 0
	for checked < trial.Count(200) {
		p := randomPointed(r)
		p.StockWidth = 0
		c, err := p.Cut()
		if err != nil {
			continue
		}
		clearance := geometry.Degrees(4 + 14*r.Float64())
		swing := c.Infeed + 4 + 26*r.Float64()
		got, err := c.Relieve(clearance, 2*c.Infeed/math.Tan(float64(clearance)), swing)
		require.NoError(t, err)
		checked++
		edge := pointsOf(c)
		const off = 0.03
		if got.HeelLimit > 0 {
			before, _ := fouls(c, edge, got.HeelLimit*(1-off), float64(clearance), swing, 60)
			require.False(t, before, "fouls before %g: clearance %g, swing %g, %+v", got.HeelLimit, clearance, swing, p)
			after, gone := fouls(c, edge, got.HeelLimit*(1+off), float64(clearance), swing, 60)
			require.True(t, after || gone, "clears after %g: clearance %g, swing %g, %+v", got.HeelLimit, clearance, swing, p)
		}
		_, gone := fouls(c, edge, got.UsableThickness*1.001, float64(clearance), 1e6, 60)
		require.True(t, gone, "not gone at %g: clearance %g, %+v", got.UsableThickness, clearance, p)
		_, gone = fouls(c, edge, got.UsableThickness*0.9, float64(clearance), 1e6, 60)
		require.False(t, gone, "gone before %g: clearance %g, %+v", got.UsableThickness, clearance, p)
	}
}

// pointsOf returns points close together on the ground edge.
func pointsOf(c Cut) []geometry.Point {
	var pts []geometry.Point
	for i := range c.Form.Edge.Len() {
		g := c.Form.Edge.Segment(i)
		a, round := g.Arc()
		for k := range 150 {
			t := float64(k) / 150
			if round {
				pts = append(pts, a.At(t))
			} else {
				pts = append(pts, g.From.Toward(g.To, t))
			}
		}
	}
	return append(pts, c.Form.Edge.Vertex(c.Form.Edge.Len()).Point)
}
