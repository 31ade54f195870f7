package window

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/render"
)

// How long a window on the sample job takes from nothing to its first picture,
// beside the same widgets with nothing on the drawing: the software painter, a
// window of 1440 by 900.
func BenchmarkWindowPainted(b *testing.B) {
	for name, blank := range map[string]bool{"sample": false, "blank": true} {
		b.Run(name, func(b *testing.B) {
			app := test.NewApp()
			defer app.Quit()
			for b.Loop() {
				d := desk.New(words.English(), desk.Recent{File: filepath.Join(b.TempDir(), "recent")})
				require.NoError(b, d.Take(desk.FromSample(samples.First)))
				w := New(app, d)
				if blank {
					w.board.show(scene{place: "blank", drawing: &render.Drawing{}, whole: &render.Drawing{}, lit: d.Lit()})
				}
				w.Resize(fyne.NewSize(1440, 900))
				w.Canvas().Capture()
				w.Window.Close()
			}
		})
	}
}
