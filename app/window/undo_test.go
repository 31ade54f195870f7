package window

import (
	"fmt"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
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
