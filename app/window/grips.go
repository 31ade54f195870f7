package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/geometry"
	"tipline/render/screen"
	"tipline/render/template"
)

// grips are the handles on the drawing: a small square for each dimension that can
// be dragged, and a disc for each point picked on a photograph.
type grips struct {
	*fyne.Container
	desk    *desk.Desk
	handles []template.Handle
	picked  []geometry.Point
	squares []*canvas.Rectangle
	grip    *template.Handle // that is held
	over    *template.Handle // that the pointer is over
	spent   bool             // what was held was let go of while the button is still down
}

// The side of a handle's square, and how near to its middle the pointer takes
// hold.
const (
	gripSize  = 9
	gripReach = 9
)

func newGrips(d *desk.Desk) *grips {
	return &grips{desk: d, Container: &fyne.Container{}}
}

func (g *grips) show(handles []template.Handle, picked []geometry.Point) {
	g.handles, g.picked, g.over = handles, picked, nil
	if g.grip == nil {
		return
	}
	for i, h := range handles {
		if h.Quantity == g.grip.Quantity {
			g.grip = &handles[i]
		}
	}
}

// lay puts the squares where their handles are seen; one beyond the drawing's edge
// is not.
func (g *grips) lay(v screen.View, s fyne.Size) {
	if g.Container == nil {
		return
	}
	g.Objects = nil
	if v.Blank() {
		g.Refresh()
		return
	}
	for i, h := range g.handles {
		held := g.grip != nil && g.grip.Quantity == h.Quantity
		g.mark(i, v.ToPixel(h.At), s, 1.5, held || g.over != nil && g.over.Quantity == h.Quantity)
	}
	for i, p := range g.picked {
		g.mark(len(g.handles)+i, v.ToPixel(p), s, gripSize/2, true)
	}
	g.Refresh()
}

// mark puts the i-th square at a pixel.
func (g *grips) mark(i int, at screen.Pixel, s fyne.Size, corner float32, full bool) {
	for len(g.squares) <= i {
		r := canvas.NewRectangle(paper)
		r.StrokeColor, r.StrokeWidth = blue, 1.4
		g.squares = append(g.squares, r)
	}
	x, y := float32(at.X), float32(at.Y)
	if x < gripSize || y < gripSize || x > s.Width-gripSize || y > s.Height-gripSize {
		return
	}
	r := g.squares[i]
	r.CornerRadius, r.FillColor = corner, paper
	if full {
		r.FillColor = blue
	}
	put(r, x-gripSize/2.0+frameWidth, y-gripSize/2.0+frameWidth, gripSize, gripSize)
	g.Objects = append(g.Objects, r)
}

// place returns where the handle of a field is seen.
func (g *grips) place(v screen.View, q geometry.Quantity) (screen.Pixel, bool) {
	for _, h := range g.handles {
		if h.Quantity == q && q != "" && !v.Blank() {
			return v.ToPixel(h.At), true
		}
	}
	return screen.Pixel{}, false
}

// at returns the handle at a pixel, the nearest of several; nil for none.
func (g *grips) at(v screen.View, p screen.Pixel) *template.Handle {
	var best *template.Handle
	nearest := float64(gripReach)
	for i := range g.handles {
		if v.Blank() {
			break
		}
		at := v.ToPixel(g.handles[i].At)
		if far := (geometry.Point{X: at.X - p.X, Y: at.Y - p.Y}).Norm(); far <= nearest {
			best, nearest = &g.handles[i], far
		}
	}
	return best
}

func (g *grips) held() bool { return g.grip != nil }

// take takes hold of the handle at a pixel, if there is one.
func (g *grips) take(v screen.View, p screen.Pixel) { g.grip, g.spent = g.at(v, p), false }

// drag drags what is held to a place of the drawing.
func (g *grips) drag(to geometry.Point) { g.desk.Drag(*g.grip, to) }

// release lets go of what is held and keeps what was dragged.
func (g *grips) release() {
	if g.grip != nil {
		g.grip = nil
		g.desk.Drop()
	}
}

// letGo lets go of what is held; the rest of the drag does nothing.
func (g *grips) letGo() {
	g.spent = g.grip != nil
	g.grip = nil
}

// hover notes which handle the pointer is over.
func (g *grips) hover(v screen.View, p screen.Pixel) {
	now := g.at(v, p)
	same := now == g.over || now != nil && g.over != nil && now.Quantity == g.over.Quantity
	g.over = now
	if !same {
		g.lay(v, g.Size())
	}
}

func (g *grips) leave() { g.over = nil }
