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

// button returns the button with the text in the question on top.
func button(t *testing.T, w *Window, text string) *answer {
	var found *answer
	top := w.Canvas().Overlays().Top()
	require.NotNil(t, top, "nothing is asked")
	for _, o := range test.LaidOutObjects(top) {
		if b, ok := o.(*answer); ok && b.Text == text {
			found = b
		}
	}
	require.NotNil(t, found, text)
	return found
}

// boxes returns the boxes to type in of the question on top.
func boxes(w *Window) []*answerEntry {
	var found []*answerEntry
	for _, o := range test.LaidOutObjects(w.Canvas().Overlays().Top()) {
		if e, ok := o.(*answerEntry); ok {
			found = append(found, e)
		}
	}
	return found
}

// saveAs answers the question for a name.
func saveAs(t *testing.T, w *Window, folder, name string) {
	asked := boxes(w)
	require.Len(t, asked, 2)
	asked[0].SetText(name)
	asked[1].SetText(folder)
	test.Tap(button(t, w, "Save"))
}

func TestAnUnsavedJobIsAskedAbout(t *testing.T) {
	w := opened(t)
	retype(t, w, "crossing.rim", "3 mm")
	fresh := 0
	begin := func() { fresh++; w.desk.Begin() }
	w.careful(begin)
	test.Tap(button(t, w, "Cancel"))
	require.Zero(t, fresh)
	require.Nil(t, w.Canvas().Overlays().Top())
	w.careful(begin)
	test.Tap(button(t, w, "Save"))
	folder := t.TempDir()
	saveAs(t, w, folder, "kept")
	require.Equal(t, 1, fresh)
	require.Empty(t, w.desk.Job().Wheels)
	require.NoError(t, w.desk.Open(filepath.Join(folder, "kept.tipline")))
	text, _ := w.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, "3 mm", text)
	w.desk.Type("great", "bore", "7 mm")
	w.careful(begin)
	test.Tap(button(t, w, "Do not save"))
	require.Equal(t, 2, fresh)
}

func TestAnOpenQuestionHoldsTheMenu(t *testing.T) {
	w := opened(t)
	retype(t, w, "crossing.rim", "3 mm")
	w.askPDF()
	asked := w.Canvas().Overlays().Top()
	w.menu.undo.Action()
	w.menu.save.Action()
	require.Equal(t, asked, w.Canvas().Overlays().Top())
	require.True(t, w.desk.CanUndo())
}

func TestASavedJobIsNotAskedAbout(t *testing.T) {
	w := opened(t)
	done := false
	w.careful(func() { done = true })
	require.True(t, done)
}

func TestAFileIsNotWrittenOverUnasked(t *testing.T) {
	w := opened(t)
	folder := t.TempDir()
	name := filepath.Join(folder, "job.tipline")
	saved(t, w, name)
	retype(t, w, "crossing.rim", "3 mm")
	w.askSave(func() {})
	saveAs(t, w, folder, "job")
	require.False(t, w.desk.Saved())
	test.Tap(button(t, w, "Write over it"))
	require.True(t, w.desk.Saved())
	require.Equal(t, name, w.desk.File())
}

func TestThePacketIsPrintedAndSaid(t *testing.T) {
	w := opened(t)
	folder := t.TempDir()
	w.askPDF()
	saveAs(t, w, folder, "packet")
	require.True(t, desk.There(filepath.Join(folder, "packet.pdf")))
	test.Tap(button(t, w, "Close"))
	w.askPDF()
	saveAs(t, w, filepath.Join(folder, "no such folder"), "packet")
	require.NotNil(t, w.Canvas().Overlays().Top(), "the trouble is said")
}

func TestMenuItemsThatNeedAPart(t *testing.T) {
	w := opened(t)
	w.desk.Begin()
	for _, i := range w.menu.onPart {
		require.True(t, i.Disabled, i.Label)
	}
	require.True(t, w.welcome.Visible())
	w.add("pointed")
	require.Len(t, w.rail.parts, 1)
	require.False(t, w.welcome.Visible())
	require.NotNil(t, w.board.drawing)
	for _, i := range w.menu.onPart {
		require.False(t, i.Disabled, i.Label)
	}
	w.askDelete()
	test.Tap(button(t, w, "Delete"))
	require.Empty(t, w.rail.parts)
}

// Every item of the menu has a text of the catalogue, and no two the same keys.
func TestMenuTextsAndKeys(t *testing.T) {
	w := opened(t)
	keys := map[string]string{}
	var walk func(m *fyne.Menu)
	walk = func(m *fyne.Menu) {
		for _, i := range m.Items {
			require.NotContains(t, i.Label, "‹")
			if i.Shortcut != nil {
				require.Empty(t, keys[i.Shortcut.ShortcutName()], i.Label)
				keys[i.Shortcut.ShortcutName()] = i.Label
			}
			if i.ChildMenu != nil {
				walk(i.ChildMenu)
			}
		}
	}
	for _, m := range w.menu.Items {
		walk(m)
	}
	require.Equal(t, "Redo", keys[(&fyne.ShortcutRedo{}).ShortcutName()])
}

// Escape is the first answer and Return the last, wherever the keyboard is.
func TestQuestionsAreAnsweredByTheKeyboard(t *testing.T) {
	escape, enter := &fyne.KeyEvent{Name: fyne.KeyEscape}, &fyne.KeyEvent{Name: fyne.KeyReturn}
	for _, row := range []struct {
		name   string
		press  func(w *Window)
		delete bool
	}{
		{"escape on the answer", func(w *Window) { w.Canvas().Focused().TypedKey(escape) }, false},
		{"return on the answer", func(w *Window) { w.Canvas().Focused().TypedKey(enter) }, true},
		{"space on the answer", func(w *Window) { w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace}) }, true},
		{"return on cancel", func(w *Window) { button(t, w, "Cancel").TypedKey(enter) }, false},
		{"escape with the keyboard nowhere", func(w *Window) { w.turn(escape) }, false},
		{"return with the keyboard nowhere", func(w *Window) { w.turn(enter) }, true},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := opened(t)
			w.askDelete()
			row.press(w)
			require.Nil(t, w.Canvas().Overlays().Top())
			require.Nil(t, w.question)
			require.Equal(t, row.delete, w.desk.Job().Wheel("great") == nil)
		})
	}
}

func TestANameIsGivenOrNotByTheKeyboard(t *testing.T) {
	w := opened(t)
	w.askSave(func() {})
	boxes(w)[1].TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.Nil(t, w.Canvas().Overlays().Top())
	w.askSave(func() {})
	asked := boxes(w)
	asked[1].SetText(t.TempDir())
	asked[0].TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	require.Nil(t, w.Canvas().Overlays().Top())
	require.NotEmpty(t, w.desk.File())
}

func TestEscapeClosesTheQuestionForAFolderAlone(t *testing.T) {
	w := opened(t)
	w.askSave(func() {})
	asked := w.Canvas().Overlays().Top()
	w.askFolder(boxes(w)[1])
	require.NotEqual(t, asked, w.Canvas().Overlays().Top())
	w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.Equal(t, asked, w.Canvas().Overlays().Top())
	w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.Nil(t, w.Canvas().Overlays().Top())
}

// saved saves the job of a window that does everything at once.
func saved(t *testing.T, w *Window, name string) {
	t.Helper()
	failed := os.ErrExist
	w.desk.SaveAs(name, func(err error) { failed = err })
	require.NoError(t, failed)
}
