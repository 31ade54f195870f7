package depthing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// epicycloid returns the point of the curve that starts at (pitch, 0) and goes
// anticlockwise when a circle of radius rolling has rolled on the pitch circle by
// the angle rolled against the line of centres.
func epicycloid(pitch, rolling, rolled float64) geometry.Point {
	on := rolled * rolling / pitch
	c := geometry.Polar(pitch+rolling, geometry.Angle(on))
	return c.Sub(geometry.Polar(rolling, geometry.Angle(on+rolled)))
}

// round returns the angle about the wheel's centre to that point, from its start.
func round(pitch, rolling, rolled float64) float64 {
	sin, cos := math.Sincos(rolled)
	return rolled*rolling/pitch - math.Atan2(rolling*sin, pitch+rolling-rolling*cos)
}

// through returns the bulge of the arc from a to c by b between them.
func through(a, b, c geometry.Point) float64 {
	chord := c.Sub(a)
	side := b.Sub(a).Cross(c.Sub(b))
	angle := math.Atan2(side, b.Sub(a).Dot(c.Sub(b))) // half the sweep
	if chord.Norm() == 0 {
		return 0
	}
	return math.Tan(angle / 2)
}

// theoretical returns the pair Willis' limits are for: a wheel of teeth half a
// pitch wide with true epicycloids above the pitch circle to their point, in that
// many arcs each through three points of the curve, and radial leaves that end at
// the pitch circle. Leaves are somewhat thinner than half a pitch, which only
// gives play. Module 1.
func theoretical(t testing.TB, count, leaves, arcs int) (wheel, pinion Gear) {
	pitch, rolling := float64(count)/2, float64(leaves)/4
	half := math.Pi / (2 * float64(count))
	low, high := 0.0, math.Pi
	for range 100 {
		if mid := (low + high) / 2; round(pitch, rolling, mid) < half {
			low = mid
		} else {
			high = mid
		}
	}
	face := func(s float64) geometry.Point { // 0 at the pitch circle, 1 at the tip; right side
		return epicycloid(pitch, rolling, s*low).Rotate(geometry.Clock(0) - geometry.Angle(half))
	}
	floor := pitch - math.Pi/2
	vs := []geometry.Vertex{{Point: geometry.Polar(floor, geometry.Clock(0)-geometry.Angle(half))}}
	for i := range arcs {
		a, b, c := face(float64(i)/float64(arcs)), face((float64(i)+0.5)/float64(arcs)), face(float64(i+1)/float64(arcs))
		vs = append(vs, geometry.Vertex{Point: a, Bulge: through(a, b, c)})
	}
	right := vs
	vs = append([]geometry.Vertex{}, right...)
	vs = append(vs, geometry.Vertex{Point: geometry.Point{Y: face(1).Norm()}, Bulge: right[len(right)-1].Bulge})
	for i := len(right) - 1; i >= 0; i-- {
		v := geometry.Vertex{Point: right[i].Mirror()}
		if i > 0 {
			v.Bulge = right[i-1].Bulge
		}
		vs = append(vs, v)
	}
	chain, err := geometry.NewChain(vs)
	require.NoError(t, err)
	return Gear{chain, count, pitch, floor}, radial(t, leaves)
}

// radial returns a pinion of radial leaves of module 1 that end at the pitch
// circle.
func radial(t testing.TB, leaves int) Gear {
	lp, thin := float64(leaves)/2, geometry.Angle(0.9*math.Pi/(2*float64(leaves)))
	deep := lp - math.Min(2.4, 0.9*lp)
	at := func(r float64, a geometry.Angle, bulge float64) geometry.Vertex {
		return geometry.Vertex{Point: geometry.Polar(r, geometry.Clock(0)+a), Bulge: bulge}
	}
	leaf, err := geometry.NewChain([]geometry.Vertex{
		at(deep, -thin, 0), at(lp, -thin, math.Tan(float64(thin)/2)), at(lp, thin, 0), at(deep, thin, 0),
	})
	require.NoError(t, err)
	return Gear{leaf, leaves, lp, deep}
}

// Conjugate flanks keep the ratio of the counts at every moment, and both pairs
// push where two are in action. The arcs' tangents differ from the curve's by
// the square of their length, which 1,000 bring under 1e-6.
func TestConjugateFlanksKeepTheirSpeed(t *testing.T) {
	wheel, pinion := theoretical(t, 24, 13, 1000)
	turn, err := Mesh(wheel, pinion, 18.5, 100)
	require.NoError(t, err)
	require.Less(t, turn.WorstError, 1e-6)
	require.Less(t, float64(turn.Lost), 1e-9)
	require.Less(t, float64(turn.Approach), 0.01*float64(wheel.Pitch()))
	require.False(t, turn.Jams())
}

// recess returns the arc of recess, in pitches, of a theoretical pair.
func recess(t testing.TB, count, leaves int) float64 {
	wheel, pinion := theoretical(t, count, leaves, 60)
	turn, err := Mesh(wheel, pinion, float64(count+leaves)/2, 40)
	require.NoError(t, err)
	return float64(turn.Recess / wheel.Pitch())
}

// The theoretical faces are the epicycloid to 0.1 µm.
func TestTheFacesAreTheEpicycloid(t *testing.T) {
	for _, c := range [][2]int{{54, 11}, {30, 12}, {8, 35}, {6, 176}, {2000, 10}} {
		wheel, _ := theoretical(t, c[0], c[1], 60)
		pitch, rolling, half := float64(c[0])/2, float64(c[1])/4, math.Pi/(2*float64(c[0]))
		for i := range 500 {
			rolled := math.Pi * float64(i) / 500
			p := epicycloid(pitch, rolling, rolled).Rotate(geometry.Clock(0) - geometry.Angle(half))
			if p.X < 0 {
				break
			}
			q, _ := wheel.Tooth.Nearest(p)
			require.Less(t, q.Dist(p), 1e-4, "%v at %v", c, rolled)
		}
	}
}
