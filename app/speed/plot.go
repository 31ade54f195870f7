//go:build geos

package main

import (
	"fmt"
	"io"
	"math"
	"strings"
	"time"

	"tipline/app/keep"
	"tipline/geometry"
	"tipline/render"
	"tipline/render/svg"
)

// The plot, in millimetres: a bar a goal, its length the logarithm of the ratio over the
// goal, and below them the growth, both scales logarithmic.
const (
	barHigh  = 7.0
	doubling = 18.0  // a factor of two
	labels   = 112.0 // room left of the bars
	decade   = 34.0  // of the growth
)

// plot writes the plot.
func (p *page) plot(name string) error {
	d := &render.Drawing{Title: "How fast Tipline is", Scale: 1}
	y := p.bars(d)
	p.curve(d, geometry.Point{X: 0, Y: y - 95})
	return keep.Write(name, func(w io.Writer) error { return svg.Write(w, d) })
}

// bars draws the goals and returns where they end. A bar that stays left of the line
// reaches its goal.
func (p *page) bars(d *render.Drawing) (y float64) {
	lettering(d, geometry.Point{X: -labels, Y: 6}, render.Left, render.Black, "Cost as a share of what is allowed; left of the line the goal is reached")
	for _, r := range p.rows {
		if r.goal == 0 {
			continue
		}
		share := r.ratio / r.goal
		if r.least {
			share = r.goal / r.ratio
		}
		long, fill := doubling*math.Log2(share), render.Brass
		if !r.met() {
			fill = render.Waste
		}
		box(d, geometry.Point{X: 0, Y: y}, geometry.Point{X: math.Copysign(max(math.Abs(long), 0.2), long), Y: y - 0.7*barHigh}, fill)
		lettering(d, geometry.Point{X: -labels, Y: y - 0.55*barHigh}, render.Left, render.Black, strings.Trim(r.what, "`"))
		lettering(d, geometry.Point{X: max(long, 0) + 2, Y: y - 0.55*barHigh}, render.Left, render.Grey, r.times()+", "+strings.Trim(r.beside, "`")+", goal "+r.wanted())
		y -= barHigh
	}
	line(d, render.Visible, render.Black, geometry.Point{X: 0, Y: 2}, geometry.Point{X: 0, Y: y})
	return y
}

// curve draws the time over the number of wheels, and a line of slope 1 through the
// first that counts.
func (p *page) curve(d *render.Drawing, corner geometry.Point) {
	at := func(g grown) geometry.Point {
		return corner.Add(geometry.Point{X: decade * math.Log10(float64(g.wheels)), Y: decade / 1.6 * math.Log10(float64(g.took)/1e5)})
	}
	lettering(d, corner.Add(geometry.Point{X: -labels, Y: 86}), render.Left, render.Black, "Time over the number of wheels; the thin line is linear")
	line(d, render.Thin, render.Black, corner, corner.Add(geometry.Point{X: 3 * decade}))
	line(d, render.Thin, render.Black, corner, corner.Add(geometry.Point{Y: 78}))
	for _, g := range p.grown {
		mark := at(g)
		box(d, mark.Add(geometry.Point{X: -1, Y: -1}), mark.Add(geometry.Point{X: 1, Y: 1}), render.Brass)
		lettering(d, geometry.Point{X: mark.X, Y: corner.Y - 5}, render.Middle, render.Black, fmt.Sprint(g.wheels))
		lettering(d, mark.Add(geometry.Point{X: -2.5, Y: 2}), render.Right, render.Grey, told(g.took))
	}
	linear := func(g grown) geometry.Point {
		return at(grown{wheels: g.wheels, took: p.grown[tenth].each() * time.Duration(g.wheels)})
	}
	line(d, render.Thin, render.Blue, linear(p.grown[0]), linear(p.grown[len(p.grown)-1]))
}

func lettering(d *render.Drawing, at geometry.Point, align render.Align, ink render.Ink, text string) {
	d.Add(render.Item{Layer: render.LayerText, Ink: ink, Text: &render.Text{At: at, Height: 2.5, Align: align, String: text}})
}

func line(d *render.Drawing, pen render.Pen, ink render.Ink, from, to geometry.Point) {
	d.Add(render.Item{
		Layer: render.LayerCentreLines, Pen: pen, Ink: ink,
		Chains: []geometry.Chain{geometry.ChainOf(geometry.Line{From: from, To: to}.Segment())},
	})
}

// box draws a filled rectangle between two opposite corners.
func box(d *render.Drawing, p, q geometry.Point, fill render.Fill) {
	o, err := geometry.NewOutline([]geometry.Vertex{{Point: p}, {Point: geometry.Point{X: q.X, Y: p.Y}}, {Point: q}, {Point: geometry.Point{X: p.X, Y: q.Y}}})
	if err == nil {
		d.Add(render.Item{Layer: render.LayerForm, Pen: render.Thin, Fill: fill, Outlines: []geometry.Outline{o}})
	}
}
