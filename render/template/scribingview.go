package template

import (
	"tipline/geometry"
	"tipline/render"
)

// How large the window of a scribing card is drawn, in millimetres of paper.
const (
	scribeWide = 72.0
	scribeHigh = 92.0
)

// scribingView draws the window after arm 0 with both its arms, and each setting as
// the span it is, with its letter.
func scribingView(w Wheel, s Style, steps []scribeStep) *render.Drawing {
	lay := w.Crossing
	b := NewBoard(w.ID, s)
	tip := w.Teeth.TipRadius
	box := lay.Windows[0].Outline.Bounds().With(geometry.Point{}).
		With(onArm(tip, lay.Arms[0])).With(onArm(tip, lay.Arms[1])).With(geometry.Polar(lay.HubRadius, geometry.Clock(lay.Arms[0].Angle-0.5)))
	k := min(scribeWide/box.Width(), scribeHigh/box.Height())
	v := windowView{b, k, geometry.Box{Min: box.Min.Times(k), Max: box.Max.Times(k)}.Grow(4)}
	v.wheel(w)
	for _, step := range steps {
		for _, setting := range step.settings {
			if setting.from != setting.to {
				v.span(setting)
			}
		}
	}
	return b.Drawing
}

// windowView draws a wheel's layout enlarged k times, within a frame.
type windowView struct {
	*Board
	k     float64
	frame geometry.Box
}

// wheel draws the circles, tip lines and sides round the window, and the window.
func (v windowView) wheel(w Wheel) {
	lay, o := w.Crossing, geometry.Point{}
	from, to := lay.Arms[0].Angle, lay.Arms[1].Angle
	thin := func(q geometry.Quantity) Stroke {
		return Stroke{Layer: render.LayerDimensions, Quantity: q, Pen: render.Thin, Ink: render.Blue}
	}
	past := geometry.Angle(0.12)
	for _, c := range []struct {
		r float64
		q geometry.Quantity
	}{{w.Teeth.TipRadius, "teeth"}, {lay.RimRadius, "crossing.rim"}} {
		v.Arc(thin(c.q), geometry.Arc{Centre: o, Radius: v.k * c.r, Start: geometry.Clock(to + past), Sweep: to - from + 2*past})
	}
	v.Circle(thin("crossing.hub"), o, v.k*lay.HubRadius)
	cross(v.Board, Stroke{Layer: render.LayerDimensions, Quantity: "bore", Pen: render.Hair}, o, 0, 1.5)
	for _, arm := range lay.Arms[:2] {
		line := geometry.Line{From: o, To: onArm(v.k*w.Teeth.TipRadius+5, arm)}
		v.Line(Stroke{Layer: render.LayerDimensions, Quantity: "crossing.arms", Pen: render.Centre, Ink: render.Blue}, line)
	}
	v.Closed(Stroke{Layer: render.LayerDimensions, Quantity: "crossing", Pen: render.Visible}, lay.Windows[0].Outline.Scale(v.k))
	v.far(scribed(lay, len(lay.Windows)-1).before)
	v.far(scribed(lay, 1%len(lay.Windows)).after)
}

// far draws the far side of an arm, of which the window itself is not drawn.
func (v windowView) far(s scribedSide) {
	for _, piece := range []geometry.Segment{s.atRim, s.side, s.atHub} {
		if piece != (geometry.Segment{}) {
			v.Open(Stroke{Layer: render.LayerDimensions, Quantity: "crossing", Pen: render.Thin}, geometry.ChainOf(piece).Scale(v.k))
		}
	}
}

// span draws a setting from foot to foot, as far as it lies in the frame, and its
// letter where there is room.
func (v windowView) span(s scribeSetting) {
	from, to := s.from.Times(v.k), s.to.Times(v.k)
	stroke := Stroke{Layer: render.LayerDimensions, Quantity: s.quantity, Pen: render.Hair, Ink: render.Blue}
	visible := false
	for _, part := range Split(geometry.Line{From: from, To: to}.Segment(), Edges(v.frame)) {
		if v.frame.Contains(part.At(0.5)) {
			v.Line(stroke, geometry.Line{From: part.From, To: part.To})
			from, to, visible = part.From, part.To, true
		}
	}
	for _, p := range []geometry.Point{s.from.Times(v.k), s.to.Times(v.k)} {
		if v.frame.Contains(p) {
			v.Circle(stroke, p, dot)
		}
	}
	if visible {
		v.letter(s, from, to, stroke)
	}
}

// letter writes a setting's letter beside its span, at the first place that is free,
// and leads it there where it stands off.
func (v windowView) letter(s scribeSetting, from, to geometry.Point, stroke Stroke) {
	side := to.Sub(from)
	side = side.Left().Times(1 / side.Norm())
	var written []geometry.Box
	for _, it := range v.Drawing.Items {
		if it.Text != nil {
			written = append(written, it.Text.Bounds().Grow(0.4))
		}
	}
	for _, off := range []float64{2.2, -2.2, 4.5, -4.5, 7, -7, 10, -10, 14, -14} {
		for _, t := range []float64{0.5, 0.38, 0.62, 0.25, 0.75} {
			on := from.Toward(to, t)
			text := render.Text{At: on.Add(side.Times(off)), Height: 2.9, Align: render.Middle, Centred: true, Bold: true, String: s.letter}
			if !standsClear(written, text.Bounds().Grow(0.3)) {
				continue
			}
			if off > 3 || off < -3 {
				v.Line(stroke, geometry.Line{From: on, To: on.Add(side.Times(off)).Toward(on, 2.2/max(off, -off))})
			}
			v.Write(stroke, text)
			return
		}
	}
}
