package window

import (
	"image"
	"image/color"
	"image/png"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/geometry"
	"tipline/render/screen"
)

// seen returns where a place of the drawing is seen on the board.
func seen(w *Window, at geometry.Point) fyne.Position {
	p := w.board.view.ToPixel(at)
	return fyne.NewPos(float32(p.X), float32(p.Y))
}

// grip returns where the handle of a field is seen.
func grip(t *testing.T, w *Window, q geometry.Quantity) fyne.Position {
	p, ok := w.board.grips.place(w.board.view, q)
	require.True(t, ok, q)
	return fyne.NewPos(float32(p.X), float32(p.Y))
}

// pull takes hold at one place of the board and drags to others; it does not let
// go.
func pull(w *Window, from fyne.Position, to ...fyne.Position) {
	w.board.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: from}, Button: desktop.MouseButtonPrimary})
	for _, at := range to {
		w.board.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: at}, Dragged: fyne.NewDelta(at.X-from.X, at.Y-from.Y)})
	}
}

func TestAHandleIsDraggedInOneStep(t *testing.T) {
	w := opened(t)
	before, _ := w.desk.Job().Text("great", "crossing.rim")
	view := w.board.view
	hub := w.desk.Result().Wheel("great").Crossing.RimRadius
	at := grip(t, w, "crossing.rim")
	inwards := func(mm float64) fyne.Position {
		p := w.board.view.ToDrawing(pixelAt(at))
		return seen(w, p.Times((hub-mm)/p.Norm()))
	}
	w.board.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
	require.Equal(t, desktop.Cursor(desktop.PointerCursor), w.board.Cursor())
	pull(w, at, inwards(0.5), inwards(1))
	text, _ := w.desk.Job().Text("great", "crossing.rim")
	require.Regexp(t, `^(4\.99|5|5\.01) mm$`, text)
	require.Equal(t, text, w.column.row("crossing.rim").entry.Text)
	require.Equal(t, text, w.board.legend.tag.text.Text)
	require.Equal(t, view, w.board.view, "the view does not move under the pointer")
	require.False(t, w.desk.CanUndo(), "a drag is no step until it ends")
	w.board.DragEnd()
	require.True(t, w.desk.CanUndo())
	w.desk.Undo()
	text, _ = w.desk.Job().Text("great", "crossing.rim")
	require.Equal(t, before, text)
	require.False(t, w.desk.CanUndo())
}

func TestEscapePutsADraggedHandleBack(t *testing.T) {
	w := opened(t)
	job, view := w.desk.Job(), w.board.view
	at := grip(t, w, "crossing.hub")
	pull(w, at, fyne.NewPos(at.X+5, at.Y-7))
	require.NotSame(t, job, w.desk.Job())
	w.board.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.Same(t, job, w.desk.Job())
	w.board.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: at}, Dragged: fyne.NewDelta(9, 9)})
	w.board.DragEnd()
	require.Same(t, job, w.desk.Job())
	require.Equal(t, view, w.board.view, "the rest of the drag does not pan")
	require.False(t, w.desk.CanUndo())
	require.False(t, w.desk.CanRedo())
}

func TestAPressedHandleGoesToItsField(t *testing.T) {
	w := opened(t)
	press(w.board, grip(t, w, "crossing.arm_at_hub"))
	require.Equal(t, fyne.Focusable(w.column.row("crossing.arm_at_hub").entry), w.Canvas().Focused())
	require.False(t, w.desk.CanUndo())
}

func TestTheArrowKeysNudgeAField(t *testing.T) {
	w := opened(t)
	for _, row := range []struct {
		field    geometry.Quantity
		text, up string
	}{
		{"crossing.rim", "4 mm", "4.01 mm"},
		{"crossing.rim", "4", "4.01"},
		{"crossing.hub", "1 in", "1.0005 in"},
		{"crossing.hub", `7/8"`, `0.8755"`},
		{"crossing.arms", "6", "7"},
		{"crossing.hub", "wide", "wide"},
	} {
		r := retype(t, w, row.field, row.text)
		r.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
		require.Equal(t, row.up, r.entry.Text)
		if row.up != row.text {
			r.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
			r.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
			require.NotEqual(t, row.up, r.entry.Text)
		}
	}
}

func TestTheSliderTurnsAPair(t *testing.T) {
	w := opened(t)
	require.True(t, w.turner.Hidden)
	w.desk.Choose("great-centre")
	require.False(t, w.turner.Hidden)
	before, view := w.board.drawing, w.board.view
	w.turner.slider.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	require.NotSame(t, before, w.board.drawing)
	turn, _ := w.desk.Mesh()
	require.InDelta(t, 1.0/turns, turn, 1e-9)
	require.Equal(t, view, w.board.view)
	w.turner.slider.SetValue(0.5)
	turn, _ = w.desk.Mesh()
	require.InDelta(t, 0.5, turn, 1e-9)
	w.desk.Choose("centre-third")
	require.Zero(t, w.turner.slider.Value)
	w.desk.Type("centre-third", "centres", "wide")
	require.True(t, w.turner.Hidden, "nothing is left to turn")
	w.desk.Undo()
	require.False(t, w.turner.Hidden)
	require.False(t, w.desk.CanUndo())
}

func TestTheTabsFollowTheKindOfPart(t *testing.T) {
	w := opened(t)
	for id, steps := range map[string]int{"great": 6, "centre-pinion": 4, "third-pinion": 3, "great-centre": 2, "going": 2} {
		w.desk.Choose(id)
		require.Len(t, w.strip.tabs, steps, id)
		for i, s := range w.desk.Steps() {
			test.Tap(w.strip.tabs[i])
			require.Equal(t, s, w.desk.Step())
			require.Equal(t, w.desk.Words().Say("step."+string(s)), w.menu.step.Items[i].Label)
		}
	}
	require.Equal(t, desk.Paper, w.desk.Step())
}

func TestPartsArePutOnArborsAndTakenOff(t *testing.T) {
	w := opened(t)
	w.desk.Choose("going")
	require.False(t, w.column.arbors.Hidden)
	a := w.desk.Arbors()[0]
	require.Equal(t, []desk.Choice{{Value: "great", Label: "Great wheel"}, {Value: "click", Label: "Click wheel"}}, a.Parts)
	cards := len(w.column.arbors.body.Objects)
	w.desk.PutOn(a.ID, "centre")
	require.Len(t, w.desk.Arbors()[0].Parts, 3)
	for _, other := range w.desk.Arbors()[1:] {
		require.NotContains(t, other.Parts, desk.Choice{Value: "centre", Label: "Centre wheel"})
	}
	w.desk.Undo()
	w.desk.TakeOff(a.ID, "click")
	require.Len(t, w.desk.Arbors()[0].Parts, 1)
	test.Tap(w.column.arbors.add)
	require.Len(t, w.column.arbors.body.Objects, cards+1)
	require.NoError(t, w.desk.DropArbor(a.ID))
	require.Len(t, w.column.arbors.body.Objects, cards)
}

func TestTheSliderHasTheKeyboardWhenItIsTakenHoldOf(t *testing.T) {
	w := opened(t)
	w.desk.Choose(w.desk.Result().Pairs[0].ID())
	s := w.turner.slider
	s.MouseDown(&desktop.MouseEvent{Button: desktop.MouseButtonPrimary})
	s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(s.Size().Width/2, 4)}})
	s.DragEnd()
	require.Same(t, s, w.Canvas().Focused())
	before, _ := w.desk.Mesh()
	require.Positive(t, before)
	w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	after, _ := w.desk.Mesh()
	require.Greater(t, after, before)
}

func TestTheMeasuredBitIsTypedDraggedAndCleared(t *testing.T) {
	w := opened(t)
	w.desk.Choose("great")
	w.desk.Go(desk.Cutter)
	require.False(t, w.column.bits.Hidden)
	test.Tap(w.column.bits.start)
	n := len(w.desk.Bit())
	require.Greater(t, n, 3)
	require.Len(t, w.column.bits.rows, n)
	require.Equal(t, "", troubles(w))
	ground := w.desk.Result().Wheel("great").Ground
	require.NotNil(t, ground)
	require.Less(t, ground.Worst.Off, 0.01)
	box := w.column.bits.rows[1].boxes[0]
	w.Canvas().Focus(box)
	good := w.board.drawing
	box.SetText("abc")
	require.Contains(t, w.column.bits.rows[1].why.text, "abc")
	require.False(t, w.column.bits.rows[1].why.Hidden)
	require.Equal(t, w.column.bits.rows[1].why.text, troubles(w), "under its own row only")
	require.Same(t, good, w.board.drawing, "the last good bit stays")
	require.Equal(t, geometry.Quantity("cutter.bit.chain[1].x"), w.board.painter.Lit.Quantity)
	require.True(t, w.board.legend.tag.Hidden)
	w.desk.Undo()
	require.Equal(t, "", troubles(w))
	require.True(t, w.board.legend.tag.Hidden, "the bit's own labels are not covered")
	at := grip(t, w, "cutter.bit.chain[0].x")
	pull(w, at, fyne.NewPos(at.X-6, at.Y))
	w.board.DragEnd()
	require.NotEqual(t, ground, w.desk.Result().Wheel("great").Ground)
	test.Tap(w.column.bits.add)
	require.Len(t, w.column.bits.rows, n+1)
	w.desk.DropCorner(n)
	require.Len(t, w.column.bits.rows, n)
	test.Tap(w.column.bits.clear)
	require.Empty(t, w.desk.Bit())
	require.Nil(t, w.desk.Result().Wheel("great").Ground)
	require.False(t, w.column.bits.start.Hidden)
}

// troubles returns what stands under the corners of the bit.
func troubles(w *Window) string {
	all := ""
	for _, r := range w.column.bits.rows {
		all += r.why.text
	}
	return all
}

// scan writes a picture of the size and returns its name.
func scan(t *testing.T, wide, high int) string {
	picture := image.NewGray(image.Rect(0, 0, wide, high))
	for i := range picture.Pix {
		picture.Pix[i] = uint8(i % 251)
	}
	picture.Set(0, 0, color.White)
	name := filepath.Join(t.TempDir(), "bit.png")
	f, err := os.Create(name)
	require.NoError(t, err)
	require.NoError(t, png.Encode(f, picture))
	require.NoError(t, f.Close())
	return name
}

func TestAPhotographIsPickedOnAndSavedBesideTheJob(t *testing.T) {
	w := opened(t)
	w.desk.Choose("escape")
	w.desk.Go(desk.Cutter)
	require.NoError(t, w.desk.UsePhotograph(scan(t, 400, 300)))
	require.Len(t, w.column.photo.rows, 5)
	w.column.photo.pick()
	require.False(t, w.board.legend.prompt.Hidden)
	require.Equal(t, desktop.Cursor(desktop.CrosshairCursor), w.board.Cursor())
	w.board.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.True(t, w.board.legend.prompt.Hidden)
	w.column.photo.pick()
	for i, pixel := range []geometry.Point{{X: 100, Y: 50}, {X: 300, Y: 50}, {X: 200, Y: 250}, {X: 200, Y: 40}} {
		require.Contains(t, w.board.legend.prompt.text.Text, w.desk.Words().Say("pick."+strconv.Itoa(i+1)))
		press(w.board, seen(w, geometry.Point{X: pixel.X * 160 / 400, Y: -pixel.Y * 160 / 400}))
	}
	require.True(t, w.board.legend.prompt.Hidden)
	points, _ := w.desk.Job().Text("escape", "cutter.bit.photograph.points")
	require.Regexp(t, `^(99\.\d|100(\.\d)?) \S+, (299\.\d|300(\.\d)?) \S+$`, points)
	retype(t, w, "cutter.bit.photograph.distance", "8 mm")
	lies := w.desk.Result().Wheel("escape").Photograph.Lies
	require.InDelta(t, 8.0/200, lies.Scale, 1e-3)
	folder := t.TempDir()
	saved(t, w, filepath.Join(folder, "job.tipline"))
	require.FileExists(t, filepath.Join(folder, "bit.png"))
	require.True(t, w.desk.Saved())
	w.desk.DropPhotograph()
	require.Len(t, w.column.photo.rows, 0)
	require.Nil(t, w.desk.Result().Wheel("escape").Photograph)
}

func TestWhatIsNoPictureIsRefused(t *testing.T) {
	w := opened(t)
	w.desk.Choose("escape")
	w.desk.Go(desk.Cutter)
	job := w.desk.Job()
	text := filepath.Join(t.TempDir(), "bit.png")
	require.NoError(t, os.WriteFile(text, []byte("no picture"), 0o600))
	for _, name := range []string{text, filepath.Join(t.TempDir(), "missing.png")} {
		w.tell(w.desk.UsePhotograph(name))
		require.Same(t, job, w.desk.Job())
		require.NotNil(t, w.question)
		w.turn(&fyne.KeyEvent{Name: fyne.KeyEscape})
	}
	w.desk.Type("escape", "cutter.bit.photograph.file", "gone.png")
	require.Contains(t, w.column.photo.rows[0].hint.text, "gone.png")
	require.False(t, w.desk.StartPicking())
}

func TestAPickBesideThePhotographIsNone(t *testing.T) {
	w := opened(t)
	w.desk.Choose("escape")
	w.desk.Go(desk.Cutter)
	require.NoError(t, w.desk.UsePhotograph(scan(t, 40, 30)))
	w.column.photo.pick()
	press(w.board, fyne.NewPos(1, 1))
	require.Empty(t, w.desk.Picked())
	press(w.board, seen(w, geometry.Point{X: 20, Y: -20}))
	press(w.board, seen(w, geometry.Point{X: 20, Y: -20}))
	require.Len(t, w.desk.Picked(), 1)
	require.Equal(t, screen.Lit{Part: "escape"}, w.desk.Lit())
}
