package render

import (
	"bytes"
	"image"
	"image/color"
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
)

func TestAPixelLiesWhereTheTransformPutsIt(t *testing.T) {
	s := Similarity{Scale: 0.01, Turn: geometry.Degrees(90), Pixel: geometry.Point{X: 100, Y: 200}, At: geometry.Point{X: 5, Y: 7}}
	require.Equal(t, s.At, s.Place(s.Pixel))
	right := s.Place(geometry.Point{X: 200, Y: 200})
	require.InDelta(t, 0, right.Dist(geometry.Point{X: 5, Y: 8}), 1e-12, "turned, the photograph's right is up")
	below := s.Place(geometry.Point{X: 100, Y: 300})
	require.InDelta(t, 0, below.Dist(geometry.Point{X: 6, Y: 7}), 1e-12, "and what is below on it lies to the right")
}

func TestPixelAtUndoesPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		number := rapid.Float64Range(-100, 100)
		point := func() geometry.Point { return geometry.Point{X: number.Draw(t, "x"), Y: number.Draw(t, "y")} }
		p := Picture{Transform: Similarity{rapid.Float64Range(1e-3, 10).Draw(t, "scale"), geometry.Angle(number.Draw(t, "turn")), point(), point()}}
		pixel, at, by := point(), point(), geometry.Angle(number.Draw(t, "by"))
		require.InDelta(t, 0, p.Transform.PixelAt(p.Transform.Place(pixel)).Dist(pixel), 1e-8)
		want := p.Transform.Place(pixel).Scale(3).Rotate(by).Move(at)
		require.InDelta(t, 0, p.Placed(at, 3, by).Transform.Place(pixel).Dist(want), 1e-8)
		require.False(t, math.IsNaN(want.X))
	})
}

// A photograph is on the screen only: no bounds, no layer of a file, no line of a
// dump.
func TestAPhotographIsInNoFile(t *testing.T) {
	plain := sample(t)
	with := *plain
	with.Items = append([]Item{{Layer: LayerPhotograph, Picture: &Picture{
		Image: image.NewUniform(color.Black), Transform: Similarity{Scale: 100},
	}}}, plain.Items...)
	require.Equal(t, plain.Bounds(), with.Bounds())
	require.Equal(t, plain.Levels(), with.Levels())
	var a, b bytes.Buffer
	require.NoError(t, plain.Dump(&a))
	require.NoError(t, with.Dump(&b))
	require.Equal(t, a.String(), b.String())
	moved := with.Placed(geometry.Point{X: 3}, 2, 0)
	require.Equal(t, 200.0, moved.Items[0].Picture.Transform.Scale)
	require.Equal(t, 100.0, with.Items[0].Picture.Transform.Scale, "the drawing it was placed from is left as it was")
}
