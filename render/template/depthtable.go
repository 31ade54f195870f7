package template

import (
	"strings"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/measure"
	"tipline/render"
)

// depthGroup is a group of the depth table's columns under one title: what it
// shows of a row, in millimetres, for each of its columns.
type depthGroup struct {
	title string
	over  []string // what stands over the columns' units
	q     geometry.Quantity
	bold  bool
	shows func(cutter.Depth) []float64
	inch  []bool // which of the columns are in inches
}

// Sizes of the depth table in millimetres.
const (
	depthColumn = 12.2
	depthRow    = 4.6
	groupGap    = 1.6
	headLine    = 3.8
)

// depthGroups returns the table's groups: with the cutter set over both dials,
// else one.
func (c *card) depthGroups(cut *cutter.Cut) []depthGroup {
	both := func(f func(cutter.Depth) float64) func(cutter.Depth) []float64 {
		return func(d cutter.Depth) []float64 { return []float64{f(d), f(d)} }
	}
	falls := func(f func(cutter.Depth) cutter.Fall) func(cutter.Depth) []float64 {
		return func(d cutter.Depth) []float64 { return []float64{f(d).Hundredth, f(d).Thou} }
	}
	inch := []bool{false, true}
	steps := []string{c.Style.Units.Number(0.01, 2), c.Style.Units.Number(0.001, 3)}
	groups := []depthGroup{
		{c.Say("cards.depth.still"), nil, "cutter", false, both(func(d cutter.Depth) float64 { return d.Left }), inch},
		{c.Say("cards.depth.dial"), nil, "cutter", true, both(func(d cutter.Depth) float64 { return d.Infeed }), inch},
	}
	if cut.SetOver != 0 {
		groups[1].title = c.Say("cards.depth.along")
		groups = append(groups, depthGroup{c.Say("cards.depth.radial"), nil, "cutter", true, both(func(d cutter.Depth) float64 { return d.Radial }), inch})
	}
	groups = append(groups,
		depthGroup{c.Say("cards.depth.land"), nil, "teeth.land", true, both(func(d cutter.Depth) float64 { return max(d.Land, 0) }), inch},
		depthGroup{c.Say("cards.depth.fall"), steps, "teeth.land", false, falls(func(d cutter.Depth) cutter.Fall { return d.Fall }), inch})
	if cut.SetOver != 0 {
		groups[len(groups)-1].title = c.Say("cards.depth.fall.along")
		groups = append(groups, depthGroup{c.Say("cards.depth.fall.radial"), steps, "teeth.land", false, falls(func(d cutter.Depth) cutter.Fall { return d.RadialFall }), inch})
	}
	return groups
}

// tableWidth returns how wide the groups' columns are together.
func tableWidth(groups []depthGroup) float64 {
	return (2*depthColumn + groupGap) * float64(len(groups))
}

// depthTable writes the table, as wide as its column, with a heavy line under the row at
// depth.
func (c *card) depthTable(groups []depthGroup, rows []cutter.Depth) {
	end := c.depthHead(groups)
	top := c.y
	for i, d := range rows {
		c.y -= depthRow
		last := i == len(rows)-1
		x := 0.0
		for _, g := range groups {
			for k, v := range g.shows(d) {
				x += depthColumn
				c.depthFigure(x, v, g, g.inch[k], last)
			}
			x += groupGap
		}
		if !last {
			c.ruled(c.y, c.wide)
		}
	}
	c.Line(Stroke{Layer: render.LayerText, Quantity: "teeth.land", Pen: render.Visible, Ink: render.Black},
		geometry.Line{From: geometry.Point{Y: c.y}, To: geometry.Point{X: c.wide, Y: c.y}})
	c.Line(Stroke{Layer: render.LayerText, Pen: render.Hair, Ink: render.Grey},
		geometry.Line{From: geometry.Point{X: end, Y: top}, To: geometry.Point{X: end, Y: c.y}},
		geometry.Line{From: geometry.Point{X: c.wide, Y: top}, To: geometry.Point{X: c.wide, Y: c.y}})
}

// depthFigure writes one figure of a row, its right end at x.
func (c *card) depthFigure(x, mm float64, g depthGroup, inch, depth bool) {
	u, ink := measure.Units{Comma: c.Style.Units.Comma}, render.Black
	if inch {
		u.Unit = measure.Inch
	}
	if inch != (c.Style.Units.Unit == measure.Inch) {
		ink = render.Grey
	}
	own := ink == render.Black
	c.Write(Stroke{Layer: render.LayerText, Quantity: g.q, Ink: ink}, render.Text{
		At: geometry.Point{X: x, Y: c.y + 1.1}, Height: 2.5, Align: render.Right, Bold: depth || g.bold && own, String: fineBare(u, mm),
	})
}

// fineBare writes a length as Fine does, without its unit.
func fineBare(u measure.Units, mm float64) string {
	return strings.TrimSuffix(u.Fine(mm), " "+u.Name())
}

// depthHead writes the heads of the table and returns where the pencil's column
// begins.
func (c *card) depthHead(groups []depthGroup) float64 {
	x, high := 0.0, 0
	for _, g := range groups {
		high = max(high, len(Wrap(g.title, 2.5, 2*depthColumn, true))+min(len(g.over), 1))
	}
	down := c.y - headLine*float64(high+1)
	for _, g := range groups {
		c.headUnits(x, down, g.over)
		c.headLines(x+2*depthColumn, down+headLine*float64(1+min(len(g.over), 1)), g.title, 2*depthColumn)
		x += 2*depthColumn + groupGap
	}
	c.headLines(c.wide-0.5, down+headLine, c.Say("cards.depth.seen"), c.wide-x)
	c.y = down - 1.4
	c.Line(Stroke{Layer: render.LayerText, Pen: render.Thin, Ink: render.Black},
		geometry.Line{From: geometry.Point{Y: c.y}, To: geometry.Point{X: c.wide, Y: c.y}})
	return x
}

// headUnits writes the units of a group's two columns, and what stands over them.
func (c *card) headUnits(x, y float64, over []string) {
	for k, unit := range []measure.Unit{measure.MM, measure.Inch} {
		t := render.Text{At: geometry.Point{X: x + depthColumn*float64(k+1), Y: y}, Height: 2.5, Align: render.Right}
		t.String = measure.Units{Unit: unit}.Name()
		c.Write(Stroke{Layer: render.LayerText, Ink: render.Grey}, t)
		if k < len(over) {
			t.At.Y, t.String = y+headLine, over[k]
			c.Write(Stroke{Layer: render.LayerText, Ink: render.Grey}, t)
		}
	}
}

// headLines writes a head in lines that end at a place, the last one on a height.
func (c *card) headLines(right, y float64, title string, width float64) {
	lines := Wrap(title, 2.5, width, true)
	for i, line := range lines {
		c.Write(Stroke{Layer: render.LayerText, Ink: render.Black}, render.Text{
			At: geometry.Point{X: right, Y: y + headLine*float64(len(lines)-1-i)}, Height: 2.5, Align: render.Right, Bold: true, String: line,
		})
	}
}
