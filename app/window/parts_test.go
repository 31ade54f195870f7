package window

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/words"
)

func pressedKey(name fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: name} }

func item(t *testing.T, w *Window, label string) *fyne.MenuItem {
	for _, m := range w.menu.Items {
		for _, i := range m.Items {
			if i.Label == label {
				return i
			}
		}
	}
	require.Failf(t, "no item", label)
	return nil
}

func TestAPartToStartFromIsOffered(t *testing.T) {
	w := opened(t)
	test.Tap(w.rail.add)
	require.NotNil(t, w.question)
	first := w.Canvas().Focused().(*offer)
	require.Equal(t, desk.Kinds()[0], first.start.Kind)
	require.Equal(t, widget.MediumImportance, button(t, w, "Cancel").Importance, "a part is what is wanted")
	first.sketch.paint(sketchSize, sketchSize)
	require.NotNil(t, first.sketch.drawing)
	first.TypedKey(pressedKey(fyne.KeyDown))
	second := w.Canvas().Focused().(*offer)
	require.Equal(t, desk.Kinds()[1], second.start.Kind)
	second.TypedKey(pressedKey(fyne.KeyUp))
	require.Same(t, first, w.Canvas().Focused())
	second.TypedKey(pressedKey(fyne.KeyReturn))
	require.Nil(t, w.question)
	require.Equal(t, "escape-wheel-2", w.desk.Part())
	test.Tap(w.rail.add)
	w.Canvas().Focused().TypedKey(pressedKey(fyne.KeyEscape))
	require.Nil(t, w.question)
}

func TestThePartsAreSearched(t *testing.T) {
	w := opened(t)
	require.False(t, w.rail.sought.Hidden, "the sample has more than a handful")
	all := len(w.rail.parts)
	item(t, w, "Find a part").Action()
	require.Equal(t, fyne.Focusable(w.rail.sought), w.Canvas().Focused())
	w.rail.scroll.ScrollToBottom()
	test.Type(w.rail.sought, "escape")
	require.Zero(t, w.rail.scroll.Offset.Y, "what is found is seen")
	require.Less(t, len(w.rail.parts), all)
	w.rail.sought.TypedKey(pressedKey(fyne.KeyReturn))
	require.Equal(t, w.rail.parts[0].ID, w.desk.Part())
	require.Same(t, w.rail.parts[0], w.Canvas().Focused())
	w.rail.sought.TypedKey(pressedKey(fyne.KeyEscape))
	require.Len(t, w.rail.parts, all)
	require.Empty(t, w.rail.sought.Text)
	w.rail.sought.SetText("no such part")
	require.Empty(t, w.rail.parts)
	require.Len(t, w.rail.column.Objects, 1, "it is said that there is none")
	require.Equal(t, "none found", w.rail.column.Objects[0].(*canvas.Text).Text)
	w.rail.sought.SetText("")
	require.Len(t, w.rail.parts, all)
}

func TestASmallJobIsSearchedWhenAsked(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	w := New(app, desk.New(words.English(), desk.Recent{}))
	require.True(t, w.rail.sought.Hidden)
	w.rail.sought.ask()
	require.False(t, w.rail.sought.Hidden)
	w.rail.sought.TypedKey(pressedKey(fyne.KeyEscape))
	require.True(t, w.rail.sought.Hidden)
}

func TestThePartsKeys(t *testing.T) {
	w := opened(t)
	p := w.rail.parts[0]
	w.Canvas().Focus(p)
	p.TypedKey(pressedKey(fyne.KeyDown))
	require.Equal(t, w.rail.parts[1].ID, w.desk.Part())
	require.Same(t, w.rail.parts[1], w.Canvas().Focused())
	w.rail.parts[1].TypedKey(pressedKey(fyne.KeyUp))
	w.rail.parts[0].TypedKey(pressedKey(fyne.KeyUp))
	require.Equal(t, p.ID, w.desk.Part(), "there is none above the first")
	p.TypedKey(pressedKey(fyne.KeyF2))
	name := w.Canvas().Focused().(*answerEntry)
	require.Equal(t, "Great wheel", name.Text)
	name.SetText("Main wheel")
	name.TypedKey(pressedKey(fyne.KeyReturn))
	require.Nil(t, w.question)
	require.Equal(t, "Main wheel", w.desk.Name("great"))
	w.rail.parts[0].TypedKey(pressedKey(fyne.KeyDelete))
	require.NotNil(t, w.question)
	w.question.typed(pressedKey(fyne.KeyReturn))
	require.Nil(t, w.desk.Job().Wheel("great"))
}

func TestAShortNameThatIsTakenIsTold(t *testing.T) {
	w := opened(t)
	w.desk.Choose(w.desk.Job().Pairs[0].ID)
	w.askRename()
	asked := w.question
	name := w.Canvas().Focused().(*answerEntry)
	name.SetText("great")
	name.TypedKey(pressedKey(fyne.KeyReturn))
	require.NotSame(t, asked, w.question, "the refusal stands over the question")
	w.question.typed(pressedKey(fyne.KeyReturn))
	require.Same(t, asked, w.question)
}

func TestAPartIsCopiedThroughTheClipboard(t *testing.T) {
	w := opened(t)
	w.rail.parts[3].TypedShortcut(&fyne.ShortcutCopy{})
	require.Contains(t, fyne.CurrentApp().Clipboard().Content(), `"id": "escape"`)
	other := newWindow(w.all, w.desk.Another())
	item(t, other, "Paste a part").Action()
	require.Equal(t, "escape", other.desk.Part())
	fyne.CurrentApp().Clipboard().SetContent("a letter")
	item(t, other, "Paste a part").Action()
	require.NotNil(t, other.question, "in a sentence")
	other.question.typed(pressedKey(fyne.KeyReturn))
	require.Len(t, other.desk.Found(), 1)
	require.True(t, item(t, w, "Copy the part").Shortcut != nil)
	before := w.desk.Job()
	w.rail.parts[3].TypedShortcut(&fyne.ShortcutCut{})
	require.Nil(t, w.desk.Job().Wheel("escape"))
	w.desk.Undo()
	require.Same(t, before, w.desk.Job())
}

func TestAPartIsDraggedToAnotherPlace(t *testing.T) {
	w := opened(t)
	var before []string
	for _, p := range w.desk.Job().Wheels {
		before = append(before, p.ID)
	}
	p := w.rail.parts[0]
	down := w.rail.parts[2].Position().Y - p.Position().Y
	p.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, down/2)})
	p.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, down/2)})
	p.DragEnd()
	require.Equal(t, before[0], w.desk.Job().Wheels[2].ID)
	require.Equal(t, before[1], w.desk.Job().Wheels[0].ID)
	w.desk.Undo()
	require.False(t, w.desk.CanUndo(), "it is one step")
	p = w.rail.parts[0]
	p.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(0, 9)})
	p.DragEnd()
	require.False(t, w.desk.CanUndo(), "a twitch moves nothing")
}

func TestTheHistoryIsAListOfSteps(t *testing.T) {
	w := opened(t)
	h := w.column.history
	require.False(t, h.Visible())
	retype(t, w, "crossing.rim", "3 mm")
	retype(t, w, "crossing.hub", "12 mm")
	item(t, w, "History").Action()
	require.True(t, h.Visible())
	require.False(t, w.column.fields.Visible())
	require.Equal(t, fyne.Focusable(h.list), w.Canvas().Focused())
	require.Equal(t, 3, h.list.Length())
	require.Equal(t, 2, h.stand)
	h.list.Select(0)
	require.False(t, w.desk.CanUndo())
	require.Zero(t, h.stand)
	require.True(t, h.shown[0].Undone)
	h.list.Select(1)
	text, _ := w.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, "3 mm", text)
	w.menu.undo.Action()
	require.Zero(t, h.stand, "the list follows")
	h.list.TypedKey(pressedKey(fyne.KeyEscape))
	require.False(t, h.Visible())
	require.True(t, w.column.fields.Visible())
	item(t, w, "History").Action()
	w.follow(desk.Remark{Part: "great", Field: "crossing.rim"})
	require.False(t, h.Visible(), "it gives way to a field")
}

func TestWhatChangedSinceItWasPrintedWearsAMark(t *testing.T) {
	w := opened(t)
	w.desk.Export(w.desk.Packet(), filepath.Join(t.TempDir(), "packet.pdf"), func(int, int) {}, func(_ int, err error) { require.NoError(t, err) })
	require.False(t, w.rail.parts[0].Reprint)
	retype(t, w, "crossing.rim", "3 mm")
	require.True(t, w.rail.parts[0].Reprint)
	require.False(t, w.rail.parts[3].Reprint)
	w.desk.Type("great", "note", "Cut in March")
	below := w.rail.parts[1].Position().Y
	require.Greater(t, below, w.rail.parts[0].Position().Y+100, "the others make room for the note")
	w.rail.parts[0].MouseIn(nil)
	require.False(t, w.rail.tip.Hidden)
	require.Equal(t, "Cut in March", w.rail.tip.lines[0].text)
	require.Equal(t, "Changed since it was last printed.", w.rail.tip.lines[1].text)
	w.rail.parts[0].MouseOut()
	require.True(t, w.rail.tip.Hidden)
}

func TestTheStockListHasItsPlace(t *testing.T) {
	w := opened(t)
	s := w.column.stock
	item(t, w, "To get in").Action()
	require.True(t, s.Visible())
	require.False(t, w.column.fields.Visible())
	said := s.said()
	require.Contains(t, said, "Drills")
	w.desk.Type("great", "thickness", "9.5 mm")
	require.NotEqual(t, said, s.said(), "the list follows")
	item(t, w, "To get in").Action()
	require.False(t, s.Visible())
	require.True(t, w.column.fields.Visible())
	w.desk.Begin()
	s.open()
	require.Equal(t, []string{"No part can be built yet, so nothing is needed."}, s.said())
	w.column.history.open()
	require.False(t, s.Visible(), "one list at a time")
	s.open()
	require.False(t, w.column.history.Visible())
	w.turn(pressedKey(fyne.KeyEscape))
	require.False(t, s.Visible())
}

// said returns what the list says.
func (s *stock) said() (all []string) {
	for _, o := range s.list.Objects {
		switch o := o.(*fyne.Container).Objects[0].(type) {
		case *canvas.Text:
			all = append(all, o.Text)
		case *fyne.Container:
			all = append(all, o.Layout.(flowLayout).text)
		}
	}
	return all
}
