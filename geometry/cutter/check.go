package cutter

import (
	"errors"

	"tipline/geometry"
)

// ErrSolve says that Solve names no quantity that a pointed form of this kind
// can be solved for.
var ErrSolve = errors.New("cutter: a pointed tooth is solved for its land, root diameter, back radius or back angle")

// check refuses values that no pointed form can have, one by one and together.
func (p Pointed) check() error {
	if err := p.checkSolve(); err != nil {
		return err
	}
	if p.Count < fewestTeeth || p.Count > mostTeeth {
		return geometry.Between(Count, float64(p.Count), fewestTeeth, mostTeeth, "cutter.count")
	}
	for _, v := range p.ranges() {
		if !(v.value >= v.least && v.value <= v.most) {
			return geometry.Between(v.field, v.value*v.shown(), v.least*v.shown(), v.most*v.shown(), v.code)
		}
	}
	return p.checkFit()
}

func (p Pointed) checkSolve() error {
	switch p.Solve {
	case RootDiameter, Land:
		return nil
	case BackRadius:
		if !p.Straight {
			return nil
		}
	case BackAngle:
		if p.Straight {
			return nil
		}
	}
	return ErrSolve
}

// bounds is a field's value and the range it may have.
type bounds struct {
	field              geometry.Quantity
	value, least, most float64
	code               string
}

// shown is what a radius is multiplied by to be shown as the diameter the maker
// typed.
func (b bounds) shown() float64 {
	if b.field == RootDiameter || b.field == TipDiameter {
		return 2
	}
	return 1
}

// ranges lists every field that is read and the range it may have by itself.
func (p Pointed) ranges() []bounds {
	list := []bounds{
		{TipDiameter, p.TipRadius, geometry.LeastLength / 2, geometry.MostLength / 2, "cutter.tip-diameter"},
		{Undercut, float64(p.Undercut), 0, float64(mostUndercut), "cutter.undercut"},
		{FrontRelief, float64(p.FrontRelief), 0, float64(mostFrontRelief), "cutter.front-relief"},
		{FloorSlope, float64(p.FloorSlope), 0, float64(mostFloorSlope), "cutter.floor-slope"},
		{Floor, p.Floor, 0, geometry.MostLength, "cutter.floor"},
		{CornerRadius, p.CornerRadius, 0, geometry.MostLength, "cutter.corner-radius"},
		{StockWidth, p.StockWidth, 0, geometry.MostLength, "cutter.stock-width"},
	}
	if p.Solve != Land {
		list = append(list, bounds{Land, p.Land, 0, p.pitch(), "cutter.land"})
	}
	if p.Solve != RootDiameter {
		list = append(list, bounds{RootDiameter, p.RootRadius, p.leastRoot(), p.TipRadius - coincide, "cutter.root-diameter"})
	}
	switch {
	case !p.Straight && p.Solve != BackRadius:
		list = append(list, bounds{BackRadius, p.BackRadius, geometry.LeastLength, geometry.MostLength, "cutter.back-radius"})
	case p.Straight && p.Solve != BackAngle:
		list = append(list, bounds{BackAngle, float64(p.BackAngle), float64(p.leastLean()), float64(mostBackLean - p.FloorSlope), "cutter.back-angle"})
	}
	if p.Straight {
		list = append(list, bounds{BackFillet, p.BackFillet, 0, geometry.MostLength, "cutter.back-fillet"})
	}
	return list
}

// checkFit refuses roundings that the floor is too short for.
func (p Pointed) checkFit() error {
	if room := p.cornerRoom(); p.CornerRadius > room {
		return geometry.AtMost(CornerRadius, p.CornerRadius, room, "cutter.corner-over-floor")
	}
	if !p.Straight {
		return nil
	}
	if p.Solve == BackAngle {
		if least := p.leastBackAngle(); least > mostBackLean-p.FloorSlope {
			room := p.filletRoom(mostBackLean - p.FloorSlope)
			return geometry.AtMost(BackFillet, p.BackFillet, room, "cutter.fillet-over-floor")
		}
		return nil
	}
	if room := p.filletRoom(p.BackAngle); p.BackFillet > room {
		return geometry.AtMost(BackFillet, p.BackFillet, room, "cutter.fillet-over-floor")
	}
	return nil
}
