package guide

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	pages "tipline/assets/guide"
	"tipline/assets/words"
	"tipline/geometry"
)

// beside is where the pictures stand beside the pages.
const beside = "../../assets/guide/" + pages.First + "/pictures/"

// The pictures beside the pages are those that the program makes now, byte for byte. Where
// they differ, look at what “tipline guide -out FOLDER” writes, then put that there.
func TestThePicturesAreWhatTheProgramMakes(t *testing.T) {
	for _, name := range Names() {
		made, err := SVG(name, words.English())
		require.NoError(t, err)
		stands, err := os.ReadFile(beside + name + ".svg")
		require.NoError(t, err)
		require.True(t, bytes.Equal(made, stands), "%s is no longer what the program draws", name)
	}
	files, err := filepath.Glob(beside + "*")
	require.NoError(t, err)
	require.Len(t, files, len(Names()), "a picture that the program does not make")
}

func TestEveryPictureIsShownAndEveryOneShownIsMade(t *testing.T) {
	shown := map[string]bool{}
	for _, p := range pages.In(pages.First).Pages() {
		for _, b := range p.Blocks {
			if b.Kind == pages.Picture {
				require.Contains(t, shots, b.Picture, p.Name)
				shown[b.Picture] = true
			}
		}
	}
	for _, name := range Names() {
		require.True(t, shown[name], "no page shows %s", name)
	}
}

// What a picture lights lies in the part of the drawing that it shows, and the words under
// it say so.
func TestWhatIsLitIsSeen(t *testing.T) {
	for name, s := range shots {
		p, err := Draw(name, words.English())
		require.NoError(t, err, name)
		require.False(t, p.Seen.Empty(), name)
		if len(s.lit) == 0 {
			continue
		}
		last := p.Drawing.Items[len(p.Drawing.Items)-1]
		require.NotEmpty(t, last.Chains, name)
		seen := false
		for _, c := range last.Chains {
			seen = seen || p.Seen.Contains(c.Vertex(0).Point) || p.Seen.Contains(middle(c))
		}
		require.True(t, seen, "%s: what is lit lies outside", name)
	}
}

func middle(c geometry.Chain) geometry.Point {
	at, _ := c.Nearest(c.Bounds().Centre())
	return at
}

func TestPicturesAreMadeInEveryLanguage(t *testing.T) {
	for _, language := range words.Languages() {
		w, err := words.Load(language)
		require.NoError(t, err)
		for _, name := range Names() {
			_, err := SVG(name, w)
			require.NoError(t, err, "%s in %s", name, language)
		}
	}
}

func TestAPictureThatIsNotMadeIsAnError(t *testing.T) {
	_, err := SVG("zeppelin", words.English())
	require.ErrorContains(t, err, "zeppelin")
}

// All pictures together stay small.
func TestThePicturesAreSmall(t *testing.T) {
	all := 0
	for _, name := range Names() {
		made, err := SVG(name, words.English())
		require.NoError(t, err)
		require.Less(t, len(made), 100_000, name)
		require.False(t, strings.Contains(string(made), "NaN"), name)
		all += len(made)
	}
	require.Less(t, all, 2_000_000)
}
