package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
)

// axis is one axis of a plot: what it runs from and to in the unit it is labelled
// in, where its ticks stand, and how many decimals they are written with.
type axis struct {
	from, to, step float64
	decimals       int
	title          string
	grow           float64 // labels' unit in that of the curve's values: 25.4 for inches over mm
}

// leastRun is the run of values, in the labels' unit, below which a curve is level: a
// nanometre or so, finer than any figure is written. Ticks a rounding apart would
// never come to an end.
const leastRun = 1e-6

// onTick is the share of a step that a value may be off a tick and stand on it.
const onTick = 1e-9

// newAxis returns an axis over a run of values, given in the curve's unit, with
// about so many ticks at round places of the labels' unit. A run below leastRun is
// widened to 1. With whole the ends are ticks.
func newAxis(from, to, unit float64, ticks int, whole bool, title string) axis {
	from, to = from/unit, to/unit
	if !(to-from >= leastRun) {
		to = from + 1
	}
	step := roundStep((to - from) / float64(ticks))
	if whole {
		from, to = step*math.Floor(from/step+onTick), step*math.Ceil(to/step-onTick)
	}
	return axis{from, to, step, int(max(0, math.Ceil(-math.Log10(step)-onTick))), title, unit}
}

// roundStep returns the least of 1, 2 and 5 times a power of ten that is no less
// than a size.
func roundStep(size float64) float64 {
	decade := math.Pow(10, math.Floor(math.Log10(size)))
	for _, k := range []float64{1, 2, 5} {
		if k*decade >= size*(1-onTick) {
			return k * decade
		}
	}
	return 10 * decade
}

// share returns how far along the axis a value of the curve's unit stands, 0 to 1.
func (a axis) share(v float64) float64 { return (v/a.grow - a.from) / (a.to - a.from) }

// ticks returns the values, in the labels' unit, at which ticks stand.
func (a axis) ticks() []float64 {
	var list []float64
	for i := math.Ceil(a.from/a.step - onTick); i*a.step <= a.to+onTick*a.step; i++ {
		list = append(list, i*a.step)
	}
	return list
}

// figuresApart is how far apart in millimetres the figures below an axis stand at least.
const figuresApart = 2.0

// thinned returns an axis that lies along so many millimetres with no more ticks than
// leave their figures apart.
func (a axis) thinned(width float64, u measure.Units) axis {
	widest := 0.0
	for _, v := range a.ticks() {
		widest = max(widest, render.Text{Height: plotFigure, String: u.Number(v, a.decimals)}.Width())
	}
	for len(a.ticks()) > 2 && a.step/(a.to-a.from)*width < widest+figuresApart {
		a.step = roundStep(1.1 * a.step)
	}
	return a
}

// plot is a curve's frame on a board: thin axes with their ticks and figures at
// the left and below, and a hairline grid.
type plot struct {
	*Board
	frame geometry.Box
	x, y  axis
	q     geometry.Quantity
}

// Sizes of a plot's lettering, in millimetres of paper.
const (
	plotFigure = 2.5
	plotGap    = 1.6 // from an axis to its figures
)

// newPlot draws the grid, the axes and their figures. q is what the curve shows; the
// grid and the axes are nobody's, so that no field lights them.
func newPlot(b *Board, frame geometry.Box, x, y axis, q geometry.Quantity) plot {
	p := plot{b, frame, x, y, q}
	var grid []geometry.Line
	for _, v := range x.ticks() {
		at := p.at(v*x.grow, y.from*y.grow)
		grid = append(grid, geometry.Line{From: at, To: geometry.Point{X: at.X, Y: frame.Max.Y}})
		p.figure(geometry.Point{X: at.X, Y: at.Y - plotGap - plotFigure}, render.Middle, b.Style.Units.Number(v, x.decimals))
	}
	for _, v := range y.ticks() {
		at := p.at(x.from*x.grow, v*y.grow)
		grid = append(grid, geometry.Line{From: at, To: geometry.Point{X: frame.Max.X, Y: at.Y}})
		p.figure(geometry.Point{X: at.X - plotGap, Y: at.Y - plotFigure/2}, render.Right, b.Style.Units.Number(v, y.decimals))
	}
	b.Line(Stroke{Layer: render.LayerText, Pen: render.Hair, Ink: render.Grey}, grid...)
	b.Line(Stroke{Layer: render.LayerText, Pen: render.Thin, Ink: render.Black},
		geometry.Line{From: geometry.Point{X: frame.Min.X, Y: frame.Max.Y}, To: frame.Min},
		geometry.Line{From: frame.Min, To: geometry.Point{X: frame.Max.X, Y: frame.Min.Y}})
	p.titles()
	return p
}

// titles writes what the axes show: below the one, above the other.
func (p plot) titles() {
	ink := Stroke{Layer: render.LayerText, Quantity: p.q, Ink: render.Grey}
	p.Write(ink, render.Text{
		At:     geometry.Point{X: p.frame.Max.X, Y: p.frame.Min.Y - 2*plotGap - 2*plotFigure - 0.6},
		Height: plotFigure, Align: render.Right, String: p.x.title,
	})
	p.Write(ink, render.Text{At: geometry.Point{X: p.frame.Min.X, Y: p.frame.Max.Y + plotGap}, Height: plotFigure, String: p.y.title})
}

func (p plot) figure(at geometry.Point, align render.Align, text string) {
	p.Write(Stroke{Layer: render.LayerText, Quantity: p.q, Ink: render.Black}, render.Text{At: at, Height: plotFigure, Align: align, String: text})
}

// at returns where a pair of values stands on the paper.
func (p plot) at(x, y float64) geometry.Point {
	return geometry.Point{
		X: p.frame.Min.X + p.x.share(x)*p.frame.Width(),
		Y: p.frame.Min.Y + p.y.share(y)*p.frame.Height(),
	}
}

// curve draws a curve through points of values, cut off at the frame.
func (p plot) curve(s Stroke, values []geometry.Point) {
	var run []geometry.Vertex
	end := func() {
		if chain, err := geometry.NewChain(run); err == nil {
			p.Open(s, chain)
		}
		run = nil
	}
	for i := 1; i < len(values); i++ {
		part, ok := within(p.at(values[i-1].X, values[i-1].Y), p.at(values[i].X, values[i].Y), p.frame)
		if !ok {
			continue
		}
		if n := len(run); n == 0 || !Same(run[n-1].Point, part.From) {
			end()
			run = append(run, geometry.Vertex{Point: part.From})
		}
		run = append(run, geometry.Vertex{Point: part.To})
	}
	end()
}

// within returns the part of the line between two points that lies in a box; false
// when none does, or the points are one.
func within(p, q geometry.Point, box geometry.Box) (geometry.Line, bool) {
	way := q.Sub(p)
	line, ok := through(p, way, box)
	if !ok {
		return line, false
	}
	share := func(r geometry.Point) float64 { return min(max(r.Sub(p).Dot(way)/way.Dot(way), 0), 1) }
	a, b := share(line.From), share(line.To)
	return geometry.Line{From: p.Add(way.Times(a)), To: p.Add(way.Times(b))}, a < b
}
