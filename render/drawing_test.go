package render

import (
	"image/color"
	"testing"

	"github.com/stretchr/testify/require"
)

// The wide line is twice as wide as the narrow ones, within the steps of the widths
// that there are, 0.35 to 0.18 (ISO 128-20, from memory). Chain and dashed lines
// begin with a mark and end with a gap.
func TestPens(t *testing.T) {
	for _, narrow := range []Pen{Thin, Hidden, Centre, Hair} {
		require.Positive(t, narrow.Width(), "%v", narrow)
		require.LessOrEqual(t, narrow.Width(), 0.18, "%v", narrow)
	}
	require.Equal(t, 0.35, Visible.Width())
	require.Zero(t, NoPen.Width())
	for _, pen := range []Pen{Hidden, Centre} {
		require.NotEmpty(t, pen.Dashes())
		require.Zero(t, len(pen.Dashes())%2)
		for _, length := range pen.Dashes() {
			require.Greater(t, length, pen.Width())
		}
	}
	for _, pen := range []Pen{Visible, Thin, Hair} {
		require.Nil(t, pen.Dashes())
	}
}

// What is cut is pure black, which a printer does not screen; every other ink is
// darker than middle grey.
func TestInks(t *testing.T) {
	require.Equal(t, color.RGBA{A: 0xFF}, Black.Colour())
	for _, ink := range []Ink{Blue, Grey, Red} {
		require.Less(t, grey(ink.Colour()), 0x80, "%v", ink)
	}
}

// Fills are so pale that black and blue lines stand out on them.
func TestFills(t *testing.T) {
	for _, fill := range []Fill{Brass, Steel, Waste, Paper} {
		require.Greater(t, grey(fill.Colour()), 0xB0, "%v", fill)
		require.EqualValues(t, 0xFF, fill.Colour().A)
	}
	for _, fill := range []Fill{NoFill, Solid} {
		require.Zero(t, fill.Colour().A)
	}
}

func grey(c color.RGBA) int { return int(color.GrayModel.Convert(c).(color.Gray).Y) }

// Every layer is listed once.
func TestLayersAreListedOnce(t *testing.T) {
	seen := map[Layer]bool{}
	for _, layer := range Layers() {
		require.False(t, seen[layer], "%s", layer)
		seen[layer] = true
	}
	require.Len(t, seen, 17)
}

// The faces' proportions: letters rise above the capitals, hang below the
// baseline, and the box of all of them holds the capitals.
func TestFaces(t *testing.T) {
	for _, bold := range []bool{false, true} {
		face := FaceOf(bold)
		require.Greater(t, face.Rise(), 1.0)
		require.Positive(t, face.Drop())
		require.InDelta(t, 2048.0/1462, face.Em(), 1e-12) // the font's own head and OS/2 tables
		require.LessOrEqual(t, face.Box().Min.Y, 0.0)
		require.GreaterOrEqual(t, face.Box().Max.Y, 1.0)
		require.Same(t, face, Text{Bold: bold}.Face())
	}
	require.NotEqual(t, FaceOf(false).Name(), FaceOf(true).Name())
	_, err := FaceOf(false).Subset([]uint16{0, 65535})
	require.ErrorContains(t, err, "subset of OpenSans-Regular")
}
