package window

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/geometry"
	"tipline/render/screen"
	"tipline/render/template"
)

// grips are the handles on the drawing: a small square for each dimension that can
// be dragged, and a disc for each point picked on a photograph. A handle is a dot until
// the pointer comes near, and one that would stand on another is not shown: of those the
// one that is held, lit or pointed at is.
type grips struct {
	*fyne.Container
	desk    *desk.Desk
	handles []template.Handle
	picked  []geometry.Point
	squares []*canvas.Rectangle
	grip    *template.Handle  // that is held
	over    *template.Handle  // that the pointer is over
	lit     geometry.Quantity // whose field is lit
	pointer *screen.Pixel     // nil while it is elsewhere
	shown   []int             // the places of the handles that are
	seen    []screen.Pixel    // where they are
	drawn   []screen.Pixel    // along the dimension that is drawn
	spent   bool              // what was held was let go of while the button is still down
}

// The side of a handle's square, or of its dot while the pointer is no nearer than
// gripNear; how near to its middle the pointer takes hold; and how near another handle
// may stand.
const (
	gripSize  = 9
	dotSize   = 6
	gripNear  = 70
	gripReach = 9
	gripApart = 11
)

func newGrips(d *desk.Desk) *grips {
	return &grips{desk: d, Container: &fyne.Container{}}
}

func (g *grips) show(handles []template.Handle, picked []geometry.Point) {
	g.handles, g.picked, g.over, g.shown = handles, picked, nil, nil
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
func (g *grips) lay(v screen.View, s fyne.Size, lit geometry.Quantity) {
	if g.Container == nil {
		return
	}
	g.Objects, g.lit, g.drawn = nil, lit, nil
	if g.thin(v); v.Blank() {
		g.Refresh()
		return
	}
	g.span(v)
	for k, i := range g.shown {
		at, full := g.seen[k], g.first(i)
		size := float32(gripSize)
		if !full && !near(g.pointer, at) {
			size = dotSize
		}
		g.mark(i, at, s, size, full)
	}
	for i, p := range g.picked {
		g.mark(len(g.handles)+i, v.ToPixel(p), s, gripSize, true)
		g.squares[len(g.handles)+i].CornerRadius = gripSize / 2
	}
	g.Refresh()
}

// span draws the dimension of the handle that is held, or else pointed at, or else lit.
func (g *grips) span(v screen.View) {
	h := g.grip
	if h == nil {
		h = g.over
	}
	for i := range g.handles {
		if h == nil && g.handles[i].Quantity == g.lit {
			h = &g.handles[i]
		}
	}
	if h == nil {
		return
	}
	for share := 0.0; share <= 1; share += 0.125 {
		g.drawn = append(g.drawn, v.ToPixel(h.Span[0].Toward(h.Span[1], share)))
	}
	from, to := v.ToPixel(h.Span[0]), v.ToPixel(h.Span[1])
	aside := func(p screen.Pixel) screen.Pixel { return screen.Pixel{X: p.X + frameWidth, Y: p.Y + frameWidth} }
	g.Objects = append(g.Objects, spanOf(aside(from), aside(to))...)
}

// taken returns what a flag is not to cover: the handles, and the dimension.
func (g *grips) taken() []screen.Pixel { return slices.Concat(g.seen, g.drawn) }

// first reports whether a handle is shown before those about it.
func (g *grips) first(i int) bool {
	q := g.handles[i].Quantity
	return g.grip != nil && g.grip.Quantity == q || g.over != nil && g.over.Quantity == q || q == g.lit
}

// thin chooses which handles are shown: none that stands on another.
func (g *grips) thin(v screen.View) {
	g.shown, g.seen = g.shown[:0], g.seen[:0]
	for _, first := range []bool{true, false} {
		for i, h := range g.handles {
			if v.Blank() || g.first(i) != first {
				continue
			}
			if at := v.ToPixel(h.At); first || g.clear(at) {
				g.shown, g.seen = append(g.shown, i), append(g.seen, at)
			}
		}
	}
}

func (g *grips) clear(at screen.Pixel) bool {
	for _, other := range g.seen {
		if apart(at, other) < gripApart {
			return false
		}
	}
	return true
}

// mark puts the i-th square at a pixel.
func (g *grips) mark(i int, at screen.Pixel, s fyne.Size, size float32, full bool) {
	for len(g.squares) <= i {
		r := canvas.NewRectangle(paper)
		r.StrokeColor, r.StrokeWidth = light.blue, 1.4
		g.squares = append(g.squares, r)
	}
	x, y := float32(at.X), float32(at.Y)
	if x < gripSize || y < gripSize || x > s.Width-gripSize || y > s.Height-gripSize {
		return
	}
	r := g.squares[i]
	r.CornerRadius, r.FillColor = 1.5, paper
	if full {
		r.FillColor = light.blue
	}
	put(r, x-size/2+frameWidth, y-size/2+frameWidth, size, size)
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

// at returns the handle at a pixel, of those that are shown and the nearest of several;
// nil for none.
func (g *grips) at(p screen.Pixel) *template.Handle {
	var best *template.Handle
	nearest := float64(gripReach)
	for k, i := range g.shown {
		if far := apart(g.seen[k], p); far <= nearest {
			best, nearest = &g.handles[i], far
		}
	}
	return best
}

func (g *grips) held() bool { return g.grip != nil }

// take takes hold of the handle at a pixel, if there is one.
func (g *grips) take(p screen.Pixel) { g.grip, g.spent = g.at(p), false }

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

// hover notes where the pointer is, and which handle it is over. A move that changes
// nothing of what is shown lays nothing.
func (g *grips) hover(v screen.View, p screen.Pixel) { g.aim(v, g.at(p), &p) }

// leave notes that the pointer is elsewhere.
func (g *grips) leave(v screen.View) { g.aim(v, nil, nil) }

func (g *grips) aim(v screen.View, over *template.Handle, pointer *screen.Pixel) {
	same := over == g.over
	for _, at := range g.seen {
		same = same && near(g.pointer, at) == near(pointer, at)
	}
	if g.over, g.pointer = over, pointer; !same && g.Container != nil {
		g.lay(v, g.Size(), g.lit)
	}
}

// near reports whether the pointer is so near to a handle that it is shown in full.
func near(pointer *screen.Pixel, at screen.Pixel) bool {
	return pointer != nil && apart(*pointer, at) <= gripNear
}
