package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
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
		{7, 25.6, 3, 2.2},
		{7, 25.6, 2.2, 3},
		{7, 25.6, 3, 3.0001},
		{7, 25.6, 3, 2.4},
		{7, 25.6, 3, 2.39},
		{4, 80, 9, 1},
		{4, 80, 1, 9},
		{30, 31, 3, 2},
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

// Swept by nothing, or waisted by nothing, an arm is the straight one.
func TestAnArmWithoutSweepOrWaistIsTheStraightOne(t *testing.T) {
	b, s := regulator()
	straight := windUp(b, s)
	s.Style = Swept
	require.InEpsilon(t, straight, windUp(b, s), 1e-9)
	s.Sweep = 1e-5
	require.InEpsilon(t, straight, windUp(b, s), 1e-6)
	s.Style, s.ArmAtHub, s.ArmAtRim, s.Waist = Waisted, 2, 2, 2
	waisted := windUp(b, s)
	s.Style = Straight
	require.InEpsilon(t, windUp(b, s), waisted, 1e-9)
}

// walked returns a swept arm's stiffness by walking along it from the hub in small
// straight steps, each turned by the bending moment and drawn out by the thrust at its
// middle (midpoint rule), for a torque and two forces at the wheel's centre in turn,
// and combining them so that the rim's centre stays where it is.
func walked(young, t, hub, rim, sweep, atHub, atRim float64, steps int) float64 {
	// the circle square to the radius at the hub end through the rim end
	from := [2]float64{hub * math.Cos(sweep), hub * math.Sin(sweep)}
	square := [2]float64{-math.Sin(sweep), math.Cos(sweep)}
	dx, dy := rim-from[0], -from[1]
	radius := (dx*dx + dy*dy) / 2 / (dx*square[0] + dy*square[1]) // positive to the left
	turn := 2 * math.Atan2(math.Cos(sweep)*dy-math.Sin(sweep)*dx, math.Cos(sweep)*dx+math.Sin(sweep)*dy)
	h := radius * turn / float64(steps)
	end := func(torque, fx, fy float64) [3]float64 {
		turned, ux, uy := 0.0, 0.0, 0.0 // of the rim's centre, carried by what lies inwards
		for i := range steps {
			share := (float64(i) + 0.5) / float64(steps)
			way := sweep + share*turn
			x := from[0] + radius*(square[0]+math.Sin(way))
			y := from[1] + radius*(square[1]-math.Cos(way))
			w := atHub + share*(atRim-atHub)
			moment := torque - x*fy + y*fx
			bend := h * moment / (young * t * w * w * w / 12)
			stretch := h * (fx*math.Cos(way) + fy*math.Sin(way)) / (young * t * w)
			// a turn at (x, y) moves the centre, which lies (−x, −y) from it
			turned += bend
			ux += y*bend + stretch*math.Cos(way)
			uy += -x*bend + stretch*math.Sin(way)
		}
		return [3]float64{turned, ux, uy}
	}
	a, b, c := end(1, 0, 0), end(0, 1, 0), end(0, 0, 1)
	// find fx, fy for a torque of one such that the centre does not move
	det := b[1]*c[2] - c[1]*b[2]
	fx, fy := (-a[1]*c[2]+c[1]*a[2])/det, (-b[1]*a[2]+a[1]*b[2])/det
	return 1 / (a[0] + fx*b[0] + fy*c[0])
}

func TestASweptArmIsAsStiffAsWalkingAlongItSays(t *testing.T) {
	for _, c := range []struct{ hub, rim, sweep, atHub, atRim float64 }{
		{7, 25.6, 0.3, 3, 2.2}, {7, 25.6, -0.3, 3, 2.2}, {7, 25.6, 0.05, 2, 2}, {4, 80, 0.6, 9, 3}, {10, 30, 0.4, 1, 2},
	} {
		s := Spec{Style: Swept, Sweep: geometry.Angle(c.sweep), ArmAtHub: c.atHub, ArmAtRim: c.atRim}
		got := curvedStiffness(97000, 1.6, centreOf(c.hub, c.rim, s), widths(c.hub, c.rim, s))
		require.InEpsilon(t, walked(97000, 1.6, c.hub, c.rim, c.sweep, c.atHub, c.atRim, 40000), got, 1e-6, "%+v", c)
	}
}

// A waisted arm is a beam whose width the circle through its three points gives.
func TestAWaistedArmIsAsStiffAsItsBendingSays(t *testing.T) {
	for _, c := range []struct{ hub, rim, atHub, waist, atRim, at float64 }{
		{7, 25.6, 3, 1.6, 2.2, 17}, {7, 25.6, 3, 1.2, 3, 16.3}, {4, 80, 9, 2, 6, 50},
	} {
		s := Spec{Style: Waisted, ArmAtHub: c.atHub, ArmAtRim: c.atRim, Waist: c.waist, WaistAt: c.at}
		middle, ok := circumcentre(geometry.Point{X: c.hub, Y: c.atHub / 2}, geometry.Point{X: c.at, Y: c.waist / 2}, geometry.Point{X: c.rim, Y: c.atRim / 2})
		require.True(t, ok)
		radius := middle.Dist(geometry.Point{X: c.at, Y: c.waist / 2})
		width := func(r float64) float64 { return 2 * (middle.Y - math.Sqrt(radius*radius-(r-middle.X)*(r-middle.X))) }
		var f [3]float64 // ∫ρⁿ/(EI) by Simpson's rule
		const n = 20000
		h := (c.rim - c.hub) / n
		for i := 0; i <= n; i++ {
			r, weight := c.hub+h*float64(i), []float64{2, 4}[i%2]
			if i == 0 || i == n {
				weight = 1
			}
			bending := weight * h / 3 / (97000 * 1.6 * math.Pow(width(r), 3) / 12)
			f[0], f[1], f[2] = f[0]+bending, f[1]+bending*r, f[2]+bending*r*r
		}
		got := curvedStiffness(97000, 1.6, centreOf(c.hub, c.rim, s), widths(c.hub, c.rim, s))
		require.InEpsilon(t, f[2]/(f[0]*f[2]-f[1]*f[1]), got, 1e-8, "%+v", c)
	}
}
