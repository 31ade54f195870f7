package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

func TestFilletsAreTangent(t *testing.T) {
	rnd := trial.Rand(t, 3)
	bulge := func(arched bool) float64 {
		if !arched {
			return 0
		}
		return (rnd.Float64() - 0.5) * 1.6
	}
	for kind := range 4 {
		struck, refused := 0, 0
		for range trial.Count(5000) {
			corner := Point{rnd.Float64() * 100, rnd.Float64() * 100}
			a := Segment{From: corner.Add(Polar(1+rnd.Float64()*20, Angle(rnd.Float64()*7))), To: corner, Bulge: bulge(kind&1 != 0)}
			b := Segment{From: corner, To: corner.Add(Polar(1+rnd.Float64()*20, Angle(rnd.Float64()*7))), Bulge: bulge(kind&2 != 0)}
			r := 0.01 + 10*rnd.Float64()*rnd.Float64()
			arc, s, u, err := Fillet(a, b, r)
			if err != nil {
				refused++
				var limit *Limit
				require.ErrorAs(t, err, &limit, "%v %v %v", a, b, r)
				require.Less(t, limit.Max, r)
				if limit.Max == 0 {
					continue
				}
				arc, s, u, err = Fillet(a, b, limit.Max)
				require.NoError(t, err, "%v %v at most %v", a, b, limit.Max)
				_, _, _, err = Fillet(a, b, limit.Max+2e-6)
				require.Error(t, err, "%v %v more than %v", a, b, limit.Max)
				r = limit.Max
			} else {
				struck++
			}
			round, ok := arc.Arc()
			require.True(t, ok)
			say := []any{"%v %v radius %v gives %v", a, b, r, arc}
			require.InDelta(t, r, round.Radius, 1e-9, say...)
			require.InDelta(t, 0, arc.From.Dist(a.At(s)), 1e-9, say...)
			require.InDelta(t, 0, arc.To.Dist(b.At(u)), 1e-9, say...)
			require.InDelta(t, 0, a.Tangent(s).Dist(arc.Tangent(0))*r, 1e-8, say...)
			require.InDelta(t, 0, b.Tangent(u).Dist(arc.Tangent(1))*r, 1e-8, say...)
		}
		require.Positive(t, struck)
		require.Positive(t, refused)
	}
}

func TestFilletRefusals(t *testing.T) {
	a, b := Line{Point{0, 0}, Point{10, 0}}.Segment(), Line{Point{10, 0}, Point{10, 6}}.Segment()
	for name, c := range map[string]struct {
		a, b   Segment
		radius float64
	}{
		"negative":     {a, b, -1},
		"nothing":      {a, b, 0},
		"no number":    {a, b, math.NaN()},
		"apart":        {a, b.Move(Point{1, 0}), 1},
		"straight on":  {a, Line{Point{10, 0}, Point{20, 0}}.Segment(), 1},
		"straight out": {a, a.Reverse(), 1},
	} {
		t.Run(name, func(t *testing.T) {
			_, _, _, err := Fillet(c.a, c.b, c.radius)
			require.Error(t, err)
		})
	}
	_, _, _, err := Fillet(a, b, 7)
	var limit *Limit
	require.ErrorAs(t, err, &limit)
	require.InDelta(t, 6, limit.Max, 1e-6)
	require.Equal(t, "geometry.fillet-too-large", limit.Code)
}

func TestRoundTakesUpANeighbour(t *testing.T) {
	o, err := rectangle(t, 10, 6).Round(1, 6, "fillet")
	require.NoError(t, err)
	require.Equal(t, 4, o.Len())
	require.InDelta(t, 60-36+9*math.Pi, o.Area(), 1e-9)
	o, err = rectangle(t, 10, 6).Round(-3, 2, "fillet")
	require.NoError(t, err)
	require.InDelta(t, 60-4+math.Pi, o.Area(), 1e-9)
	_, err = rectangle(t, 10, 6).Round(0, 8, "crossing.fillet_at_hub")
	var limit *Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, Quantity("crossing.fillet_at_hub"), limit.Quantity)
	_, err = Outline{}.Round(0, 1, "fillet")
	require.Error(t, err)
}
