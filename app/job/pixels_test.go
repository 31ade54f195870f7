package job

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestPixels(t *testing.T) {
	for _, row := range []struct {
		name, raw string
		want      []geometry.Point
		ok        bool
		typed     string
	}{
		{"two", `[[120,48.5],[300,52]]`, []geometry.Point{{X: 120, Y: 48.5}, {X: 300, Y: 52}}, true, "120 48.5, 300 52"},
		{"one bare pair", `[3,4]`, []geometry.Point{{X: 3, Y: 4}}, true, "3 4"},
		{"none", `[]`, []geometry.Point{}, true, ""},
		{"left out", ``, nil, true, ""},
		{"three numbers", `[[1,2,3]]`, nil, false, `[[1,2,3]]`},
		{"a text", `"by eye"`, nil, false, `"by eye"`},
		{"a group", `{"x":1}`, nil, false, `{"x":1}`},
		{"beyond any picture", `[[1e300,0]]`, nil, false, `[[1e300,0]]`},
		{"a list of texts", `[["1","2"]]`, nil, false, `[["1","2"]]`},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := Pixels(row.raw)
			points, ok := p.Points()
			require.Equal(t, row.ok, ok)
			require.Equal(t, row.want, points)
			require.Equal(t, row.typed, p.String())
			again, same := typedPixels(p.String()).Points()
			require.Equal(t, ok, same)
			require.Len(t, again, len(points))
		})
	}
}

// Points that are typed or picked stand in the file as pairs, and what is no point
// is kept and reported.
func TestPixelsInAJob(t *testing.T) {
	j := twoWheels(t)
	j, err := j.Set("a", "cutter.bit.photograph.points", "120 48.5,  300 52 ")
	require.NoError(t, err)
	require.Contains(t, written(t, j), `"points": [[120, 48.5], [300, 52]]`)
	require.Empty(t, j.UnknownFields())
	require.Equal(t, j, read(t, written(t, j)))
	picked := PixelsOf(geometry.Point{X: 120, Y: 48.5}, geometry.Point{X: 300, Y: 52}).String()
	same, err := j.Set("a", "cutter.bit.photograph.points", picked)
	require.NoError(t, err)
	require.Same(t, j, same)
	for _, row := range []struct{ typed, file string }{
		{"by eye", `"points": "by eye"`},
		{`{"x": [1]}`, `"points": {"x": [1]}`},
		{"1 2, 3", `"points": "1 2, 3"`},
	} {
		odd, err := j.Set("a", "cutter.bit.photograph.points", row.typed)
		require.NoError(t, err)
		require.Contains(t, written(t, odd), row.file)
		require.Equal(t, []string{"a.cutter.bit.photograph.points"}, odd.UnknownFields())
		require.Equal(t, odd, read(t, written(t, odd)))
	}
	gone, err := j.Set("a", "cutter.bit.photograph.points", "")
	require.NoError(t, err)
	require.Nil(t, gone.Wheel("a").Cutter)
}
