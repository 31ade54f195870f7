package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
)

// How large the window of a scribing card and the places at an arm's marks are
// drawn, in millimetres of paper.
const (
	scribeWide   = 72.0
	scribeHigh   = 80.0
	scribeLow    = 60.0 // where the table below is long
	scribeDetail = 35.0
	fewArms      = 7
)

// scribingViews draws the window after arm 0 with the arm, and large what is found at
// the arm's two marks, right of the card's steps; it returns how far down they reach.
func (c *card) scribingViews(w Wheel, s Style, steps []scribeStep) float64 {
	whole := scribingWindow(w, s, steps)
	y := c.right(whole, (scribeRight+CardWidth)/2, 0) - 6
	low := y
	for i, d := range scribingMarks(w, s, steps) {
		low = min(low, c.right(d, scribeRight+scribeDetail/2+float64(i)*(CardWidth-scribeRight-scribeDetail), y))
	}
	return low
}

// right places a drawing with its middle and its top there and returns its lowest.
func (c *card) right(d *render.Drawing, middle, top float64) float64 {
	of := d.Bounds()
	c.Drawing.Add(d.Placed(geometry.Point{X: middle - of.Centre().X, Y: top - of.Max.Y}, 1, 0).Items...)
	return top - of.Height()
}

// scribingWindow draws the window after arm 0, and each setting that reaches over it
// as the span it is, with its letter.
func scribingWindow(w Wheel, s Style, steps []scribeStep) *render.Drawing {
	lay, tip := w.Crossing, w.Teeth.TipRadius
	box := lay.Windows[0].Outline.Bounds().With(geometry.Point{X: -lay.HubRadius}).
		With(geometry.Point{Y: tip}).With(onArm(tip, lay.Arms[1]))
	far := scribed(lay, len(lay.Windows)-1).before
	if far.side != (geometry.Segment{}) {
		box = box.Union(far.side.Bounds())
	}
	high := scribeHigh
	if len(lay.Arms) > fewArms {
		high = scribeLow
	}
	k := min(scribeWide/box.Width(), high/box.Height())
	v := windowView{NewBoard(w.ID, s), k, geometry.Box{Min: box.Min.Times(k), Max: box.Max.Times(k)}.Grow(4)}
	v.circles(w)
	v.outline(lay.Windows[0].Outline, render.Visible)
	for _, piece := range []geometry.Segment{far.atRim, far.side, far.atHub} {
		v.piece(piece, render.Thin)
	}
	next := scribed(lay, 1%len(lay.Windows)).after
	for _, piece := range []geometry.Segment{next.atRim, next.side, next.atHub} {
		v.piece(piece, render.Thin)
	}
	v.spans(steps, wholeWindow)
	return v.Drawing
}

// scribingMarks draws what is found at an arm's marks on the rim and hub circles.
func scribingMarks(w Wheel, s Style, steps []scribeStep) []*render.Drawing {
	var drawings []*render.Drawing
	for _, m := range []struct {
		at     scribeAt
		radius float64
		name   string
	}{{rimMark, w.Crossing.RimRadius, "cards.scribing.at-rim"}, {hubMark, w.Crossing.HubRadius, "cards.scribing.at-hub"}} {
		box, any := geometry.NoBox().With(geometry.Point{Y: m.radius}), false
		for _, step := range steps {
			for _, setting := range step.settings {
				if setting.at == m.at {
					any = true
					box = box.With(setting.to)
					if setting.from != (geometry.Point{}) {
						box = box.With(setting.from)
					}
				}
			}
		}
		if any {
			drawings = append(drawings, scribingMark(w, s, steps, m.at, box, s.Words.Say(m.name)))
		}
	}
	return drawings
}

// scribingMark draws a square of the wheel round one mark.
func scribingMark(w Wheel, s Style, steps []scribeStep, at scribeAt, box geometry.Box, name string) *render.Drawing {
	lay := w.Crossing
	side := 1.7 * max(box.Width(), box.Height(), 0.5)
	k := scribeDetail / side
	half := geometry.Point{X: side / 2, Y: side / 2}
	v := windowView{NewBoard(w.ID, s), k, geometry.Box{Min: box.Centre().Sub(half).Times(k), Max: box.Centre().Add(half).Times(k)}}
	v.Rectangle(Stroke{Layer: render.LayerDimensions, Pen: render.Hair, Ink: render.Grey}, v.frame.Min, v.frame.Max)
	v.circles(w)
	v.outline(lay.Windows[0].Outline, render.Visible)
	v.outline(lay.Windows[len(lay.Windows)-1].Outline, render.Visible)
	v.spans(steps, at)
	v.Write(Stroke{Layer: render.LayerText, Ink: render.Grey}, render.Text{
		At: geometry.Point{X: v.frame.Centre().X, Y: v.frame.Min.Y - 3.8}, Height: 2.2, Align: render.Middle, String: name,
	})
	return v.Drawing
}

// windowView draws a wheel's layout enlarged k times, within a frame.
type windowView struct {
	*Board
	k     float64
	frame geometry.Box
}

// piece draws as much of a piece of the layout as lies in the frame.
func (v windowView) piece(s geometry.Segment, pen render.Pen) {
	v.inFrame(Stroke{Layer: render.LayerDimensions, Quantity: s.Quantity, Pen: pen}, s)
}

func (v windowView) inFrame(stroke Stroke, s geometry.Segment) {
	if s.From == s.To {
		return
	}
	for _, part := range Split(geometry.ChainOf(s).Scale(v.k).Segment(0), Edges(v.frame)) {
		if part.From != part.To && v.frame.Contains(part.At(0.5)) {
			v.Open(stroke, geometry.ChainOf(part))
		}
	}
}

func (v windowView) outline(o geometry.Outline, pen render.Pen) {
	for i := range o.Len() {
		v.piece(o.Segment(i), pen)
	}
}

// circles draws the tip, rim and hub circles and the tip lines about the window.
func (v windowView) circles(w Wheel) {
	lay := w.Crossing
	from, to := lay.Arms[0].Angle, lay.Arms[1].Angle
	thin := func(q geometry.Quantity) Stroke {
		return Stroke{Layer: render.LayerDimensions, Quantity: q, Pen: render.Thin, Ink: render.Blue}
	}
	for _, c := range []struct {
		r float64
		q geometry.Quantity
	}{{w.Teeth.TipRadius, "teeth"}, {lay.RimRadius, "crossing.rim"}, {lay.HubRadius, "crossing.hub"}} {
		past, all := geometry.Angle(5/(v.k*c.r)), to-from
		if c.q == "crossing.hub" {
			past = 0.4 * geometry.FullTurn
		}
		v.inFrame(thin(c.q), geometry.Arc{Radius: c.r, Start: geometry.Clock(to + past), Sweep: min(all+2*past, 0.95*geometry.FullTurn)}.Segment())
	}
	for _, arm := range []crossing.Arm{lay.Arms[0], lay.Arms[1]} {
		line := geometry.Line{To: onArm(w.Teeth.TipRadius+4/v.k, arm)}.Segment()
		v.inFrame(Stroke{Layer: render.LayerDimensions, Quantity: "crossing.arms", Pen: render.Centre, Ink: render.Blue}, line)
	}
}

// spans draws the settings that belong there.
func (v windowView) spans(steps []scribeStep, at scribeAt) {
	for _, step := range steps {
		for _, s := range step.settings {
			if s.at == at && s.from != s.to && len(s.letter) == 1 {
				v.span(s)
			}
		}
	}
}

// span draws a setting from foot to foot, as far as it lies in the frame, and its
// letter where there is room.
func (v windowView) span(s scribeSetting) {
	stroke := Stroke{Layer: render.LayerDimensions, Quantity: s.quantity, Pen: render.Hair, Ink: render.Blue}
	v.inFrame(stroke, geometry.Line{From: s.from, To: s.to}.Segment())
	for _, p := range []geometry.Point{s.from.Times(v.k), s.to.Times(v.k)} {
		if v.frame.Contains(p) {
			v.Circle(stroke, p, dot)
		}
	}
	for _, part := range Split(geometry.Line{From: s.from.Times(v.k), To: s.to.Times(v.k)}.Segment(), Edges(v.frame)) {
		if v.frame.Contains(part.At(0.5)) {
			v.letter(s, part, stroke)
			return
		}
	}
}

// letter writes a setting's letter beside its span, at the first place that is free,
// best of all of lines too, and leads it there where it stands off.
func (v windowView) letter(s scribeSetting, span geometry.Segment, stroke Stroke) {
	side := span.Tangent(0.5).Left()
	for _, clear := range []float64{1.9, 0} {
		for _, off := range []float64{2.2, -2.2, 3, -3, 4.5, -4.5, 7, -7, 10, -10, 14, -14} {
			for _, t := range []float64{0.5, 0.38, 0.62, 0.25, 0.75, 0.12, 0.88} {
				on := span.At(t)
				text := render.Text{At: on.Add(side.Times(off)), Height: 2.9, Align: render.Middle, Centred: true, Bold: true, String: s.letter}
				if !v.free(text, clear) {
					continue
				}
				if math.Abs(off) > 3.5 {
					v.Line(stroke, geometry.Line{From: on, To: on.Add(side.Times(off)).Toward(on, 2.2/math.Abs(off))})
				}
				v.Write(Stroke{Layer: render.LayerText, Quantity: s.quantity, Ink: render.Blue}, text)
				return
			}
		}
	}
}

// free reports whether a letter stands in the frame and clear of every other, and its
// middle so far from every line.
func (v windowView) free(text render.Text, clear float64) bool {
	box := text.Bounds().Grow(0.7)
	if !v.frame.Contains(box.Min) || !v.frame.Contains(box.Max) {
		return false
	}
	for _, it := range v.Drawing.Items {
		if it.Text != nil && it.Text.Bounds().Touches(box) {
			return false
		}
		for _, chain := range it.Chains {
			for i := range chain.Len() {
				if chain.Segment(i).Dist(text.At) < clear {
					return false
				}
			}
		}
	}
	return true
}
