package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// formRuns is how many random forms are drawn in a full run.
const formRuns = 10_000

// eachForm draws random forms and gives those that can be built, with the plan
// they are from, to look.
func eachForm(t *testing.T, seed uint64, look func(i int, p Pointed, c Cut)) {
	r := trial.Rand(t, seed)
	for i := range trial.Count(formRuns) {
		p := randomPointed(r)
		if c, err := p.Cut(); err == nil {
			look(i, p, c)
		}
	}
}

// Every form that is built is a simple outline, run anticlockwise, that stands on
// y = 0, begins at x = 0, keeps within its stock and cuts no higher than its top.
func TestFormsAreSimple(t *testing.T) {
	eachForm(t, 55, func(i int, p Pointed, c Cut) {
		o, err := c.Form.Outline()
		require.NoError(t, err, "form %d: %+v", i, p)
		require.True(t, o.Simple(), "form %d: %+v", i, p)
		require.Greater(t, o.Area(), 0.0, "form %d: %+v", i, p)
		box := o.Bounds()
		require.InDelta(t, 0, box.Min.X, 1e-9, "form %d: %+v", i, p)
		require.InDelta(t, 0, box.Min.Y, 1e-9, "form %d: %+v", i, p)
		require.InDelta(t, c.Form.Top, box.Max.Y, 1e-9, "form %d: %+v", i, p)
		if p.StockWidth > 0 {
			require.LessOrEqual(t, box.Max.X, p.StockWidth+1e-9, "form %d: %+v", i, p)
		}
		tip := math.Sqrt(c.TipRadius*c.TipRadius-c.SetOver*c.SetOver) - c.Height()
		require.Greater(t, c.Form.Top, tip, "form %d: %+v", i, p)
	})
}

// A form's pieces are named after the fields that made them, and meet without a
// corner where they should.
func TestFormsAreSmoothWhereRounded(t *testing.T) {
	eachForm(t, 56, func(i int, p Pointed, c Cut) {
		e := c.Form.Edge
		for k := range e.Len() {
			require.NotEmpty(t, e.Segment(k).Quantity)
		}
		for k := 1; k < e.Len(); k++ {
			a, b := e.Segment(k-1), e.Segment(k)
			sharp := a.Quantity == FrontRelief && p.CornerRadius < 1e-6 || b.Quantity == StockWidth ||
				b.Quantity == BackAngle && p.BackFillet < 1e-6 || a.Length() < 1e-6 || b.Length() < 1e-6
			if !sharp {
				turn := leaving(a.Reverse()).Times(-1).Cross(leaving(b))
				require.InDelta(t, 0, turn, 1e-6, "form %d corner %d: %+v", i, k, p)
			}
		}
		require.Empty(t, c.Form.ConcaveCorners())
		require.Zero(t, c.Form.SmallestConcave())
	})
}

// The heel is a valid outline inside the form.
func TestHeelsAreSimple(t *testing.T) {
	eachForm(t, 57, func(i int, p Pointed, c Cut) {
		r, err := c.Relieve(geometry.Degrees(10), math.Max(c.Infeed, geometry.LeastLength), 0)
		require.NoError(t, err, "form %d: %+v", i, p)
		if r.UsableThickness < r.Thickness && len(r.Heel) == 0 {
			return // the whole section ends in a point
		}
		require.NotEmpty(t, r.Heel, "form %d: %+v", i, p)
		form, err := c.Form.Outline()
		require.NoError(t, err)
		total := 0.0
		for _, h := range r.Heel {
			require.True(t, h.Simple(), "form %d: %+v", i, p)
			total += h.Area()
		}
		require.Less(t, total, form.Area(), "form %d: %+v", i, p)
		require.Greater(t, total, 0.0, "form %d: %+v", i, p)
	})
}

// Every refusal has a sentence.
func TestRefusalsHaveWords(t *testing.T) {
	english := words.English()
	r := trial.Rand(t, 58)
	for range trial.Count(formRuns) {
		if _, err := randomPointed(r).Cut(); err != nil {
			limit := &geometry.Limit{}
			require.ErrorAs(t, err, &limit)
			require.True(t, english.Has(limit.Code), limit.Code)
		}
	}
}

// The width across the form at a depth is what the edge says when it is walked
// along.
func TestWidths(t *testing.T) {
	eachForm(t, 59, func(i int, p Pointed, c Cut) {
		for _, share := range []float64{0.1, 0.4, 0.9} {
			y := share * c.Form.Top
			front, back, ok := c.Form.Width(y)
			require.True(t, ok)
			least, most := math.Inf(1), math.Inf(-1)
			pts := pointsOf(c)
			for k := 1; k < len(pts); k++ {
				a, b := pts[k-1], pts[k]
				if (a.Y <= y) != (b.Y <= y) {
					x := a.Toward(b, (y-a.Y)/(b.Y-a.Y)).X
					least, most = math.Min(least, x), math.Max(most, x)
				}
			}
			slack := 2e-4 * c.TipRadius
			require.InDelta(t, least, front, slack, "form %d: %+v", i, p)
			require.InDelta(t, most, back, slack, "form %d: %+v", i, p)
		}
	})
	_, _, ok := escapeForm(t).Form.Width(-1)
	require.False(t, ok)
	_, _, ok = escapeForm(t).Form.Width(1e3)
	require.False(t, ok)
}

// ρ − √(ρ² − w²/4), the exact height of the hump, is w²/8ρ to first order.
func TestSagitta(t *testing.T) {
	require.InDelta(t, 22-math.Sqrt(22*22-0.8*0.8), Sagitta(1.6, 22), 1e-5)
}
