package window

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/render/screen"
)

// ruler shows the rule on the drawing: lines between the places it is laid on, a mark
// where the pointer is drawn to with a word for it, and what is read off.
type ruler struct {
	*fyne.Container
	desk    *desk.Desk
	pointer *screen.Snap // nil while nothing points
	hair    screen.Pixel // where the arrow keys have moved the cross-hair
	haired  bool         // it is they that point
	word    *canvas.Text
	ground  *canvas.Rectangle
	reading *reading
}

// hairStep is how far, in pixels, an arrow key moves the cross-hair, and hairSize half
// its width.
const (
	hairStep = 6
	hairSize = 14
)

func newRuler(d *desk.Desk) *ruler {
	r := &ruler{desk: d, Container: &fyne.Container{}, word: written("", smallSize, paper, true), ground: canvas.NewRectangle(light.blue), reading: newReading()}
	r.ground.CornerRadius = 3
	r.word.Alignment = fyne.TextAlignCenter
	return r
}

// point points at a pixel with the pointer.
func (r *ruler) point(v screen.View, at screen.Pixel) {
	s := r.desk.SnapTo(v, at)
	r.pointer, r.hair, r.haired = &s, at, false
	r.lay(v)
}

// move moves the cross-hair with the arrow keys; it starts where the pointer was, or in
// the middle.
func (r *ruler) move(v screen.View, dx, dy float64) {
	s := r.Size()
	if r.pointer == nil {
		r.hair = screen.Pixel{X: float64(s.Width) / 2, Y: float64(s.Height) / 2}
	}
	at := screen.Pixel{X: min(max(r.hair.X+dx, 0), float64(s.Width)), Y: min(max(r.hair.Y+dy, 0), float64(s.Height))}
	r.point(v, at)
	r.haired = true
	r.lay(v)
}

// press lays the rule on where the pointer or the cross-hair is.
func (r *ruler) press(v screen.View) {
	if r.pointer != nil {
		r.desk.LayRule(*r.pointer)
	}
	r.lay(v)
}

// leave takes the pointer away; the cross-hair stays.
func (r *ruler) leave(v screen.View) {
	if !r.haired && r.pointer != nil {
		r.pointer = nil
		r.lay(v)
	}
}

// lay shows the rule as it lies.
func (r *ruler) lay(v screen.View) {
	if r.Container == nil {
		return
	}
	r.Objects = nil
	if !r.desk.Measuring() || v.Blank() {
		r.pointer, r.haired = nil, false
		r.Refresh()
		return
	}
	at := r.desk.Ruled()
	if r.pointer != nil && r.desk.RuleOpen() {
		at = append(at, r.pointer.At)
	}
	for i, p := range at {
		if i > 0 {
			r.line(v.ToPixel(at[i-1]), v.ToPixel(p), 1.8)
		}
	}
	for _, p := range r.desk.Ruled() {
		r.stroke(v.ToPixel(p), shapes[screen.Crossing], 3)
	}
	r.mark(v)
	list, note := r.desk.Readings(r.pointer)
	pointer := screen.Pixel{X: -1, Y: math.Inf(1)}
	if r.pointer != nil {
		pointer = v.ToPixel(r.pointer.At)
	}
	r.reading.show(list, note, pointer, r.Size())
	r.Objects = append(r.Objects, r.reading.Container)
	r.Refresh()
}

// mark shows where the pointer is drawn to and what that is.
func (r *ruler) mark(v screen.View) {
	if r.pointer == nil {
		return
	}
	if r.haired {
		r.stroke(r.hair, shapes[screen.Free], hairSize)
	}
	at := v.ToPixel(r.pointer.At)
	if r.pointer.Kind != screen.Free {
		r.stroke(at, shapes[r.pointer.Kind], 6)
	}
	word := r.desk.SnapWord(r.pointer.Kind)
	if word == "" {
		return
	}
	r.word.Text = word
	width, high := r.word.MinSize().Width+12, float32(18)
	x := min(max(float32(at.X)+14, 2), max(r.Size().Width-width-2, 2))
	y := min(max(float32(at.Y)+12, 2), max(r.Size().Height-high-legendHeight, 2))
	put(r.ground, x, y, width, high)
	put(r.word, x, y, width, high)
	r.Objects = append(r.Objects, r.ground, r.word)
}

// shapes are the marks of the kinds of place, so that they are told without colour: runs
// of corners about the place, in half sizes.
var shapes = map[screen.Kind][][]screen.Pixel{
	screen.Free:     {{{X: -1}, {X: 1}}, {{Y: -1}, {Y: 1}}},
	screen.OnLine:   {{{X: -1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: -1}}},
	screen.Centre:   {{{X: 1}, {X: 0.5, Y: 0.87}, {X: -0.5, Y: 0.87}, {X: -1}, {X: -0.5, Y: -0.87}, {X: 0.5, Y: -0.87}, {X: 1}}},
	screen.Middle:   {{{X: -1, Y: 0.8}, {X: 1, Y: 0.8}, {Y: -1}, {X: -1, Y: 0.8}}},
	screen.Crossing: {{{X: -1, Y: -1}, {X: 1, Y: 1}}, {{X: -1, Y: 1}, {X: 1, Y: -1}}},
	screen.End:      {{{X: -1, Y: -1}, {X: 1, Y: -1}, {X: 1, Y: 1}, {X: -1, Y: 1}, {X: -1, Y: -1}}},
	screen.Tip:      {{{X: -1.2}, {Y: -1.2}, {X: 1.2}, {Y: 1.2}, {X: -1.2}}},
}

// stroke draws a mark about a pixel, on a wider one of paper, so that it is seen on any
// ground.
func (r *ruler) stroke(at screen.Pixel, runs [][]screen.Pixel, half float64) {
	for _, pass := range []struct {
		colour color.Color
		width  float32
	}{{paper, 4}, {light.blue, 1.8}} {
		for _, ps := range runs {
			for i := 1; i < len(ps); i++ {
				r.Objects = append(r.Objects, stroked(about(at, ps[i-1], half), about(at, ps[i], half), pass.colour, pass.width))
			}
		}
	}
}

func about(at, off screen.Pixel, half float64) screen.Pixel {
	return screen.Pixel{X: at.X + half*off.X, Y: at.Y + half*off.Y}
}

func (r *ruler) line(from, to screen.Pixel, width float32) {
	r.Objects = append(r.Objects, stroked(from, to, paper, width+2.4), stroked(from, to, light.blue, width))
}
