package desk

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/language"
	"tipline/assets/words"
)

func TestDeskSpeaksAndKeepsTheLanguageThatIsChosen(t *testing.T) {
	d := New(words.English(), Recent{})
	d.Language = language.Choice{File: filepath.Join(t.TempDir(), "language")}
	require.NoError(t, d.Take(FromSample("signal-cabin")))
	changes := 0
	d.Changed = func() { changes++ }
	offered := d.Languages()
	require.Empty(t, offered[0].Value, "the surroundings come first")
	require.Len(t, offered, 1+len(words.Languages()))
	for _, l := range offered[1:] {
		require.NoError(t, d.Speak(l.Value))
		require.Equal(t, l.Value, d.Words().Language())
		require.Equal(t, l.Label, d.Words().Name())
		require.Equal(t, l.Value, d.Language.Kept())
		require.Equal(t, d.Words().Comma(), d.Style().Units.Comma)
	}
	require.NoError(t, d.Speak(""))
	require.Equal(t, "en", d.Words().Language(), "nothing is said of another")
	require.Equal(t, len(offered), changes)
}

// Figures that were told in one language are told anew in another.
func TestTablesAreToldInTheLanguageThatIsChosen(t *testing.T) {
	d := New(words.English(), Recent{})
	require.NoError(t, d.Take(FromSample("signal-cabin")))
	for _, l := range d.Languages()[1:] {
		require.NoError(t, d.Speak(l.Value))
		for _, part := range d.order() {
			d.Choose(part)
			for _, table := range d.Tables() {
				require.NotContains(t, table.Title, "‹")
			}
			_, stale := d.Drawing()
			require.False(t, stale)
		}
	}
}
