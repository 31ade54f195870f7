package render

import (
	"math"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// A capital H is exactly as tall as the text's height and stands on the baseline.
func TestHeightIsOfCapitals(t *testing.T) {
	for _, height := range []float64{1.8, 2.5, 3.5, 5, 7, 10} { // ISO 3098
		for _, bold := range []bool{false, true} {
			box := Text{Height: height, Bold: bold, String: "H"}.Bounds()
			require.InDelta(t, 0, box.Min.Y, 1e-9)
			require.InDelta(t, height, box.Max.Y, 1e-9)
		}
	}
}

func TestAlignment(t *testing.T) {
	at := geometry.Point{X: 10, Y: 20}
	left := Text{At: at, Height: 5, String: "Tip 0"}
	width := left.Width()
	require.Greater(t, width, 5.0)
	for _, row := range []struct {
		name  string
		align Align
		back  float64
	}{{"left", Left, 0}, {"middle", Middle, width / 2}, {"right", Right, width}} {
		t.Run(row.name, func(t *testing.T) {
			text := left
			text.Align = row.align
			require.InDelta(t, at.X-row.back, text.Origin().X, 1e-9)
			require.InDelta(t, at.Y, text.Origin().Y, 1e-9)
			text.Centred = true
			require.InDelta(t, at.Y-2.5, text.Origin().Y, 1e-9)
		})
	}
}

// Turning a text turns its outlines about its place.
func TestTurnedGlyphs(t *testing.T) {
	level := Text{At: geometry.Point{X: 3, Y: 4}, Height: 2.5, Align: Middle, Centred: true, String: "R 8.00"}
	turned := level
	turned.Turn = 0.7
	a, b := level.Glyphs(), turned.Glyphs()
	require.Len(t, b, len(a))
	for i := range a {
		want := a[i].Start.Sub(level.At).Rotate(0.7).Add(level.At)
		require.InDelta(t, 0, want.Dist(b[i].Start), 1e-9)
	}
}

// Every letter the words may use is in both faces.
func TestLettersOfTheTrade(t *testing.T) {
	for _, bold := range []bool{false, true} {
		for _, r := range "ABCXYZabcxyz0123456789 .,:;()[]/+-−×·°′″Øø±µ½¼¾²³≤≥–—‘’“”éèüößñçåÅ§%" {
			require.NotZero(t, FaceOf(bold).Glyph(r), "%c is not in the font", r)
		}
	}
}

// What cannot be written is seen to be missing, and a tab is a space.
func TestLettersOfOtherScripts(t *testing.T) {
	require.NotZero(t, FaceOf(false).Glyph('\uFFFD'))
	require.NotZero(t, FaceOf(true).Glyph('\uFFFD'))
	strange := Text{Height: 5, String: "時\t計\n"}
	require.Len(t, strange.Glyphs(), len(Text{Height: 5, String: "\uFFFD \uFFFD "}.Glyphs()))
	require.Equal(t, Text{Height: 5, String: "a b"}.Width(), Text{Height: 5, String: "a\tb"}.Width())
	require.Positive(t, Text{Height: 5, String: "bad \xff utf-8"}.Width())
}

func TestKerningDrawsTogether(t *testing.T) {
	pair := Text{Height: 10, String: "AV"}.Width()
	apart := Text{Height: 10, String: "A"}.Width() + Text{Height: 10, String: "V"}.Width()
	require.Less(t, pair, apart)
}

// A blank has a width and no ink, an empty text neither.
func TestBlankText(t *testing.T) {
	blank := Text{At: geometry.Point{X: 1, Y: 2}, Height: 5, String: " "}
	require.Positive(t, blank.Width())
	require.Empty(t, blank.Glyphs())
	require.Equal(t, blank.At, blank.Bounds().Min)
	require.Equal(t, blank.At, blank.Bounds().Max)
	require.Zero(t, Text{Height: 5}.Width())
}

// The box of the ink holds every point of the outlines.
func TestInkBox(t *testing.T) {
	text := Text{At: geometry.Point{X: -7, Y: 1}, Height: 3.5, Turn: 1.1, Bold: true, String: "Qgjy 10:1"}
	box := text.Bounds()
	for _, c := range text.Glyphs() {
		for _, curve := range c.Curves {
			require.LessOrEqual(t, box.Min.X, curve.To.X+1e-9)
			require.LessOrEqual(t, box.Min.Y, curve.To.Y+1e-9)
			require.GreaterOrEqual(t, box.Max.X, curve.To.X-1e-9)
			require.GreaterOrEqual(t, box.Max.Y, curve.To.Y-1e-9)
		}
	}
}

// Outlines are closed letters: O has two contours that run opposite ways.
func TestCounters(t *testing.T) {
	contours := Text{Height: 10, String: "O"}.Glyphs()
	require.Len(t, contours, 2)
	require.Negative(t, swept(contours[0])*swept(contours[1]))
}

// swept returns twice the area within a contour's corners.
func swept(c Contour) (area float64) {
	at := c.Start
	for _, curve := range c.Curves {
		area += at.Cross(curve.To)
		at = curve.To
	}
	return area + at.Cross(c.Start)
}

func TestFacesServeManyAtOnce(t *testing.T) {
	want := Text{Height: 5, String: "The third wheel, 84 teeth"}.Bounds()
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() {
			got := Text{Height: 5, String: "The third wheel, 84 teeth"}.Bounds()
			if math.Abs(got.Max.X-want.Max.X) > 1e-12 {
				t.Error("the box differs")
			}
			if _, err := FaceOf(false).Subset([]uint16{0, 36, 37}); err != nil {
				t.Error(err)
			}
		})
	}
	all.Wait()
}
