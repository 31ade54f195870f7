package window

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/ledongthuc/pdf"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/words"
	"tipline/geometry"
)

// fresh returns a window as one sees it who opens the program for the first time.
func fresh(t *testing.T, state string) *Window {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	w := New(app, desk.New(words.English(), desk.Recent{File: filepath.Join(state, "recent")}))
	w.Resize(fyne.NewSize(1280, 720))
	w.receive()
	return w
}

func TestANewcomerIsShownRoundOnce(t *testing.T) {
	for _, answer := range []string{"Look round the sample", "Begin my own job"} {
		state := t.TempDir()
		w := fresh(t, state)
		require.Equal(t, "Signal-cabin timepiece", w.desk.Title())
		require.True(t, w.desk.Untouched())
		again := fresh(t, state)
		require.NotNil(t, again.question, "shown until it is answered")
		test.Tap(button(t, w, answer))
		require.Nil(t, w.question)
		require.Equal(t, answer == "Begin my own job", w.desk.Part() == "")
		again = fresh(t, state)
		require.Nil(t, again.question)
		require.Empty(t, again.desk.Part())
	}
}

// Jobs are read beside the window, but what a newcomer is asked about lies on the desk of
// the one window by then.
func TestANewcomerHasOneWindow(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	w := New(app, desk.New(words.English(), desk.Recent{File: filepath.Join(t.TempDir(), "recent")}))
	var b bench
	w.desk.Aside = b.aside
	w.receive()
	require.Equal(t, []string{"Signal-cabin timepiece"}, shown(w))
	test.Tap(button(t, w, "Begin my own job"))
	require.Empty(t, w.desk.Part())
	require.Equal(t, w.welcome.add, w.Canvas().Focused())
	b.all()
	require.Len(t, shown(w), 1)
}

func TestOneWhoHasOpenedAJobIsNoNewcomer(t *testing.T) {
	state := t.TempDir()
	first, _ := files(t)
	w := fresh(t, state)
	require.NoError(t, w.desk.Open(first))
	require.Nil(t, fresh(t, state).question)
}

// keys presses keys where the keyboard is, as the toolkit's driver does.
func keys(w *Window, names ...fyne.KeyName) {
	for _, name := range names {
		e := &fyne.KeyEvent{Name: name}
		switch on := w.Canvas().Focused(); {
		case name == fyne.KeyTab:
			w.Canvas().FocusNext()
		case on != nil:
			on.TypedKey(e)
		default:
			w.turn(e)
		}
	}
}

// Told no more than “make me a six-armed wheel of 84 teeth, module 0.7, and print it”,
// one begins a job, adds the wheel, types the three numbers and prints, by the keyboard
// alone; a handle is dragged and that undone on the way.
func TestTheFirstWheel(t *testing.T) {
	w := fresh(t, t.TempDir())
	keys(w, fyne.KeyReturn) // begin my own job
	keys(w, fyne.KeyReturn) // add a part
	keys(w, fyne.KeyReturn) // a train wheel
	require.Nil(t, w.Canvas().Overlays().Top())
	require.Equal(t, desk.Blank, w.desk.Step())
	typeIn := func(text string) {
		for _, r := range text {
			w.Canvas().Focused().TypedRune(r)
		}
	}
	typeIn("Great wheel")
	keys(w, fyne.KeyTab, fyne.KeyTab)
	typeIn("84")
	keys(w, fyne.KeyTab)
	typeIn("0.7")
	w.menu.step.Items[3].Action() // Crossing
	typeIn("6")
	id := w.desk.Part()
	for field, want := range map[geometry.Quantity]string{"name": "Great wheel", "teeth.count": "84", "teeth.module": "0.7", "crossing.arms": "6"} {
		text, _ := w.desk.Job().Text(id, field)
		require.Equal(t, want, text, field)
	}
	wheel := w.desk.Result().Wheel(id)
	require.Len(t, wheel.Crossing.Windows, 6)
	require.InDelta(t, 0.7*84/2, wheel.Teeth.PitchRadius, 1e-9)

	before, drawn := w.desk.Job(), w.board.drawing
	at := grip(t, w, "crossing.rim")
	pull(w, at, fyne.NewPos(at.X, at.Y+4))
	w.board.DragEnd()
	require.NotSame(t, before, w.desk.Job())
	require.NotSame(t, drawn, w.board.drawing)
	w.menu.undo.Action()
	require.Same(t, before, w.desk.Job())

	folder := t.TempDir()
	w.askPDF()
	saveAs(t, w, folder, "great wheel")
	test.Tap(button(t, w, "Close"))
	f, printed, err := pdf.Open(filepath.Join(folder, "great wheel.pdf"))
	require.NoError(t, err)
	defer f.Close()
	require.Greater(t, printed.NumPage(), 1)
	w.menu.save.Action()
	saveAs(t, w, folder, "first")
	require.True(t, w.desk.Saved())
	_, err = os.Stat(filepath.Join(folder, "first.tipline"))
	require.NoError(t, err)
}
