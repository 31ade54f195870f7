package window

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

func key(w *Window, name fyne.KeyName) { w.board.TypedKey(&fyne.KeyEvent{Name: name}) }

// slipTexts returns what stands on the rule's slip.
func slipTexts(w *Window) []string {
	var all []string
	for _, o := range w.board.ruler.reading.Objects {
		if t, ok := o.(*canvas.Text); ok {
			all = append(all, t.Text)
		}
	}
	return all
}

func point(w *Window, at fyne.Position) {
	w.board.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
}

func TestTheRuleIsLaidWithThePointer(t *testing.T) {
	w := opened(t)
	wheel := w.desk.Result().Wheel("great")
	test.Tap(w.corner.rule)
	require.True(t, w.desk.Measuring())
	require.Equal(t, fyne.Focusable(w.board), w.Canvas().Focused())
	require.Equal(t, desktop.Cursor(desktop.CrosshairCursor), w.board.Cursor())
	tip := seen(w, geometry.Polar(wheel.Teeth.TipRadius, wheel.Teeth.Tip(0)))
	point(w, tip.AddXY(1, -1))
	require.Equal(t, "tip", w.board.ruler.word.Text)
	focused := w.Canvas().Focused()
	press(w.board, tip.AddXY(1, -1))
	require.Equal(t, focused, w.Canvas().Focused(), "no field is gone to")
	centre := seen(w, geometry.Point{})
	point(w, centre.AddXY(2, 1))
	require.Equal(t, "centre", w.board.ruler.word.Text)
	require.Contains(t, slipTexts(w), "43.712 mm", "it reads where the pointer is before it is laid on")
	press(w.board, centre)
	require.Len(t, w.desk.Ruled(), 2)
	view := w.board.view
	pull(w, centre, centre.AddXY(30, 10))
	require.NotEqual(t, view, w.board.view, "the drawing is still panned")
	require.Len(t, w.desk.Ruled(), 2)
	key(w, fyne.KeyEscape)
	require.False(t, w.desk.Measuring())
	require.Empty(t, w.board.ruler.Objects)
	require.False(t, w.desk.CanUndo(), "measuring is no change of the job")
}

func TestTheRuleIsLaidWithTheKeyboard(t *testing.T) {
	w := opened(t)
	w.Canvas().Focus(w.board)
	w.board.TypedRune('m')
	require.True(t, w.desk.Measuring())
	view := w.board.view
	for range 8 {
		key(w, fyne.KeyUp)
	}
	key(w, fyne.KeyReturn)
	require.Len(t, w.desk.Ruled(), 1)
	for range 60 {
		key(w, fyne.KeyLeft)
		key(w, fyne.KeyDown)
	}
	key(w, fyne.KeyReturn)
	require.Len(t, w.desk.Ruled(), 2)
	require.Equal(t, view, w.board.view, "the arrow keys are the cross-hair's")
	at := w.board.ruler.hair
	require.True(t, at.X >= 0 && at.Y >= 0 && float32(at.X) <= w.board.Size().Width && float32(at.Y) <= w.board.Size().Height)
	w.board.TypedRune('m')
	require.False(t, w.desk.Measuring())
	key(w, fyne.KeyUp)
	require.NotEqual(t, view, w.board.view)
}

// The slip stands out of the pointer's way.
func TestTheSlipGivesWayToThePointer(t *testing.T) {
	w := opened(t)
	w.measure()
	press(w.board, w.board.middle())
	ground := w.board.ruler.reading.ground
	point(w, w.board.middle())
	require.Equal(t, float32(slipX), ground.Position().X)
	point(w, fyne.NewPos(40, 40))
	require.Greater(t, ground.Position().X, w.board.Size().Width/2)
	require.Less(t, ground.Position().Y+ground.Size().Height, w.board.Size().Height)
}

// While points are picked on a photograph, and where nothing is drawn, there is no rule.
func TestNoRuleWithoutADrawing(t *testing.T) {
	w := opened(t)
	w.desk.Begin()
	w.measure()
	require.False(t, w.desk.Measuring())
	require.NotContains(t, w.corner.Objects, fyne.CanvasObject(w.corner.rule))
	point(w, fyne.NewPos(40, 40))
}

func TestLayersAreTickedOffByMouseAndKeyboard(t *testing.T) {
	w := opened(t)
	view := w.board.view
	test.Tap(w.corner.layers)
	require.Len(t, w.corner.veils, len(w.desk.Veils()))
	row := w.corner.veils[0]
	require.True(t, row.Checked)
	test.Tap(row)
	require.True(t, w.desk.Veils()[0].Hidden)
	for i := range w.board.drawing.Items {
		require.NotEqual(t, row.layer, w.board.drawing.Items[i].Layer)
	}
	require.Equal(t, view, w.board.view, "what is left stays where it was")
	row.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	require.NotContains(t, w.corner.Objects, fyne.CanvasObject(row))
	w.chooseLayers()
	require.Equal(t, fyne.Focusable(w.corner.veils[0]), w.Canvas().Focused())
	w.corner.veils[0].TypedRune(' ')
	require.False(t, w.desk.Veils()[0].Hidden)
	w.desk.Go("paper")
	require.NotContains(t, w.corner.Objects, fyne.CanvasObject(w.corner.layers))
}

func TestWhatIsLitFillsTheView(t *testing.T) {
	w := opened(t)
	before := w.board.view
	w.board.fitLit()
	require.Equal(t, before, w.board.view, "nothing is lit")
	w.desk.Light("crossing.fillet_at_rim")
	w.board.TypedRune('9')
	require.Greater(t, w.board.view.Scale, 5*before.Scale)
	at := grip(t, w, "crossing.fillet_at_rim")
	s := w.board.Size()
	require.True(t, at.X > 0.2*s.Width && at.X < 0.8*s.Width && at.Y > 0.2*s.Height && at.Y < 0.8*s.Height, "the fillet with the handle: %v", at)
	w.board.TypedRune('0')
	require.Equal(t, before, w.board.view)

	wheel := w.desk.Result().Wheel("great").Crossing
	far := geometry.Polar(wheel.RimRadius, geometry.Clock(geometry.Degrees(200)))
	press(w.board, seen(w, far))
	require.Equal(t, geometry.Quantity("crossing.rim"), w.desk.Lit().Quantity)
	w.board.fitLit()
	box, ok := screen.Extent(w.board.drawing, w.desk.Lit(), far)
	require.True(t, ok)
	middle := w.board.view.ToPixel(box.Centre())
	require.InDelta(t, s.Width/2, middle.X, 1, "the piece that was pressed")
}

// What is lit is never shown smaller than the whole, and nothing of a fitted drawing lies
// under the buttons.
func TestAFitKeepsWithinTheWholeAndClearOfTheButtons(t *testing.T) {
	w := opened(t)
	for _, part := range w.desk.Result().Parts() {
		w.desk.Choose(part.ID())
		for _, step := range w.desk.Steps() {
			w.desk.Go(step)
			w.board.fitPart()
			whole := w.board.view
			if whole.Blank() {
				continue
			}
			size := w.board.Size()
			for _, b := range []*pushButton{w.corner.rule, w.corner.layers} {
				for x := 0; x < int(b.Size().Width); x += 6 {
					at := screen.Pixel{X: float64(b.Position().X + float32(x)), Y: float64(b.Position().Y + b.Size().Height/2)}
					_, hit := screen.Find(w.board.drawing, whole, at, float64(b.Size().Height)/2)
					require.False(t, hit && b.Visible() && at.X < float64(size.Width), "%s %s: %v", part.ID(), step, at)
				}
			}
			for _, h := range w.board.grips.handles {
				w.desk.Light(h.Quantity)
				w.board.fitLit()
				require.GreaterOrEqual(t, w.board.view.Scale, whole.Scale, "%s %s %s", part.ID(), step, h.Quantity)
			}
		}
	}
}

// The view is kept from a hidden layer to a fit: the whole drawing's.
func TestHiddenLayersCountInTheFit(t *testing.T) {
	w := opened(t)
	view := w.board.view
	for _, v := range w.desk.Veils() {
		if v.Layer != render.LayerBore {
			w.desk.HideLayer(v.Layer, true)
		}
	}
	w.board.fitPart()
	require.Equal(t, view, w.board.view)
}
