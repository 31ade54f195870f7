package window

import (
	"image"

	"tipline/app/window/desk"
	"tipline/render"
	"tipline/render/screen"
)

// thumbs are the small pictures of pages. Each is painted beside the window, one after
// the other, when it is first seen, and kept until the pages are others.
type thumbs struct {
	desk    *desk.Desk
	painter screen.Painter // for one picture at a time
	kept    map[*render.Drawing]*image.RGBA
	busy    bool
	came    func() // tells that a picture is painted
}

func newThumbs(d *desk.Desk, came func()) *thumbs {
	return &thumbs{desk: d, painter: screen.Painter{Theme: screen.Light(), Printed: true}, kept: map[*render.Drawing]*image.RGBA{}, came: came}
}

// forget lets the pictures go.
func (t *thumbs) forget() { t.kept = map[*render.Drawing]*image.RGBA{} }

// of returns the picture of a page at a size in pixels, nil while it is not painted; that
// it is will be told, and then it is to be asked for again.
func (t *thumbs) of(l desk.Leaf, width, height int) image.Image {
	if kept := t.kept[l.Drawing]; kept != nil && kept.Rect.Dx() == width && kept.Rect.Dy() == height {
		return kept
	}
	if t.busy || width < 1 || height < 1 {
		return nil
	}
	picture := image.NewRGBA(image.Rect(0, 0, width, height))
	paint := func() { t.paint(picture, l) }
	if t.desk.Aside == nil {
		paint()
		t.kept[l.Drawing] = picture
		return picture
	}
	t.busy = true
	t.desk.Aside(paint, func() {
		t.busy, t.kept[l.Drawing] = false, picture
		t.came()
	})
	return nil
}

// finer is how much larger than its picture a page is painted, so that its lettering,
// which is not drawn when it is too small, still greys the lines it stands on.
const finer = 5

// bold is how much thicker its lines are then drawn, so that they are not too pale: as
// much as leaves lettering of 2.5 mm, the least on a sheet.
const bold = 1.4

// paint paints a page larger and takes the mean of the pixels.
func (t *thumbs) paint(picture *image.RGBA, l desk.Leaf) {
	width, height := picture.Rect.Dx(), picture.Rect.Dy()
	large := image.NewRGBA(image.Rect(0, 0, finer*width, finer*height))
	t.painter.Density = bold
	t.painter.Paint(large, l.Drawing, screen.Fit(l.Sheet, float64(finer*width), float64(finer*height), 0))
	for y := range height {
		for x := range width {
			for c := range 4 {
				sum := 0
				for i := range finer {
					at := large.PixOffset(finer*x, finer*y+i) + c
					for j := range finer {
						sum += int(large.Pix[at+4*j])
					}
				}
				picture.Pix[picture.PixOffset(x, y)+c] = uint8(sum / (finer * finer))
			}
		}
	}
}
