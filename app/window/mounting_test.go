package window

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/geometry"
)

func TestAStackIsEditedInTheWindow(t *testing.T) {
	w := opened(t)
	w.desk.Choose("great")
	require.True(t, w.column.layers.Hidden)
	require.NoError(t, w.desk.Add("stack"))
	l := w.column.layers
	require.False(t, l.Hidden)
	require.Len(t, l.rows, 2)
	w.Canvas().Focus(l.rows[1].tip)
	l.rows[1].tip.SetText("")
	require.NotEmpty(t, l.hint.text)
	require.Equal(t, red, l.hint.colour)
	test.Type(l.rows[1].tip, "3")
	text, _ := w.desk.Job().Text(w.desk.Part(), "tips")
	require.Equal(t, "0, 3", text)
	l.rows[1].tip.TypedShortcut(&fyne.ShortcutUndo{})
	require.Equal(t, "0", l.rows[1].tip.Text)
	l.put.SetSelectedIndex(0)
	require.Len(t, l.rows, 3)
	require.Empty(t, l.put.Selected)
	first := l.shown[0]
	test.Tap(buttonIn(t, l.rows[0].Container, "↓"))
	require.Equal(t, first, l.shown[1])
	test.Tap(buttonIn(t, l.rows[2].Container, "×"))
	require.Len(t, l.rows, 2)
	require.Equal(t, focusable(l.rows[0].tip), w.column.place("tips"))
	require.Equal(t, focusable(l.put), w.column.place("wheels"))
}

// buttonIn returns the button that says a text in a container, at any depth.
func buttonIn(t *testing.T, in *fyne.Container, says string) *pushButton {
	var found *pushButton
	var look func(o fyne.CanvasObject)
	look = func(o fyne.CanvasObject) {
		switch o := o.(type) {
		case *pushButton:
			if o.Text == says {
				found = o
			}
		case *fyne.Container:
			for _, below := range o.Objects {
				look(below)
			}
		}
	}
	look(in)
	require.NotNil(t, found, says)
	return found
}

func TestAdditionsAreEditedInTheWindow(t *testing.T) {
	w := opened(t)
	w.desk.Choose("hour")
	w.desk.Go(desk.Crossing)
	own := w.column.own
	require.False(t, own.Hidden)
	before := w.board.drawing
	n := len(own.cards)
	own.add.SetSelectedIndex(0)
	require.Len(t, own.cards, n+1)
	require.Empty(t, own.add.Selected)
	require.NotSame(t, before, w.board.drawing, "seen at once")
	box := own.cards[n].cells[0].box
	w.Canvas().Focus(box)
	box.SetText("wide")
	require.Contains(t, own.cards[n].hint.text, "wide")
	require.Same(t, box, own.cards[n].cells[0].box, "the box typed in stays")
	w.desk.Undo()
	require.Empty(t, own.cards[n].hint.text)
	own.cards[n].kind.SetSelected("note")
	require.Len(t, own.cards[n].cells, 3)
	require.Equal(t, focusable(own.cards[n].kind), w.column.place(own.cards[n].of.Kind.Path))
	test.Tap(buttonIn(t, own.cards[n].Container, "×"))
	require.Len(t, own.cards, n)
}

// Whatever the keyboard comes to is seen.
func TestTheColumnFollowsTheKeyboard(t *testing.T) {
	w := opened(t)
	require.Zero(t, w.column.scroll.Offset.Y)
	last := w.column.rows[len(w.column.rows)-1]
	w.Canvas().Focus(last.entry)
	down := w.column.scroll.Offset.Y
	require.Positive(t, down)
	w.Canvas().Focus(w.column.own.cards[0].cells[3].box)
	require.Greater(t, w.column.scroll.Offset.Y, down)
	w.Canvas().Focus(w.column.rows[0].entry)
	require.Zero(t, w.column.scroll.Offset.Y)
}

func TestSuggestIsOnTheCrossingsStepOnly(t *testing.T) {
	w := opened(t)
	before := w.desk.Job()
	require.False(t, w.column.suggest.Hidden)
	test.Tap(w.column.suggest)
	require.NotSame(t, before, w.desk.Job())
	text, _ := w.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, text, w.column.row("crossing.rim").entry.Text)
	w.desk.Undo()
	require.Same(t, before, w.desk.Job())
	w.desk.Go(desk.Mounting)
	require.True(t, w.column.suggest.Hidden)
	require.NotNil(t, w.column.row("mount.thread"))
	for _, field := range []geometry.Quantity{"mount.screws", "mount.screw_circle", "mount.collet.flange"} {
		require.NotNil(t, w.column.place(field), field)
	}
}
