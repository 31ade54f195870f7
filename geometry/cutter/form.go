package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// showAbove is how far the drawing of a form goes beyond the highest point that
// cuts, as a share of that point's height: enough to see the shank begin.
const showAbove = 1.25

// Outline returns the form closed across its top, anticlockwise.
func (f Form) Outline() (geometry.Outline, error) {
	return geometry.NewOutline(f.Edge.Vertices())
}

// cutTop is the height of the highest point of the tip circle inside the cut.
func (p Pointed) cutTop(s sweep, height float64) float64 {
	e := p.setOver()
	_, first, last := s.spread(e, height, p.TipRadius)
	if first <= 0 && last >= 0 {
		return p.TipRadius - height
	}
	return math.Max(p.TipRadius*math.Cos(first), p.TipRadius*math.Cos(last)) - height
}

// form cuts the profile off at the stock's width and at the top of the drawing.
func (p Pointed) form(o profile, height float64) (Form, error) {
	cutting := p.cutTop(o.swept, height)
	under := o.swept.narrowed(p.StockWidth)
	top := showAbove * cutting
	if full := showAbove * under[len(under)-1].From.Y; full > top {
		top = math.Max(top, math.Min(full, math.Max(3*top, p.StockWidth)))
	}
	top = p.clearTop(o, under, cutting, top)
	edge := sweep{{From: o.foot.Add(o.front.Times((top - o.foot.Y) / o.front.Y)), To: o.foot, Quantity: FrontRelief}}
	edge = append(edge, under[1:].lowered(top)...)
	if p.CornerRadius > 0 {
		edge[1] = o.corner
	}
	chain, err := edge.chain()
	return Form{Edge: chain, StockWidth: p.StockWidth, Top: top}, err
}

// clearTop lowers the top where a front edge that leans more than the back would
// leave the shank less than half as wide as the form is at the tip circle.
func (p Pointed) clearTop(o profile, under sweep, cutting, top float64) float64 {
	gap := func(y float64) float64 { return under.backAt(y) - p.frontAt(o, y) }
	least := gap(cutting) / 2
	wide := func(y float64) bool { return gap(y) >= least }
	if p.FrontRelief == 0 || wide(top) {
		return top
	}
	return seek.Last(cutting, top, 0, wide)
}

// frontAt returns x of the front edge at a height above the corner.
func (p Pointed) frontAt(o profile, y float64) float64 {
	return o.foot.X + (y-o.foot.Y)*math.Tan(float64(p.FrontRelief))
}

// backAt returns x of the back at height y, 0 where it does not reach so low.
func (s sweep) backAt(y float64) float64 {
	for i := len(s) - 1; i > 0; i-- {
		g := s[i]
		if y < g.From.Y || y > g.To.Y && i < len(s)-1 {
			continue
		}
		return g.From.X + shareAtHeight(g, y)
	}
	return 0
}

// shareAtHeight returns how far beyond its start, in x, a rising piece of the
// back reaches height y. An arc is a convex one, in its lower right quarter.
func shareAtHeight(g geometry.Segment, y float64) float64 {
	a, ok := g.Arc()
	if !ok {
		if g.To.Y == g.From.Y {
			return g.To.X - g.From.X
		}
		return (g.To.X - g.From.X) * (y - g.From.Y) / (g.To.Y - g.From.Y)
	}
	h := (y - a.Centre.Y) / a.Radius
	return a.Centre.X + a.Radius*math.Sqrt(math.Max(1-h*h, 0)) - g.From.X
}

// narrowed cuts the back off at the stock's far side, which then runs straight
// up; a width of 0 is no stock.
func (s sweep) narrowed(width float64) sweep {
	last := s[len(s)-1]
	if width <= 0 || math.Max(last.From.X, last.To.X) <= width {
		return s
	}
	var out sweep
	for _, g := range s {
		if g.To.X <= width {
			out = append(out, g)
			continue
		}
		side := geometry.Point{X: width, Y: heightAcross(g, width)}
		if side.Dist(g.From) > coincide {
			out = append(out, endingAt(g, side))
		} else {
			side = g.From
		}
		reach := geometry.Point{X: side.X, Y: side.Y + s[0].From.Y}
		return append(out, geometry.Segment{From: side, To: reach, Quantity: StockWidth})
	}
	return s
}

// heightAcross returns the height of a rising piece of the back at x.
func heightAcross(g geometry.Segment, x float64) float64 {
	a, ok := g.Arc()
	if !ok {
		return g.From.Toward(g.To, (x-g.From.X)/(g.To.X-g.From.X)).Y
	}
	w := (x - a.Centre.X) / a.Radius
	return a.Centre.Y - a.Radius*math.Sqrt(math.Max(1-w*w, 0))
}

// lowered cuts the back off at height top.
func (s sweep) lowered(top float64) sweep {
	var out sweep
	for _, g := range s {
		if g.To.Y < top {
			out = append(out, g)
			continue
		}
		end := geometry.Point{X: g.From.X + shareAtHeight(g, top), Y: top}
		if end.Dist(g.From) > coincide {
			out = append(out, endingAt(g, end))
		}
		return out
	}
	return out
}

// endingAt returns the part of a piece from its start to a point on it.
func endingAt(g geometry.Segment, end geometry.Point) geometry.Segment {
	a, ok := g.Arc()
	g.To = end
	if ok {
		sweep := (end.Sub(a.Centre).Direction() - a.Start).Normal()
		g.Bulge = math.Tan(float64(sweep) / 4)
	}
	return g
}

// chain returns the pieces as a chain.
func (s sweep) chain() (geometry.Chain, error) {
	vs := make([]geometry.Vertex, 0, len(s)+1)
	for _, g := range s {
		vs = append(vs, geometry.Vertex{Point: g.From, Bulge: g.Bulge, Quantity: g.Quantity})
	}
	if n := len(s); n > 0 {
		vs = append(vs, geometry.Vertex{Point: s[n-1].To})
	}
	return geometry.NewChain(vs)
}
