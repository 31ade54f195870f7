package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/render/screen"
)

// tag is a small flag on the drawing at a lit line, with what stands in the field
// that made it.
type tag struct {
	*fyne.Container
	desk  *desk.Desk
	flag  *canvas.Rectangle
	text  *canvas.Text
	point *canvas.Rectangle
	stalk *canvas.Line
}

// stalkLength is how far aside of its line a tag stands.
const stalkLength = 26

func newTag(d *desk.Desk) *tag {
	t := &tag{desk: d, flag: canvas.NewRectangle(blue), text: written("", readSize, paper, true),
		point: canvas.NewRectangle(paper), stalk: canvas.NewLine(blue)}
	t.flag.CornerRadius = 4
	t.point.StrokeColor, t.point.StrokeWidth = blue, 1.6
	t.text.Alignment = fyne.TextAlignCenter
	t.Container = &fyne.Container{Objects: []fyne.CanvasObject{t.stalk, t.flag, t.text, t.point}}
	t.Hide()
	return t
}

// show puts the tag at a place of the drawing, or takes it away.
func (t *tag) show(at screen.Pixel, ok bool) {
	text := t.desk.LitText()
	if t.Hidden = !ok || text == ""; t.Hidden {
		t.Refresh()
		return
	}
	t.text.Text = text
	width, high := t.text.MinSize().Width+18, float32(24)
	x, y := float32(at.X)+frameWidth, float32(at.Y)+frameWidth
	side, left := float32(1), x+stalkLength
	if x < t.Size().Width/2 {
		side, left = -1, x-stalkLength-width
	}
	left = min(max(left, 4), max(t.Size().Width-width-4, 4))
	top := min(max(y-stalkLength-high/2, 4), max(t.Size().Height-high-legendHeight, 4))
	put(t.point, x-4, y-4, 8, 8)
	put(t.flag, left, top, width, high)
	put(t.text, left, top, width, high)
	t.stalk.Position1, t.stalk.Position2 = fyne.NewPos(x, y), fyne.NewPos(x+side*stalkLength, top+high/2)
	t.Refresh()
}
