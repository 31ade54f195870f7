package pdf

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

var (
	showing = regexp.MustCompile(`BT/R\d+ (\S+) Tf (\S+) (\S+) (\S+) (\S+) (\S+) (\S+) Tm\[(.*)\]TJ ET`)
	glyphs  = regexp.MustCompile(`<([0-9A-F]{4})>|-?[0-9.]+`)
	widths  = regexp.MustCompile(`/W\[0\[([^\]]*)\]\]`)
	mapping = regexp.MustCompile(`<([0-9A-F]{4})><([0-9A-F]{4,8})>\n`)
)

func float(t *testing.T, s string) float64 {
	v, err := strconv.ParseFloat(s, 64)
	require.NoError(t, err)
	return v
}

// A text read back as a viewer reads it, by the font's size, its widths and the
// kerning between letters, has each letter where the drawing has it.
func TestLettersStandWhereTheyShould(t *testing.T) {
	for _, text := range []render.Text{
		{At: point(50, 60), Height: 5, String: "AVATAR To 10:1"},
		{At: point(50, 60), Height: 2.5, Turn: 0.6, Align: render.Right, Centred: true, Bold: true, String: "Third wheel, Ø 8"},
	} {
		file := written(t, document(render.Item{Layer: render.LayerText, Text: &text}))
		found := showing.FindStringSubmatch(page(t, file))
		require.NotNil(t, found)
		size := float(t, found[1])
		require.InDelta(t, text.Height*text.Face().Em(), size, 1e-4)
		sin, cos := math.Sincos(float64(text.Turn))
		for i, want := range []float64{cos, sin, -sin, cos, text.Origin().X, text.Origin().Y} {
			require.InDelta(t, want, float(t, found[2+i]), 1e-4)
		}
		advance := strings.Fields(string(widths.FindSubmatch(file)[1]))
		letters, end := text.Letters()
		x, n := 0.0, 0
		for _, word := range glyphs.FindAllStringSubmatch(found[8], -1) {
			if word[1] == "" {
				x -= float(t, word[0]) / 1000 * size
				continue
			}
			require.InDelta(t, letters[n].X, x, 1e-3)
			number, err := strconv.ParseInt(word[1], 16, 32)
			require.NoError(t, err)
			x += float(t, advance[number]) / 1000 * size
			n++
		}
		require.Len(t, letters, n)
		require.InDelta(t, end, x, 1e-3)
	}
}

// Many letters make several blocks of the map from glyphs to letters, and each is
// there once.
func TestMapOfLetters(t *testing.T) {
	var all strings.Builder
	for r := 'A'; r < 'A'+400; r++ {
		if render.FaceOf(false).Glyph(r) != 0 {
			all.WriteRune(r)
		}
	}
	b := &book{file: newFile(&strings.Builder{}), layers: map[render.Layer]object{}}
	c := &content{book: b}
	text := render.Text{Height: 5, String: all.String()}
	c.letters(text, b.face(false))
	said := b.face(false).toUnicode()
	require.Greater(t, strings.Count(said, "beginbfchar"), 2)
	require.Len(t, mapping.FindAllString(said, -1), len(b.face(false).glyphs))
	require.Contains(t, said, "><00E9>\n")
}

// A font is left out where no text uses it.
func TestNoTextNoFont(t *testing.T) {
	file := string(written(t, document(render.Item{
		Layer: render.LayerForm, Pen: render.Thin,
		Outlines: []geometry.Outline{circle(t, point(9, 9), 3)},
	})))
	require.NotContains(t, file, "FontFile")
}
