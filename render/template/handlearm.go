package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// bentArmHandles returns the handles of a swept or waisted arm 0: its widths at the
// ends of its side towards the window before it, where the fillets round them off,
// the sweep at the hub's end of its centre line, and the waist on its side. side is
// that side, where there is one.
func bentArmHandles(lay *crossing.Layout, side geometry.Segment, ok bool) []Handle {
	s := lay.Spec
	sweep := geometry.Angle(0)
	if s.Style == crossing.Swept {
		sweep = s.Sweep
	}
	hub, rim := geometry.Polar(lay.HubRadius, geometry.Clock(-sweep)), geometry.Point{Y: lay.RimRadius}
	atHub := hub.Times(1 / hub.Norm())
	atRim := atHub.Rotate(2 * atHub.Angle(rim.Sub(hub))) // an arc turns at either end from its chord by as much
	handles := []Handle{
		widthHandle("crossing.arm_at_rim", rim, atRim.Left(), s.ArmAtRim),
		widthHandle("crossing.arm_at_hub", hub, atHub.Left(), s.ArmAtHub),
	}
	switch {
	case s.Style == crossing.Swept:
		return append(handles, oneHandle("crossing.sweep", hub, -mostSweep, mostSweep, func(p geometry.Point) float64 {
			return float64((p.Direction() - geometry.Clock(0)).Normal())
		}))
	case ok:
		return append(handles, waistHandle(s, side))
	}
	return handles
}

// mostSweep is the furthest that a sweep can be dragged, either way, in radians.
const mostSweep = math.Pi / 2

// widthHandle sets the width of an arm at a place of its centre line by how far a
// point lies to its left.
func widthHandle(q geometry.Quantity, at, left geometry.Point, width float64) Handle {
	return lengthHandle(q, at.Add(left.Times(width/2)), leastLength, func(p geometry.Point) float64 {
		return 2 * p.Sub(at).Dot(left)
	}).from(at.Sub(left.Times(width / 2)))
}

// waistHandle sets a waist, and where its place was asked for, that too. Else it
// stands where the arm is narrowest.
func waistHandle(s crossing.Spec, side geometry.Segment) Handle {
	at := geometry.Point{X: -s.Waist / 2, Y: s.WaistAt}
	if s.WaistAt == 0 {
		at.Y = side.At(0.5).Y
		if arc, ok := side.Arc(); ok {
			at.Y = min(max(arc.Centre.Y, min(side.From.Y, side.To.Y)), max(side.From.Y, side.To.Y))
		}
	}
	h := lengthHandle("crossing.waist", at, leastLength, func(p geometry.Point) float64 { return -2 * p.X }).from(at.Mirror())
	if s.WaistAt == 0 {
		return h
	}
	waist := h.Set
	h.Set = func(p geometry.Point) ([]Setting, error) {
		settings, err := waist(p)
		if err != nil {
			return nil, err
		}
		return append(settings, Setting{"crossing.waist_at", max(p.Y, leastLength)}), nil
	}
	return h
}
