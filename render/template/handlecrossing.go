package template

import (
	"math"
	"slices"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// CrossingHandles returns the handles of a crossing template, at full scale, on
// the window before arm 0: rim and hub in its middle, the arm's widths, sweep and
// waist on arm 0, the fillets at the arm before it, saw line, start hole and bore.
// What has no place, such as a bore of 0, has no handle. The crossing's own come before
// the maker's additions.
func CrossingHandles(w Wheel) []Handle {
	handles, additions := boreHandle(w), additionHandles(w.Additions)
	if w.Crossing == nil || len(w.Crossing.Windows) == 0 {
		return append(handles, additions...)
	}
	lay := w.Crossing
	win := lay.Windows[len(lay.Windows)-1]
	middle := geometry.Clock((lay.Arms[len(lay.Arms)-1].Angle + geometry.FullTurn) / 2)
	root := lay.RimRadius + lay.Spec.Rim
	handles = append(handles,
		lengthHandle("crossing.rim", geometry.Polar(lay.RimRadius, middle), leastLength, func(p geometry.Point) float64 {
			return root - p.Norm()
		}).from(geometry.Polar(root, middle)),
		diameterHandle("crossing.hub", geometry.Polar(lay.HubRadius, hubHandleAt(win, middle))))
	handles = append(handles, outerHandle(lay, win, middle)...)
	handles = append(handles, armHandles(lay, win)...)
	for _, f := range filletCorners(win.Outline) {
		if h, ok := f.handle(); ok {
			handles = append(handles, h)
		}
	}
	return slices.Concat(handles, sawHandles(lay, win), additions)
}

// outerHandle returns the handle of the radius of a window's outer edge, near its
// end, where the edge touches the rim's circle in the window's middle; none where it
// is that circle, or flatter and meets it at the arms.
func outerHandle(lay *crossing.Layout, win crossing.Window, middle geometry.Angle) []Handle {
	if lay.Spec.OuterRadius <= 0 || lay.Spec.OuterRadius > lay.RimRadius {
		return nil
	}
	touch, inward := geometry.Polar(lay.RimRadius, middle), geometry.Polar(-1, middle)
	for i := range win.Outline.Len() {
		if s := win.Outline.Segment(i); s.Quantity == "crossing.outer_radius" {
			return []Handle{lengthHandle(s.Quantity, s.At(0.15), leastLength, func(p geometry.Point) float64 {
				off := p.Sub(touch)
				if off.Dot(inward) <= 0 {
					return greatestLength
				}
				return off.Dot(off) / (2 * off.Dot(inward))
			})}
		}
	}
	return nil
}

// hubHandleAt returns the direction in which the hub's handle stands: the window's
// middle, or where the window ends in an arc short of the hub, arm 0.
func hubHandleAt(win crossing.Window, middle geometry.Angle) geometry.Angle {
	for i := range win.Outline.Len() {
		if win.Outline.Segment(i).Quantity == "crossing.hub" {
			return middle
		}
	}
	return geometry.Clock(0)
}

// armHandles returns the handles of arm 0: of its widths, on the side of it that the
// window before it has, and of its sweep or waist.
func armHandles(lay *crossing.Layout, win crossing.Window) []Handle {
	side, ok := sideOfArm(win.Outline)
	if style := lay.Spec.Style; style == crossing.Swept || style == crossing.Waisted {
		return bentArmHandles(lay, side, ok)
	}
	if !ok || !side.IsLine() {
		return nil
	}
	outer, inner := side.At(0.15), side.At(0.85)
	if side.From.Norm() < side.To.Norm() {
		outer, inner = inner, outer
	}
	atRim, atHub := lay.Spec.ArmAtRim, lay.Spec.ArmAtHub
	share := func(at geometry.Point) float64 { return (at.Y - lay.HubRadius) / (lay.RimRadius - lay.HubRadius) }
	return []Handle{
		lengthHandle("crossing.arm_at_rim", outer, leastLength, func(p geometry.Point) float64 {
			return atHub + (-2*p.X-atHub)/share(outer)
		}).between(geometry.Point{X: -atRim / 2, Y: lay.RimRadius}, geometry.Point{X: atRim / 2, Y: lay.RimRadius}),
		lengthHandle("crossing.arm_at_hub", inner, leastLength, func(p geometry.Point) float64 {
			return atRim + (-2*p.X-atRim)/(1-share(inner))
		}).between(geometry.Point{X: -atHub / 2, Y: lay.HubRadius}, geometry.Point{X: atHub / 2, Y: lay.HubRadius}),
	}
}

// sideOfArm returns the side of a window that lies nearest 12 o'clock.
func sideOfArm(o geometry.Outline) (side geometry.Segment, ok bool) {
	nearest := math.Inf(1)
	for i := range o.Len() {
		s := o.Segment(i)
		if far := math.Abs(float64((s.At(0.5).Direction() - geometry.Clock(0)).Normal())); s.Quantity == "crossing.arm_at_rim" && far < nearest {
			nearest, side, ok = far, s, true
		}
	}
	return side, ok
}

// filletCorner is a corner of a window: its rounding, or where it is sharp the two
// edges that meet there.
type filletCorner struct {
	q             geometry.Quantity
	arc           geometry.Segment
	before, after geometry.Segment
}

func (f filletCorner) handle() (Handle, bool) {
	if f.before == (geometry.Segment{}) {
		return roundingHandle(f.q, f.arc, 1)
	}
	return sharpHandle(f.q, f.before, f.after, 1)
}

// filletCorners returns one corner at the rim and one at the hub, those that lie
// furthest from 12 o'clock.
func filletCorners(o geometry.Outline) []filletCorner {
	var found []filletCorner
	for _, end := range []struct{ q, circle geometry.Quantity }{
		{"crossing.fillet_at_rim", "crossing.rim"}, {"crossing.fillet_at_hub", "crossing.hub"},
	} {
		best, furthest := filletCorner{q: end.q}, -1.0
		for i := range o.Len() {
			before, s := o.Segment(i-1), o.Segment(i)
			far := math.Abs(float64((s.At(0.5).Direction() - geometry.Clock(0)).Normal()))
			switch {
			case s.Quantity == end.q && far > furthest:
				best, furthest = filletCorner{q: end.q, arc: s}, far
			case furthest < 0 && joins(before, s, end.circle, "crossing.arm_at_rim"):
				best = filletCorner{q: end.q, before: before, after: s}
			}
		}
		if furthest >= 0 || best.after != (geometry.Segment{}) {
			found = append(found, best)
		}
	}
	return found
}

// joins reports whether of two segments one was made by a and the other by b.
func joins(s, t geometry.Segment, a, b geometry.Quantity) bool {
	return s.Quantity == a && t.Quantity == b || s.Quantity == b && t.Quantity == a
}

// sawHandles returns the handles of the allowance, on the saw line's side by arm 0,
// and of the start hole, in the window after arm 0, for in that before it the rim's
// handle stands close by.
func sawHandles(lay *crossing.Layout, win crossing.Window) []Handle {
	var handles []Handle
	if side, ok := sideOfArm(win.Outline); ok && lay.Spec.Allowance > 0 {
		middle, way := side.At(0.5), side.Tangent(0.5).Left()
		at := middle.Add(way.Times(lay.Spec.Allowance))
		handles = append(handles, lengthHandle("crossing.allowance", at, 0, func(p geometry.Point) float64 {
			return p.Sub(middle).Dot(way)
		}).from(middle))
	}
	if win := lay.Windows[0]; win.StartHole.Len() > 0 {
		r := win.Start.Dist(win.StartHole.Vertex(0).Point)
		in := win.Start.Times(1 - r/win.Start.Norm())
		handles = append(handles, lengthHandle("crossing.start_hole", in, leastLength, func(p geometry.Point) float64 {
			return 2 * p.Dist(win.Start)
		}).from(win.Start.Times(2).Sub(in)))
	}
	return handles
}

// boreHandle returns the handle of the bore of a wheel drawn at full scale from its
// face, at 3 o'clock.
func boreHandle(w Wheel) []Handle {
	if w.Bore <= 0 {
		return nil
	}
	return []Handle{diameterHandle("bore", geometry.Point{X: w.Bore / 2})}
}
