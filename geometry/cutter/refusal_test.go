package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// plain is a form that can be built, for rows that spoil one value.
func plain() Pointed {
	return Pointed{
		Count: 30, TipRadius: 20, RootRadius: 18.8, Undercut: geometry.Degrees(10), Floor: 0.5, FloorSlope: geometry.Degrees(5),
		FrontRelief: geometry.Degrees(3), CornerRadius: 0.1, BackRadius: 6, Land: 0.25, StockWidth: 8, Solve: BackRadius,
	}
}

func TestValuesThatCannotBeBuiltWith(t *testing.T) {
	straight := func(p *Pointed) {
		p.Straight, p.BackAngle, p.BackFillet, p.Solve = true, geometry.Degrees(22), 0.1, RootDiameter
	}
	for _, row := range []struct {
		code  string
		field geometry.Quantity
		spoil func(*Pointed)
	}{
		{"cutter.count", Count, func(p *Pointed) { p.Count = 2 }},
		{"cutter.count", Count, func(p *Pointed) { p.Count = 2001 }},
		{"cutter.tip-diameter", TipDiameter, func(p *Pointed) { p.TipRadius = 0 }},
		{"cutter.tip-diameter", TipDiameter, func(p *Pointed) { p.TipRadius = math.NaN() }},
		{"cutter.tip-diameter", TipDiameter, func(p *Pointed) { p.TipRadius = math.Inf(1) }},
		{"cutter.undercut", Undercut, func(p *Pointed) { p.Undercut = geometry.Degrees(-1) }},
		{"cutter.undercut", Undercut, func(p *Pointed) { p.Undercut = geometry.Degrees(46) }},
		{"cutter.front-relief", FrontRelief, func(p *Pointed) { p.FrontRelief = geometry.Degrees(11) }},
		{"cutter.floor-slope", FloorSlope, func(p *Pointed) { p.FloorSlope = geometry.Degrees(31) }},
		{"cutter.floor", Floor, func(p *Pointed) { p.Floor = -1 }},
		{"cutter.corner-radius", CornerRadius, func(p *Pointed) { p.CornerRadius = -0.1 }},
		{"cutter.corner-over-floor", CornerRadius, func(p *Pointed) { p.CornerRadius = 0.6 }},
		{"cutter.stock-width", StockWidth, func(p *Pointed) { p.StockWidth = -1 }},
		{"cutter.form-wider-than-stock", StockWidth, func(p *Pointed) { p.StockWidth = 2 }},
		{"cutter.land", Land, func(p *Pointed) { p.Land = -0.1 }},
		{"cutter.land", Land, func(p *Pointed) { p.Land = 5 }},
		{"cutter.land-too-wide", Land, func(p *Pointed) { p.Land = 4 }},
		{"cutter.land-too-narrow", Land, func(p *Pointed) { p.RootRadius, p.Land, p.FloorSlope = 19.99, 0, 0.5 }},
		{"cutter.root-diameter", RootDiameter, func(p *Pointed) { p.RootRadius = 20 }},
		{"cutter.root-diameter", RootDiameter, func(p *Pointed) { p.RootRadius = 1 }},
		{"cutter.no-tooth-left", RootDiameter, func(p *Pointed) { p.RootRadius, p.Solve = 17, Land }},
		{"cutter.no-face", RootDiameter, func(p *Pointed) { p.CornerRadius, p.RootRadius, p.Solve = 0.4, 19.9, Land }},
		{"cutter.form-too-narrow", Land, func(p *Pointed) { p.BackRadius, p.Solve = 0.2, RootDiameter }},
		{"cutter.back-radius", BackRadius, func(p *Pointed) { p.BackRadius, p.Solve = 0, RootDiameter }},
		{"cutter.back-angle", BackAngle, func(p *Pointed) { straight(p); p.Floor, p.BackFillet, p.BackAngle = 0, 0, 1e-32 }},
		{"cutter.back-angle", BackAngle, func(p *Pointed) { straight(p); p.BackAngle = geometry.Degrees(89) }},
		{"cutter.back-fillet", BackFillet, func(p *Pointed) { straight(p); p.BackFillet = -1 }},
		{"cutter.fillet-over-floor", BackFillet, func(p *Pointed) { straight(p); p.BackFillet = 3 }},
	} {
		t.Run(row.code, func(t *testing.T) {
			p := plain()
			_, err := p.Cut()
			require.NoError(t, err)
			row.spoil(&p)
			_, err = p.Cut()
			limit := &geometry.Limit{}
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.code, limit.Code, limit.Error())
			require.Equal(t, row.field, limit.Quantity)
			require.True(t, words.English().Has(limit.Code))
		})
	}
}

func TestWhatAPointedFormIsSolvedFor(t *testing.T) {
	for _, solve := range []geometry.Quantity{"", Floor, BackAngle} {
		p := plain()
		p.Solve = solve
		_, err := p.Cut()
		require.ErrorIs(t, err, ErrSolve, solve)
	}
	p := plain()
	p.Straight, p.Solve = true, BackRadius
	_, err := p.Cut()
	require.ErrorIs(t, err, ErrSolve)
}

// A land under 1 µm is none, and then the tip is a point.
func TestNoLand(t *testing.T) {
	p := plain()
	p.Land = 0
	for _, solve := range []geometry.Quantity{RootDiameter, BackRadius} {
		p.Solve = solve
		c, err := p.Cut()
		require.NoError(t, err)
		require.Zero(t, c.Land)
		p.BackRadius, p.RootRadius, p.Solve = c.BackRadius, c.RootRadius, Land
		c, err = p.Cut()
		require.NoError(t, err)
		require.Zero(t, c.Land, "solved for land it is none either")
	}
}
