package cutter

import (
	"math"

	"tipline/geometry"
)

// sweep is the lower envelope of a form, which is what it leaves when it is fed
// along y: from far up the front, down, through the cutting end, and far up the
// back. Everything above it is cut away.
type sweep []geometry.Segment

// touch returns the height H at which a circle of radius r about (e, −H) first
// meets the edge, the greatest there is: the maximum over the edge's points of
// √(r² − (x−e)²) − y. It is −Inf where the edge passes the circle by. With the
// tip radius it is the first touch; with the root radius it is the height at
// depth, for that is where the edge touches the root circle.
func (s sweep) touch(e, r float64) float64 {
	most := math.Inf(-1)
	rise := func(p geometry.Point) {
		if d := r*r - (p.X-e)*(p.X-e); d >= 0 {
			most = math.Max(most, math.Sqrt(d)-p.Y)
		}
	}
	for _, g := range s {
		rise(g.From)
		rise(g.To)
		if a, ok := g.Arc(); ok {
			touchArc(a, e, r, rise)
		} else {
			touchLine(g, e, r, rise)
		}
	}
	return most
}

// touchLine offers the point of a line where it is parallel to the circle.
func touchLine(g geometry.Segment, e, r float64, offer func(geometry.Point)) {
	way := g.To.Sub(g.From)
	if way.X == 0 {
		return
	}
	x := e - r*way.Y/way.Norm()*math.Copysign(1, way.X)
	if t := (x - g.From.X) / way.X; t > 0 && t < 1 {
		offer(g.From.Toward(g.To, t))
	}
}

// touchArc offers the points of an arc where it is parallel to a circle of
// radius r whose centre is at x = e: those whose radius, produced to the other
// circle's centre, is R+r or R−r long.
func touchArc(a geometry.Arc, e, r float64, offer func(geometry.Point)) {
	for _, k := range [2]float64{-r - a.Radius, r - a.Radius} {
		if k == 0 {
			continue
		}
		nx := (a.Centre.X - e) / k
		if math.Abs(nx) > 1 {
			continue
		}
		up := math.Acos(nx)
		for _, way := range [2]float64{up, -up} {
			if within(a, geometry.Angle(way), 0) {
				offer(a.Centre.Add(geometry.Polar(a.Radius, geometry.Angle(way))))
			}
		}
	}
}

// within reports whether direction w lies in the arc's sweep, or no further than
// slack outside it.
func within(a geometry.Arc, w, slack geometry.Angle) bool {
	d := w - a.Start
	if a.Sweep < 0 {
		d = -d
	}
	sweep := max(a.Sweep, -a.Sweep)
	d = d.Turn()
	return d <= sweep+slack || d >= geometry.FullTurn-slack
}

// spread returns ψ, the angle at the wheel's centre (e, −h) between the
// outermost points where the edge crosses the circle of radius r, and the angles
// of those points clockwise from the infeed. A circle wholly before the edge has
// spread 0; one that the edge swallows has a full turn.
func (s sweep) spread(e, h, r float64) (psi, first, last float64) {
	first, last = math.Inf(1), math.Inf(-1)
	centre := geometry.Point{X: e, Y: -h}
	n := 0
	for _, g := range s {
		pts, k := crossings(g, centre, r)
		for _, p := range pts[:k] {
			w := math.Atan2(p.X-e, p.Y+h)
			first, last = math.Min(first, w), math.Max(last, w)
			n++
		}
	}
	switch {
	case n >= 2:
		return last - first, first, last
	case n == 1:
		return 2 * math.Pi, first, first
	}
	return 0, 0, 0
}

// edgeSlack widens a segment's ends, as a share of it, so that a crossing at a
// joint is found on one of its sides; what it can move a point by, 1e-12 of a
// segment, is below the 1e-9 mm that coordinates agree to.
const edgeSlack = 1e-12

// crossings returns the points, at most two, where a segment crosses a circle; it
// does not count one that it only touches.
func crossings(g geometry.Segment, centre geometry.Point, r float64) (pts [2]geometry.Point, n int) {
	way := g.To.Sub(g.From)
	a, round := g.Arc()
	var all [2]geometry.Point
	if round {
		all, n = geometry.CircleCircle(a.Centre, a.Radius, centre, r)
	} else {
		all, n = geometry.LineCircle(g.From, way, centre, r)
	}
	if n < 2 {
		return pts, 0
	}
	n = 0
	for _, p := range all {
		t := p.Sub(g.From).Dot(way) / way.Dot(way)
		if round && within(a, p.Sub(a.Centre).Direction(), edgeSlack) || !round && t >= -edgeSlack && t <= 1+edgeSlack {
			pts[n] = p
			n++
		}
	}
	return pts, n
}
