package screen

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
)

func someView(t *rapid.T) View {
	return View{rapid.Float64Range(0.1, 500).Draw(t, "scale"), somePixel(t, "origin")}
}

func somePixel(t *rapid.T, name string) Pixel {
	return Pixel{rapid.Float64Range(-2000, 2000).Draw(t, name+" x"), rapid.Float64Range(-2000, 2000).Draw(t, name+" y")}
}

func TestPlacesAreSeenAndFoundAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v, at := someView(t), somePixel(t, "at")
		back := v.ToPixel(v.ToDrawing(at))
		require.InDelta(t, at.X, back.X, 1e-6)
		require.InDelta(t, at.Y, back.Y, 1e-6)
	})
}

func TestUpOnTheDrawingIsUpOnTheScreen(t *testing.T) {
	v := View{2, Pixel{100, 50}}
	require.Equal(t, Pixel{106, 46}, v.ToPixel(geometry.Point{X: 3, Y: 2}))
	require.Equal(t, geometry.Point{X: 3, Y: 2}, v.ToDrawing(Pixel{106, 46}))
}

func TestZoomKeepsThePlaceUnderThePointer(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v, about := someView(t), somePixel(t, "about")
		z := v.Zoom(rapid.Float64Range(1e-4, 1e4).Draw(t, "factor"), about)
		require.InDelta(t, 0, v.ToDrawing(about).Dist(z.ToDrawing(about)), 1e-6)
		require.GreaterOrEqual(t, z.Scale, widest)
		require.LessOrEqual(t, z.Scale, float64(closest))
	})
}

func TestFitShowsTheWholeBoxInTheMiddle(t *testing.T) {
	box := geometry.Box{Min: geometry.Point{X: 10, Y: -5}, Max: geometry.Point{X: 50, Y: 15}}
	v := Fit(box, 1000, 300, 20)
	require.InDelta(t, 13, v.Scale, 1e-12) // 260 px for 20 mm
	low, high := v.ToPixel(box.Min), v.ToPixel(box.Max)
	require.InDelta(t, 20, high.Y, 1e-9)
	require.InDelta(t, 280, low.Y, 1e-9)
	require.InDelta(t, 500, (low.X+high.X)/2, 1e-9)
	point := Fit(geometry.Box{}, 100, 100, 10)
	require.Equal(t, View{10, Pixel{50, 50}}, point)
}

func TestPanAndDensity(t *testing.T) {
	v := View{4, Pixel{10, 20}}
	require.Equal(t, View{4, Pixel{13, 15}}, v.Pan(3, -5))
	require.Equal(t, View{8, Pixel{20, 40}}, v.Enlarged(2))
	require.True(t, View{}.Blank())
	require.False(t, v.Blank())
}
