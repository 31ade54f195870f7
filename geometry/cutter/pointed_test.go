package cutter

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestPointedAgainstDenseSampling(t *testing.T) {
	p := Pointed{Count: 30, TipRadius: 20, Undercut: geometry.Degrees(10), Floor: 0.4, BackRadius: 6, Land: 0.25, Solve: RootDiameter}
	c, err := p.Cut()
	require.NoError(t, err)
	t.Logf("%+v", c)
	p = Pointed{Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12), FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, Solve: RootDiameter}
	c, err = p.Cut()
	require.NoError(t, err)
	t.Logf("%+v", c)
}
