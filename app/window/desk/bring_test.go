package desk

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/keep"
)

// kept writes jobs of these titles into a folder and returns their files.
func kept(t *testing.T, titles ...string) (files []string) {
	folder := t.TempDir()
	for _, title := range titles {
		file := filepath.Join(folder, title+Extension)
		require.NoError(t, os.WriteFile(file, []byte(`{"tipline": 1, "title": "`+title+`", "wheels": [{"id": "w"}]}`), 0o600))
		files = append(files, file)
	}
	return files
}

// putting puts what is brought on the desk, and keeps what kept it from that.
func putting(d *Desk, failed *error) func(*Brought, error) {
	return func(b *Brought, err error) {
		if *failed = err; err == nil {
			d.Put(b)
		}
	}
}

// While a job is brought what is on the desk stands and can be worked on, and it is said.
func TestAJobIsBroughtAside(t *testing.T) {
	d, changes := opened(t)
	var b bench
	d.Aside = b.aside
	var failed error
	file, before := kept(t, "New")[0], d.Result()
	d.Bring(FromFile(file), putting(d, &failed))
	line, _ := d.Bringing()
	require.Equal(t, "Opening New.tipline… Esc gives it up.", line)
	require.Equal(t, 1, *changes)
	require.Same(t, before, d.Result())
	require.True(t, d.Brings(file))
	d.Choose("escape")
	require.Equal(t, "escape", d.Part())
	b.next()
	require.NoError(t, failed)
	_, bringing := d.Bringing()
	require.False(t, bringing)
	require.Equal(t, "New", d.Title())
	require.Equal(t, file, d.File())
	require.Same(t, d.Job(), d.Result().Job)
	require.True(t, d.Saved())
	require.Equal(t, Kept, d.Look())
	wheel := d.Result().Wheels[0]
	d.Type("", "title", "Newer")
	b.next()
	require.Same(t, wheel, d.Result().Wheels[0], "what was solved aside is remembered")
	require.ErrorIs(t, d.Another().Open(file), ErrElsewhere)
}

// Of several jobs that are asked for the last comes; the others' files are free.
func TestTheLastJobAskedForComes(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = b.aside
	var first, second error = keep.ErrHeld, keep.ErrHeld
	files := kept(t, "First", "Second")
	d.Bring(FromFile(files[0]), putting(d, &first))
	require.ErrorIs(t, d.Another().Open(files[0]), ErrElsewhere, "it is being opened here")
	d.Bring(FromFile(files[1]), putting(d, &second))
	b.next()
	b.next()
	require.Equal(t, "Second", d.Title())
	require.ErrorIs(t, first, keep.ErrHeld, "nothing is heard of it")
	require.NoError(t, second)
	require.NoError(t, d.Another().Open(files[0]))
}

// What is given up, and what comes to a desk that is closed, changes nothing.
func TestAJobIsGivenUp(t *testing.T) {
	for name, end := range map[string]func(d *Desk){"given up": func(d *Desk) { require.True(t, d.GiveUp()) }, "closed": (*Desk).Close} {
		t.Run(name, func(t *testing.T) {
			d, _ := opened(t)
			var b bench
			d.Aside = b.aside
			before, file := d.Job(), kept(t, "New")[0]
			d.Bring(FromFile(file), func(*Brought, error) { t.Error("it came") })
			end(d)
			b.next()
			require.Same(t, before, d.Job())
			require.False(t, d.GiveUp())
			require.NoError(t, d.Another().Open(file), "the file is free")
		})
	}
}

func TestAJobThatCannotBeBroughtIsTold(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = b.aside
	var failed error
	before, file := d.Job(), kept(t, "New")[0]
	require.NoError(t, os.Truncate(file, 5))
	d.Bring(FromFile(file), putting(d, &failed))
	b.next()
	require.Error(t, failed)
	require.Same(t, before, d.Job())
	_, bringing := d.Bringing()
	require.False(t, bringing)
	other := d.Another()
	require.NoError(t, os.WriteFile(file, []byte(`{"tipline": 1}`), 0o600))
	require.NoError(t, other.Open(file), "the file is free")
	d.Bring(FromFile(file), putting(d, &failed))
	require.ErrorIs(t, failed, ErrElsewhere)
	require.Empty(t, b.waiting)
}

// What is typed while the file is read again is a step that undo goes back to; what is
// saved meanwhile stays.
func TestReloadingAside(t *testing.T) {
	d, _ := opened(t)
	var b bench
	name := filepath.Join(t.TempDir(), "job.tipline")
	saveAs(t, d, name)
	d.Aside = b.aside
	theirs(t, name, "Theirs")
	failed := keep.ErrHeld
	d.Reload(func(err error) { failed = err })
	d.Type("", "title", "Mine")
	require.Len(t, b.waiting, 2)
	b.waiting[0], b.waiting[1] = b.waiting[1], b.waiting[0]
	b.next()
	b.next()
	require.NoError(t, failed)
	require.Equal(t, "Theirs", d.Title())
	require.True(t, d.Saved())
	require.Same(t, d.Job(), d.Result().Job)
	d.Undo()
	require.Equal(t, "Mine", d.Title())
	d.Reload(func(err error) { failed = err })
	var unsaved error
	d.Save(func(err error) { unsaved = err })
	require.Len(t, b.waiting, 3, "the title of before, the file's job, and ours to be written")
	b.waiting[1], b.waiting[2] = b.waiting[2], b.waiting[1]
	for len(b.waiting) > 0 {
		b.next()
	}
	require.NoError(t, unsaved)
	require.Equal(t, "Mine", d.Title())
	require.Equal(t, Kept, d.Look())
}
