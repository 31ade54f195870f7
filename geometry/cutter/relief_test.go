package cutter

import (
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestReliefTry(t *testing.T) {
	p := Pointed{Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12), FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, Solve: RootDiameter}
	c, err := p.Cut()
	require.NoError(t, err)
	st := time.Now()
	r, err := c.Relieve(geometry.Degrees(10), 5, 22)
	t.Log(time.Since(st))
	require.NoError(t, err)
	t.Logf("%+v", r)
	p = Pointed{Count: 30, TipRadius: 20, Undercut: geometry.Degrees(0), Floor: 4, BackRadius: .01, Land: 0.02, RootRadius: 18, Solve: Land}
	c, err = p.Cut()
	if err != nil {
		t.Log(err)
		p.Floor = 2
		c, err = p.Cut()
	}
	require.NoError(t, err)
	st = time.Now()
	r, err = c.Relieve(geometry.Degrees(10), 5, 22)
	t.Log(time.Since(st))
	require.NoError(t, err)
	t.Logf("%+v", r)
}
