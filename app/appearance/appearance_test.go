package appearance

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestLooksAreKept(t *testing.T) {
	c := Choice{filepath.Join(t.TempDir(), "config", "looks")}
	require.Equal(t, Usual, c.Kept())
	for _, s := range Shades() {
		for _, p := range Percents() {
			require.NoError(t, c.Keep(Looks{s, p}))
			require.Equal(t, Looks{s, p}, c.Kept())
		}
	}
	require.NoError(t, Choice{}.Keep(Looks{Dark, 200}))
	require.Equal(t, Usual, Choice{}.Kept())
}

func TestLooksThatCannotBeReadAreTheUsual(t *testing.T) {
	file := filepath.Join(t.TempDir(), "looks")
	for _, text := range []string{"", "dark", "dark big", "mauve 100", "dark 33", "\x00\xff"} {
		require.NoError(t, os.WriteFile(file, []byte(text), 0o600))
		require.Equal(t, Usual, Choice{file}.Kept(), "%q", text)
	}
}
