package window

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
)

// What a live frame costs on the sample job at 1280 by 720, and with a great wheel of 360
// teeth: from the key or the pointer's move until the window knows what to show, and the
// drawing and the pictures of the parts that are seen painted.
func BenchmarkLiveFrame(b *testing.B) {
	for _, row := range []struct {
		name, part string
		step       desk.Step
		act        func(w *Window) func(i int)
	}{
		{"rim typed", "great", desk.Crossing, typing("crossing.rim", "4 mm", "4.1 mm")},
		{"teeth typed", "great", desk.Blank, typing("teeth.module", "1 mm", "1.01 mm")},
		{"back radius typed", "escape", desk.Cutter, typing("teeth.back_radius", "6.3 mm", "6.4 mm")},
		{"rim dragged", "great", desk.Crossing, dragging("crossing.rim")},
		{"pair turned", "great-centre", desk.Depthing, func(w *Window) func(int) {
			return func(i int) { w.turner.slider.SetValue(float64(i%turns) / turns) }
		}},
		{"centres typed", "great-centre", desk.Depthing, typing("centres", "48 mm", "48.1 mm")},
		{"360 teeth: rim typed", "great", desk.Crossing, wheelOf360(typing("crossing.rim", "4 mm", "4.1 mm"))},
		{"360 teeth: module typed", "great", desk.Blank, wheelOf360(typing("teeth.module", "0.233 mm", "0.234 mm"))},
		{"360 teeth: rim dragged", "great", desk.Crossing, wheelOf360(dragging("crossing.rim"))},
		{"360 teeth: ruled", "great", desk.Crossing, wheelOf360(ruling)},
		{"360 teeth: panned", "great", desk.Crossing, wheelOf360(panning)},
	} {
		b.Run(row.name, func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			d := desk.New(words.English(), desk.Recent{File: filepath.Join(b.TempDir(), "recent")})
			require.NoError(b, d.Take(desk.FromSample(samples.First)))
			w := New(app, d)
			w.Resize(fyne.NewSize(1280, 720))
			d.Choose(row.part)
			d.Go(row.step)
			act, s, i := row.act(w), w.board.Size(), 0
			for b.Loop() {
				act(i)
				w.board.paint(int(s.Width), int(s.Height))
				paintSeen(w.rail)
				i++
			}
		})
	}
}

// paintSeen paints the pictures of the parts that the rail shows.
func paintSeen(r *rail) {
	top, bottom := r.scroll.Offset.Y, r.scroll.Offset.Y+r.scroll.Size().Height
	for _, p := range r.parts {
		if p.Position().Y < bottom && p.Position().Y+p.Size().Height > top {
			p.picture.paint(pictureSize, pictureSize)
		}
	}
}

func typing(field geometry.Quantity, texts ...string) func(*Window) func(int) {
	return func(w *Window) func(int) {
		return func(i int) { w.column.row(field).entry.SetText(texts[i%len(texts)]) }
	}
}

func dragging(field geometry.Quantity) func(*Window) func(int) {
	return func(w *Window) func(int) {
		p, _ := w.board.grips.place(w.board.view, field)
		at := fyne.NewPos(float32(p.X), float32(p.Y))
		w.board.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
		w.board.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary})
		if !w.board.grips.held() {
			panic("no handle of " + string(field))
		}
		return func(i int) {
			to := at.AddXY(0, float32(i%10))
			w.board.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: to}})
		}
	}
}

// wheelOf360 first gives the present wheel 360 teeth at about the size it has.
func wheelOf360(act func(*Window) func(int)) func(*Window) func(int) {
	return func(w *Window) func(int) {
		part := w.desk.Part()
		w.desk.Type(part, "teeth.count", "360")
		w.desk.Type(part, "teeth.module", "0.233 mm")
		return act(w)
	}
}

// ruling moves the pointer along the teeth with the rule taken up and laid on.
func ruling(w *Window) func(int) {
	w.measure()
	middle := w.board.middle()
	press(w.board, middle)
	return func(i int) {
		at := middle.AddXY(float32(i%7)-3, -middle.Y*0.7+float32(i%5))
		w.board.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}})
	}
}

func panning(w *Window) func(int) {
	return func(i int) {
		w.board.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(float32(i%2*2-1), 0)})
	}
}
