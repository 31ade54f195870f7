package depthing

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// same is how near, in radians of the follower, two pairs must stand to be taken
// to push together: a thousand times what rounding leaves of an angle.
const same = 1e-12

// justBefore is how far before the line of centres, in radians of the driver, it is
// asked whether a pair leads: far over rounding, and under any approach that matters.
const justBefore = 1e-9

// atTip is how near, in mm, to the driver's tip radius a contact is at the tip:
// rounding in coordinates up to 2,000 mm, a thousand times over.
const atTip = 1e-9

// action finds where a pair takes over and where it is at an end: the driver's
// angles at which it takes the load from the pair before it, at which its contact
// stands on the line of centres, and at which, with no other pair to relieve it,
// its contact reaches the driver's tip.
func (p *pairing) action(t *Turn) {
	line, ok := p.line()
	if !ok {
		return
	}
	t.Recess = geometry.Angle(math.Max(0, p.end(line)-line))
	t.Approach = geometry.Angle(math.Max(0, line-p.begin(line)))
	t.Contact = float64(t.Approach+t.Recess) / p.pitch
}

// line returns the driver's angle at which a pair's contact crosses the line of
// centres.
func (p *pairing) line() (float64, bool) {
	for i := 1; i < len(p.blocks); i++ {
		if p.blocks[i-1].ok && p.blocks[i].ok && p.before(p.blocks[i-1], p.first+i-1) && !p.before(p.blocks[i], p.first+i) {
			return seek.Last(p.angle(p.first+i-1), p.angle(p.first+i), 0, func(a float64) bool {
				return aside(p.meet(a), a) > 0
			}), true
		}
	}
	return 0, false
}

// before reports whether the contact stands before the line of centres.
func (p *pairing) before(b block, step int) bool { return aside(b, p.angle(step)) > 0 }

// aside returns how far before the line of centres a contact stands, in mm.
func aside(b block, driver float64) float64 {
	return b.ahead.at.Rotate(geometry.Angle(driver)).X
}

// end returns the driver's angle at which the pair's contact, followed on from
// the line of centres, reaches the driver's tip or the two part. Over a round top
// it is at the tip for a moment only, and then on the tooth's other side.
func (p *pairing) end(line float64) float64 {
	flank := math.Copysign(1, p.meet(line).ahead.at.X)
	runs := func(b block) bool { return b.ok && b.ahead.at.Norm() < p.tip-atTip && b.ahead.at.X*flank > 0 }
	i := int(math.Floor(line/p.pitch*float64(p.steps))) + 1
	for ; i < p.first+len(p.blocks); i++ {
		if !runs(p.at(i)) {
			return seek.Last(math.Max(line, p.angle(i-1)), p.angle(i), 0, func(a float64) bool { return runs(p.meet(a)) })
		}
	}
	return p.angle(i - 1)
}

// begin returns the driver's angle at which the pair takes over from the one
// before it, at or before the line of centres.
func (p *pairing) begin(line float64) float64 {
	leads := func(now, earlier block) bool {
		return now.ok && (!earlier.ok || now.ahead.lead >= earlier.ahead.lead-same)
	}
	if before := line - justBefore; !leads(p.meet(before), p.meet(before+p.pitch)) {
		return line
	}
	for i := int(math.Ceil(line/p.pitch*float64(p.steps))) - 1; i >= p.first; i-- {
		if !leads(p.at(i), p.at(i+p.steps)) {
			return seek.Last(math.Min(line, p.angle(i+1)), p.angle(i), 0, func(a float64) bool { return leads(p.meet(a), p.meet(a+p.pitch)) })
		}
	}
	return p.angle(p.first)
}
