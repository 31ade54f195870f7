package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/measure"
	"tipline/render"
)

// The depth card's plots: from first touch to depth, and below a wide table the last of
// it enlarged too.
const (
	plotWidth     = 72.0
	depthPlotHigh = 29.0 // with the names of the axes
	plotPoints    = 80
)

// The stretch before depth that is shown enlarged, in millimetres or in inches.
const (
	lastMillimetres = 0.1
	lastInches      = 0.004
)

// depthUnit returns the maker's unit in millimetres, and the last stretch before depth.
func (c *card) depthUnit() (unit, last float64) {
	if c.Style.Units.Unit == measure.Inch {
		return measure.MMPerInch, lastInches * measure.MMPerInch
	}
	return 1, lastMillimetres
}

// depthPlots draws the land against the infeed twice, side by side.
func (c *card) depthPlots(cut *cutter.Cut) {
	unit, last := c.depthUnit()
	top := c.y - 7
	for i, from := range []float64{0, max(cut.Infeed-last, 0)} {
		left := 12 + float64(i)*(CardWidth-plotWidth-14)
		frame := geometry.Box{Min: geometry.Point{X: left, Y: top - depthPlotHigh}, Max: geometry.Point{X: left + plotWidth, Y: top}}
		c.depthPlot(cut, frame, from, unit)
	}
}

// depthPlot draws the land from an infeed to depth, and where to stop.
func (c *card) depthPlot(cut *cutter.Cut, frame geometry.Box, from, unit float64) {
	values := make([]geometry.Point, plotPoints+1)
	for i := range values {
		// finest at both ends, where the land changes fastest and where it matters
		d := from + (cut.Infeed-from)*(1-math.Cos(math.Pi*float64(i)/plotPoints))/2
		values[i] = geometry.Point{X: d, Y: max(cut.LandAt(d), 0)}
	}
	title := c.Say("cards.depth.axis", "unit", c.Style.Units.Name())
	x := newAxis(from, cut.Infeed, unit, 6, false, title).thinned(frame.Width(), c.Style.Units)
	y := newAxis(0, values[0].Y, unit, 5, true, c.Say("cards.depth.axis.land", "unit", c.Style.Units.Name()))
	if from > 0 {
		low := min(cut.Land, values[plotPoints].Y)
		y = newAxis(low-(values[0].Y-low)*0.2, values[0].Y, unit, 5, true, y.title)
		y.from = max(y.from, 0)
	}
	p := newPlot(c.Board, frame, x, y, "teeth.land")
	p.curve(Stroke{Layer: render.LayerText, Quantity: "teeth.land", Pen: render.Visible, Ink: render.Black}, values)
	p.stop(cut, c.Say("cards.depth.here"))
}

// stop draws the lines that lead to the wanted land at depth, and names them.
func (p plot) stop(cut *cutter.Cut, text string) {
	at := p.at(cut.Infeed, max(cut.Land, 0))
	line := Stroke{Layer: render.LayerText, Quantity: "teeth.land", Pen: render.Hidden, Ink: render.Blue}
	p.Line(line, geometry.Line{From: geometry.Point{X: at.X, Y: p.frame.Min.Y}, To: geometry.Point{X: at.X, Y: p.frame.Max.Y}},
		geometry.Line{From: geometry.Point{X: p.frame.Min.X, Y: at.Y}, To: at})
	p.Circle(Stroke{Layer: render.LayerText, Quantity: "teeth.land", Ink: render.Blue, Fill: render.Solid}, at, 0.9)
	p.Write(Stroke{Layer: render.LayerText, Quantity: "teeth.land", Ink: render.Blue}, render.Text{
		At: geometry.Point{X: p.frame.Max.X, Y: p.frame.Max.Y + plotGap}, Height: plotFigure, Align: render.Right, Bold: true, String: text,
	})
}
