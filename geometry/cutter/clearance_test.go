package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// A flat floor square to the infeed clears to z = ρ·sin 2c, so that a thickness T
// wants c = ½·asin(T/ρ).
func TestClearanceForLevelFloor(t *testing.T) {
	c := levelForm(t)
	for _, row := range []struct{ thickness, swing float64 }{{2, 8}, {2, 15}, {4, 22}, {5, 12}} {
		got, ok := c.ClearanceFor(row.thickness, row.swing, false)
		require.True(t, ok)
		want := math.Asin(row.thickness/row.swing) / 2
		require.InDelta(t, math.Max(want, float64(leastClearance)), float64(got), float64(geometry.Degrees(0.001)), "%+v", row)
	}
	_, ok := c.ClearanceFor(3, 3, false)
	require.False(t, ok, "ρ·sin 60° is less than the thickness and than where the section ends")
	_, ok = c.ClearanceFor(1, 1.5, true)
	require.False(t, ok, "a swing within the infeed")
	got, ok := c.ClearanceFor(10, 0, false)
	require.True(t, ok, "not swung")
	require.Equal(t, leastClearance, got)
}

// At the clearance that would do the heel clears, and at a little less it fouls.
func TestClearanceForAnyForm(t *testing.T) {
	r := trial.Rand(t, 79)
	within := 0
	for done := 0; done < trial.Count(300); {
		c, err := randomPointed(r).Cut()
		if err != nil {
			continue
		}
		done++
		thickness, swing, formed := math.Max(c.Infeed*(0.5+8*r.Float64()), geometry.LeastLength), c.Infeed*(1.1+8*r.Float64()), r.IntN(2) == 0
		relieve := Cut.Relieve
		if formed {
			relieve = Cut.RelieveFormed
		}
		fouls := func(clearance geometry.Angle) bool {
			got, err := relieve(c, clearance, thickness, swing)
			require.NoError(t, err)
			return got.HeelLimit > 0 && got.HeelLimit < math.Min(thickness, got.UsableThickness)
		}
		got, ok := c.ClearanceFor(thickness, swing, formed)
		if !ok {
			require.True(t, fouls(mostClearance), "%+v", c)
			continue
		}
		require.False(t, fouls(got), "%g° %+v", got.Degrees(), c)
		if got > leastClearance {
			within++
			require.True(t, fouls(got-geometry.Degrees(0.002)), "%g° %+v", got.Degrees(), c)
		}
	}
	require.NotZero(t, within)
}

// A formed wheel leaves a straight back that leans by a from the infeed
// tan C·sin a, and the upright face of a bit without front relief nothing; ground
// edge by edge the clearance is the same all along.
func TestLeastClearance(t *testing.T) {
	p := plain()
	p.Straight, p.BackAngle, p.Solve = true, geometry.Degrees(22), RootDiameter
	c, err := p.Cut()
	require.NoError(t, err)
	clearance := geometry.Degrees(10)
	r, err := c.RelieveFormed(clearance, 3, 0)
	require.NoError(t, err)
	side := math.Atan(math.Tan(float64(clearance)) * math.Sin(float64(p.BackAngle)))
	require.InDelta(t, side, float64(r.LeastClearance), 1e-12)
	require.Greater(t, r.LeastAt.X, 0.49, "on the back")

	p.FrontRelief, p.CornerRadius = 0, 0
	c, err = p.Cut()
	require.NoError(t, err)
	r, err = c.RelieveFormed(clearance, 3, 0)
	require.NoError(t, err)
	require.Zero(t, r.LeastClearance)
	require.Zero(t, r.LeastAt.X)
	r, err = c.Relieve(clearance, 3, 0)
	require.NoError(t, err)
	require.Equal(t, clearance, r.LeastClearance)
}

func TestTooHollow(t *testing.T) {
	form := hollowCut(t).Form
	least := form.SmallestConcave()
	require.Positive(t, least)
	require.Empty(t, form.TooHollow(least))
	list := form.TooHollow(least * 1.001)
	require.NotEmpty(t, list)
	for _, h := range list {
		require.InDelta(t, least, h.Radius, 1e-3*least)
		at, i := form.Edge.Nearest(h.At)
		require.InDelta(t, 0, at.Dist(h.At), 1e-9)
		a, ok := form.Edge.Segment(i).Arc()
		require.True(t, ok && a.Sweep < 0)
	}
	require.Empty(t, escapeForm(t).Form.TooHollow(100), "no hollows")
}
