package laws

import (
	"math"
	"slices"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/tooth"
)

// near is how far off, in mm, a place may be for the digits of a wheel of metres.
const near = 1e-6

// wheel looks at the laws of one wheel.
func (v *verdict) wheel(w *solve.Wheel) {
	v.holds(w.Teeth != nil || refused(w.Findings), "%s: no teeth and no error", w.ID())
	if w.Teeth == nil {
		return
	}
	v.built = append(v.built, w.Teeth.Form, w.Hand)
	v.teeth(w.ID(), *w.Teeth)
	v.tooling(w.ID(), &w.Tooling, *w.Teeth)
	if c := w.Part.Crossing; c != nil {
		v.holds(w.Crossing != nil || refused(w.Findings), "%s: no crossing and no error", w.ID())
	}
	if w.Crossing != nil {
		v.built = append(v.built, string(w.Crossing.Spec.Style), string(w.Crossing.Spec.Placing))
		v.crossing(w)
	}
	if w.Part.Mount != nil && !w.Part.Mount.Screws.Empty() && !v.stacked(w.ID()) {
		v.holds(w.Mounting != nil || refused(w.Findings), "%s: no screws and no error", w.ID())
	}
	if w.Mounting != nil {
		v.built = append(v.built, "screws")
		v.mounting(w)
	}
}

// stacked reports whether a stack names the wheel, whose screws are then its own.
func (v *verdict) stacked(id string) bool {
	return slices.ContainsFunc(v.job.Stacks, func(s *job.Stack) bool { return slices.Contains(s.Wheels, id) })
}

// teeth looks at a toothed outline: simple and anticlockwise, between root and tip,
// with a tip wherever the figures say there is one and as many as they say, alike
// all round.
func (v *verdict) teeth(id string, w tooth.Wheel) {
	o := w.Outline
	v.holds(w.RootRadius > 0 && w.RootRadius <= w.TipRadius, "%s: root %v, tip %v", id, w.RootRadius, w.TipRadius)
	v.holds(o.Area() > 0, "%s: the teeth enclose %v", id, o.Area())
	if w.Form == "measured" {
		return
	}
	if w.Count <= 60 || v.seldom(16) {
		at, crosses := o.SelfCrossing()
		v.holds(!crosses, "%s: the teeth cross themselves at %v", id, at)
	}
	p := dense(o, max(4, 128/w.Count)) // the fewer the teeth, the longer their arcs
	least, most := p.reach()
	v.holds(most <= w.TipRadius+near, "%s: teeth reach %v, beyond the tip circle %v", id, most, w.TipRadius)
	v.holds(least >= w.RootRadius-near, "%s: teeth are cut to %v, below the root circle %v", id, least, w.RootRadius)
	v.tips(id, w, p)
	if v.seldom(8) {
		cut := refine(o)
		area, polar := cut.measured(polygon.area), cut.measured(polygon.polar)
		v.holds(math.Abs(area-o.Area()) <= 1e-5*o.Area(), "%s: area %v, as a polygon %v", id, o.Area(), area)
		v.holds(math.Abs(polar-o.PolarMoment()) <= 1e-5*o.PolarMoment(), "%s: polar moment %v, as a polygon %v", id, o.PolarMoment(), polar)
	}
}

// tips counts how often the outline rises past the middle of the teeth, and looks for
// tip 0 and another where they should be.
func (v *verdict) tips(id string, w tooth.Wheel, p polygon) {
	middle := (w.RootRadius + w.TipRadius) / 2
	rises := 0
	for i, at := range p {
		next := p[(i+1)%len(p)]
		if at.Norm() < middle && next.Norm() >= middle {
			rises++
		}
	}
	v.holds(rises == w.Count, "%s: %d teeth rise, of %d", id, rises, w.Count)
	for _, i := range []int{0, 1 + v.rnd.IntN(w.Count-1)} {
		clockwise := 2 * math.Pi * float64(i) / float64(w.Count)
		at := geometry.Point{X: w.TipRadius * math.Sin(clockwise), Y: w.TipRadius * math.Cos(clockwise)}
		on, _ := w.Outline.Nearest(at)
		v.holds(on.Dist(at) < near, "%s: tip %d is %v mm from where it should be", id, i, on.Dist(at))
	}
	v.alike(id, w)
}

// alike turns a corner of the outline by a pitch onto its like on the next tooth.
func (v *verdict) alike(id string, w tooth.Wheel) {
	n := w.Outline.Len()
	if n%w.Count != 0 {
		v.breaks("%s: %d corners of %d teeth", id, n, w.Count)
		return
	}
	i := v.rnd.IntN(n)
	sin, cos := math.Sincos(2 * math.Pi / float64(w.Count))
	from, to := w.Outline.Vertex(i), w.Outline.Vertex(i+n/w.Count)
	for _, turn := range []float64{1, -1} {
		s := turn * sin
		if math.Hypot(cos*from.X-s*from.Y-to.X, s*from.X+cos*from.Y-to.Y) < near && math.Abs(from.Bulge-to.Bulge) < 1e-6 {
			return
		}
	}
	v.breaks("%s: corner %d and its like on the next tooth differ", id, i)
}

// pinion looks at the laws of one pinion.
func (v *verdict) pinion(p *solve.Pinion) {
	v.holds(p.Leaves != nil || p.Lantern != nil || refused(p.Findings), "%s: no leaves and no error", p.ID())
	switch {
	case p.Leaves != nil:
		v.built = append(v.built, "leaves")
		v.teeth(p.ID(), *p.Leaves)
		v.tooling(p.ID(), &p.Tooling, *p.Leaves)
	case p.Lantern != nil:
		v.built = append(v.built, "lantern")
		l := p.Lantern
		apart := 2 * l.PitchRadius * math.Sin(math.Pi/float64(len(l.Holes)))
		v.holds(apart > l.TrundleDiameter, "%s: trundles of %v stand %v apart", p.ID(), l.TrundleDiameter, apart)
		v.holds(math.Abs(l.Step-apart) < near, "%s: trundles stand %v apart, said %v", p.ID(), apart, l.Step)
	}
}
