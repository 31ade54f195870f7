package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
)

// reading is the slip in the drawing's corner with what is read off the rule.
type reading struct {
	*fyne.Container
	ground *canvas.Rectangle
	note   *flow
}

// The measures of the slip.
const (
	slipX, slipY = 12, 12
	slipRow      = 20
	slipLabel    = 104 // wide, and the values
	slipValue    = 92
	slipWide     = slipLabel + 2*slipValue + 20
)

func newReading() *reading {
	r := &reading{ground: sheetOf(panel), note: newFlow(smallSize, faint), Container: &fyne.Container{}}
	r.ground.StrokeColor = blue
	return r
}

// show writes what is read off.
func (r *reading) show(list []desk.Reading, note string) {
	r.Objects = []fyne.CanvasObject{r.ground}
	y := float32(slipY + 8)
	for _, of := range list {
		r.cell(of.Label, slipX+10, y, slipLabel, false)
		r.cell(of.Value, slipX+10+slipLabel, y, slipValue, true)
		r.cell(of.Other, slipX+10+slipLabel+slipValue, y, slipValue, false)
		y += slipRow
	}
	if note != "" {
		r.note.set(note, faint)
		r.note.lay(slipWide - 20)
		high := r.note.tall(slipWide - 20)
		put(r.note.Container, slipX+10, y, slipWide-20, high)
		r.Objects = append(r.Objects, r.note.Container)
		y += high
	}
	put(r.ground, slipX, slipY, slipWide, y+8-slipY)
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
