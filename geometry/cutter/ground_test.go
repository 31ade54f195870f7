package cutter

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// A bit that is ground as the form was drawn cuts what the form cuts, deviates
// nowhere, and needs no other infeed.
func TestBitAsDrawn(t *testing.T) {
	eachForm(t, 73, func(i int, p Pointed, c Cut) {
		edge, err := NewEdge(c.Form.Corners())
		require.NoError(t, err, "form %d: %+v", i, p)
		g, err := c.Ground(edge)
		require.NoError(t, err, "form %d: %+v", i, p)
		slack := 1e-7 * c.TipRadius
		require.InDelta(t, c.TouchHeight, g.Cut.TouchHeight, slack, "form %d: %+v", i, p)
		require.InDelta(t, c.RootRadius, g.Cut.RootRadius, slack, "form %d: %+v", i, p)
		require.InDelta(t, c.Land, g.Cut.Land, noLand, "form %d: %+v", i, p)
		require.InDelta(t, 0, g.Lift, slack)
		require.InDelta(t, 0, g.Worst.Off, 10*slack, "form %d: %+v", i, p)
		require.Equal(t, c.Infeed, g.Best)
		require.Empty(t, g.Undercut, "form %d: %+v", i, p)
		require.NotEmpty(t, g.Along)
		for _, d := range g.Along {
			require.False(t, math.IsNaN(d.Off))
		}
	})
}

// No infeed of a hundred comes nearer than the best by more than the places that
// are looked at while it is sought may hide.
func TestBestInfeed(t *testing.T) {
	eachBit(t, 76, 300, func(say string, c Cut, corners []Corner, g Ground) {
		k := newComparison(c, g.Cut)
		require.LessOrEqual(t, math.Abs(g.BestDeviation.Off), math.Abs(g.Worst.Off), say)
		require.InDelta(t, g.BestDeviation.Off, k.worst(g.Best).Off, 1e-12)
		require.InDelta(t, g.BestLand, g.Cut.LandAt(g.Best), 1e-12)
		for i := range 100 {
			d := c.Infeed * (0.5 + float64(i)/100)
			if g.Cut.TouchHeight-d < g.Cut.edge().touch(c.SetOver, shallowestCut*c.TipRadius) {
				continue
			}
			off := math.Abs(k.worst(d).Off)
			require.GreaterOrEqual(t, off, 0.85*math.Abs(g.BestDeviation.Off)-asGood, "infeed %g of %g, best %g: %s", d, c.Infeed, g.Best, say)
		}
	})
}

// bitOf types corners as an edge.
func bitOf(t *testing.T, corners []Corner) geometry.Chain {
	t.Helper()
	edge, err := NewEdge(corners)
	require.NoError(t, err)
	return edge
}

// A bit that lies a little to the front takes that much off the upright face and
// leaves it on the back.
func TestBitSetToOneSide(t *testing.T) {
	p := plain()
	p.CornerRadius = 0
	c, err := p.Cut()
	require.NoError(t, err)
	for _, aside := range []float64{-0.02, 0.02} {
		corners := c.Form.Corners()
		for i := range corners {
			corners[i].X += aside
		}
		g, err := c.Ground(bitOf(t, corners))
		require.NoError(t, err)
		require.InDelta(t, 0.02, math.Abs(g.Worst.Off), 2e-3)
		faces := 0
		for _, d := range g.Along {
			if d.At.X == 0 && d.At.Y > 0.3 {
				require.InDelta(t, aside, d.Off, 1e-9, "%v", d)
				faces++
			}
			if d.At.X > 1 && d.At.Y > 0.3 {
				require.Equal(t, aside > 0, d.Off < 0, "%v", d)
			}
		}
		require.NotZero(t, faces)
	}
}

// A bit measured from another height is the same bit.
func TestHeightOfABitIsFree(t *testing.T) {
	c := escapeForm(t)
	corners := c.Form.Corners()
	one, err := c.Ground(bitOf(t, corners))
	require.NoError(t, err)
	for i := range corners {
		corners[i].Y -= 17
	}
	other, err := c.Ground(bitOf(t, corners))
	require.NoError(t, err)
	require.InDelta(t, one.Cut.TouchHeight, other.Cut.TouchHeight, 1e-9)
	require.InDelta(t, one.Cut.Land, other.Cut.Land, 1e-9)
	require.InDelta(t, 0, other.Form.Edge.Bounds().Min.Y, 1e-12)
}

// A straight bit of a given width leaves the pitch less that width, an infeed does
// not mend it, and its depth below the floor that was wanted is its root's alone.
func TestSquareBit(t *testing.T) {
	p := Pointed{Count: 60, TipRadius: 30, Floor: 1.5, Straight: true, RootRadius: 28, Solve: Land}
	c, err := p.Cut()
	require.NoError(t, err)
	const width = 1.6
	g, err := c.Ground(bitOf(t, []Corner{{0, 4, 0}, {0, 0, 0}, {width, 0, 0}, {width, 4, 0}}))
	require.NoError(t, err)
	require.InDelta(t, 30*(2*math.Pi/60-math.Asin(width/30)), g.Cut.Land, 1e-9)
	require.InDelta(t, -0.1, g.Worst.Off, 1e-3)
	require.Empty(t, g.Undercut)
	require.InDelta(t, 30-g.Cut.Infeed, g.Cut.RootRadius, 1e-9, "without set-over the corner at x = 0 touches first")
}

// A hook in the back, a notch in the floor and a waist in the front of a space's
// bit are named where they turn; a relieved front is not.
func TestUndercutPlaces(t *testing.T) {
	p := Pointed{Count: 60, TipRadius: 30, Floor: 1.5, Straight: true, RootRadius: 28, Solve: Land}
	c, err := p.Cut()
	require.NoError(t, err)
	for _, row := range []struct {
		name    string
		corners []Corner
		at      []geometry.Point
	}{
		{"relieved front", []Corner{{0.3, 4, 0}, {0, 0, 0}, {1.5, 0, 0}, {1.6, 4, 0}}, nil},
		{"hooked back", []Corner{{0, 4, 0}, {0, 0, 0}, {1.5, 0, 0}, {1.7, 0.5, 0}, {1.4, 1, 0}, {1.4, 4, 0}}, []geometry.Point{{X: 1.7, Y: 0.5}}},
		{"hook above the blank", []Corner{{0, 4, 0}, {0, 0, 0}, {1.5, 0, 0}, {1.6, 3, 0}, {1.4, 3.4, 0}, {1.4, 4, 0}}, nil},
		{
			"dovetail in the floor",
			[]Corner{{0, 4, 0}, {0, 0, 0}, {0.6, 0, 0}, {0.5, 0.4, 0}, {1, 0.4, 0}, {0.9, 0, 0}, {1.5, 0, 0}, {1.5, 4, 0}},
			[]geometry.Point{{X: 0.6}, {X: 0.9}},
		},
		{"round shoulder past its side", []Corner{{0, 4, 0}, {0, 0, 0}, {1, 0, 0}, {1.3, 1.1, 0.6}, {1.3, 4, 0}}, []geometry.Point{{X: 1.569509, Y: 0.599225}}},
	} {
		t.Run(row.name, func(t *testing.T) {
			g, err := c.Ground(bitOf(t, row.corners))
			require.NoError(t, err)
			require.Len(t, g.Undercut, len(row.at), "%v", g.Undercut)
			for i, at := range row.at {
				require.InDelta(t, at.X, g.Undercut[i].X, 1e-6, "%v", g.Undercut)
				require.InDelta(t, at.Y, g.Undercut[i].Y, 1e-6, "%v", g.Undercut)
			}
		})
	}
}

func TestBitsThatCannotCut(t *testing.T) {
	c := escapeForm(t)
	deep := c
	deep.Infeed = 22
	aside := c.Form.Corners()
	for i := range aside {
		aside[i].X += 60
	}
	short := c.Form.Corners()
	short[0].Y = 1
	for _, row := range []struct {
		code  string
		field geometry.Quantity
		cut   Cut
		bit   []Corner
	}{
		{"cutter.bit-off-the-blank", "cutter.bit.chain[2].x", c, aside},
		{"cutter.bit-too-deep", "cutter.bit.chain[2].x", deep, c.Form.Corners()},
		{"cutter.bit-ends-in-the-blank", "cutter.bit.chain[0].y", c, short},
	} {
		t.Run(row.code, func(t *testing.T) {
			_, err := row.cut.Ground(bitOf(t, row.bit))
			limit := &geometry.Limit{}
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.code, limit.Code)
			require.Equal(t, row.field, limit.Quantity)
			require.True(t, words.English().Has(limit.Code))
		})
	}
	corners := c.Form.Corners()
	corners[0].Y = 1
	_, err := c.Ground(bitOf(t, corners))
	limit := &geometry.Limit{}
	require.ErrorAs(t, err, &limit)
	corners[0].Y = limit.Min
	_, err = c.Ground(bitOf(t, corners))
	require.NoError(t, err, "the height asked for does")
	_, err = c.Ground(geometry.Chain{})
	require.ErrorIs(t, err, ErrNoSpace)
}

// Whatever edge is measured, there is an answer in plain numbers, or a corner is
// named.
func TestAnyBit(t *testing.T) {
	r := trial.Rand(t, 81)
	answered := 0
	for i := range trial.Count(20000) {
		c, err := randomPointed(r).Cut()
		if err != nil {
			continue
		}
		// Down on the left, about at random below, and up on the right.
		wide, high := c.Infeed*3*r.Float64(), c.Infeed*(1+4*r.Float64())
		corners := []Corner{{X: wide * (r.Float64() - 0.5), Y: high}}
		for range 1 + r.IntN(5) {
			corners = append(corners, Corner{wide * r.Float64(), c.Infeed * r.Float64(), wide * 4 * (r.Float64() - 0.5)})
		}
		corners = append(corners, Corner{wide * (0.5 + r.Float64()), high, 0})
		edge, err := NewEdge(corners)
		var g Ground
		if err == nil {
			g, err = c.Ground(edge)
		}
		limit := &geometry.Limit{}
		if errors.As(err, &limit) {
			continue
		}
		require.NoError(t, err, "bit %d: %+v", i, corners)
		answered++
		for _, v := range []float64{g.Cut.TouchHeight, g.Cut.Land, g.Cut.RootRadius, g.Lift, g.Worst.Off, g.Best, g.BestDeviation.Off, g.BestLand} {
			require.False(t, math.IsNaN(v) || math.IsInf(v, 0), "bit %d: %+v: %+v", i, corners, g)
		}
		require.GreaterOrEqual(t, g.Best, 0.0)
		require.NotEmpty(t, g.Along)
		for _, d := range g.Along {
			require.True(t, d.At.Finite() && !math.IsNaN(d.Off) && math.Abs(d.Off) <= math.Abs(g.Worst.Off)+1e-9, "bit %d: %+v: %+v", i, corners, d)
		}
		for _, d := range g.Cut.Depths(4) {
			require.False(t, math.IsNaN(d.Land+d.RadialFall.Thou))
		}
	}
	require.NotZero(t, answered)
}

// The relief of a bit that was ground as drawn, with an upright front, is the
// form's own.
func TestReliefOfAMeasuredBit(t *testing.T) {
	p := plain()
	p.FrontRelief = 0
	c, err := p.Cut()
	require.NoError(t, err)
	g, err := c.Ground(bitOf(t, c.Form.Corners()))
	require.NoError(t, err)
	for _, relieve := range []func(Cut, geometry.Angle, float64, float64) (Relief, error){Cut.Relieve, Cut.RelieveFormed} {
		want, err := relieve(c, geometry.Degrees(8), 3, 12)
		require.NoError(t, err)
		got, err := relieve(g.Cut, geometry.Degrees(8), 3, 12)
		require.NoError(t, err)
		require.InDelta(t, want.UsableThickness, got.UsableThickness, 1e-6)
		require.InDelta(t, want.LeastSwing, got.LeastSwing, 1e-6)
		require.InDelta(t, want.HeelLimit, got.HeelLimit, 1e-6)
		require.NotEmpty(t, got.Heel)
	}
	s, err := g.Cut.SquareForm(geometry.Degrees(8), 0)
	require.NoError(t, err)
	require.InDelta(t, math.Cos(8*math.Pi/180), s.Share, 1e-12)
}

// A square bit's facets meet in its middle: at half its width over tan c.
func TestReliefOfASquareBit(t *testing.T) {
	p := Pointed{Count: 60, TipRadius: 30, Floor: 1.5, Straight: true, RootRadius: 28, Solve: Land}
	c, err := p.Cut()
	require.NoError(t, err)
	g, err := c.Ground(bitOf(t, []Corner{{0, 4, 0}, {0, 0, 0}, {1.6, 0, 0}, {1.6, 4, 0}}))
	require.NoError(t, err)
	r, err := g.Cut.Relieve(geometry.Degrees(10), 10, 0)
	require.NoError(t, err)
	require.InDelta(t, 0.8/math.Tan(10*math.Pi/180), r.UsableThickness, 1e-8)
}
