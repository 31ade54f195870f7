package desk

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
	"tipline/assets/words"
)

func reprints(d *Desk) []string {
	return slices.DeleteFunc(d.order(), func(id string) bool { return !d.Reprint(id) })
}

func TestWhatHasChangedSinceItWasPrinted(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "crossing.rim", "3 mm")
	require.Empty(t, reprints(d), "nothing was ever printed")
	d.Printed("great", "third")
	require.Empty(t, reprints(d))
	d.Type("great", "crossing.rim", "3.5 mm")
	d.Type("escape", "teeth.count", "32")
	require.Equal(t, []string{"great"}, reprints(d))
	require.True(t, d.Groups()[0].Parts[0].Reprint)
	d.Type("third", "note", "made in March")
	require.Equal(t, []string{"great"}, reprints(d), "a note is not printed")
	d.Undo()
	d.Undo()
	d.Undo()
	require.Empty(t, reprints(d), "as printed again")
}

// What was printed is remembered from one run of the program to the next, and by the job
// under its new name too; the job's file says nothing of it.
func TestPrintsAreRememberedBesideTheJob(t *testing.T) {
	state, folder := Recent{File: filepath.Join(t.TempDir(), "recent")}, t.TempDir()
	d := New(words.English(), state)
	require.NoError(t, d.Take(FromSample(samples.First)))
	first, other := filepath.Join(folder, "first.tipline"), filepath.Join(folder, "other.tipline")
	saveAs(t, d, first)
	before, err := os.ReadFile(first)
	require.NoError(t, err)
	_, err = exported(d, filepath.Join(folder, "packet.pdf"))
	require.NoError(t, err)
	require.Empty(t, reprints(d))
	d.Type("great", "crossing.rim", "3 mm")
	require.Contains(t, reprints(d), "great")
	require.NotContains(t, reprints(d), "escape")
	saveAs(t, d, other)
	d.Close()
	for file, want := range map[string]bool{first: false, other: true} {
		again := New(words.English(), state)
		require.NoError(t, again.Take(FromFileAnyway(file)))
		require.Equal(t, want, again.Reprint("great"), file)
		again.Type("escape", "bore", "5.5 mm")
		require.True(t, again.Reprint("escape"), file)
	}
	after, err := os.ReadFile(first)
	require.NoError(t, err)
	require.Equal(t, before, after)
}

func TestAPrintThatFailsIsNone(t *testing.T) {
	d, _ := opened(t)
	_, err := exported(d, filepath.Join(t.TempDir(), "no", "such", "folder", "packet.pdf"))
	require.Error(t, err)
	d.Type("great", "crossing.rim", "3 mm")
	require.Empty(t, reprints(d))
}
