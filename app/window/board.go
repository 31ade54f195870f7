package window

import (
	"image"
	"math"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
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
	view    screen.View // in the toolkit's units, of which a screen may have several pixels
	fitted  bool
	key     string // of the place the drawing belongs to
	pixels  *image.RGBA
	raster  *canvas.Raster
	legend  *legend
	pressed func(screen.Found)
	others  func(*fyne.KeyEvent) // takes the keys that are not the drawing's

	grips        *grips
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
	b := &board{painter: screen.Painter{Theme: screen.Light()}, legend: l, pressed: pressed, others: others, fitted: true, grips: &grips{}, picked: func(geometry.Point) bool { return false }}
	b.raster = canvas.NewRaster(b.paint)
	b.ExtendBaseWidget(b)
	return b
}

// show sets the drawing; one of another place is fitted anew. A still one keeps its
// view, however large it has become.
func (b *board) show(key string, d *render.Drawing, lit screen.Lit, page geometry.Box, still bool) {
	fresh := b.drawing != d && !still
	if key != b.key {
		b.key, b.fitted, fresh = key, true, true
		b.grips.letGo()
	}
	b.drawing, b.painter.Lit, b.painter.Sheet, b.painter.Printed = d, lit, page, page.Width() > 0
	if b.fitted && fresh || b.view.Blank() {
		b.fit()
	}
	b.changed()
}

// fit shows the whole drawing.
func (b *board) fit() {
	b.fitted = true
	s := b.Size()
	if b.drawing == nil || s.Width < 1 || s.Height < 1 {
		b.view = screen.View{}
		return
	}
	room := max(s.Height-legendHeight, 1)
	bounds := b.painter.Sheet
	if bounds.Width() == 0 {
		bounds = b.drawing.Bounds()
	}
	b.view = screen.Fit(bounds, float64(s.Width), float64(room), margin)
}

// changed repaints.
func (b *board) changed() {
	b.legend.show(b.drawing, b.view, b.fitted)
	s := b.Size()
	at, ok := b.grips.place(b.view, b.painter.Lit.Quantity)
	if !ok {
		at, ok = screen.Place(b.drawing, b.view, b.painter.Lit, float64(s.Width), float64(s.Height))
	}
	b.grips.lay(b.view, s)
	b.legend.tag.show(at, ok)
	b.raster.Refresh()
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

func (b *board) Dragged(e *fyne.DragEvent) {
	b.moved = true
	if b.grips.held() {
		b.grips.drag(b.view.ToDrawing(pixelAt(e.Position)))
		return
	}
	if b.grips.spent {
		return
	}
	b.set(b.view.Pan(float64(e.Dragged.DX), float64(e.Dragged.DY)))
}

func (b *board) DragEnd() { b.grips.release() }

func pixelAt(at fyne.Position) screen.Pixel { return screen.Pixel{X: float64(at.X), Y: float64(at.Y)} }

// notch is how much the wheel scrolls by one notch, and closer how much nearer
// that brings the drawing.
const (
	notch  = 25
	closer = 1.2
)

func (b *board) Scrolled(e *fyne.ScrollEvent) {
	if e.Scrolled.DY != 0 {
		b.zoom(math.Pow(closer, float64(e.Scrolled.DY)/notch), e.Position)
	}
}

func (b *board) zoom(factor float64, about fyne.Position) {
	if !b.view.Blank() {
		b.set(b.view.Zoom(factor, pixelAt(about)))
	}
}

func (b *board) middle() fyne.Position { return fyne.NewPos(b.Size().Width/2, b.Size().Height/2) }

func (b *board) MouseDown(e *desktop.MouseEvent) {
	b.moved = false
	if e.Button == desktop.MouseButtonPrimary {
		b.grips.take(b.view, pixelAt(e.Position))
	}
}

// The pointer over the drawing tells what it would take hold of.
func (b *board) MouseIn(e *desktop.MouseEvent)    { b.MouseMoved(e) }
func (b *board) MouseMoved(e *desktop.MouseEvent) { b.grips.hover(b.view, pixelAt(e.Position)) }
func (b *board) MouseOut()                        { b.grips.leave() }

// Cursor is a hand over a handle, and a cross where points are picked.
func (b *board) Cursor() desktop.Cursor {
	switch {
	case b.legend.desk.Prompt() != "":
		return desktop.CrosshairCursor
	case b.grips.over != nil || b.grips.held():
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

func (b *board) MouseUp(e *desktop.MouseEvent) {
	if !b.moved && e.Button == desktop.MouseButtonPrimary {
		b.press(e.Position)
		b.grips.release()
	}
}

// press tells which line lies at a place, or whose handle.
func (b *board) press(at fyne.Position) {
	p := pixelAt(at)
	if !b.view.Blank() && b.picked(b.view.ToDrawing(p)) {
		return
	}
	if h := b.grips.at(b.view, p); h != nil {
		b.pressed(screen.Found{Part: b.painter.Lit.Part, Quantity: h.Quantity})
		return
	}
	if found, ok := screen.Find(b.drawing, b.view, p, reach); ok {
		b.pressed(found)
	}
}

// Tapped is there so that DoubleTapped is told; MouseUp does not wait for a
// second tap.
func (b *board) Tapped(*fyne.PointEvent) {}

func (b *board) DoubleTapped(*fyne.PointEvent) {
	b.fit()
	b.changed()
}

func (b *board) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(b.raster) }

func (b *board) MinSize() fyne.Size { return fyne.NewSize(200, 160) }
