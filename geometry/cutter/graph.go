package cutter

import (
	"math"

	"tipline/geometry"
)

// curve is a piece of an edge as a height over x: a line, or the upper or lower
// half of a circle.
type curve struct {
	lo, hi   float64 // the x it runs over
	x, y     float64 // a point of the line, or the circle's centre
	slope    float64 // of the line
	radius   float64 // 0 for a line
	halfSign float64 // +1 for the upper half, −1 for the lower
}

// at returns the curve's height at x, between lo and hi.
func (c curve) at(x float64) float64 {
	if c.radius == 0 {
		return c.y + c.slope*(x-c.x)
	}
	w := x - c.x
	return c.y + c.halfSign*math.Sqrt(max(c.radius*c.radius-w*w, 0))
}

// crossing appends to xs the x, between lo and hi, where the curve meets the line
// through p in direction way.
func (c *curve) crossing(xs []float64, p, way geometry.Point) []float64 {
	add := func(x float64) {
		if x >= c.lo && x <= c.hi {
			xs = append(xs, x)
		}
	}
	if c.radius > 0 {
		pts, n := geometry.LineCircle(p, way, geometry.Point{X: c.x, Y: c.y}, c.radius)
		for _, q := range pts[:n] {
			add(q.X)
		}
		return xs
	}
	along := geometry.Point{X: 1, Y: c.slope}
	if d := along.Cross(way); d != 0 {
		add(c.x + p.Sub(geometry.Point{X: c.x, Y: c.y}).Cross(way)/d)
	}
	return xs
}

// graph is an edge as curves over x; upright pieces have none.
type graph []curve

// over reports whether the curve runs over x: rounding must not let a piece go
// missing where it begins.
func (c *curve) over(x float64) bool { return x >= c.lo-coincide && x <= c.hi+coincide }

// highest returns the greatest height at x, −Inf where nothing runs.
func (g graph) highest(x float64) float64 {
	most := math.Inf(-1)
	for i := range g {
		if g[i].over(x) {
			most = max(most, g[i].at(x))
		}
	}
	return most
}

// lowest returns the least height at x, +Inf where nothing runs.
func (g graph) lowest(x float64) float64 {
	least := math.Inf(1)
	for i := range g {
		if g[i].over(x) {
			least = min(least, g[i].at(x))
		}
	}
	return least
}

// inset appends to g the edge's pieces moved d to their left, into the form, each
// by itself, with an arc of radius d about every corner that turns into the form:
// as high as the highest of them the section begins.
func (s sweep) inset(g graph, d float64) graph {
	for i, piece := range s {
		if a, ok := piece.Arc(); ok {
			g = g.addArc(a, a.Radius-math.Copysign(d, float64(a.Sweep)))
		} else {
			g = g.addLine(piece, d)
		}
		if d > 0 && i > 0 && leaving(s[i-1].Reverse()).Times(-1).Cross(leaving(piece)) < -coincide {
			g = append(g, curve{piece.From.X - d, piece.From.X + d, piece.From.X, piece.From.Y, 0, d, 1})
		}
	}
	return g
}

func (g graph) addLine(s geometry.Segment, d float64) graph {
	way := s.To.Sub(s.From)
	if way.X == 0 {
		return g
	}
	from := s.From.Add(way.Left().Times(d / way.Norm()))
	lo, hi := from.X, from.X+way.X
	return append(g, curve{math.Min(lo, hi), math.Max(lo, hi), from.X, from.Y, way.Y / way.X, 0, 0})
}

// addArc adds an arc of another radius about the same centre, an upper and a
// lower part each by itself; an arc smaller than nothing is none.
func (g graph) addArc(a geometry.Arc, radius float64) graph {
	if radius <= 0 {
		return g
	}
	from, to := a.Start, a.Start+a.Sweep
	if from > to {
		from, to = to, from
	}
	for half := math.Floor(float64(from) / math.Pi); half*math.Pi < float64(to); half++ {
		lo := math.Max(float64(from), half*math.Pi)
		hi := math.Min(float64(to), (half+1)*math.Pi)
		x0, x1 := a.Centre.X+radius*math.Cos(lo), a.Centre.X+radius*math.Cos(hi)
		sign := 1 - 2*math.Mod(math.Abs(half), 2)
		g = append(g, curve{math.Min(x0, x1), math.Max(x0, x1), a.Centre.X, a.Centre.Y, 0, radius, sign})
	}
	return g
}

// leaving returns the unit direction in which a segment starts.
func leaving(g geometry.Segment) geometry.Point {
	way := g.To.Sub(g.From)
	if a, ok := g.Arc(); ok {
		way = g.From.Sub(a.Centre).Left().Times(math.Copysign(1, float64(a.Sweep)))
	}
	return way.Times(1 / way.Norm())
}
