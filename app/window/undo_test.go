package window

import (
	"fmt"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/appearance"
	"tipline/app/job"
	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render/screen"
)

// crowded writes a job of 200 wheels, the sample's over and over with the pairs and trains
// of one lot, and returns its file.
func crowded(t testing.TB) string {
	d := desk.New(words.English(), desk.Recent{})
	require.NoError(t, d.Take(desk.FromSample(samples.First)))
	j := *d.Job()
	for lot := 1; len(j.Wheels) < 200; lot++ {
		for _, w := range d.Job().Wheels {
			c := *w
			c.ID = fmt.Sprintf("%s-%d", w.ID, lot)
			j.Wheels = append(j.Wheels, &c)
		}
	}
	file := filepath.Join(t.TempDir(), "crowded"+desk.Extension)
	require.NoError(t, job.Save(file, &j))
	return file
}

// asides are what a desk had done beside the window, in the order it was asked for.
type asides struct{ waiting []func() func() }

func (a *asides) aside(run, done func()) {
	a.waiting = append(a.waiting, func() func() { run(); return done })
}

// work does what waits, and what comes of it at the window.
func (a *asides) work(b *testing.B) {
	for len(a.waiting) > 0 {
		next := a.waiting[0]
		a.waiting = a.waiting[1:]
		b.StopTimer()
		done := next()
		b.StartTimer()
		done()
	}
}

// What the window's thread does when a step is undone or done again in a job of 200
// wheels; what is done beside it does not count.
func BenchmarkUndoAmong200Wheels(b *testing.B) {
	for _, row := range []struct {
		name string
		act  func(d *desk.Desk) error
	}{
		{"rim", func(d *desk.Desk) error { d.Type("great", "crossing.rim", "4.3 mm"); return nil }},
		{"teeth of a pair", func(d *desk.Desk) error { d.Type("great", "teeth.module", "1.01 mm"); return nil }},
		{"units", func(d *desk.Desk) error { d.Type("", "units", "in"); return nil }},
		{"deleted", (*desk.Desk).Delete},
		{"duplicated", (*desk.Desk).Duplicate},
	} {
		b.Run(row.name, func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			d := desk.New(words.English(), desk.Recent{File: filepath.Join(b.TempDir(), "recent")})
			require.NoError(b, d.Open(crowded(b)))
			var beside asides
			d.Aside = beside.aside
			w := New(app, d)
			w.Resize(fyne.NewSize(1280, 720))
			require.NoError(b, row.act(d))
			beside.work(b)
			for i := 0; b.Loop(); i++ {
				if i%2 == 0 {
					d.Undo()
				} else {
					d.Redo()
				}
				beside.work(b)
			}
		})
	}
}

// What was undone is seen: the field that it changed, however far down it stands, and in
// the menu the unit.
func TestWhatIsUndoneIsSeen(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Crossing)
	retype(t, w, "crossing.start_hole", "2 mm")
	w.desk.Go(desk.Paper)
	item(t, w, "Undo").Action()
	require.Equal(t, desk.Crossing, w.desk.Step())
	r := w.column.row("crossing.start_hole")
	top := r.Container.Position().Y - w.column.scroll.Offset.Y
	require.Positive(t, w.column.scroll.Offset.Y)
	require.Less(t, top, w.column.scroll.Size().Height)
	ticked := func() (labels []string) {
		for _, i := range w.menu.units.ChildMenu.Items {
			if i.Checked {
				labels = append(labels, i.Label)
			}
		}
		return labels
	}
	require.Equal(t, []string{"millimetres"}, ticked())
	w.menu.units.ChildMenu.Items[1].Action()
	require.Equal(t, "in", w.desk.Job().Units)
	require.Equal(t, []string{"inches"}, ticked())
	item(t, w, "Undo").Action()
	require.Equal(t, []string{"millimetres"}, ticked())
}

// At every size of type the drawing as it is fitted stands clear of the buttons.
func TestTheFittedDrawingIsClearOfTheButtons(t *testing.T) {
	w := opened(t)
	t.Cleanup(func() { enlarge(1) })
	for _, percent := range appearance.Percents() {
		w.wear(appearance.Looks{Shade: appearance.Light, Percent: percent})
		w.Resize(fyne.NewSize(1280, 720))
		for _, part := range []string{"great", "escape"} {
			w.desk.Choose(part)
			for _, step := range w.desk.Steps() {
				if step == desk.Paper {
					continue
				}
				w.desk.Go(step)
				b := w.board
				b.fit()
				bottom := b.view.ToDrawing(screen.Pixel{X: float64(b.Size().Width - w.corner.wide()), Y: float64(cornerGap + cornerHigh)})
				right := b.view.ToDrawing(screen.Pixel{X: float64(b.Size().Width)})
				require.False(t, reaches(b.drawing, geometry.Box{Min: bottom, Max: right}), "%s %s at %d %%", part, step, percent)
			}
		}
	}
}

// The part that is looked at and the one that has the keyboard look different.
func TestAPartWithTheKeyboardWearsARing(t *testing.T) {
	w := opened(t)
	looked, other := w.rail.parts[0], w.rail.parts[1]
	wears := func(p *part) (mark, ring bool) {
		for _, o := range test.WidgetRenderer(p).Objects() {
			if r, ok := o.(*canvas.Rectangle); ok && r.Visible() {
				mark = mark || r.FillColor == blue
				ring = ring || r.StrokeColor == blue
			}
		}
		return mark, ring
	}
	w.Canvas().Focus(other)
	mark, ring := wears(looked)
	require.True(t, mark)
	require.False(t, ring)
	mark, ring = wears(other)
	require.False(t, mark)
	require.True(t, ring)
	w.Canvas().Unfocus()
	_, ring = wears(other)
	require.False(t, ring)
}
