package template

import (
	"tipline/geometry"
	"tipline/render"
)

// The setting card's picture: the room that it has on the card, how far the teeth and the
// circles run on past the form, and how much of the rim is shown below the teeth, in
// heights of a tooth.
var settingField = geometry.Point{X: 2*settingWide + settingApart, Y: 52}

const (
	settingMore = 18.0 // height it has besides where the cutter is set over, which takes more steps beside it
	settingPast = 8.0
	settingRim  = 0.3
	settingTop  = 1.4 // how high the form is shown at most, in depths of the cut, where its stock is not wider
)

// settingPicture draws the form at depth over the teeth, with what the card sets it to, at
// the greatest scale of ISO 5455 for which there is room, and says the scale.
func settingPicture(w Wheel, s Style) *render.Drawing {
	var d *render.Drawing
	high := settingField.Y
	if w.Cut.SetOver != 0 {
		high += settingMore
	}
	for _, scale := range viewScales {
		d = formAtDepth(w, s, scale)
		if of := d.Bounds(); of.Width() <= settingField.X && of.Height() <= high {
			break
		}
	}
	return d
}

// formAtDepth draws the form at depth over the teeth at a scale, with its set-over, its
// infeed and its land.
func formAtDepth(w Wheel, s Style, scale float64) *render.Drawing {
	e := newEnlargement(w, s, scale)
	e.past, e.rim, e.notes.past = settingPast, settingRim, settingPast+2
	e.lower(max(settingTop*w.Cut.Infeed, w.Cut.Form.StockWidth/2))
	e.teethLeft(w, settingPast)
	e.form()
	e.circles()
	e.setting(w)
	e.notes.draw(e.Board, e.box())
	e.sayScale()
	return e.Drawing
}

// sayScale says the scale at the foot of the callouts, or where it would touch one, below
// the drawing.
func (e *enlargement) sayScale() {
	of, column := e.Drawing.Bounds(), e.box().Max.X+e.notes.past
	said := render.Text{Height: 2.5, Bold: true, String: e.Say("template.drilling.enlarged", "scale", scaleText(e.scale, e.Style))}
	said.At = geometry.Point{X: column, Y: of.Min.Y}
	if of.Max.X-column < of.Width()/4 { // the callouts stand on the left
		said.At.X, said.Align = e.box().Min.X-e.notes.past, render.Right
	}
	if e.cut.SetOver != 0 || !e.clear(said.Bounds().Grow(0.8)) {
		said.At, said.Align = geometry.Point{X: of.Centre().X, Y: of.Min.Y - 2*said.Height}, render.Middle
	}
	e.Write(Stroke{Layer: render.LayerText, Quantity: "cutter", Ink: render.Black}, said)
}

// lower has the form drawn no higher than that above its cutting end.
func (e *enlargement) lower(top float64) {
	of, f := e.cut.Form.Edge.Bounds(), e.cut.Form
	if top >= f.Top || top <= of.Min.Y {
		return
	}
	of.Max.Y = top
	var below []geometry.Vertex
	for i := range f.Edge.Len() {
		for _, part := range Split(f.Edge.Segment(i), Edges(of)) {
			if Same(part.From, part.To) || part.At(0.5).Y > top {
				continue
			}
			if n := len(below); n == 0 {
				below = append(below, geometry.Vertex{Point: part.From})
			} else if !Same(below[n-1].Point, part.From) {
				return // it bulges above that, and is drawn whole
			}
			last := &below[len(below)-1]
			last.Bulge, last.Quantity = part.Bulge, part.Quantity
			below = append(below, geometry.Vertex{Point: part.To})
		}
	}
	if edge, err := geometry.NewChain(below); err == nil {
		cut := *e.cut
		cut.Form.Edge, cut.Form.Top = edge, top
		e.cut = &cut
	}
}
