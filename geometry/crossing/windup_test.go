package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// For prismatic arms, slope-deflection beam theory gives each arm's part of the
// torque for a radian as 4EI/L·(1 + 3r/L + 3r²/L²).
func TestAPrismaticArmIsAsStiffAsSlopeDeflectionSays(t *testing.T) {
	for _, c := range []struct{ young, t, hub, rim, width float64 }{
		{97000, 1.6, 7, 25.6, 2.2}, {97000, 1, 3, 12, 1}, {200000, 3, 20, 200, 8}, {97000, 2, 10, 10.5, 3},
	} {
		l := c.rim - c.hub
		i := c.t * math.Pow(c.width, 3) / 12
		want := 4 * c.young * i / l * (1 + 3*c.hub/l + 3*c.hub*c.hub/l/l)
		require.InEpsilon(t, want, stiffness(c.young, c.t, c.hub, c.rim, c.width, c.width), 1e-12)
	}
}

// bent returns a tapered arm's stiffness by stepping the beam's differential
// equation EI·v″ = M, M″ = 0 from the hub to the rim (Runge-Kutta) for two starting
// states and combining them to a rim that turns as one.
func bent(young, t, hub, rim, atHub, atRim float64, steps int) float64 {
	end := func(m, shear float64) (v, slope, moment float64) {
		curve := func(r float64) float64 {
			w := atHub + (atRim-atHub)*(r-hub)/(rim-hub)
			return (m + shear*(r-hub)) / (young * t * w * w * w / 12)
		}
		h := (rim - hub) / float64(steps)
		for i := range steps {
			r := hub + h*float64(i)
			a, b, c := curve(r), curve(r+h/2), curve(r+h)
			v += h*slope + h*h/6*(a+2*b)
			slope += h / 6 * (a + 4*b + c)
		}
		return v, slope, m + shear*(rim-hub)
	}
	v1, s1, m1 := end(1, 0)
	v2, s2, m2 := end(0, 1)
	det := v1*s2 - v2*s1
	a, b := (rim*s2-v2)/det, (v1-rim*s1)/det // v = rim·φ, slope = φ, φ = 1
	return a*m1 + b*m2 - b*rim
}

func TestATaperedArmIsAsStiffAsItsBendingSays(t *testing.T) {
	for _, c := range []struct{ hub, rim, atHub, atRim float64 }{
		{7, 25.6, 3, 2.2}, {7, 25.6, 2.2, 3}, {7, 25.6, 3, 3.0001}, {7, 25.6, 3, 2.4}, {7, 25.6, 3, 2.39},
		{4, 80, 9, 1}, {4, 80, 1, 9}, {30, 31, 3, 2},
	} {
		want := bent(97000, 1.6, c.hub, c.rim, c.atHub, c.atRim, 20000)
		require.InEpsilon(t, want, stiffness(97000, 1.6, c.hub, c.rim, c.atHub, c.atRim), 1e-8, "%+v", c)
	}
}

// The closed form and the series for nearly prismatic arms must meet.
func TestTheTailOfTheLogarithmIsSmooth(t *testing.T) {
	for _, u := range []float64{0.2, -0.2} {
		in, out := logTail(u), logTail(math.Nextafter(u, 2*u))
		require.InEpsilon(t, in, out, 1e-12)
	}
	require.InDelta(t, 1.0/3, logTail(0), 1e-16)
}

func TestWindUpScalesAsABeamDoes(t *testing.T) {
	b, s := regulator()
	base := windUp(b, s)
	thick := b
	thick.Thickness *= 2
	require.InEpsilon(t, base/2, windUp(thick, s), 1e-12)
	stiff := b
	stiff.Young *= 3
	require.InEpsilon(t, base/3, windUp(stiff, s), 1e-12)
	more := s
	more.Arms = 12
	require.InEpsilon(t, base/2, windUp(b, more), 1e-12)
	large, scaled := b, s // twice the size all round: E·t·L^0, so half as much
	large.RootRadius, large.Thickness = 2*b.RootRadius, 2*b.Thickness
	scaled.Rim, scaled.Hub, scaled.ArmAtHub, scaled.ArmAtRim = 2*s.Rim, 2*s.Hub, 2*s.ArmAtHub, 2*s.ArmAtRim
	require.InEpsilon(t, base/2, windUp(large, scaled), 1e-12)
}
