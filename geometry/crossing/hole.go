package crossing

import (
	"math"

	"tipline/geometry"
)

// Hole is a round hole through the wheel.
type Hole struct {
	Radius   float64        // of its centre, from the wheel's
	Angle    geometry.Angle // of its centre, clockwise from 12 o'clock
	Diameter float64
}

// Centre returns the hole's centre.
func (h Hole) Centre() geometry.Point { return geometry.Polar(h.Radius, geometry.Clock(h.Angle)) }

// area returns what the hole takes away, mm².
func (h Hole) area() float64 { return math.Pi / 4 * h.Diameter * h.Diameter }

// polar returns ∫r² dA over the hole about the wheel's centre, mm⁴.
func (h Hole) polar() float64 {
	return h.area() * (h.Radius*h.Radius + h.Diameter*h.Diameter/8)
}

// holes returns every hole that is weighed: the screws' and the maker's own.
func (s Spec) holes() []Hole {
	all := append([]Hole(nil), s.Screws...)
	for _, a := range s.Additions {
		all = append(all, a.holes()...)
	}
	return all
}

// metal is what is left of a wheel: within the root circle, outside the bore, the
// windows and the holes.
type metal struct {
	root, bore float64 // radii
	windows    []geometry.Outline
	boxes      []geometry.Box // round each window
	holes      []Hole
}

func (l Layout) metal() metal {
	m := metal{root: l.Blank.RootRadius, bore: l.Blank.Bore / 2}
	for _, w := range l.Windows {
		m.windows, m.boxes = append(m.windows, w.Outline), append(m.boxes, w.Outline.Bounds())
	}
	return m
}

// edge returns how far the place lies from the nearest edge of the metal; 0 or less
// outside it.
func (m metal) edge(p geometry.Point) float64 {
	from := p.Norm()
	least := min(m.root-from, from-m.bore)
	if m.bore == 0 {
		least = m.root - from
	}
	if least <= 0 {
		return least
	}
	for i, w := range m.windows {
		if m.boxes[i].Grow(max(least, 0)).Contains(p) {
			least = min(least, -w.Margin(p))
		}
	}
	for _, h := range m.holes {
		least = min(least, p.Dist(h.Centre())-h.Diameter/2)
	}
	return least
}
