package desk

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

// filed returns a desk with the sample job, kept in a file, on it.
func filed(t *testing.T) (*Desk, string) {
	d, _ := opened(t)
	name := filepath.Join(t.TempDir(), "job.tipline")
	saveAs(t, d, name)
	return d, name
}

// theirs has another program write a job of this title into a file. Its time tells
// nothing: it is that of the file before.
func theirs(t *testing.T, name, title string) {
	info, err := os.Stat(name)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(name, []byte(`{"tipline": 1, "title": "`+title+`"}`), 0o600))
	require.NoError(t, os.Chtimes(name, info.ModTime(), info.ModTime()))
}

func TestWhatBecomesOfTheJobsFile(t *testing.T) {
	old, later := time.Date(2001, 2, 3, 4, 5, 6, 0, time.UTC), time.Date(2201, 2, 3, 4, 5, 6, 0, time.UTC)
	for _, row := range []struct {
		name string
		do   func(t *testing.T, name string)
		want Fate
	}{
		{"nothing", func(*testing.T, string) {}, Kept},
		{"touched", func(t *testing.T, name string) { require.NoError(t, os.Chtimes(name, old, old)) }, Kept},
		{"touched by a clock that is fast", func(t *testing.T, name string) { require.NoError(t, os.Chtimes(name, later, later)) }, Kept},
		{"written by a clock that is fast", func(t *testing.T, name string) {
			require.NoError(t, os.Chtimes(name, later, later))
			theirs(t, name, "Theirs")
		}, Altered},
		{"copied and brought back", func(t *testing.T, name string) {
			data, err := os.ReadFile(name)
			require.NoError(t, err)
			require.NoError(t, os.Remove(name))
			require.NoError(t, os.WriteFile(name, data, 0o600))
		}, Kept},
		{"written", func(t *testing.T, name string) { theirs(t, name, "Theirs") }, Altered},
		{"emptied", func(t *testing.T, name string) { require.NoError(t, os.Truncate(name, 0)) }, Altered},
		{"taken away", func(t *testing.T, name string) { require.NoError(t, os.Remove(name)) }, Gone},
		{"its folder taken away", func(t *testing.T, name string) { require.NoError(t, os.RemoveAll(filepath.Dir(name))) }, Gone},
	} {
		t.Run(row.name, func(t *testing.T) {
			d, name := filed(t)
			require.Equal(t, Kept, d.Look())
			row.do(t, name)
			require.Equal(t, row.want, d.Look())
			require.Equal(t, row.want, d.Look(), "the same until it is answered")
			require.True(t, d.Saved())
			d.Leave()
			require.Equal(t, Kept, d.Look(), "answered")
			require.False(t, d.Saved())
			if row.name != "its folder taken away" {
				saveAs(t, d, d.File())
				require.Equal(t, Kept, d.Look())
				require.True(t, d.Saved())
			}
		})
	}
}

// A file of an old time and the same size is not read again.
func TestAFileThatIsAsItWasIsNotRead(t *testing.T) {
	d, name := filed(t)
	old := time.Date(2001, 2, 3, 4, 5, 6, 0, time.UTC)
	require.NoError(t, os.Chtimes(name, old, old))
	require.Equal(t, Kept, d.Look())
	require.True(t, old.Equal(d.imprint.time))
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	require.NoError(t, os.WriteFile(name, []byte(strings.ToUpper(string(data))), 0o600))
	require.NoError(t, os.Chtimes(name, old, old))
	require.Equal(t, Kept, d.Look())
}

func TestTheirJobIsTakenAndUndoGoesBackToOurs(t *testing.T) {
	d, name := filed(t)
	ours := d.Title()
	d.Type("great", "bore", "7 mm")
	theirs(t, name, "Theirs")
	require.Equal(t, Altered, d.Look())
	require.NoError(t, reloaded(d))
	require.Equal(t, "Theirs", d.Title())
	require.True(t, d.Saved())
	require.Equal(t, Kept, d.Look())
	d.Undo()
	require.Equal(t, ours, d.Title())
	text, _ := d.Job().Text("great", "bore")
	require.Equal(t, "7 mm", text)
	require.False(t, d.Saved())
}

func TestWhatCannotBeReadIsNotTaken(t *testing.T) {
	d, name := filed(t)
	ours := d.Job()
	require.NoError(t, os.Truncate(name, 20))
	require.Error(t, reloaded(d))
	require.Same(t, ours, d.Job())
	require.Equal(t, Altered, d.Look())
}

func TestAFileThatIsGoneIsWrittenAnew(t *testing.T) {
	d, name := filed(t)
	require.NoError(t, os.Remove(name))
	require.Equal(t, Gone, d.Look())
	d.Leave()
	saveAs(t, d, d.File())
	require.FileExists(t, name)
	require.True(t, d.Saved())
}

func TestLookingAsideTellsNothingOfAJobThatWasSavedMeanwhile(t *testing.T) {
	d, name := filed(t)
	var over func()
	d.Aside = func(run, done func()) { run(); over = done }
	var told []Fate
	look := func() { d.LookAside(func(f Fate) { told = append(told, f) }) }
	theirs(t, name, "Theirs")
	look()
	looked := over
	d.Save(func(err error) { require.NoError(t, err) })
	looked()
	require.Empty(t, told, "it is being saved")
	over()
	looked()
	require.Empty(t, told)
	theirs(t, name, "Theirs again")
	look()
	over()
	require.Equal(t, []Fate{Altered}, told)
}

func TestAJobIsOpenOnOneDesk(t *testing.T) {
	d, name := filed(t)
	link := filepath.Join(t.TempDir(), "link.tipline")
	require.NoError(t, os.Symlink(name, link))
	require.True(t, d.Holds(link))
	other := New(words.English(), d.recent)
	before := other.Job()
	require.ErrorIs(t, other.Open(link), ErrElsewhere)
	require.Same(t, before, other.Job())
	require.NoError(t, other.Take(FromCopy(name)))
	require.Empty(t, other.File())
	require.NoError(t, other.Take(FromFileAnyway(name)))
	require.Equal(t, name, other.File())
	other.Begin()
	require.NoError(t, d.Open(name), "one's own is opened again")
	require.ErrorIs(t, other.Open(name), ErrElsewhere)
	d.Begin()
	require.NoError(t, other.Open(name))
	other.Close()
	require.NoError(t, d.Open(name))
	d.Close()
	left, err := os.ReadDir(filepath.Join(filepath.Dir(d.recent.File), "open"))
	require.NoError(t, err)
	require.Empty(t, left)
}

// What a crash left of a job whose file has been written since is not saved over that
// unasked.
func TestWhatWasWrittenSinceACrashIsNoticed(t *testing.T) {
	d, name := filed(t)
	m := &moments{}
	d.Later = m.later
	d.Type("great", "bore", "7 mm")
	m.pass()
	next := crashed(t, d)
	require.NoError(t, next.Take(FromLost(next.Lost()[0])))
	require.Equal(t, Kept, next.Look())
	again := crashed(t, next)
	theirs(t, name, "Theirs")
	require.NoError(t, again.Take(FromLost(again.Lost()[0])))
	require.Equal(t, Altered, again.Look())
	require.False(t, again.Saved())
}

func TestAnUntouchedDeskHasNothingOfItsMaker(t *testing.T) {
	d, _ := opened(t)
	require.True(t, d.Untouched(), "a sample")
	d.Type("great", "bore", "7 mm")
	require.False(t, d.Untouched())
	d.Undo()
	require.False(t, d.Untouched(), "what was undone can be had back")
	d.Begin()
	require.True(t, d.Untouched(), "an empty job")
	saveAs(t, d, filepath.Join(t.TempDir(), "job"))
	require.False(t, d.Untouched(), "a file")
}

// reloaded takes the job as it stands in its file, and returns what kept it from that.
func reloaded(d *Desk) (failed error) {
	d.Reload(func(err error) { failed = err })
	return failed
}
