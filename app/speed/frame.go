//go:build geos

package main

import (
	"context"
	"fmt"
	"image"
	"runtime"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/render"
	"tipline/render/screen"
	"tipline/render/template"
)

// The size of the picture that frames are painted in, in pixels.
const wide, high = 1600, 1000

// frames makes live frames of a wheel: its rim is typed, back and forth.
type frames struct {
	jobs    [2]*job.Job
	solver  solve.Solver
	style   template.Style
	view    screen.View
	painter screen.Painter
	dst     *image.RGBA
	n       int
}

func framesOf(teeth int) (*frames, error) {
	j, err := wheels(1, teeth)
	if err != nil {
		return nil, err
	}
	f := &frames{
		painter: screen.Painter{Theme: screen.Light()}, dst: image.NewRGBA(image.Rect(0, 0, wide, high)),
		style: template.Style{Words: words.English(), Units: solve.Units(j, words.English())},
	}
	for i, rim := range []string{"3 mm", "3.1 mm"} {
		if f.jobs[i], err = j.Set("w0", "crossing.rim", rim); err != nil {
			return nil, err
		}
	}
	d, err := f.solved()
	if err != nil {
		return nil, err
	}
	f.view = screen.Fit(d.Bounds(), wide, high, 20)
	return f, nil
}

// solved works out the next edit and draws it.
func (f *frames) solved() (*render.Drawing, error) {
	f.n++
	return template.Crossing(f.solver.Solve(context.Background(), f.jobs[f.n%2]).Wheels[0].Template(), f.style)
}

func (f *frames) next() {
	if d, err := f.solved(); err == nil {
		f.painter.Paint(f.dst, d, f.view)
	}
}

// besideRasteriser measures a live frame beside a bare rasteriser that is given the
// outlines of the same drawing, on every processor and on one.
func besideRasteriser(p *page) error {
	for _, teeth := range []int{60, 360} {
		f, err := framesOf(teeth)
		if err != nil {
			return err
		}
		d, err := f.solved()
		if err != nil {
			return err
		}
		theirs := newRasteriser(d, f.view)
		about := row{
			what: fmt.Sprintf("solve and draw a crossed wheel of %d teeth", teeth), beside: "x/image/vector", goal: 1.5,
			note: fmt.Sprintf("%d×%d pixels, %d outlines, letters as outlines", wide, high, theirs.outlines()),
		}
		p.compare(about, f.next, theirs.paint)
		before := runtime.GOMAXPROCS(1)
		about.what, about.goal = about.what+", one processor", 0
		p.compare(about, f.next, theirs.paint)
		runtime.GOMAXPROCS(before)
	}
	return nil
}
