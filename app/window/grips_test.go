package window

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/require"

	"tipline/render/screen"
)

// Of every part and step: no handle stands on another, and the field that has the
// keyboard shows its value at its handle, within the drawing and clear of the others.
func TestHandlesAndTheirFlagsStandClear(t *testing.T) {
	w := opened(t)
	shown := 0
	for _, part := range w.desk.Result().Parts() {
		w.desk.Choose(part.ID())
		for _, step := range w.desk.Steps() {
			w.desk.Go(step)
			w.desk.Light("")
			apartAll(t, w.board.grips)
			for _, h := range w.board.grips.handles {
				w.desk.Light(h.Quantity)
				flagged(t, w, part.ID()+" "+string(step)+" "+string(h.Quantity))
				shown++
			}
		}
	}
	require.Greater(t, shown, 60)
}

func apartAll(t *testing.T, g *grips) {
	t.Helper()
	for i, p := range g.seen {
		for _, q := range g.seen[i+1:] {
			require.GreaterOrEqual(t, apart(p, q), float64(gripApart))
		}
	}
}

// flagged checks the flag of what is lit.
func flagged(t *testing.T, w *Window, what string) {
	t.Helper()
	tag, text := w.board.legend.tag, w.desk.LitText()
	if text == "" {
		require.True(t, tag.Hidden, what)
		return
	}
	require.False(t, tag.Hidden, what)
	require.Equal(t, text, tag.text.Text, what)
	at, size, all := tag.flag.Position(), tag.flag.Size(), tag.Size()
	require.True(t, at.X >= 4 && at.Y >= 4 && at.X+size.Width <= all.Width-4 && at.Y+size.Height <= all.Height-legendHeight, "%s: %v", what, at)
	own, _ := w.board.grips.place(w.board.view, w.desk.LitField())
	require.Contains(t, w.board.grips.seen, own, what)
	for _, p := range w.board.grips.seen {
		x, y := float32(p.X)+frameWidth, float32(p.Y)+frameWidth
		inside := x > at.X && x < at.X+size.Width && y > at.Y && y < at.Y+size.Height
		require.False(t, inside && p != own, "%s stands on a handle", what)
	}
}

func TestHandlesAreDotsUntilThePointerIsNear(t *testing.T) {
	w := opened(t)
	at := grip(t, w, "bore")
	size := func() float32 {
		for k, i := range w.board.grips.shown {
			if w.board.grips.handles[i].Quantity == "bore" {
				require.Equal(t, at.X, float32(w.board.grips.seen[k].X))
				return w.board.grips.squares[i].Size().Width
			}
		}
		return 0
	}
	require.Equal(t, float32(dotSize), size())
	w.board.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at.AddXY(30, 30)}})
	require.Equal(t, float32(gripSize), size())
	w.board.MouseOut()
	require.Equal(t, float32(dotSize), size())
	w.desk.Light("bore")
	require.Equal(t, float32(gripSize), size())
}

// Handles in a heap: the first is shown, and the one whose field is lit in its place.
func TestOfHandlesInAHeapTheLitOneIsShown(t *testing.T) {
	w := opened(t)
	w.board.set(w.board.view.Zoom(0.02, screen.Pixel{X: 300, Y: 200}))
	require.Len(t, w.board.grips.shown, 1)
	for _, h := range w.board.grips.handles {
		w.desk.Light(h.Quantity)
		require.Len(t, w.board.grips.shown, 1)
		require.Equal(t, h.Quantity, w.board.grips.handles[w.board.grips.shown[0]].Quantity)
	}
}

// A handle that is taken hold of is moved in steps by the arrow keys of its field, and
// Escape in the middle of a drag puts the value back.
func TestAHandleIsPressedAndNudged(t *testing.T) {
	w := opened(t)
	press(w.board, grip(t, w, "crossing.hub"))
	box := w.Canvas().Focused()
	require.Equal(t, fyne.Focusable(w.column.row("crossing.hub").entry), box)
	was := grip(t, w, "crossing.hub")
	for range 40 {
		box.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	}
	require.Less(t, grip(t, w, "crossing.hub").Y, was.Y+0.01)
	require.NotEqual(t, was, grip(t, w, "crossing.hub"))
	require.Equal(t, w.desk.LitText(), w.board.legend.tag.text.Text)
}

// The dimension of a handle whose field is lit is drawn between its two ends.
func TestALitHandleShowsItsDimension(t *testing.T) {
	w := opened(t)
	lines := func() (list []*canvas.Line) {
		for _, o := range w.board.grips.Objects {
			if l, ok := o.(*canvas.Line); ok {
				list = append(list, l)
			}
		}
		return list
	}
	require.Empty(t, lines())
	w.desk.Light("bore")
	require.Len(t, lines(), 6, "on paper and in blue, with four strokes of arrowheads")
	bore := w.desk.Result().Wheel("great").Template().Bore
	require.InDelta(t, bore*w.board.view.Scale, float64(lines()[0].Position2.X-lines()[0].Position1.X), 0.01)
	w.desk.Light("crossing.arms")
	require.Empty(t, lines(), "a count is no distance")
}
