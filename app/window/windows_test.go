package window

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
)

// files writes two jobs into a folder and returns their names.
func files(t *testing.T) (first, second string) {
	folder := t.TempDir()
	first, second = filepath.Join(folder, "first.tipline"), filepath.Join(folder, "second.tipline")
	for name, title := range map[string]string{first: "First", second: "Second"} {
		require.NoError(t, os.WriteFile(name, []byte(`{"tipline": 1, "title": "`+title+`"}`), 0o600))
	}
	return first, second
}

// shown returns the titles of the jobs in the windows, in order.
func shown(w *Window) []string {
	var titles []string
	for _, o := range w.all.list {
		titles = append(titles, o.desk.Title())
	}
	return titles
}

func TestAJobTakesThePlaceOfWhatIsUntouchedOnly(t *testing.T) {
	w := opened(t)
	first, second := files(t)
	w.dropped([]string{first})
	require.Equal(t, []string{"First"}, shown(w), "the sample gives way")
	w.open(second, func() {})
	require.Equal(t, []string{"First", "Second"}, shown(w))
	other := w.all.list[1]
	require.NotSame(t, w.desk, other.desk)
	w.begin()
	require.Equal(t, []string{"First", "Second", "Untitled job"}, shown(w))
	w.all.list[2].openSample(samples.First)
	require.Equal(t, []string{"First", "Second", "Signal-cabin timepiece"}, shown(w), "the empty one gives way")
	w.open(first, func() {})
	other.open(first, func() {})
	require.Len(t, w.all.list, 3, "one job is open once")
	require.Nil(t, other.question)
	other.leave()
	require.Equal(t, []string{"First", "Signal-cabin timepiece"}, shown(w))
	w.open(second, func() {})
	require.Len(t, w.all.list, 3, "what was closed is free")
}

func TestUndoIsEachWindowsOwn(t *testing.T) {
	w := opened(t)
	retype(t, w, "crossing.rim", "3 mm")
	w.openSample(samples.First)
	other := w.all.list[1]
	require.False(t, other.desk.CanUndo())
	retype(t, other, "crossing.rim", "2 mm")
	w.menu.undo.Action()
	require.True(t, other.desk.CanUndo())
	text, _ := other.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, "2 mm", text)
}

func TestWhatCannotBeOpenedOpensNoWindow(t *testing.T) {
	w := opened(t)
	retype(t, w, "crossing.rim", "3 mm")
	name := filepath.Join(t.TempDir(), "broken.tipline")
	require.NoError(t, os.WriteFile(name, []byte("{"), 0o600))
	for _, name := range []string{name, filepath.Join(t.TempDir(), "missing.tipline"), t.TempDir() + ".tipline"} {
		w.dropped([]string{name})
		require.NotNil(t, w.question, name)
		require.Len(t, w.all.list, 1)
		w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	}
	require.False(t, w.desk.Saved())
}

func TestQuittingAsksForEveryJob(t *testing.T) {
	w := opened(t)
	retype(t, w, "crossing.rim", "3 mm")
	w.openSample(samples.First)
	other := w.all.list[1]
	retype(t, other, "crossing.rim", "2 mm")
	w.menu.quit.Action()
	test.Tap(button(t, w, "Do not save"))
	test.Tap(button(t, other, "Cancel"))
	require.Len(t, w.all.list, 2, "none is closed where one says no")
	require.False(t, w.desk.Saved())
	other.leave()
	other.leave()
	require.Len(t, other.Canvas().Overlays().List(), 1, "asked once")
	test.Tap(button(t, other, "Do not save"))
	require.Len(t, w.all.list, 1)
	w.menu.quit.Action()
	test.Tap(button(t, w, "Do not save"))
	require.Empty(t, w.all.list)
}

func TestAJobThatAnotherProgramHasOpen(t *testing.T) {
	for _, row := range []struct{ answer, file, title string }{
		{"Cancel", "", "Signal-cabin timepiece"},
		{"Open it anyway", "first.tipline", "First"},
		{"Open a copy", "", "First"},
	} {
		t.Run(row.answer, func(t *testing.T) {
			w := opened(t)
			first, _ := files(t)
			theirs := w.desk.Another() // on the same machine, but no window of ours
			require.NoError(t, theirs.Open(first))
			w.open(first, func() {})
			test.Tap(button(t, w, row.answer))
			require.Equal(t, []string{row.title}, shown(w))
			if row.file == "" {
				require.Empty(t, w.desk.File())
			} else {
				require.Equal(t, row.file, filepath.Base(w.desk.File()))
			}
		})
	}
}

func TestAJobIsNotSavedOverAnotherWindows(t *testing.T) {
	w := opened(t)
	first, second := files(t)
	w.open(first, func() {})
	w.open(second, func() {})
	before, err := os.ReadFile(second)
	require.NoError(t, err)
	w.askSave(func() {})
	saveAs(t, w, filepath.Dir(second), "second")
	test.Tap(button(t, w, "Write over it"))
	require.NotNil(t, w.question)
	after, err := os.ReadFile(second)
	require.NoError(t, err)
	require.Equal(t, before, after)
	require.Equal(t, first, w.desk.File())
}

func TestWhatIsDroppedElseIsTold(t *testing.T) {
	w := opened(t)
	folder := t.TempDir()
	for _, name := range []string{scan(t, 40, 30), filepath.Join(folder, "plan.pdf"), folder} {
		job := w.desk.Job()
		w.dropped([]string{name, name})
		require.Len(t, w.Canvas().Overlays().List(), 1, "said once")
		require.Same(t, job, w.desk.Job())
		w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	}
	w.desk.Choose("escape")
	w.desk.Go(desk.Cutter)
	w.dropped([]string{scan(t, 40, 30)})
	require.Nil(t, w.question)
	require.True(t, w.desk.HasPhotograph())
}

// While a job is being opened the drawing says so, and Escape gives it up; what was begun
// meanwhile is kept, since the job then has a window of its own.
func TestOpeningAside(t *testing.T) {
	w := opened(t)
	first, second := files(t)
	var b bench
	w.desk.Aside = b.aside
	w.open(first, func() {})
	require.Equal(t, "Opening first.tipline… Esc gives it up.", w.board.legend.prompt.text.Text)
	require.True(t, w.board.legend.prompt.Visible())
	w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.False(t, w.board.legend.prompt.Visible())
	b.all()
	require.Equal(t, []string{"Signal-cabin timepiece"}, shown(w))
	w.dropped([]string{first, second})
	require.NoError(t, w.desk.Duplicate())
	b.all()
	b.all()
	require.Equal(t, []string{"Signal-cabin timepiece", "First", "Second"}, shown(w))
	require.True(t, w.desk.CanUndo())
	require.False(t, w.board.legend.prompt.Visible(), "it has come")
}
