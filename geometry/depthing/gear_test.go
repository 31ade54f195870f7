package depthing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// One tooth taken out of a whole outline meets as the tooth that made it,
// wherever the outline starts and whichever way it runs.
func TestAToothIsFoundWhereverTheOutlineStarts(t *testing.T) {
	wheel, pinion := practical(t, 80, 9)
	want, err := Mesh(wheel, pinion, 44.5, 20)
	require.NoError(t, err)
	o := whole(t, pinion)
	for shift := range 5 {
		vs := o.Vertices()
		vs = append(vs[shift:len(vs):len(vs)], vs[:shift]...)
		moved, err := geometry.NewOutline(vs)
		require.NoError(t, err)
		for _, run := range []geometry.Outline{moved, moved.Reverse()} {
			g, err := Toothed(run, 9, 4.5)
			require.NoError(t, err)
			require.InDelta(t, pinion.Floor*math.Cos(math.Pi/9-1.05/2/4.5), g.Floor, 1e-9, "the chord between two flanks")
			got, err := Mesh(wheel, g, 44.5, 20)
			require.NoError(t, err)
			for i := range want.Steps {
				require.InDelta(t, float64(want.Steps[i].Follower), float64(got.Steps[i].Follower), 1e-12)
				require.InDelta(t, float64(want.Steps[i].Play), float64(got.Steps[i].Play), 1e-12)
			}
		}
	}
}

// A round bottom is halved between two teeth, and its deepest place is the floor.
func TestARoundBottomIsHalved(t *testing.T) {
	half := geometry.Angle(math.Pi / 20)
	var vs []geometry.Vertex
	for i := range 10 {
		at := geometry.Clock(0) + geometry.FullTurn*geometry.Angle(i)/10
		vs = append(vs,
			geometry.Vertex{Point: geometry.Polar(4, at-half)}, geometry.Vertex{Point: geometry.Polar(5, at-half/2)},
			geometry.Vertex{Point: geometry.Polar(5, at+half/2)}, geometry.Vertex{Point: geometry.Polar(4, at+half), Bulge: -1})
	}
	o, err := geometry.NewOutline(vs)
	require.NoError(t, err)
	g, err := Toothed(o, 10, 4.6)
	require.NoError(t, err)
	chord := 4 * math.Sin(float64(half))
	require.InDelta(t, 4*math.Cos(float64(half))-chord, g.Floor, 1e-9)
	first, last := g.Tooth.Vertex(0), g.Tooth.Vertex(g.Tooth.Len())
	require.InDelta(t, g.Floor, first.Norm(), 1e-9)
	require.InDelta(t, 0, first.Rotate(g.Pitch()).Dist(last.Point), 1e-9)
	require.InDelta(t, 0, first.Mirror().Dist(last.Point), 1e-9, "the tooth stands at 12 o'clock")
	require.InDelta(t, 5, g.TipRadius(), 1e-12)
}
