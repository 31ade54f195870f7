package window

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
)

// visited returns what the Tab key comes to, from the first thing until it is there again.
func visited(w *Window) (list []fyne.Focusable) {
	w.Canvas().Unfocus()
	for had := map[fyne.Focusable]bool{}; ; {
		w.Canvas().FocusNext()
		now := w.Canvas().Focused()
		if now == nil || had[now] {
			return list
		}
		had[now] = true
		list = append(list, now)
	}
}

// Whatever can be pressed can be come to with the Tab key, on each step of each kind of
// part; the boxes of the pages are ticked from their list.
func TestEverythingIsReachedByTheKeyboard(t *testing.T) {
	w := opened(t)
	for _, id := range oneOfEach(w) {
		w.desk.Choose(id)
		for _, step := range w.desk.Steps() {
			w.desk.Go(step)
			reached := map[any]bool{}
			for _, f := range visited(w) {
				reached[f] = true
			}
			walk(w.Content(), func(o within) {
				if _, ok := o.CanvasObject.(fyne.Tappable); !ok || reached[o.CanvasObject] {
					return
				}
				if d, ok := o.CanvasObject.(fyne.Disableable); ok && d.Disabled() {
					return
				}
				if strings.Contains(fmt.Sprintf("%T", o.CanvasObject), "scrollBar") {
					return // what it scrolls follows the keyboard
				}
				for _, p := range o.in {
					if _, listed := p.CanvasObject.(*pages); listed || p.CanvasObject == fyne.CanvasObject(w.pages) {
						return
					}
					if f, ok := p.CanvasObject.(fyne.Focusable); ok && reached[f] {
						return // a piece of what was come to
					}
				}
				require.Fail(t, "not reached", "%s %s: %T %s", id, step, o.CanvasObject, textOf(o.CanvasObject))
			})
		}
	}
}

// The Tab key goes from the parts to the steps, the drawing, the fields and the remarks.
func TestTheKeyboardGoesThroughTheWindowInOrder(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Crossing)
	place := func(f fyne.Focusable) int {
		switch f := f.(type) {
		case *seeker, *part:
			return 0
		case *pushButton:
			if f == w.rail.add || f.Text == "To get in" {
				return 0
			} else if f == w.corner.rule || f == w.corner.layers {
				return 2
			}
			return 3
		case *tab:
			return 1
		case *board:
			return 2
		case *entry, *choice, *tickbox:
			return 3
		case *remark:
			return 4
		}
		return -1
	}
	last, at := 0, map[int]bool{}
	for _, f := range visited(w) {
		now := place(f)
		require.GreaterOrEqual(t, now, last, "%T after %d", f, last)
		last, at[now] = now, true
	}
	require.Len(t, at, 5, fmt.Sprint(at))
}

// What has the keyboard is seen whole and wears a line of two pixels; it is taken off
// again.
func TestWhatHasTheKeyboardIsSeen(t *testing.T) {
	w := opened(t)
	for _, step := range w.desk.Steps() {
		w.desk.Go(step)
		for _, f := range visited(w) {
			if f == fyne.Focusable(w.board) || f == fyne.Focusable(w.pages) {
				continue // the whole frame of the drawing, and a page of the list
			}
			w.Canvas().Focus(f)
			require.True(t, outlined(f.(fyne.CanvasObject)), "%s: %T %s has no ring", step, f, textOf(f))
			if s, ok := scrollOf(w.Content(), f.(fyne.CanvasObject), nil); ok && s != nil {
				driver := fyne.CurrentApp().Driver()
				top := driver.AbsolutePositionForObject(f.(fyne.CanvasObject)).Y - driver.AbsolutePositionForObject(s).Y
				require.GreaterOrEqual(t, top, float32(-0.5), "%s: %T %s", step, f, textOf(f))
				require.LessOrEqual(t, min(top+f.(fyne.CanvasObject).Size().Height, s.Size().Height+1), s.Size().Height+0.5, "%s: %T %s", step, f, textOf(f))
			}
			w.Canvas().Unfocus()
			if p, ok := f.(*part); !ok || !p.chosen {
				require.False(t, outlined(f.(fyne.CanvasObject)), "%s: %T", step, f)
			}
		}
	}
}

// outlined reports whether a thing is drawn with a coloured line of at least two pixels.
func outlined(o fyne.CanvasObject) bool {
	found := false
	walk(o, func(o within) {
		if r, ok := o.CanvasObject.(*canvas.Rectangle); ok && r.StrokeColor == blue && r.StrokeWidth >= ringWidth {
			found = true
		}
	})
	return found
}

// A click into a box marks all of it, a second one puts the cursor between the letters.
func TestAClickMarksWhatStandsInABox(t *testing.T) {
	w := opened(t)
	e := w.column.row("crossing.rim").entry
	press := &desktop.MouseEvent{Button: desktop.MouseButtonPrimary, PointEvent: fyne.PointEvent{Position: fyne.NewPos(20, 10)}}
	for _, marked := range []string{e.Text, ""} {
		e.MouseDown(press)
		e.MouseUp(press)
		require.Equal(t, marked, e.SelectedText())
	}
}
