package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// levelForm is a wide flat floor square to the infeed between upright sides.
func levelForm(t *testing.T) Cut {
	t.Helper()
	p := Pointed{Count: 12, TipRadius: 20, Floor: 6, BackRadius: geometry.LeastLength, RootRadius: 18, Solve: Land}
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
	for i := 1; i < len(edge); i++ {
		way := edge[i].Sub(edge[i-1])
		t := q.Sub(edge[i-1]).Dot(way) / way.Dot(way)
		if q.Dist(edge[i-1].Toward(edge[i], math.Max(0, math.Min(1, t)))) < d {
			return false
		}
	}
	return true
}

// fouls reports whether the section at depth z, looked at point by point upwards
// at places across the form, leaves what the edge sweeps before the infeed, and
// whether it has nothing there.
func fouls(c Cut, edge []geometry.Point, z, clearance, swing float64, steps int) (fouled, empty bool) {
	empty = true
	d := z * math.Tan(clearance)
	least, most := c.Form.sides()
	for k := range steps {
		x := least + (most-least)*(float64(k)+0.5)/float64(steps)
		from := lowestPoint(edge, x)
		y, ok := lowestInside(c, edge, x, from, d)
		if !ok {
			continue
		}
		empty = false
		if math.Hypot(swing-y, z) > swing-from {
			return true, false
		}
	}
	return false, empty
}

// lowestInside returns the lowest y at x, from the edge to the infeed, that is in
// the form and at least d from its edge.
func lowestInside(c Cut, edge []geometry.Point, x, from, d float64) (float64, bool) {
	const rungs = 30
	in := func(y float64) bool {
		front, back, ok := c.Form.Width(y)
		return ok && x > front && x < back && inside(geometry.Point{X: x, Y: y}, edge, d)
	}
	below := from
	for i := 1; i <= rungs; i++ {
		y := from + (c.Infeed-from)*float64(i)/rungs
		if from < c.Infeed && in(y) {
			for range 14 {
				if mid := (y + below) / 2; in(mid) {
					y = mid
				} else {
					below = mid
				}
			}
			return y, true
		}
		below = y
	}
	return 0, false
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
	checked, limited := 0, 0
	for checked < trial.Count(300) {
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
		if got.HeelLimit == 0 {
			for share := range 4 {
				z := got.UsableThickness * (float64(share) + 0.5) / 4
				fouled, _ := fouls(c, edge, z, float64(clearance), swing*(1+1e-3), 80)
				require.False(t, fouled, "fouls at %g: clearance %g, swing %g, %+v", z, clearance, swing, p)
			}
		}
		if got.HeelLimit > 0 {
			limited++
			before, _ := fouls(c, edge, got.HeelLimit*(1-off), float64(clearance), swing, 80)
			require.False(t, before, "fouls before %g: clearance %g, swing %g, %+v", got.HeelLimit, clearance, swing, p)
			// A place may foul over a short run of sections, and between the looks.
			after := false
			for _, deeper := range []float64{off, off / 10, off / 100} {
				for _, looks := range []int{80, 4000} {
					fouled, gone := fouls(c, edge, got.HeelLimit*(1+deeper), float64(clearance), swing, looks)
					if after = after || fouled || gone; after {
						break
					}
				}
			}
			require.True(t, after, "clears after %g: clearance %g, swing %g, %+v", got.HeelLimit, clearance, swing, p)
		}
		_, gone := fouls(c, edge, got.UsableThickness*1.001, float64(clearance), 1e6, 80)
		require.True(t, gone, "not gone at %g: clearance %g, %+v", got.UsableThickness, clearance, p)
		_, gone = fouls(c, edge, got.UsableThickness*0.9, float64(clearance), 1e6, 80)
		if gone { // what is left lies between the looks
			_, gone = fouls(c, edge, got.UsableThickness*0.9, float64(clearance), 1e6, 4000)
		}
		require.False(t, gone, "gone before %g: clearance %g, %+v", got.UsableThickness, clearance, p)
	}
	require.NotZero(t, limited)
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

// hollowCut is a space's form with a hollow floor and hollow flanks.
func hollowCut(t *testing.T) Cut {
	t.Helper()
	at := func(r, degrees, bulge float64) geometry.Vertex {
		return geometry.Vertex{Point: geometry.Polar(r, geometry.Clock(geometry.Degrees(degrees))), Bulge: bulge}
	}
	chain, err := geometry.NewChain([]geometry.Vertex{
		at(20, -4.5, -0.08), at(19.1, -2.4, 0), at(18, -2.2, math.Tan(-geometry.Degrees(1.1).Degrees()*math.Pi/180)),
		at(18, 2.2, 0), at(19.1, 2.4, -0.08), at(20, 4.5, 0),
	})
	require.NoError(t, err)
	c, err := Space(chain, 40, 20, 0)
	require.NoError(t, err)
	require.InDelta(t, 18, c.RootRadius, 1e-9)
	return c
}

// The same for a form with hollows, whose sections' corners are rounded where the
// form's are hollow.
func TestHeelOfHollowForm(t *testing.T) {
	c := hollowCut(t)
	edge := pointsOf(c)
	fouled := 0
	for _, clearance := range []geometry.Angle{geometry.Degrees(6), geometry.Degrees(10)} {
		slope := math.Tan(float64(clearance))
		for _, swing := range []float64{4, 12} {
			r, err := c.Relieve(clearance, 2*c.Infeed/slope, swing)
			require.NoError(t, err)
			const off = 0.02
			_, gone := fouls(c, edge, r.UsableThickness*(1+off), float64(clearance), 1e6, 200)
			require.True(t, gone, "%g", r.UsableThickness)
			_, gone = fouls(c, edge, r.UsableThickness*(1-2*off), float64(clearance), 1e6, 200)
			require.False(t, gone, "%g", r.UsableThickness)
			if r.HeelLimit == 0 {
				continue
			}
			fouled++
			before, _ := fouls(c, edge, r.HeelLimit*(1-off), float64(clearance), swing, 200)
			require.False(t, before, "%g", r.HeelLimit)
			after, gone := fouls(c, edge, r.HeelLimit*(1+off), float64(clearance), swing, 200)
			require.True(t, after || gone, "%g", r.HeelLimit)
		}
	}
	require.NotZero(t, fouled)
}
