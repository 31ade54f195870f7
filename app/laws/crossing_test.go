package laws

import (
	"math"

	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/crossing"
)

// crossing looks at the laws of a crossing: every arm where it should stand, every
// window simple, between rim and hub and clear of the arms, and the metal and the
// windows together the blank.
func (v *verdict) crossing(w *solve.Wheel) {
	l, id := w.Crossing, w.ID()
	v.holds(len(l.Arms) == l.Spec.Arms && len(l.Windows) == l.Spec.Arms, "%s: %d arms and %d windows of %d", id, len(l.Arms), len(l.Windows), l.Spec.Arms)
	v.holds(l.RemovedShare > 0 && l.RemovedShare < 1, "%s: windows take %v of the metal", id, l.RemovedShare)
	v.holds(l.Area > 0 && l.Mass > 0 && l.Inertia > 0 && l.WindUp > 0, "%s: area %v, mass %v, inertia %v, wind-up %v", id, l.Area, l.Mass, l.Inertia, l.WindUp)
	v.holds(math.Abs(l.RimRadius-(w.Teeth.RootRadius-l.Spec.Rim)) < near, "%s: the rim's inside is at %v", id, l.RimRadius)
	v.stand(id, l, w.Teeth.Count)
	windows := 0.0
	for j, o := range l.Windows {
		windows += v.window(id, l, j, o)
		v.arm(id, l, j)
	}
	if v.seldom(4) {
		v.addUp(w, windows)
	}
}

// stand checks that arm j is on tip floor(jN/k + ½), or evenly spread.
func (v *verdict) stand(id string, l *crossing.Layout, teeth int) {
	k := len(l.Arms)
	for j, a := range l.Arms {
		tip := int(math.Floor(float64(j)*float64(teeth)/float64(k)+0.5)) % teeth
		even, on := float64(j)/float64(k), float64(tip)/float64(teeth)
		want := on
		if l.Spec.Placing == crossing.Equal {
			want = even
		}
		off := math.Remainder(float64(a.Angle)-2*math.Pi*want, 2*math.Pi)
		v.holds(a.Tip == tip && math.Abs(off) < 1e-9, "%s: arm %d is on tip %d at %v, should be on %d", id, j, a.Tip, a.Angle, tip)
		v.holds(math.Abs(math.Remainder(2*math.Pi*(want-on)-float64(a.Deviation), 2*math.Pi)) < 1e-9, "%s: arm %d deviates %v", id, j, a.Deviation)
	}
}

// window looks at one window and returns its area as a polygon.
func (v *verdict) window(id string, l *crossing.Layout, j int, w crossing.Window) float64 {
	cut := refine(w.Outline)
	least, most := cut.fine.reach()
	v.holds(most <= l.RimRadius+near, "%s: window %d reaches %v, into the rim from %v", id, j, most, l.RimRadius)
	v.holds(least >= l.HubRadius-near, "%s: window %d reaches %v, into the hub to %v", id, j, least, l.HubRadius)
	at, crosses := w.Outline.SelfCrossing()
	v.holds(!crosses, "%s: window %d crosses itself at %v", id, j, at)
	area := cut.measured(polygon.area)
	v.holds(math.Abs(area-w.Area) <= 1e-5*l.RimRadius*l.RimRadius, "%s: window %d has %v mm², as a polygon %v", id, j, w.Area, area)
	mirrored := w.Outline.Rotate(1).Mirror()
	least, most = dense(mirrored, lines).reach()
	v.holds(least >= l.HubRadius-near && most <= l.RimRadius+near, "%s: window %d turned and mirrored is another", id, j)
	v.holds(math.Abs(mirrored.Reverse().Area()-w.Area) <= 1e-9*w.Area+near, "%s: window %d turned and mirrored has another area", id, j)
	if v.seldom(4) {
		v.sawn(id, l, j, dense(w.Outline, sawnLines))
	}
	return area
}

// sawnLines is how many lines an arc of a window is cut into where it is asked whether a
// point is inside: even a whole circle of the rim's radius R then strays from its lines by
// R(1 − cos π/128), 3e-4 of it, and nearer to the edge than 5e-4 no point is asked of.
const sawnLines = 128

// sawn checks that saw line and start hole lie in the window, the allowance off its
// edge.
func (v *verdict) sawn(id string, l *crossing.Layout, j int, window polygon) {
	w := l.Windows[j]
	lines := w.SawLine
	if w.StartHole.Len() > 0 {
		lines = append(lines[:len(lines):len(lines)], w.StartHole)
	}
	for _, line := range lines {
		_, crosses := line.SelfCrossing()
		v.holds(!crosses, "%s: the saw line of window %d crosses itself", id, j)
		p := dense(line, 4)
		for range 4 {
			at := p[v.rnd.IntN(len(p))]
			on, _ := w.Outline.Nearest(at)
			v.holds(on.Dist(at) >= l.Spec.Allowance-near, "%s: the saw line of window %d is %v from its edge", id, j, on.Dist(at))
			v.holds(on.Dist(at) < 5e-4*l.RimRadius || window.inside(at), "%s: the saw line of window %d is outside", id, j)
		}
	}
}

// arm checks that the metal between two windows is nowhere thinner than asked. A
// straight arm is measured square to its own centre line; of the others the windows
// stand apart by the least width, less what a taper takes from the shortest way.
func (v *verdict) arm(id string, l *crossing.Layout, j int) {
	s, k := l.Spec, len(l.Windows)
	before, after := l.Windows[(j+k-1)%k].Outline, l.Windows[j].Outline
	length := l.RimRadius - l.HubRadius
	if s.Style == crossing.Straight {
		for _, o := range []geometry.Outline{before, after} {
			for _, at := range dense(o.Rotate(a90(l.Arms[j].Angle)), 8) {
				if share := (at.X - l.HubRadius) / length; share >= 0 && share <= 1 {
					want := (s.ArmAtHub + share*(s.ArmAtRim-s.ArmAtHub)) / 2
					v.holds(math.Abs(at.Y) >= want-near, "%s: arm %d is %v wide beside its middle, asked %v", id, j, math.Abs(at.Y), want)
				}
			}
		}
		return
	}
	if !v.seldom(4) {
		return
	}
	least := math.Min(s.ArmAtHub, s.ArmAtRim)
	if s.Style == crossing.Waisted {
		least = math.Min(l.Narrowest.Width, s.Waist)
		v.holds(l.Narrowest.Width <= s.Waist+near, "%s: the arm's narrowest is %v, its waist %v", id, l.Narrowest.Width, s.Waist)
	}
	taper := math.Cos(math.Atan((math.Max(s.ArmAtHub, s.ArmAtRim)-least)/length) * 2)
	apart, _, _ := before.Distance(after)
	v.holds(apart >= least*taper*0.98-near, "%s: windows beside arm %d stand %v apart, asked %v", id, j, apart, least)
}

// a90 is the turn that lays what points at an angle from 12 o'clock along the x axis.
func a90(clockwise geometry.Angle) geometry.Angle { return clockwise - math.Pi/2 }

// addUp checks that windows, bore, holes and what is left make the blank, and that the
// weight is that of what is left.
func (v *verdict) addUp(w *solve.Wheel, windows float64) {
	l := w.Crossing
	blank := refine(w.Teeth.Solid()).measured(polygon.area)
	gone := math.Pi * w.Bore * w.Bore / 4
	share := windows / (blank - gone)
	v.holds(math.Abs(share-l.RemovedShare) < 1e-4, "%s: windows take %v of the metal, as polygons %v", w.ID(), l.RemovedShare, share)
	for _, a := range w.Additions() {
		if a.Kind == crossing.HoleKind {
			gone += float64(len(a.EvenlySpread())) * math.Pi * a.Diameter * a.Diameter / 4
		}
	}
	if w.Mounting != nil {
		gone += float64(len(w.Mounting.Places)) * math.Pi * w.Mounting.Clear.MM * w.Mounting.Clear.MM / 4
	}
	left := blank - gone - windows
	v.holds(math.Abs(left-l.Area) < 1e-4*blank, "%s: %v mm² are left, as polygons %v", w.ID(), l.Area, left)
	mass := l.Area * w.Thickness * w.Material.Density * 1e-6
	v.holds(math.Abs(mass-l.Mass) < 1e-9*mass+1e-12, "%s: %v g, of its area %v", w.ID(), l.Mass, mass)
}
