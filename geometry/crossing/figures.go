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

// figure works out area, mass, inertia, balance, removed share and wind-up. The
// teeth themselves are taken as balanced, being alike all round.
func (l *Layout) figure(patterns []pattern) {
	b := l.Blank
	bore := b.Bore / 2
	windows, polar, first := 0.0, 0.0, geometry.Point{}
	for j := range l.Arms {
		p := patterns[l.patternOf(j)]
		windows += p.area
		polar += p.polar
		first = first.Add(p.centroid.Times(p.area).Rotate(l.axis(j)))
	}
	solid := b.Area - math.Pi*bore*bore
	weight := b.Density * gramsPerCubicMM * b.Thickness // g for each mm²
	l.Area = solid - windows
	l.Mass = weight * l.Area
	l.Uncrossed = Figures{solid, weight * solid, weight * (b.Polar - math.Pi/2*math.Pow(bore, 4))}
	l.Inertia = l.Uncrossed.Inertia - weight*polar
	l.RemovedShare = windows / solid
	l.WindUp = windUp(b, l.Spec)
	l.Narrowest = narrowest(l.HubRadius, l.RimRadius, l.Spec)
	l.Narrowest.Area = l.Narrowest.Width * b.Thickness
	if u := weight * first.Norm(); u > balanced {
		l.Unbalance = u
		l.Heavy = geometry.Clock(first.Times(-1).Direction()).Turn()
	}
}
