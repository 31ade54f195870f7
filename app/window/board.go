package window

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

// board is the drawing: it is panned by dragging, zoomed about the pointer with
// the wheel, fitted with a double click, and tells which line was pressed. It
// paints at the screen's own pixels into a picture it keeps.
type board struct {
	widget.BaseWidget
	painter screen.Painter
	drawing *render.Drawing
	whole   *render.Drawing // with the layers that are hidden
	view    screen.View     // in the toolkit's units, of which a screen may have several pixels
	fitted  bool
	key     string // of the place the drawing belongs to
	pixels  *image.RGBA
	raster  *canvas.Raster
	legend  *legend
	pressed func(screen.Found)
	others  func(*fyne.KeyEvent) // takes the keys that are not the drawing's

	grips        *grips
	ruler        *ruler
	measure      func()                    // takes up the rule
	corner       func() float32            // how far the buttons reach into the drawing
	clicked      screen.Found              // the line pressed last
	picked       func(geometry.Point) bool // takes a pressed place of the drawing, if it is wanted
	moved, focus bool
}

// reach is how near a line must be pressed, and margin what is left round a
// fitted drawing.
const (
	reach  = 8
	margin = 16
)

func newBoard(l *legend, pressed func(screen.Found), others func(*fyne.KeyEvent)) *board {
	b := &board{
		painter: screen.Painter{Theme: screen.Light()}, legend: l, pressed: pressed, others: others, fitted: true, grips: &grips{}, ruler: &ruler{}, measure: func() {}, corner: func() float32 { return 0 },
		picked: func(geometry.Point) bool { return false },
	}
	b.painter.Theme.Table = present.table
	b.raster = canvas.NewRaster(b.paint)
	b.ExtendBaseWidget(b)
	return b
}

// scene is what the board shows: a drawing of a place, the whole of it where layers of it
// are hidden, what is lit on it, and the page it is on, if any. A still one keeps its
// view, however large it has become.
type scene struct {
	place          string
	drawing, whole *render.Drawing
	lit            screen.Lit
	page           geometry.Box
	still          bool
}

// show sets the scene; one of another place is fitted anew.
func (b *board) show(s scene) {
	fresh := b.whole != s.whole && !s.still
	if s.place != b.key {
		b.key, b.fitted, fresh, b.clicked = s.place, true, true, screen.Found{}
		b.grips.letGo()
	}
	b.drawing, b.whole = s.drawing, s.whole
	b.painter.Lit, b.painter.Sheet, b.painter.Printed = s.lit, s.page, s.page.Width() > 0
	if b.fitted && fresh || b.view.Blank() {
		b.fit()
	}
	b.changed()
}

// changed repaints.
func (b *board) changed() {
	b.legend.show(b.drawing, b.view, b.fitted)
	s := b.Size()
	at, ok := b.litPlace()
	ok = ok && !b.measuring()
	b.grips.lay(b.view, s, b.legend.desk.LitField())
	b.legend.tag.show(at, ok, b.grips.taken())
	b.ruler.lay(b.view)
	b.raster.Refresh()
}

// litPlace returns where what is lit shows its value.
func (b *board) litPlace() (screen.Pixel, bool) {
	if at, ok := b.grips.place(b.view, b.legend.desk.LitField()); ok {
		return at, true
	}
	s := b.Size()
	return screen.Place(b.drawing, b.view, b.painter.Lit, float64(s.Width), float64(s.Height))
}

func (b *board) paint(width, height int) image.Image {
	if b.pixels == nil || b.pixels.Rect.Dx() != width || b.pixels.Rect.Dy() != height {
		b.pixels = image.NewRGBA(image.Rect(0, 0, width, height))
	}
	density := float64(width) / math.Max(float64(b.Size().Width), 1)
	b.painter.Density = density
	b.painter.Paint(b.pixels, b.drawing, b.view.Enlarged(density))
	b.legend.rule(&b.painter, b.pixels, density)
	return b.pixels
}

func (b *board) Resize(s fyne.Size) {
	if s == b.Size() {
		return
	}
	b.BaseWidget.Resize(s)
	if b.fitted {
		b.fit()
	}
	b.changed()
}

func (b *board) set(v screen.View) {
	if b.view.Blank() {
		return
	}
	b.view, b.fitted = v, false
	b.changed()
}

func (b *board) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(b.raster) }

func (b *board) MinSize() fyne.Size { return fyne.NewSize(200, 160) }
