package desk

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/keep"
)

// saveAs saves the job on a desk that does everything at once.
func saveAs(t *testing.T, d *Desk, name string) {
	t.Helper()
	failed := keep.ErrHeld
	d.SaveAs(name, func(err error) { failed = err })
	require.NoError(t, failed)
}

// What is done to the job while it is written stays, and is not saved; what is asked for
// meanwhile is done when it is written.
func TestAJobIsSavedAside(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = b.aside
	d.Type("great", "crossing.rim", "3 mm")
	b.next()
	saved, name := fileOf(t, d), filepath.Join(t.TempDir(), "job")
	var first, second error = keep.ErrHeld, keep.ErrHeld
	d.SaveAs(name, func(err error) { first = err })
	require.Empty(t, d.File())
	require.False(t, d.Untouched())
	d.Type("great", "crossing.rim", "3.5 mm")
	var order []string
	d.AfterSaving(func() { order = append(order, "then") })
	d.Save(func(err error) { second = err })
	require.Len(t, b.waiting, 2, "one after the other")
	b.next()
	require.NoError(t, first)
	require.Equal(t, []string{"then"}, order)
	require.Equal(t, name+Extension, d.File())
	onDisk, err := os.ReadFile(d.File())
	require.NoError(t, err)
	require.Equal(t, saved, string(onDisk))
	require.Equal(t, "3.5 mm", fieldOf(t, d, "crossing.rim").Text)
	require.False(t, d.Saved())
	d.Undo()
	require.True(t, d.Saved(), "what was written is a step to come back to")
	d.Redo()
	b.rest()
	require.NoError(t, second)
	require.True(t, d.Saved())
	require.Equal(t, Kept, d.Look())
	d.AfterSaving(func() { order = append(order, "at once") })
	require.Len(t, order, 2)
}

func TestAJobThatCannotBeWrittenIsToldAside(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = b.aside
	d.Type("great", "crossing.rim", "3 mm")
	var failed error
	d.SaveAs(filepath.Join(t.TempDir(), "no", "folder"), func(err error) { failed = err })
	b.rest()
	require.Error(t, failed)
	require.Empty(t, d.File())
	require.False(t, d.Saved())
	d.AfterSaving(func() { failed = nil })
	require.NoError(t, failed, "nothing is being written")
}
