package crossing

import (
	"math"

	"tipline/geometry"
)

// gramsPerCubicMM turns kg/m³ into g/mm³.
const gramsPerCubicMM = 1e-6

// balanced is the unbalance, in g·mm, below which a wheel is taken as balanced and
// has no heavy side. The coordinates' own rounding, 1e-15 of the size, leaves less
// than a thousandth of it on a wheel of 1 kg and 1 m.
const balanced = 1e-9

// weight returns what each square millimetre of the wheel weighs, in g.
func (l Layout) weight() float64 { return l.Blank.Density * gramsPerCubicMM * l.Blank.Thickness }

// void is metal taken away: its area, its first moment and its polar moment about
// the wheel's centre.
type void struct {
	area  float64
	first geometry.Point
	polar float64
}

func (v *void) add(area float64, first geometry.Point, polar float64) {
	v.area += area
	v.first = v.first.Add(first)
	v.polar += polar
}

// figure works out area, mass, inertia, balance, removed share and wind-up. The
// teeth themselves are taken as balanced, being alike all round.
func (l *Layout) figure(patterns []pattern) {
	var taken void
	for j := range l.Arms {
		p := patterns[l.patternOf(j)]
		taken.add(p.area, p.centroid.Times(p.area).Rotate(l.axis(j)), p.polar)
	}
	windows := taken.area
	var drilled void
	for _, h := range l.Spec.holes() {
		drilled.add(h.area(), h.Centre().Times(h.area()), h.polar())
	}
	taken.add(drilled.area, drilled.first, drilled.polar)
	bore := l.Blank.Bore / 2
	solid := l.Blank.Area - math.Pi*bore*bore
	polar := l.Blank.Polar - math.Pi/2*math.Pow(bore, 4)
	l.Uncrossed = l.of(solid-drilled.area, polar-drilled.polar)
	crossed := l.of(solid-taken.area, polar-taken.polar)
	l.Area, l.Mass, l.Inertia = crossed.Area, crossed.Mass, crossed.Inertia
	l.RemovedShare = windows / solid
	if u := l.weight() * taken.first.Norm(); u > balanced {
		l.Unbalance = u
		l.Heavy = geometry.Clock(taken.first.Times(-1).Direction()).Turn()
	}
}

// of returns the figures of that area and polar moment of metal.
func (l Layout) of(area, polar float64) Figures {
	return Figures{Area: area, Mass: l.weight() * area, Inertia: l.weight() * polar}
}

// stiffen works out how the arms bear.
func (l *Layout) stiffen() {
	l.WindUp = windUp(l.Blank, l.Spec)
	l.Narrowest = narrowest(l.HubRadius, l.RimRadius, l.Spec)
	l.Narrowest.Area = l.Narrowest.Width * l.Blank.Thickness
}
