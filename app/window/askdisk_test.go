package window

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
)

// overtaken returns a window on a job in a file that another program has written since,
// with changes of one's own or without.
func overtaken(t *testing.T, mine bool) *Window {
	w := opened(t)
	saved(t, w, filepath.Join(t.TempDir(), "job"))
	w.look()
	require.Nil(t, w.question, "nothing has happened")
	if mine {
		retype(t, w, "crossing.rim", "3 mm")
	}
	theirs(t, w)
	return w
}

// theirs has another program write the window's file.
func theirs(t *testing.T, w *Window) {
	require.NoError(t, os.WriteFile(w.desk.File(), []byte(`{"tipline": 1, "title": "Theirs"}`), 0o600))
}

// stands returns the title of what stands in the window's file.
func stands(t *testing.T, w *Window) string {
	other := w.desk.Another()
	require.NoError(t, other.Take(desk.FromCopy(w.desk.File())))
	return other.Title()
}

func TestAJobThatAnotherProgramWroteIsNoticed(t *testing.T) {
	const ours = "Signal-cabin timepiece"
	for _, row := range []struct {
		name   string
		mine   bool
		answer string
		title  string
		saved  bool
	}{
		{"nothing of mine, leave", false, "Leave it as it is here", ours, false},
		{"nothing of mine, load", false, "Load it", "Theirs", true},
		{"mine, keep", true, "Keep mine", ours, false},
		{"mine, take theirs", true, "Take theirs", "Theirs", true},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := overtaken(t, row.mine)
			w.look()
			w.look()
			require.Len(t, w.Canvas().Overlays().List(), 1, "asked once")
			test.Tap(button(t, w, row.answer))
			require.Equal(t, row.title, w.desk.Title())
			require.Equal(t, row.saved, w.desk.Saved())
			require.Equal(t, !row.saved, !w.title.dot.Hidden)
			w.look()
			require.Nil(t, w.question, "answered")
			require.Equal(t, "Theirs", stands(t, w))
			w.menu.save.Action()
			require.Nil(t, w.question, "and asked no more")
			require.Equal(t, row.title, stands(t, w))
			require.True(t, w.desk.Saved())
		})
	}
}

func TestBeforeSavingOverTheirsOneIsAsked(t *testing.T) {
	for _, row := range []struct {
		answer, title, stands string
		saved                 bool
	}{
		{"Cancel", "Signal-cabin timepiece", "Theirs", false},
		{"Take theirs", "Theirs", "Theirs", true},
		{"Save mine over it", "Signal-cabin timepiece", "Signal-cabin timepiece", true},
	} {
		t.Run(row.answer, func(t *testing.T) {
			w := overtaken(t, true)
			w.menu.save.Action()
			test.Tap(button(t, w, row.answer))
			require.Equal(t, row.title, w.desk.Title())
			require.Equal(t, row.stands, stands(t, w))
			require.Equal(t, row.saved, w.desk.Saved())
		})
	}
}

func TestMineIsSavedUnderAnotherName(t *testing.T) {
	w := overtaken(t, true)
	before := w.desk.File()
	w.look()
	test.Tap(button(t, w, "Save mine as…"))
	saveAs(t, w, filepath.Dir(before), "mine")
	require.Equal(t, "mine.tipline", filepath.Base(w.desk.File()))
	require.Equal(t, "Signal-cabin timepiece", stands(t, w))
	w.open(before, func() {})
	require.Equal(t, []string{"Signal-cabin timepiece", "Theirs"}, shown(w))
}

func TestTheirsThatIsNoJobIsNotTaken(t *testing.T) {
	w := overtaken(t, false)
	require.NoError(t, os.Truncate(w.desk.File(), 9))
	w.look()
	test.Tap(button(t, w, "Load it"))
	require.NotNil(t, w.question, "it is said")
	require.Equal(t, "Signal-cabin timepiece", w.desk.Title())
	require.False(t, w.desk.Saved())
}

func TestAFileThatIsGoneIsSaidOnceAndWrittenAnew(t *testing.T) {
	w := overtaken(t, false)
	require.NoError(t, os.Remove(w.desk.File()))
	w.look()
	test.Tap(button(t, w, "Close"))
	w.look()
	require.Nil(t, w.question)
	require.False(t, w.title.dot.Hidden)
	w.menu.save.Action()
	require.Equal(t, "Signal-cabin timepiece", stands(t, w))
	require.NoError(t, os.RemoveAll(filepath.Dir(w.desk.File())))
	w.menu.save.Action()
	require.NotNil(t, w.question, "it is said that there is no folder")
	w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.NotEmpty(t, w.desk.Job().Wheels)
}
