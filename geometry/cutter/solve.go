package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// solved returns p with the quantity it is solved for filled in, and the height
// of the form's lowest point over the wheel's centre at depth.
func (p Pointed) solved() (Pointed, float64, error) {
	switch p.Solve {
	case BackRadius:
		return p.solvedBack(geometry.LeastLength, geometry.MostLength, Pointed.withBackRadius)
	case BackAngle:
		return p.solvedBack(float64(p.leastBackAngle()), float64(mostBackLean-p.FloorSlope), Pointed.withBackAngle)
	case RootDiameter:
		return p.solvedRoot()
	}
	return p.solvedLand()
}

func (p Pointed) withBackRadius(r float64) Pointed { p.BackRadius = r; return p }
func (p Pointed) withBackAngle(a float64) Pointed  { p.BackAngle = geometry.Angle(a); return p }

// landAt is the arc t = R(2π/N − ψ) left on the tip with the wheel's centre h
// below the form; negative where neighbouring cuts overlap.
func (p Pointed) landAt(s sweep, h float64) float64 {
	psi, _, _ := s.spread(p.setOver(), h, p.TipRadius)
	return p.TipRadius * (2*math.Pi/float64(p.Count) - psi)
}

// heightAtRoot is the height at which the form touches the root circle.
func (p Pointed) heightAtRoot(s sweep) float64 { return s.touch(p.setOver(), p.RootRadius) }

// solvedLand takes the land that the depth leaves.
func (p Pointed) solvedLand() (Pointed, float64, error) {
	s := p.profile().swept
	h := p.heightAtRoot(s)
	p.Land = p.landAt(s, h)
	if p.Land < -noLand {
		least := p.rootWithLand(s, 0)
		return p, 0, geometry.AtLeast(RootDiameter, 2*p.RootRadius, 2*least, "cutter.no-tooth-left")
	}
	if p.Land < noLand {
		p.Land = 0
	}
	return p, h, nil
}

// solvedRoot feeds until the wanted land is left. A deeper cut never leaves more
// land, so the depth is bracketed by first touch and the deepest cut there is.
func (p Pointed) solvedRoot() (Pointed, float64, error) {
	s := p.profile().swept
	if least := p.landAt(s, s.touch(p.setOver(), p.leastRoot())); least > p.Land {
		return p, 0, geometry.AtLeast(Land, p.Land, least, "cutter.form-too-narrow")
	}
	p.RootRadius = p.rootWithLand(s, p.Land)
	return p, p.heightAtRoot(s), nil
}

// rootWithLand returns the root radius of the shallowest cut that leaves no more
// than a land. The deepest cut must leave no more.
func (p Pointed) rootWithLand(s sweep, land float64) float64 {
	return seek.Last(p.leastRoot(), p.TipRadius, 0, func(root float64) bool {
		return p.landAt(s, s.touch(p.setOver(), root)) <= land
	})
}

// solvedBack seeks the back, between least and most, that leaves the wanted land
// at the wanted root: a larger radius or lean makes the space wider.
func (p Pointed) solvedBack(least, most float64, with func(Pointed, float64) Pointed) (Pointed, float64, error) {
	land := func(v float64) float64 {
		q := with(p, v)
		s := q.profile().swept
		return q.landAt(s, q.heightAtRoot(s))
	}
	if widest := land(least); widest < p.Land {
		if widest < noLand {
			return p, 0, p.rootTooDeep(least, with)
		}
		return p, 0, geometry.AtMost(Land, p.Land, widest, "cutter.land-too-wide")
	}
	if narrowest := land(most); narrowest > p.Land {
		return p, 0, geometry.AtLeast(Land, p.Land, narrowest, "cutter.land-too-narrow")
	}
	p = with(p, seek.Last(least, most, 0, func(v float64) bool { return land(v) >= p.Land }))
	return p, p.heightAtRoot(p.profile().swept), nil
}

// rootTooDeep is the Limit of a root at which even the narrowest back leaves no
// land.
func (p Pointed) rootTooDeep(least float64, with func(Pointed, float64) Pointed) error {
	q := with(p, least)
	root := q.rootWithLand(q.profile().swept, p.Land)
	return geometry.AtLeast(RootDiameter, 2*p.RootRadius, 2*root, "cutter.no-tooth-left")
}
