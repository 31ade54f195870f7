package window

import (
	"os"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
)

// afterCrashes returns a window that starts after two crashes, and the folder of what
// they left.
func afterCrashes(t *testing.T) (*Window, string) {
	state := t.TempDir()
	folder := filepath.Join(state, "unsaved")
	require.NoError(t, os.Mkdir(folder, 0o700))
	sample, err := samples.Read(samples.First)
	require.NoError(t, err)
	for i, text := range []string{"\"\"\n" + string(sample), "\"\"\n{\"tipline\": 1, \"title\": \"An older one\"}"} {
		name := filepath.Join(folder, string(rune('a'+i))+".unsaved")
		require.NoError(t, os.WriteFile(name, []byte(text), 0o600))
		at := time.Date(2024, 5, 6-i, 7, 8, 9, 0, time.Local)
		require.NoError(t, os.Chtimes(name, at, at))
	}
	app := test.NewApp()
	t.Cleanup(app.Quit)
	return New(app, desk.New(words.English(), desk.Recent{File: filepath.Join(state, "recent")})), folder
}

func copies(t *testing.T, folder string) int {
	left, err := filepath.Glob(filepath.Join(folder, "*.unsaved"))
	require.NoError(t, err)
	return len(left)
}

func TestWhatACrashLeftIsOpened(t *testing.T) {
	w, folder := afterCrashes(t)
	w.offerLost(w.desk.Lost())
	test.Tap(button(t, w, "Open it"))
	require.Equal(t, "• Signal-cabin timepiece – Tipline", w.Title())
	require.NotEmpty(t, w.rail.parts)
	test.Tap(button(t, w, "Not now"))
	w.leave()
	test.Tap(button(t, w, "Do not save"))
	require.Equal(t, 1, copies(t, folder), "the older one is offered at the next start")
}

// Each of the jobs that a crash left has a window of its own.
func TestAllThatACrashLeftIsOpened(t *testing.T) {
	w, folder := afterCrashes(t)
	w.offerLost(w.desk.Lost())
	test.Tap(button(t, w, "Open it"))
	test.Tap(button(t, w, "Open it"))
	require.Nil(t, w.Canvas().Overlays().Top())
	require.Len(t, w.all.list, 2)
	require.Equal(t, "• An older one – Tipline", w.all.list[1].Title())
	w.all.quit()
	test.Tap(button(t, w, "Do not save"))
	require.Len(t, w.all.list, 2, "all are asked before one is closed")
	test.Tap(button(t, w.all.list[1], "Do not save"))
	require.Empty(t, w.all.list)
	require.Zero(t, copies(t, folder))
}

// What a crash left of the job that is being opened takes its place.
func TestWhatACrashLeftOfTheJobThatIsOpened(t *testing.T) {
	w := opened(t)
	saved(t, w, filepath.Join(t.TempDir(), "job"))
	folder := filepath.Join(t.TempDir(), "unsaved")
	require.NoError(t, os.Mkdir(folder, 0o700))
	text := strconv.Quote(w.desk.File()) + "\n{\"tipline\": 1, \"title\": \"Further on\"}"
	require.NoError(t, os.WriteFile(filepath.Join(folder, "a.unsaved"), []byte(text), 0o600))
	lost := desk.New(words.English(), desk.Recent{File: filepath.Join(filepath.Dir(folder), "recent")}).Lost()
	require.Len(t, lost, 1)
	w.takeUp(lost[0], func() {})
	require.Len(t, w.all.list, 1)
	require.Equal(t, "Further on", w.desk.Title())
	require.False(t, w.desk.Saved())
	require.Equal(t, desk.Altered, w.desk.Look(), "nobody knows what the file was")
}

func TestWhatACrashLeftIsThrownAwayOrLeft(t *testing.T) {
	w, folder := afterCrashes(t)
	w.offerLost(w.desk.Lost())
	test.Tap(button(t, w, "Throw it away"))
	require.Equal(t, 1, copies(t, folder))
	w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.Nil(t, w.Canvas().Overlays().Top())
	require.Equal(t, 1, copies(t, folder), "left for later")
	require.Empty(t, w.rail.parts)
}

func TestASentenceTellsWhatWasLeftAndWhen(t *testing.T) {
	w, _ := afterCrashes(t)
	list := w.desk.Lost()
	require.Len(t, list, 2)
	said := w.lostLine(list[1])
	require.Contains(t, said, "An older one")
	require.Contains(t, said, "5 May 2024, 07:08")
}
