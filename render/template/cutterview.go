package template

import (
	"fmt"
	"math"

	"tipline/geometry"
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
	e.Drawing.Title = e.Say("cutterview.title", "name", w.Name)
	e.Drawing.Description = e.Say("cutterview.line")
	e.teethLeft(w)
	e.form()
	e.heel()
	e.circles()
	e.sightLines()
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

// teethLeft draws the teeth on both sides of the space the form stands in.
func (e *enlargement) teethLeft(w Wheel) {
	if w.Teeth == nil || w.Teeth.Form == "measured" {
		return
	}
	o := w.Teeth.Outline
	if w.Hand == "anticlockwise" {
		o = o.Mirror()
	}
	turn := w.Cut.Undercut
	if w.Cut.Undercut == 0 {
		turn = geometry.FullTurn / geometry.Angle(2*w.Teeth.Count)
	}
	centre := geometry.Point{X: w.Cut.SetOver, Y: -w.Cut.Height()}
	reach := math.Max(2.6*2*math.Pi/float64(w.Teeth.Count), 1.15*e.cut.Form.StockWidth/w.Teeth.TipRadius)
	sector, ok := sectorOf(o.Rotate(turn), math.Min(reach, 2.4), w.Teeth.RootRadius)
	if !ok {
		return
	}
	e.Closed(Stroke{render.LayerTeeth, "teeth", render.Thin, render.Black, render.Brass}, e.outlines([]geometry.Outline{sector.Move(centre)})...)
}

// sectorOf returns the part of a wheel's outline within reach radians of 12
// o'clock, closed by a line below the root circle; false when that is no part.
func sectorOf(o geometry.Outline, reach, root float64) (geometry.Outline, bool) {
	if o.Area() > 0 {
		o = o.Reverse()
	}
	inside := func(v geometry.Vertex) bool {
		return math.Abs(float64((geometry.Clock(v.Direction())).Normal())) < reach
	}
	start := -1
	for i := range o.Len() {
		if inside(o.Vertex(i)) && !inside(o.Vertex(i-1)) {
			start = i
		}
	}
	if start < 0 {
		return geometry.Outline{}, false
	}
	var vs []geometry.Vertex
	for i := start; inside(o.Vertex(i)) && len(vs) < o.Len(); i++ {
		vs = append(vs, o.Vertex(i))
	}
	vs[len(vs)-1].Bulge = 0
	depth := 0.96 * root
	right, left := vs[len(vs)-1].Direction(), vs[0].Direction()
	sweep := (left - right).Turn()
	vs = append(vs,
		geometry.Vertex{Point: geometry.Polar(depth, right), Bulge: math.Tan(float64(sweep) / 4)},
		geometry.Vertex{Point: geometry.Polar(depth, left)})
	sector, err := geometry.NewOutline(vs)
	return sector, err == nil
}

// setting dimensions the set-over, the infeed and the land.
func (e *enlargement) setting() {
	box := e.box()
	if e.cut.Undercut != 0 && e.cut.SetOver != 0 {
		y := box.Min.Y - sightPast - 4
		from, to := e.at(geometry.Point{}), e.at(geometry.Point{X: e.cut.SetOver})
		from.Y, to.Y = y, y
		text := e.Say("cutterview.set-over", "length", e.Style.Units.Fine(math.Abs(e.cut.SetOver)))
		if from.X > to.X {
			from, to = to, from
		}
		e.Add("teeth.undercut", render.Linear(from, to, -4, text)...)
		e.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "teeth.undercut", Pen: render.Centre, Ink: render.Blue},
			geometry.Line{From: geometry.Point{X: e.at(geometry.Point{X: e.cut.SetOver}).X, Y: box.Min.Y - sightPast - 10},
				To: geometry.Point{X: e.at(geometry.Point{X: e.cut.SetOver}).X, Y: box.Min.Y + 0.4*box.Height()}})
	}
	x := e.at(geometry.Point{X: -0.9 * sightPast / e.scale}).X
	e.Add("cutter", render.Linear(geometry.Point{X: x, Y: 0}, geometry.Point{X: x, Y: e.cut.Infeed * e.scale}, 0,
		e.Style.Units.Fine(e.cut.Infeed))...)
	e.call(geometry.Point{X: x, Y: e.cut.Infeed * e.scale}, "cutter", render.Blue, e.Say("cutterview.infeed", "length", e.Style.Units.Fine(e.cut.Infeed)))
	if e.cut.Land > 0 {
		front := geometry.Point{Y: -e.cut.Height() + math.Sqrt(math.Max(0, e.cut.TipRadius*e.cut.TipRadius-e.cut.SetOver*e.cut.SetOver))}
		e.call(e.at(front), "teeth.land", render.Blue, e.Say("cutterview.land", "length", e.Style.Units.Fine(e.cut.Land)))
	}
}
