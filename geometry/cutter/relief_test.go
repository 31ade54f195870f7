package cutter

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// escapeForm is a form with everything: relief, slope, rounding and undercut.
func escapeForm(t *testing.T) Cut {
	t.Helper()
	p := Pointed{
		Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12),
		FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, StockWidth: 25.4 * 5 / 16, Solve: RootDiameter,
	}
	c, err := p.Cut()
	require.NoError(t, err)
	return c
}

// The heel is the form inset by z·tan c from what is ground, and not from the
// stock's side and the shank.
func TestHeelLiesInsideTheGroundEdges(t *testing.T) {
	c := escapeForm(t)
	clearance := geometry.Degrees(10)
	r, err := c.Relieve(clearance, 3, 22)
	require.NoError(t, err)
	require.Equal(t, 3.0, r.UsableThickness)
	require.Len(t, r.Heel, 1)
	inset := 3 * math.Tan(float64(clearance))
	heel := r.Heel[0]
	require.True(t, heel.Area() > 0)
	near := math.Inf(1)
	for i := range heel.Len() {
		for _, e := range pointsOf(c) {
			near = math.Min(near, heel.Vertex(i).Dist(e))
		}
	}
	require.InDelta(t, inset, near, 1e-3)
	require.InDelta(t, c.Form.Top, heel.Bounds().Max.Y, 1e-9, "the shank is not inset")
}

// A swing that is just enough for a thickness makes that thickness the heel's
// limit.
func TestLeastSwingAndHeelLimitAgree(t *testing.T) {
	random := trial.Rand(t, 62)
	checked := 0
	for checked < trial.Count(300) {
		c, err := randomPointed(random).Cut()
		if err != nil {
			continue
		}
		clearance := geometry.Degrees(4 + 14*random.Float64())
		thickness := 0.6 * c.Infeed / math.Tan(float64(clearance))
		r, err := c.Relieve(clearance, thickness, 0)
		require.NoError(t, err)
		require.Zero(t, r.HeelLimit)
		checked++
		require.GreaterOrEqual(t, r.LeastSwing, c.Infeed)
		if r.LeastSwing < c.Infeed*(1+1e-5) {
			continue
		}
		for _, more := range []float64{1 - 1e-6, 1 + 1e-6} {
			q, err := c.Relieve(clearance, thickness, r.LeastSwing*more)
			require.NoError(t, err)
			fouls := q.HeelLimit > 0 && q.HeelLimit < q.UsableThickness
			require.Equal(t, more < 1, fouls, "%g of %g: %+v", more, r.LeastSwing, q)
		}
	}
}

func TestReliefRefusals(t *testing.T) {
	c := escapeForm(t)
	for _, row := range []struct {
		clearance, thickness, swing float64
		field                       geometry.Quantity
		code                        string
	}{
		{0, 5, 22, Clearance, "cutter.clearance"},
		{31, 5, 22, Clearance, "cutter.clearance"},
		{math.NaN(), 5, 22, Clearance, "cutter.clearance"},
		{10, 0, 22, StockThickness, "cutter.stock-thickness"},
		{10, math.Inf(1), 22, StockThickness, "cutter.stock-thickness"},
		{10, 5, -1, Swing, "cutter.swing"},
		{10, 5, 2, Swing, "cutter.swing-within-infeed"},
	} {
		_, err := c.Relieve(geometry.Degrees(row.clearance), row.thickness, row.swing)
		var limit *geometry.Limit
		require.True(t, errors.As(err, &limit), "%+v", row)
		require.Equal(t, row.field, limit.Quantity)
		require.Equal(t, row.code, limit.Code)
	}
}

// A section moved z·tan c up the infeed fouls first where it still reaches the
// infeed: brute force over the sections at the greatest height that does.
func TestFormedReliefAgainstSweptSections(t *testing.T) {
	c := escapeForm(t)
	clearance, swing := geometry.Degrees(10), 12.0
	r, err := c.RelieveFormed(clearance, 5, swing)
	require.NoError(t, err)
	slope := math.Tan(float64(clearance))
	clears := func(z float64) bool {
		for k := range 4001 {
			edge := (c.Infeed - z*slope) * float64(k) / 4000
			if math.Hypot(swing-edge-z*slope, z) > swing-edge {
				return false
			}
		}
		return true
	}
	require.True(t, clears(r.HeelLimit*(1-1e-6)))
	require.False(t, clears(r.HeelLimit*(1+1e-6)))
	require.Len(t, r.Heel, 1)
}
