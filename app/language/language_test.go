package language

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

// The order of the variables is that of POSIX.1-2017, Base Definitions 8.2.
func TestSurroundingsAreRead(t *testing.T) {
	none := filepath.Join(t.TempDir(), "language")
	for _, row := range []struct {
		env  map[string]string
		want string
	}{
		{nil, "en"},
		{map[string]string{"LANG": "de_AT.UTF-8"}, "de"},
		{map[string]string{"LANG": "fr"}, "fr"},
		{map[string]string{"LANG": "pt_BR"}, "en"},
		{map[string]string{"LANG": "C.UTF-8"}, "en"},
		{map[string]string{"LANG": "de_DE", "LC_MESSAGES": "fr_FR"}, "fr"},
		{map[string]string{"LANG": "de_DE", "LC_MESSAGES": "fr_FR", "LC_ALL": "C"}, "en"},
		{map[string]string{"LANG": "de_DE", "LC_ALL": ""}, "de"},
	} {
		if !slices.Contains(words.Languages(), row.want) {
			continue
		}
		got := Choice{none, func(name string) string { return row.env[name] }}.Spoken()
		require.Equal(t, row.want, got.Language(), "%v", row.env)
	}
}

func TestChoiceGoesBeforeTheSurroundings(t *testing.T) {
	german := func(string) string { return "de_DE.UTF-8" }
	c := Choice{filepath.Join(t.TempDir(), "of", "mine", "language"), german}
	require.Empty(t, c.Kept())
	require.NoError(t, c.Keep("en"))
	require.Equal(t, "en", c.Kept())
	require.Equal(t, "en", c.Spoken().Language())
	require.NoError(t, c.Keep(""))
	require.Empty(t, c.Kept(), "left to the surroundings again")
	for _, odd := range []string{"xx", "../en", "en fr", "\x00"} {
		require.NoError(t, os.WriteFile(c.File, []byte(odd), 0o644))
		require.Empty(t, c.Kept(), odd)
		require.Equal(t, "en", Choice{File: c.File}.Spoken().Language(), odd)
	}
}

func TestALanguageThatIsAskedForGoesBeforeAll(t *testing.T) {
	c := Choice{filepath.Join(t.TempDir(), "language"), func(string) string { return "fr_FR" }}
	require.NoError(t, c.Keep("de"))
	require.Equal(t, "en", c.Asked("en").Language())
	for _, none := range []string{"", "xx"} {
		require.Equal(t, "de", c.Asked(none).Language())
	}
	require.Equal(t, "de", c.Kept(), "what is asked for once is not kept")
}

func TestChoiceThatCannotBeKeptIsTold(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(file, nil, 0o644))
	require.NoError(t, Choice{}.Keep("en"), "the zero one keeps nothing")
	require.Equal(t, "en", Choice{}.Spoken().Language())
	require.Error(t, Choice{File: filepath.Join(file, "language")}.Keep("en"))
}
