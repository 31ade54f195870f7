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

	corner func() float32 // how far the buttons reach into the drawing
}

// stalkLength is how far aside of its line a tag stands.
const stalkLength = 26

func newTag(d *desk.Desk) *tag {
	t := &tag{
		desk: d, flag: canvas.NewRectangle(light.blue), text: written("", readSize, paper, true),
		point: canvas.NewRectangle(paper), stalk: canvas.NewLine(light.blue),
		corner: func() float32 { return 0 },
	}
	t.flag.CornerRadius = 4
	t.point.StrokeColor, t.point.StrokeWidth = light.blue, 1.6
	t.text.Alignment = fyne.TextAlignCenter
	t.Container = &fyne.Container{Objects: []fyne.CanvasObject{t.stalk, t.flag, t.text, t.point}}
	t.Hide()
	return t
}

// show puts the tag at a place of the drawing, clear of what stands there, or takes it
// away.
func (t *tag) show(at screen.Pixel, ok bool, taken []screen.Pixel) {
	text := t.desk.LitText()
	if t.Hidden = !ok || text == ""; t.Hidden {
		t.Refresh()
		return
	}
	t.text.Text = text
	width := t.text.MinSize().Width + 18
	x, y := float32(at.X)+frameWidth, float32(at.Y)+frameWidth
	left, top := t.stand(x, y, width, taken)
	put(t.point, x-4, y-4, 8, 8)
	put(t.flag, left, top, width, tagHeight)
	put(t.text, left, top, width, tagHeight)
	t.stalk.Position1 = fyne.NewPos(x, y)
	t.stalk.Position2 = fyne.NewPos(min(max(x, left), left+width), top+tagHeight/2)
	t.Refresh()
}

// stand returns where a tag of a width for a place stands: aside and above, else below or
// on the other side, else further off, the first that covers nothing and stays within
// the drawing; where none does, the first, moved within it.
func (t *tag) stand(x, y, width float32, taken []screen.Pixel) (left, top float32) {
	side := float32(1)
	if x < t.Size().Width/2 {
		side = -1
	}
	for _, far := range []float32{1, 1.8, 2.6, 3.4} {
		for _, way := range [][2]float32{{side, -1}, {side, 1}, {-side, -1}, {-side, 1}} {
			left, top = x+way[0]*far*stalkLength, y+way[1]*far*stalkLength-tagHeight/2
			if way[0] < 0 {
				left -= width
			}
			if t.within(left, top, width) && clearOf(taken, x, y, left, top, width) {
				return left, top
			}
		}
	}
	left, top = x+side*stalkLength, y-stalkLength-tagHeight/2
	if side < 0 {
		left -= width
	}
	return min(max(left, 4), max(t.Size().Width-width-4, 4)), min(max(top, 4), max(t.Size().Height-tagHeight-legendHeight, 4))
}

// within reports whether a tag would stand within the drawing, above the legend and clear
// of the buttons in the corner.
func (t *tag) within(left, top, width float32) bool {
	s := t.Size()
	right, bottom := left+width, top+tagHeight
	corner := top < cornerGap+cornerHigh+4 && right > s.Width-t.corner()
	return left >= 4 && top >= 4 && right <= s.Width-4 && bottom <= s.Height-legendHeight && !corner
}

// clearOf reports whether a tag stands clear of what is taken, but for its own place.
func clearOf(taken []screen.Pixel, x, y, left, top, width float32) bool {
	const half = gripSize/2 + 2
	for _, h := range taken {
		hx, hy := float32(h.X)+frameWidth, float32(h.Y)+frameWidth
		own := hx == x && hy == y
		if !own && hx > left-half && hx < left+width+half && hy > top-half && hy < top+tagHeight+half {
			return false
		}
	}
	return true
}
