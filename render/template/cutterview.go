package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// viewWidth is how wide the form is drawn, at most, in a view of the cutter, and
// rimShown how much of the rim below the teeth, in heights of a tooth.
const (
	viewWidth = 90.0
	rimShown  = 0.8
)

// CutterView draws the form at depth over the teeth it leaves, enlarged by the
// greatest scale of ISO 5455 at which the form is no wider than 90 mm, with
// set-over, infeed, land and radii; over it the bit as it was measured, with what
// that leaves and how far the flank then strays; under it the bit's photograph.
// Where a heel that is too thick fouls first is marked. ErrNothing if there is no
// form.
func CutterView(w Wheel, s Style) (*render.Drawing, error) {
	if w.Cut == nil {
		return nil, fmt.Errorf("cutter of %s: %w", w.ID, ErrNothing)
	}
	e := newView(w, s)
	e.Drawing.Title = e.Say("template.cutterview.title", "name", w.title())
	e.Drawing.Description = e.Say("template.cutterview.line")
	e.photograph(w)
	e.teethLeft(w, sightPast)
	e.form()
	e.heel()
	e.circles()
	e.sightLines(true)
	e.radii()
	e.setting(w)
	e.heelFoul()
	if w.Ground != nil {
		e.bit(w.Ground)
		e.deviation(w.Ground)
	}
	e.notes.draw(e.Board, e.box())
	return e.Drawing, nil
}

// photograph lays the bit's photograph under the drawing, which then has no fills.
func (e *enlargement) photograph(w Wheel) {
	if w.Photograph == nil {
		return
	}
	placed := w.Photograph.Placed(geometry.Point{}, e.scale, 0)
	e.Add("cutter.bit.photograph", render.Item{Layer: render.LayerPhotograph, Picture: &placed})
	e.bare = true
}

// newView returns the enlargement that a view of the cutter is drawn in.
func newView(w Wheel, s Style) *enlargement {
	width := max(w.Cut.Form.StockWidth, w.Cut.Form.Edge.Bounds().Width())
	return newEnlargement(w, s, viewScale(width, viewWidth))
}

// viewScales are the enlargements of ISO 5455, the greatest first, and full size.
var viewScales = []float64{50, 20, 10, 5, 2, 1}

// viewScale returns the greatest scale of ISO 5455 at which width is drawn no
// wider than limit.
func viewScale(width, limit float64) float64 {
	for _, k := range viewScales {
		if k*width <= limit {
			return k
		}
	}
	return 1
}

// teethLeft draws the teeth on both sides of the space the form stands in, as far
// as past millimetres of paper beyond the form. Where the space has two sides alike they
// end in the middle of the next spaces: no sliver of a third tooth is left.
func (e *enlargement) teethLeft(w Wheel, past float64) {
	if w.Teeth == nil || w.Teeth.Form == "measured" {
		return
	}
	o := w.Teeth.Outline
	if w.Hand == "anticlockwise" {
		o = o.Mirror()
	}
	turn := w.Cut.Undercut
	centre := geometry.Point{X: w.Cut.SetOver, Y: -w.Cut.Height()}
	box := e.cut.Form.Edge.Bounds().Grow(past / e.scale)
	if w.Cut.Undercut == 0 && w.Teeth.Form != "pointed" && w.Teeth.Form != "ratchet" {
		turn = geometry.FullTurn / geometry.Angle(2*w.Teeth.Count)
		next := geometry.Polar(w.Teeth.RootRadius, 2*turn).Y
		box.Min.X, box.Max.X = max(box.Min.X, centre.X-next), min(box.Max.X, centre.X+next)
	}
	box.Max.Y = w.Teeth.TipRadius + centre.Y + 1
	box.Min.Y = -e.rim * (w.Teeth.TipRadius - w.Teeth.RootRadius)
	if part, ok := ClipOutline(o.Rotate(turn).Move(centre), box); ok {
		e.Closed(Stroke{render.LayerTeeth, "teeth", render.Thin, render.Black, e.filled(render.Brass)}, e.outlines([]geometry.Outline{part})...)
	}
}

// setting dimensions the set-over below the teeth, and says infeed and land.
func (e *enlargement) setting(w Wheel) {
	fine := e.Style.Units.Fine
	if e.cut.SetOver != 0 {
		e.setOver(e.setOverDown(w), e.Say("template.cutterview.set-over", "length", fine(w.Cut.SetOver)))
	}
	low := geometry.Point{X: e.infeedAcross()}
	high := geometry.Point{X: low.X, Y: e.cut.Infeed * e.scale}
	e.Add("cutter", render.Linear(low, high, 0, "")...)
	e.call(high, "cutter", render.Blue, e.Say("template.cutterview.infeed", "length", fine(e.cut.Infeed)))
	if e.cut.Land > 0 {
		high := math.Sqrt(max(0, e.cut.TipRadius*e.cut.TipRadius-e.cut.SetOver*e.cut.SetOver))
		e.call(e.at(geometry.Point{Y: high - e.cut.Height()}), "teeth.land", render.Blue,
			e.Say("template.cutterview.land", "length", fine(e.cut.Land)))
	}
}

// setOverDown returns the height on the paper of the set-over's dimension.
func (e *enlargement) setOverDown(w Wheel) float64 {
	below := e.box().Min.Y - e.runsOn()
	if w.Teeth != nil {
		below = min(below, -e.rim*(w.Teeth.TipRadius-w.Teeth.RootRadius)*e.scale)
	}
	return below - 7
}

// infeedAcross returns where across the paper the infeed's dimension stands: in
// front of the form.
func (e *enlargement) infeedAcross() float64 {
	front := min(0, e.cut.Form.Edge.Bounds().Min.X)
	return e.at(geometry.Point{X: front - 0.8*e.runsOn()/e.scale}).X
}

// setOver draws the wheel's centre line and dimensions the set-over at a height
// with the text.
func (e *enlargement) setOver(y float64, text string) {
	q := geometry.Quantity("teeth.undercut")
	centre := e.at(geometry.Point{X: e.cut.SetOver})
	e.Line(Stroke{Layer: render.LayerCentreLines, Quantity: q, Pen: render.Centre, Ink: render.Blue},
		geometry.Line{From: geometry.Point{X: centre.X, Y: y - 3}, To: geometry.Point{X: centre.X, Y: e.box().Max.Y + e.runsOn()}},
		geometry.Line{From: geometry.Point{Y: y - 3}, To: geometry.Point{Y: e.box().Min.Y - e.runsOn()}})
	from, to := geometry.Point{X: min(0, centre.X), Y: y}, geometry.Point{X: max(0, centre.X), Y: y}
	e.Add(q, render.Linear(from, to, 0, text)...)
}
