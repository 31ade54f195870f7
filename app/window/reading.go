package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/render/screen"
)

// reading is the slip in the drawing's corner with what is read off the rule.
type reading struct {
	*fyne.Container
	ground *canvas.Rectangle
	note   *flow
}

// slipX and slipY are how far the slip stands in.
const slipX, slipY = 12, 12

func newReading() *reading {
	r := &reading{ground: sheetOf(panel), note: newFlow(smallSize, faint), Container: &fyne.Container{}}
	r.ground.StrokeColor = blue
	return r
}

// show writes what is read off in the upper left corner, or, where the pointer is there,
// in the lower right one.
func (r *reading) show(list []desk.Reading, note string, pointer screen.Pixel, s fyne.Size) {
	r.write(list, note, slipX, slipY)
	high := r.ground.Size().Height
	if float32(pointer.X) < slipX+slipWide+slipY && float32(pointer.Y) < 2*slipY+high && s.Width > 2*slipWide {
		r.write(list, note, s.Width-slipX-slipWide, s.Height-legendHeight-high)
	}
}

func (r *reading) write(list []desk.Reading, note string, left, top float32) {
	r.Objects = []fyne.CanvasObject{r.ground}
	y := top + 8
	for _, of := range list {
		r.cell(of.Label, left+10, y, slipLabel, false)
		r.cell(of.Value, left+10+slipLabel, y, slipValue, true)
		r.cell(of.Other, left+10+slipLabel+slipValue, y, slipValue, false)
		y += slipRow
	}
	if note != "" {
		r.note.set(note, faint)
		r.note.lay(slipWide - 20)
		high := r.note.tall(slipWide - 20)
		put(r.note.Container, left+10, y, slipWide-20, high)
		r.Objects = append(r.Objects, r.note.Container)
		y += high
	}
	put(r.ground, left, top, slipWide, y+8-top)
}

func (r *reading) cell(text string, x, y, width float32, bold bool) {
	c := faint
	if bold {
		c = ink
	}
	t := written(text, readSize, c, bold)
	put(t, x, y, width, slipRow)
	r.Objects = append(r.Objects, t)
}
