package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
)

// Scales in which a grinding template may be drawn, ISO 5455 among them.
const (
	leastScale    = 0.1
	greatestScale = 200
)

// Grinding draws the grinding template that is laid on the rake face, as
// GrindingSide does.
func Grinding(w Wheel, s Style, scale float64) (*render.Drawing, error) {
	return GrindingSide(w, s, scale, RakeFace)
}

// GrindingSide draws the grinding template for a side of the bit at scale : 1,
// looking at the rake face with the cutting end down and the corner of the cutting
// end at the origin: the form on its stock, sighting lines along its reliefs with
// their angles, radii with their centres, what the grinding wheel's edge must get
// into, and the widths across the form. On a rake face without rake it also shows
// the heel and the tip and root circle at depth, which elsewhere lie in another
// plane. Scale runs from 0.1 to 200. ErrNothing if there is no form, or for the
// clearance face no clearance.
func GrindingSide(w Wheel, s Style, scale float64, side Side) (*render.Drawing, error) {
	laid, err := w.laid(side)
	if err != nil {
		return nil, fmt.Errorf("grinding template of %s: %w", w.ID, err)
	}
	if !(scale >= leastScale && scale <= greatestScale) {
		return nil, geometry.Between("scale", scale, leastScale, greatestScale, "template.scale")
	}
	e := newEnlargement(w, s, scale)
	e.lay(laid)
	if e.narrow() {
		e.notes.past = columnPastNarrow
	}
	e.Drawing.Title, e.Drawing.Description = w.sideTitle(side, s)
	e.stock()
	e.form()
	if e.share == 1 {
		e.heel()
		e.circles()
	}
	e.sightLines(!e.small())
	e.interrupt()
	if !e.small() {
		e.radii()
		e.hollows(w.WheelEdge)
		e.notes.draw(e.Board, e.box())
		e.fullSize()
	}
	e.widths()
	return e.Drawing, nil
}

// Lettered reports whether a grinding template for that side at scale : 1 is large enough
// for its angles, radii and notes to be written on it.
func Lettered(w Wheel, side Side, scale float64) bool {
	laid, err := w.laid(side)
	if err != nil {
		return false
	}
	e := &enlargement{cut: w.Cut, scale: scale, mirror: w.Mirrored()}
	e.lay(laid)
	return !e.small()
}

// small reports whether the form is too small on paper to write its angles on.
func (e *enlargement) small() bool { return e.box().Width() < 30 }

// narrow reports whether the form, though lettered, is as small on paper as one that is
// enlarged for small sheets.
func (e *enlargement) narrow() bool { return !e.small() && e.box().Width() < 42 }

// stock draws the sides of the bit the form is ground from, and its width.
func (e *enlargement) stock() {
	box, q, f := e.box(), geometry.Quantity("cutter.stock_width"), e.cut.Form
	if f.StockWidth <= 0 {
		return
	}
	side := Stroke{Layer: render.LayerStock, Quantity: q, Pen: render.Centre, Ink: render.Grey}
	left, right := e.at(geometry.Point{X: f.StockFront}), e.at(geometry.Point{X: f.StockFront + f.StockWidth})
	if left.X > right.X {
		left, right = right, left
	}
	for _, x := range []float64{left.X, right.X} {
		e.Line(side, geometry.Line{From: geometry.Point{X: x, Y: box.Min.Y - 4}, To: geometry.Point{X: x, Y: box.Max.Y + 4}})
	}
	if e.small() {
		return
	}
	up := box.Max.Y
	e.Add(q, render.Linear(geometry.Point{X: left.X, Y: up}, geometry.Point{X: right.X, Y: up}, e.sightPast()+12,
		e.Say("template.grinding.stock", "width", e.Style.Units.Both(f.StockWidth)))...)
}

// heel draws the section at the stock's thickness, dashed, and says what it is.
func (e *enlargement) heel() {
	if e.relief == nil || len(e.relief.Heel) == 0 {
		return
	}
	placed := e.outlines(e.relief.Heel)
	e.Closed(Stroke{Layer: render.LayerHeel, Quantity: "cutter.clearance", Pen: render.Hidden}, placed...)
	at := placed[0].Bounds()
	x := at.Max.X
	if e.mirror {
		x = at.Min.X
	}
	e.call(geometry.Point{X: x, Y: at.Min.Y + 0.72*at.Height()}, "cutter.clearance", render.Grey, e.Say("template.grinding.heel"))
}

// circles draws the tip circle and the root circle as they lie at depth.
func (e *enlargement) circles() {
	for _, c := range []struct {
		radius float64
		q      geometry.Quantity
		key    string
	}{{e.cut.TipRadius, "teeth.tip_diameter", "template.grinding.tip-circle"}, {e.cut.RootRadius, "teeth.root_diameter", "template.grinding.root-circle"}} {
		left, right, ok := e.circleAtDepth(c.radius, c.q)
		if !ok {
			continue
		}
		end := left
		if e.mirror {
			end = right
		}
		e.call(end, c.q, render.Blue, e.Say(c.key))
	}
}

// fullSize draws the bare form at full size beside the enlargement, to hold the
// bit against, as high in the right column as stands clear of the notes.
func (e *enlargement) fullSize() {
	o, err := e.cut.Form.Outline()
	if err != nil || e.scale < 2 {
		return
	}
	small := *e
	small.scale = 1
	placed := small.outlines([]geometry.Outline{o})[0]
	bounds := placed.Bounds()
	title := render.Text{Height: 3.5, Align: render.Middle, Bold: true, String: "1 : 1"}
	box := geometry.Box{Max: geometry.Point{X: max(bounds.Width(), title.Width()), Y: bounds.Height() + 2.5 + title.Height}}
	corner := e.clearCorner(box)
	middle := corner.X + box.Width()/2
	move := geometry.Point{X: middle - bounds.Centre().X, Y: corner.Y - bounds.Min.Y}
	e.Closed(Stroke{render.LayerForm, "cutter", render.Thin, render.Black, render.Steel}, placed.Move(move))
	title.At = geometry.Point{X: middle, Y: corner.Y + bounds.Height() + 2.5}
	e.Write(Stroke{Layer: render.LayerText, Quantity: "cutter", Ink: render.Black}, title)
}

// clearCorner returns where the lower left corner of a box goes in the right
// column: at its top, or lower down, clear of every text; above it all if nowhere, or
// right of a narrow form.
func (e *enlargement) clearCorner(size geometry.Box) geometry.Point {
	top := e.box().Max.Y + e.sightPast()
	at := geometry.Point{X: e.box().Max.X + e.notes.past + 6, Y: top - size.Height()}
	for ; at.Y > e.box().Min.Y; at.Y -= 2 {
		if e.clear(geometry.Box{Min: at, Max: at.Add(size.Max)}.Grow(1.5)) {
			return at
		}
	}
	if e.narrow() {
		return geometry.Point{X: e.Drawing.Bounds().Max.X + widthsGap, Y: top - size.Height()}
	}
	at.Y = top + 8
	return at
}

// clear reports whether no text stands in a box.
func (e *enlargement) clear(box geometry.Box) bool {
	for _, it := range e.Drawing.Items {
		if it.Text != nil && it.Text.Bounds().Touches(box) {
			return false
		}
	}
	return true
}

// depths returns round depths, in the maker's unit, that reach past the infeed but
// not past the drawing of the form; or nearly to the infeed where the form ends so
// soon that rounder ones would be few.
func (e *enlargement) depths() []float64 {
	unit := 1.0
	if e.Style.Units.Unit == measure.Inch {
		unit = measure.MMPerInch
	}
	steps := []float64{0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10, 20, 50}
	n := 0
	for n < len(steps)-1 && steps[n]*unit*widthsGiven < 1.1*e.cut.Infeed {
		n++
	}
	if n > 0 && steps[n]*unit*(widthsGiven-1) >= e.cut.Form.Top/e.share && steps[n-1]*unit*widthsGiven >= 0.75*e.cut.Infeed {
		n--
	}
	var depths []float64
	for i := 1; i <= widthsGiven; i++ {
		if d := steps[n] * unit * float64(i); d < e.cut.Form.Top/e.share {
			depths = append(depths, d)
		}
	}
	return depths
}
