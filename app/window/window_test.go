package window

import (
	"image"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/solve"
	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render/screen"
)

// opened returns a window over the sample job, as large as a small laptop's.
func opened(t *testing.T) *Window {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	d := desk.New(words.English(), desk.Recent{File: filepath.Join(t.TempDir(), "recent")})
	require.NoError(t, d.Take(desk.FromSample(samples.First)))
	w := New(app, d)
	w.Resize(fyne.NewSize(1280, 720))
	return w
}

// retype replaces what stands in a field, letter by letter.
func retype(t *testing.T, w *Window, field geometry.Quantity, text string) *row {
	r := w.column.row(field)
	require.NotNil(t, r, field)
	w.Canvas().Focus(r.entry)
	r.entry.SetText("")
	test.Type(r.entry, text)
	return r
}

func TestTypingInAFieldChangesTheDrawing(t *testing.T) {
	w := opened(t)
	before := w.board.drawing
	r := retype(t, w, "crossing.rim", "3 mm")
	text, _ := w.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, "3 mm", text)
	require.NotSame(t, before, w.board.drawing)
	require.Equal(t, screen.Lit{Part: "great", Quantity: "crossing.rim"}, w.board.painter.Lit)
	require.Equal(t, "from the root circle", r.hint.text)
	require.Equal(t, "• Signal-cabin timepiece – Tipline", w.Title())
	require.False(t, w.title.dot.Hidden)
	require.False(t, w.board.legend.tag.Hidden)
	require.Equal(t, "3 mm", w.board.legend.tag.text.Text)
}

func TestARefusalStandsUnderItsFieldAndOnItsStep(t *testing.T) {
	w := opened(t)
	good := w.board.drawing
	r := retype(t, w, "crossing.hub", "wide")
	require.Same(t, w.column.row("crossing.hub"), r)
	require.Contains(t, r.hint.text, "wide")
	require.Equal(t, red, r.hint.colour)
	require.Same(t, good, w.board.drawing)
	require.Equal(t, 1, w.strip.tabs[3].mark.Errors)
	require.Len(t, w.remarks.list.Objects, len(w.desk.Remarks()))
	require.Contains(t, w.board.legend.zoom.Text, "last good drawing")
}

func TestUndoAndRedoFromTheMenuAndWithinAField(t *testing.T) {
	w := opened(t)
	first, _ := w.desk.Job().Text("great", "crossing.rim")
	require.True(t, w.menu.undo.Disabled)
	r := retype(t, w, "crossing.rim", "3 mm")
	require.False(t, w.menu.undo.Disabled)
	w.menu.undo.Action()
	require.Equal(t, first, r.entry.Text)
	require.True(t, w.menu.undo.Disabled)
	r.entry.TypedShortcut(redoAgain)
	require.Equal(t, "3 mm", r.entry.Text)
	r.entry.TypedShortcut(&fyne.ShortcutUndo{})
	require.Equal(t, first, r.entry.Text)
	w.menu.redo.Action()
	require.Equal(t, "3 mm", r.entry.Text)
}

func TestStepsAndPartsAreChosen(t *testing.T) {
	w := opened(t)
	for i, step := range w.desk.Steps() {
		test.Tap(w.strip.tabs[i])
		require.Equal(t, step, w.desk.Step())
		require.True(t, w.strip.tabs[i].chosen)
		require.Len(t, w.column.rows, len(w.desk.Fields()))
		require.Equal(t, step != desk.Paper, w.pager.Hidden)
	}
	test.Tap(w.strip.tabs[1])
	test.Tap(w.rail.parts[3])
	require.Equal(t, "escape", w.desk.Part())
	require.True(t, w.rail.parts[3].chosen)
	require.NotNil(t, w.column.row("teeth.undercut"))
	w.turn(&fyne.KeyEvent{Name: fyne.KeyPageUp})
	require.Equal(t, "third", w.desk.Part())
	w.rail.parts[0].TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	require.Equal(t, "great", w.desk.Part())
}

func TestPressingALineGoesToItsField(t *testing.T) {
	w := opened(t)
	win := w.desk.Result().Wheel("great").Crossing.Windows[0]
	var at geometry.Point
	for i := range win.Outline.Len() {
		if s := win.Outline.Segment(i); s.Quantity == "crossing.rim" {
			at = s.At(0.3)
		}
	}
	p := w.board.view.ToPixel(at)
	press(w.board, fyne.NewPos(float32(p.X), float32(p.Y)))
	require.Equal(t, fyne.Focusable(w.column.row("crossing.rim").entry), w.Canvas().Focused())
	require.Equal(t, geometry.Quantity("crossing.rim"), w.desk.Lit().Quantity)
	test.Tap(w.strip.tabs[0])
	press(w.board, fyne.NewPos(2, 2))
	require.Empty(t, w.desk.Lit().Quantity)
}

func press(b *board, at fyne.Position) {
	e := &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary}
	b.MouseDown(e)
	b.MouseUp(e)
}

func TestTheDrawingIsPannedZoomedAndFitted(t *testing.T) {
	w := opened(t)
	fitted := w.board.view
	about := fyne.NewPos(200, 150)
	pointed := fitted.ToDrawing(screen.Pixel{X: 200, Y: 150})
	w.board.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: about}, Scrolled: fyne.NewDelta(0, 50)})
	require.InDelta(t, fitted.Scale*closer*closer, w.board.view.Scale, 1e-6*fitted.Scale)
	still := w.board.view.ToDrawing(screen.Pixel{X: 200, Y: 150})
	require.InDelta(t, 0, pointed.Dist(still), 1e-9)
	zoomed := w.board.view
	w.board.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(30, -12)})
	require.Equal(t, zoomed.Pan(30, -12), w.board.view)
	require.NotContains(t, w.board.legend.zoom.Text, "fit")
	w.board.TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome})
	require.Equal(t, fitted, w.board.view)
	w.board.TypedRune('+')
	w.board.TypedRune('-')
	require.InDelta(t, fitted.Scale, w.board.view.Scale, 1e-9*fitted.Scale)
	w.board.DoubleTapped(nil)
	require.Contains(t, w.board.legend.zoom.Text, "fit")
}

func TestADragPressesNoLine(t *testing.T) {
	w := opened(t)
	e := &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: w.board.middle()}, Button: desktop.MouseButtonPrimary}
	w.board.pressed = func(screen.Found) { require.Fail(t, "a line was pressed") }
	w.board.MouseDown(e)
	w.board.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(4, 4)})
	w.board.MouseUp(e)
}

func TestTheBoardPaintsAtThePixelsItIsAskedFor(t *testing.T) {
	w := opened(t)
	s := w.board.Size()
	painted := w.board.paint(2*int(s.Width), 2*int(s.Height)).(*image.RGBA)
	require.InDelta(t, 2, w.board.painter.Density, 0.01)
	again := w.board.paint(2*int(s.Width), 2*int(s.Height)).(*image.RGBA)
	require.Same(t, painted, again, "the picture is kept from frame to frame")
	inked := 0
	for i := 0; i < len(painted.Pix); i += 4 {
		if painted.Pix[i] < 100 {
			inked++
		}
	}
	require.Greater(t, inked, 2000)
}

func TestARemarkIsFollowed(t *testing.T) {
	w := opened(t)
	test.Tap(w.rail.parts[5])
	test.Tap(w.strip.tabs[0])
	for _, o := range w.remarks.list.Objects {
		if r := o.(*remark); r.remark.Severity == solve.Caution && r.remark.Field == "crossing.arms" {
			r.tapped()
		}
	}
	require.Equal(t, desk.Crossing, w.desk.Step())
	arms := w.column.row("crossing.arms").entry
	require.Equal(t, fyne.Focusable(arms), w.Canvas().Focused())
	require.Equal(t, arms.Text, arms.SelectedText(), "what is typed replaces it")
}

func TestAChoiceChangesTheJobOnce(t *testing.T) {
	w := opened(t)
	w.column.row("crossing.placing").choice.SetSelected("evenly")
	text, _ := w.desk.Job().Text("great", "crossing.placing")
	require.Equal(t, "equal", text)
	w.desk.Undo()
	require.Equal(t, "on tips", w.column.row("crossing.placing").choice.Selected)
	require.False(t, w.desk.CanUndo())
}

// The rail's picture of a part is drawn when it is seen, and again when the part has
// changed.
func TestAPartsPictureFollowsThePart(t *testing.T) {
	w := opened(t)
	p := w.rail.parts[0].picture
	require.True(t, p.stale)
	p.paint(pictureSize, pictureSize)
	before := p.drawing
	require.NotNil(t, before)
	p.paint(pictureSize, pictureSize)
	require.Same(t, before, p.drawing)
	retype(t, w, "crossing.arms", "5")
	p.paint(pictureSize, pictureSize)
	require.NotSame(t, before, p.drawing)
	other := w.rail.parts[1].picture
	other.paint(pictureSize, pictureSize)
	retype(t, w, "crossing.arms", "4")
	require.False(t, other.stale, "another part's edit leaves it alone")
}
