package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/render"
)

// viewWidth is how wide the form is drawn, at most, in a view of the cutter.
const viewWidth = 90.0

// CutterView draws the form at depth over the teeth it leaves, enlarged by the
// greatest scale of ISO 5455 at which the form is no wider than 90 mm, with
// set-over, infeed, land and radii. ErrNothing if there is no form.
func CutterView(w Wheel, s Style) (*render.Drawing, error) {
	if w.Cut == nil {
		return nil, fmt.Errorf("cutter of %s: %w", w.ID, ErrNothing)
	}
	e := newEnlargement(w, s, viewScale(w.Cut.Form.StockWidth, viewWidth))
	e.Drawing.Title = e.Say("template.cutterview.title", "name", w.Name)
	e.Drawing.Description = e.Say("template.cutterview.line")
	e.teethLeft(w, sightPast)
	e.form()
	e.heel()
	e.circles()
	e.sightLines(true)
	e.radii()
	e.setting()
	e.drawCallouts()
	return e.Drawing, nil
}

// viewScale returns the greatest scale of ISO 5455 at which width is drawn no
// wider than limit.
func viewScale(width, limit float64) float64 {
	for _, k := range []float64{50, 20, 10, 5, 2} {
		if k*width <= limit {
			return k
		}
	}
	return 1
}

// teethLeft draws the teeth on both sides of the space the form stands in, as far
// as past millimetres of paper beyond the form.
func (e *enlargement) teethLeft(w Wheel, past float64) {
	if w.Teeth == nil || w.Teeth.Form == "measured" {
		return
	}
	o := w.Teeth.Outline
	if w.Hand == "anticlockwise" {
		o = o.Mirror()
	}
	turn := w.Cut.Undercut
	if w.Cut.Undercut == 0 && w.Teeth.Form != "pointed" {
		turn = geometry.FullTurn / geometry.Angle(2*w.Teeth.Count)
	}
	bounds, r := e.cut.Form.Edge.Bounds().Grow(past/e.scale), w.Teeth.TipRadius
	angle := func(x float64) geometry.Angle {
		return geometry.Angle(math.Asin(max(-1, min(1, (x-w.Cut.SetOver)/r))))
	}
	part, ok := rimPart(o.Rotate(turn), angle(bounds.Min.X), angle(bounds.Max.X), w.Teeth)
	if !ok {
		return
	}
	centre := geometry.Point{X: w.Cut.SetOver, Y: -w.Cut.Height()}
	e.Closed(Stroke{render.LayerTeeth, "teeth", render.Thin, render.Black, render.Brass}, e.outlines([]geometry.Outline{part.Move(centre)})...)
}

// rimPart returns the part of a wheel's outline between two angles clockwise from
// 12 o'clock, from root to root, closed by an arc below the root circle; false
// when there is none.
func rimPart(o geometry.Outline, from, to geometry.Angle, teeth *tooth.Wheel) (geometry.Outline, bool) {
	if o.Area() > 0 {
		o = o.Reverse()
	}
	vs := runBetween(o, from, to)
	deep := teeth.RootRadius + 0.35*(teeth.TipRadius-teeth.RootRadius)
	for len(vs) > 0 && vs[0].Norm() > deep {
		vs = vs[1:]
	}
	for len(vs) > 0 && vs[len(vs)-1].Norm() > deep {
		vs = vs[:len(vs)-1]
	}
	if len(vs) < 3 {
		return geometry.Outline{}, false
	}
	floor := max(0.5*teeth.RootRadius, teeth.RootRadius-0.8*(teeth.TipRadius-teeth.RootRadius))
	last, first := vs[len(vs)-1].Direction(), vs[0].Direction()
	vs[len(vs)-1].Bulge = 0
	vs = append(vs,
		geometry.Vertex{Point: geometry.Polar(floor, last), Bulge: math.Tan(float64((first - last).Turn()) / 4)},
		geometry.Vertex{Point: geometry.Polar(floor, first)})
	part, err := geometry.NewOutline(vs)
	return part, err == nil
}

// runBetween returns the vertices of a clockwise outline between two angles
// clockwise from 12 o'clock.
func runBetween(o geometry.Outline, from, to geometry.Angle) []geometry.Vertex {
	inside := func(i int) bool {
		a := geometry.Clock(o.Vertex(i).Direction()).Normal()
		return a >= from && a <= to
	}
	for start := range o.Len() {
		if !inside(start) || inside(start-1) {
			continue
		}
		var vs []geometry.Vertex
		for i := start; inside(i) && len(vs) < o.Len(); i++ {
			vs = append(vs, o.Vertex(i))
		}
		return vs
	}
	return nil
}

// setting dimensions the set-over, the infeed and the land.
func (e *enlargement) setting() {
	box := e.box()
	if e.cut.Undercut != 0 && e.cut.SetOver != 0 {
		y := box.Min.Y - sightPast - 4
		from, to := e.at(geometry.Point{}), e.at(geometry.Point{X: e.cut.SetOver})
		from.Y, to.Y = y, y
		text := e.Say("template.cutterview.set-over", "length", e.Style.Units.Fine(math.Abs(e.cut.SetOver)))
		if from.X > to.X {
			from, to = to, from
		}
		e.Add("teeth.undercut", render.Linear(from, to, -4, text)...)
		e.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "teeth.undercut", Pen: render.Centre, Ink: render.Blue},
			geometry.Line{From: geometry.Point{X: e.at(geometry.Point{X: e.cut.SetOver}).X, Y: box.Min.Y - sightPast - 10},
				To: geometry.Point{X: e.at(geometry.Point{X: e.cut.SetOver}).X, Y: box.Min.Y + 0.4*box.Height()}})
	}
	x := e.at(geometry.Point{X: -0.9 * sightPast / e.scale}).X
	e.Add("cutter", render.Linear(geometry.Point{X: x, Y: 0}, geometry.Point{X: x, Y: e.cut.Infeed * e.scale}, 0, "")...)
	e.call(geometry.Point{X: x, Y: e.cut.Infeed * e.scale}, "cutter", render.Blue, e.Say("template.cutterview.infeed", "length", e.Style.Units.Fine(e.cut.Infeed)))
	if e.cut.Land > 0 {
		front := geometry.Point{Y: -e.cut.Height() + math.Sqrt(math.Max(0, e.cut.TipRadius*e.cut.TipRadius-e.cut.SetOver*e.cut.SetOver))}
		e.call(e.at(front), "teeth.land", render.Blue, e.Say("template.cutterview.land", "length", e.Style.Units.Fine(e.cut.Land)))
	}
}
