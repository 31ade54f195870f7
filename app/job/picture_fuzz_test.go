package job

import (
	"bytes"
	"image/jpeg"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"
)

// Whatever a photograph's file holds is a picture of the size its head tells, or is
// refused by its name. Larger heads than a fuzzing machine has the memory for are
// left to the table of pictures that are refused.
func FuzzPicture(f *testing.F) {
	var b bytes.Buffer
	require.NoError(f, jpeg.Encode(&b, small(), nil))
	whole := pngOf(f, small())
	for _, data := range [][]byte{whole, b.Bytes(), whole[:40], whole[:12], claiming(f, small(), 5000, 20), claiming(f, small(), 1<<31-1, 1<<31-1), {}, []byte("GIF89a")} {
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		for _, format := range formats {
			head, err := format.size(bytes.NewReader(data))
			if err == nil && head.Width > 0 && head.Height > 1<<16/head.Width {
				return
			}
		}
		m, err := pictureIn(data, "bit.png")
		if err != nil {
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Contains(t, err.Error(), `"bit.png"`)
			require.NotContains(t, err.Error(), "‹")
			return
		}
		require.Positive(t, m.Bounds().Dx())
		require.Positive(t, m.Bounds().Dy())
		for _, at := range []struct{ x, y int }{{m.Bounds().Min.X, m.Bounds().Min.Y}, {m.Bounds().Max.X - 1, m.Bounds().Max.Y - 1}} {
			m.At(at.x, at.y)
		}
	})
}

// A photograph's points are read, written and read again as the same, whatever
// stands in the file or is typed.
func FuzzPixels(f *testing.F) {
	for _, text := range []string{"120 48.5, 300 52", "[[1,2],[3,4]]", "[1,2]", "1e9 -1e9", "1e400 0", "[]", "[[1,2,3]]", "null", "\xff", "", "12"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		p := typedPixels(text)
		points, ok := p.Points()
		if !ok {
			require.Empty(t, points)
			return
		}
		for _, at := range points {
			require.True(t, at.Finite())
		}
		again, ok := typedPixels(p.String()).Points()
		require.True(t, ok)
		require.True(t, slices.Equal(points, again))
	})
}
