package depthing

import (
	"math"

	"tipline/geometry"
)

// touch is a driver's tooth against a follower's leaf, both alone, at one place
// of the driver, worked in the driver's own coordinates.
type touch struct {
	lead   float64        // how far the leaf is turned on, in the drive's direction, past where the ratio of the counts puts it
	at     geometry.Point // where they touch
	normal geometry.Point // of the surfaces there, unit, either way
}

// block is what one driver's tooth leaves one leaf: it must stand at or ahead of
// ahead, pushed, or at or behind behind. ok is false where they do not reach each
// other.
type block struct {
	ahead, behind touch
	ok            bool
}

// teeth are a tooth and a leaf made ready to meet again and again.
type teeth struct {
	driver, follower []piece
	centres          float64
	ratio            float64 // turns of the follower to one of the driver
	reach            float64 // tip radius of the follower
}

// meeting is the work of one place of the driver.
type meeting struct {
	*teeth
	f     geometry.Point // the follower's centre
	level geometry.Point // cosine and sine of the turn that puts the leaf where the ratio of the counts has it
	block block
}

// meet finds the block at one angle of the driver, anticlockwise from its tooth
// standing on the line of centres. The follower's centre stands at 12 o'clock of
// the driver's, and at driver angle 0 a leaf without lead points straight at it.
//
// The tooth and the leaf overlap for a range of the leaf's angle, whose ends are
// touches: of a corner on a piece, or of two pieces along a common normal. Each
// such touch is solved in closed form and the outermost two are kept.
func (t *teeth) meet(driver float64) block {
	sin, cos := math.Sincos(driver)
	m := meeting{teeth: t, f: geometry.Point{X: sin * t.centres, Y: cos * t.centres}}
	s, c := math.Sincos(math.Pi - driver*t.ratio - driver)
	m.level = geometry.Point{X: c, Y: s}
	for i := range t.driver {
		d := &t.driver[i]
		if d.middle.Dist(m.f) > d.half+t.reach {
			continue
		}
		m.corner(d)
		for k := range t.follower {
			m.pair(d, &t.follower[k])
		}
	}
	return m.block
}

// corner meets the corner that starts a driver's piece with the leaf.
func (m *meeting) corner(d *piece) {
	way := d.from.Sub(m.f)
	r := way.Norm()
	if r > m.reach {
		return
	}
	for k := range m.follower {
		l := &m.follower[k]
		if r < l.near-onPiece || r > l.far+onPiece {
			continue
		}
		pts, n := l.atRadius(geometry.Point{}, r)
		for _, q := range pts[:n] {
			u := back(way, q).Times(1 / (r * r))
			m.keep(u, d.from, turned(l.outward(q), u))
		}
	}
}

// pair meets a driver's piece with a leaf's piece: the corner that starts the
// leaf's, and common normals.
func (m *meeting) pair(d, l *piece) {
	r := l.from.Norm()
	if r > 0 && d.middle.Dist(m.f) <= d.half+r+onPiece {
		pts, n := d.atRadius(m.f, r)
		for _, q := range pts[:n] {
			m.keep(back(q.Sub(m.f), l.from).Times(1/(r*r)), q, d.outward(q))
		}
	}
	switch {
	case d.round && l.round:
		m.arcs(d, l)
	case d.round && d.convex:
		m.arcOnLine(d, l)
	case l.round && l.convex && !d.round:
		m.lineOnArc(d, l)
	}
}

// arcs meets two arcs along the line of their centres.
func (m *meeting) arcs(d, l *piece) {
	apart := d.radius + l.radius
	switch {
	case d.convex && l.convex:
	case d.convex:
		apart = l.radius - d.radius
	case l.convex:
		apart = d.radius - l.radius
	default:
		return
	}
	c := d.centre.Sub(m.f)
	r2, s2 := c.Dot(c), l.centre.Dot(l.centre)
	product := math.Sqrt(r2 * s2)
	cos := (r2 + s2 - apart*apart) / (2 * product)
	if !(apart > 0 && product > 0 && cos*cos <= 1) {
		return
	}
	sin := math.Sqrt(1 - cos*cos)
	base := back(c, l.centre).Times(1 / product)
	for _, u := range [2]geometry.Point{turned(base, geometry.Point{X: cos, Y: sin}), turned(base, geometry.Point{X: cos, Y: -sin})} {
		way := turned(l.centre, u).Sub(c).Times(1 / apart) // from the driver's arc's centre to the leaf's
		if d.convex && !l.convex {
			way = way.Times(-1) // the driver's arc lies in the leaf's hollow
		}
		q := d.centre.Add(way.Times(d.radius))
		if d.spans(q) && l.spans(back(q.Sub(m.f), u)) {
			m.keep(u, q, way)
		}
	}
}

// arcOnLine meets a driver's convex arc with a straight piece of the leaf.
func (m *meeting) arcOnLine(d, l *piece) {
	c := d.centre.Sub(m.f)
	r := c.Norm()
	cos := (l.offset + d.radius) / r
	if !(r > 0 && cos*cos <= 1) {
		return
	}
	sin := math.Sqrt(1 - cos*cos)
	base := back(c, l.normal).Times(1 / r)
	for _, u := range [2]geometry.Point{turned(base, geometry.Point{X: cos, Y: sin}), turned(base, geometry.Point{X: cos, Y: -sin})} {
		normal := turned(l.normal, u)
		q := d.centre.Sub(normal.Times(d.radius))
		if d.spans(q) && l.spans(back(q.Sub(m.f), u)) {
			m.keep(u, q, normal)
		}
	}
}

// lineOnArc meets a straight piece of the driver with a leaf's convex arc.
func (m *meeting) lineOnArc(d, l *piece) {
	r := l.centre.Norm()
	cos := (d.offset - d.normal.Dot(m.f) + l.radius) / r
	if !(r > 0 && cos*cos <= 1) {
		return
	}
	sin := math.Sqrt(1 - cos*cos)
	base := back(d.normal, l.centre).Times(1 / r)
	for _, u := range [2]geometry.Point{turned(base, geometry.Point{X: cos, Y: sin}), turned(base, geometry.Point{X: cos, Y: -sin})} {
		q := m.f.Add(turned(l.centre, u)).Sub(d.normal.Times(l.radius))
		if d.spans(q) && l.spans(back(q.Sub(m.f), u)) {
			m.keep(u, q, d.normal)
		}
	}
}

// keep widens the block by a touch of the leaf turned by u.
func (m *meeting) keep(u, at, normal geometry.Point) {
	w := back(u, m.level)
	lead := -math.Atan2(w.Y, w.X)
	if !m.block.ok || lead > m.block.ahead.lead {
		m.block.ahead = touch{lead, at, normal}
	}
	if !m.block.ok || lead < m.block.behind.lead {
		m.block.behind = touch{lead, at, normal}
	}
	m.block.ok = true
}
