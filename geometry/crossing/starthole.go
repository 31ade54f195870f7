package crossing

import (
	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// drill finds the start hole: in the middle between the arms, on the axis where they
// are straight, as near the rim as leaves the allowance all round; where nothing
// hinders it, it touches the saw line at the rim. None where none is asked for or none
// fits.
func (p *pattern) drill(s Spec) error {
	if s.StartHole == 0 {
		return nil
	}
	at, ok := p.outermost(s.StartHole/2 + s.Allowance)
	if !ok {
		return nil
	}
	centre := p.middle(at)
	hole, err := geometry.Circle(centre, s.StartHole/2, ofStartHole)
	if err != nil {
		return err
	}
	p.start, p.hole = centre, hole
	return nil
}

// middle returns the place in the middle between the arms that lies at from the
// wheel's centre.
func (p pattern) middle(at float64) geometry.Point {
	place, _ := p.line.reach(geometry.Point{}, at, 0)
	return place
}

// outermost returns how far from the wheel's centre the place in the middle nearest
// to the rim lies that is at least need from the window's outline, and false when
// there is none. Along the middle the room rises to one greatest value and falls
// again: between straight sides it is the least of distances to lines and circles,
// each of them concave.
func (p pattern) outermost(need float64) (at float64, ok bool) {
	at = p.rim - need
	enough := func(at float64) bool { return p.room(at) >= need-same }
	if at >= p.hub && enough(at) {
		return at, true
	}
	widest := p.widest()
	if !enough(widest) {
		return 0, false
	}
	return seek.Last(widest, at, picometre, enough), true
}

// room returns how far the place in the middle lies from the window's outline;
// negative outside it.
func (p pattern) room(at float64) float64 { return p.outline.Margin(p.middle(at)) }

// widest returns how far from the wheel's centre the place in the middle with the
// most room lies.
func (p pattern) widest() float64 { return seek.Top(p.hub, p.rim, same, p.room) }

// largestHole returns the diameter of the largest start hole that fits in the
// middle and leaves the allowance all round; 0 or less when none does.
func (p pattern) largestHole(allowance float64) float64 {
	return 2 * (p.room(p.widest()) - allowance)
}
