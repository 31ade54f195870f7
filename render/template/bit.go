package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
)

// bit draws the bit as it was measured over the wanted form, both at depth in the
// same wheel: its outline thin and the space it leaves heavy, in the second ink, and
// names the walls that no plunge cuts.
func (e *enlargement) bit(g *cutter.Ground) {
	up := geometry.Point{Y: g.Lift}
	if o, err := g.Form.Outline(); err == nil {
		e.Closed(Stroke{Layer: render.LayerForm, Quantity: "cutter.bit", Pen: render.Thin, Ink: render.Green}, e.outlines([]geometry.Outline{o.Move(up)})...)
	}
	if space, err := spaceLeft(g); err == nil {
		e.Open(Stroke{Layer: render.LayerForm, Quantity: "cutter.bit", Pen: render.Visible, Ink: render.Green}, e.chain(space))
		e.bitLand(g, e.at(space.Vertex(space.Len()).Point))
	}
	e.bitInfeed(g)
	for _, p := range g.Undercut {
		e.mark(p.Add(up), "cutter.bit", render.Red, e.Say("template.cutterview.undercut"))
	}
	if n := g.Form.Edge.Len(); n > 0 {
		e.call(e.at(g.Form.Edge.Segment(n-1).At(0.5).Add(up)), "cutter.bit", render.Green, e.Say("template.cutterview.bit"))
	}
}

// bitLand says at the back tip what land the bit leaves, where one was wanted or
// the teeth come out short.
func (e *enlargement) bitLand(g *cutter.Ground, at geometry.Point) {
	switch {
	case g.Cut.Land < 0:
		e.call(at, "teeth.land", render.Red, e.Say("template.cutterview.short"))
	case e.cut.Land > 0:
		e.call(at, "teeth.land", render.Green, e.Say("template.cutterview.bit-land", "length", e.Style.Units.Fine(g.Cut.Land)))
	}
}

// bitInfeed names the infeed at which the bit comes nearest, beside the wanted one.
func (e *enlargement) bitInfeed(g *cutter.Ground) {
	if math.Abs(g.Best-g.Cut.Infeed) < noDeviation {
		return
	}
	at := geometry.Point{X: e.infeedAcross(), Y: g.Best * e.scale}
	e.call(at, "cutter.bit", render.Green, e.Say("template.cutterview.nearest",
		"length", e.Style.Units.Fine(g.Best), "deviation", e.Style.Units.Number(1000*math.Abs(g.BestDeviation.Off), 0)))
}

// mark rings a place and names it.
func (e *enlargement) mark(p geometry.Point, q geometry.Quantity, ink render.Ink, text string) {
	e.Circle(Stroke{Layer: render.LayerDimensions, Quantity: q, Pen: render.Visible, Ink: ink}, e.at(p), ringRadius)
	e.call(e.at(p), q, ink, text)
}

// ringRadius is the radius in millimetres of paper of the ring round a marked place.
const ringRadius = 1.6

// chain brings a chain of the tool frame to the paper.
func (e *enlargement) chain(c geometry.Chain) geometry.Chain {
	if e.mirror {
		c = c.Mirror()
	}
	return c.Scale(e.scale)
}

// spaceLeft returns the edge of the space that a measured bit leaves, in the tool
// frame of the wanted form.
func spaceLeft(g *cutter.Ground) (geometry.Chain, error) {
	space, err := g.Cut.Space()
	if err != nil {
		return geometry.Chain{}, err
	}
	centre := geometry.Point{X: g.Cut.SetOver, Y: -g.Cut.Height()}
	tip := frontTip(g.Cut).Sub(centre).Direction()
	return space.Rotate(tip - math.Pi/2).Move(centre.Add(geometry.Point{Y: g.Lift})), nil
}

// frontTip returns where the path of the foremost point of the form that cuts meets
// the tip circle, in the cut's own tool frame.
func frontTip(c cutter.Cut) geometry.Point {
	centre := geometry.Point{X: c.SetOver, Y: -c.Height()}
	front := math.Inf(1)
	tips, err := geometry.Circle(centre, c.TipRadius, "")
	if err != nil {
		return centre
	}
	for i := range c.Form.Edge.Len() {
		for _, part := range splitBy(c.Form.Edge.Segment(i), tips) {
			if part.At(0.5).Dist(centre) < c.TipRadius {
				front = min(front, part.Bounds().Min.X)
			}
		}
	}
	across := min(max(front-c.SetOver, -c.TipRadius), c.TipRadius)
	return centre.Add(geometry.Point{X: across, Y: math.Sqrt(c.TipRadius*c.TipRadius - across*across)})
}

// heelFoul marks the place of the edge behind which the heel fouls first, where the
// bit is thick enough for it.
func (e *enlargement) heelFoul() {
	r := e.relief
	if r == nil || r.HeelLimit <= 0 || r.HeelLimit >= min(r.Thickness, r.UsableThickness) {
		return
	}
	e.mark(r.HeelAt, "cutter.swing", render.Red, e.Say("template.cutterview.heel-rubs", "depth", e.Style.Units.Length(r.HeelLimit)))
}
