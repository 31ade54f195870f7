//go:build measure

package window

import (
	"fmt"
	"image"
	"os"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/render"
)

// measured says which window this program opens, in place of its tests: the sample's, the
// same with a blank drawing, or an empty one. Another start says when it was begun, in
// nanoseconds of Unix time.
const measured, begun = "TIPLINE_MEASURED", "TIPLINE_BEGUN"

// The toolkit's loop wants the thread that init runs on.
func init() {
	if which := os.Getenv(measured); which != "" {
		if err := start(which); err != nil {
			fmt.Fprintln(os.Stderr, err)
			os.Exit(1)
		}
	}
}

// start opens a window and, once it has been painted, prints the milliseconds since
// the program was begun and its memory in MB, and ends.
func start(which string) error {
	var start int64
	if _, err := fmt.Sscan(os.Getenv(begun), &start); err != nil {
		return err
	}
	shown, raster, err := openMeasured(which)
	if err != nil {
		return err
	}
	paint := raster.Generator
	raster.Generator = func(width, height int) image.Image {
		raster.Generator = paint
		go fyne.Do(func() { // when the frame that is begun here is on the screen
			fmt.Printf("%.1f %.1f\n", float64(time.Now().UnixNano()-start)/1e6, resident())
			os.Exit(0)
		})
		return paint(width, height)
	}
	shown.ShowAndRun()
	return nil
}

// openMeasured returns the window and what is painted in it.
func openMeasured(which string) (fyne.Window, *canvas.Raster, error) {
	a := app.NewWithID("tipline-measured")
	if which == "empty" {
		raster := canvas.NewRaster(func(width, height int) image.Image { return image.NewRGBA(image.Rect(0, 0, width, height)) })
		w := a.NewWindow(which)
		w.SetContent(raster)
		w.Resize(fyne.NewSize(1280, 740))
		return w, raster, nil
	}
	d := desk.New(words.English(), desk.Recent{})
	if err := d.Take(desk.FromSample(samples.First)); err != nil {
		return nil, nil, err
	}
	w := New(a, d)
	if which == "blank" {
		w.board.show(scene{place: which, drawing: &render.Drawing{}, whole: &render.Drawing{}, lit: d.Lit()})
	}
	return w.Window, w.board.raster, nil
}

// resident returns how much memory this program has, in MB.
func resident() (mb float64) {
	status, err := os.ReadFile("/proc/self/status")
	if err != nil {
		return 0
	}
	_, after, _ := strings.Cut(string(status), "VmRSS:")
	fmt.Sscan(after, &mb)
	return mb / 1024
}
