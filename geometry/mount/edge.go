package mount

import (
	"math"

	"tipline/geometry"
)

// same is how near to an edge still counts as clear of it, in mm: coordinates
// agree to that.
const same = 1e-9

// edge is an edge that screws may come too near to.
type edge struct {
	breaks, near string // what is said when a hole breaks into it, or comes near
	inner        bool   // a larger circle is what moves away from it
	hole         float64
	off          func(radius float64) float64 // from a screw's centre, where the screws stand at that radius; negative within
	slope        float64                      // the most by which off grows with the radius
}

// slack returns how much more than need the edge is away, in mm of radius that
// the screws would have to move at least to gain or lose it.
func (e edge) slack(radius, need float64) float64 { return (e.off(radius) - need) / e.slope }

// edges lists the edges round the screws of a bench.
func (b bench) edges() []edge {
	through, tapped := b.clear.MM/2, b.screws.Thread.Tap/2
	var all []edge
	for _, s := range b.seats {
		all = append(all, s.middle(through), outward("mount.breaks-root", "mount.near-root", through, s.Root/2))
		all = append(all, b.openings(s, through)...)
	}
	if core := max(b.collet.Register, b.collet.Bore); core > 0 {
		all = append(all, inward("mount.breaks-register", "mount.near-register", tapped, core/2))
	}
	if b.collet.Flange > 0 {
		all = append(all, outward("mount.breaks-flange", "mount.near-flange", tapped, b.collet.Flange/2))
	}
	if b.screws.Count > 1 {
		all = append(all, b.neighbour(through))
	}
	return all
}

// middle is the bore, or where none is said the centre, where the arbor goes all the same.
func (s Seat) middle(hole float64) edge {
	if s.Bore > 0 {
		return inward("mount.breaks-bore", "mount.near-bore", hole, s.Bore/2)
	}
	return inward("mount.breaks-centre", "mount.near-centre", hole, 0)
}

// inward is the circle of an opening round the centre.
func inward(breaks, near string, hole, radius float64) edge {
	return edge{breaks, near, true, hole, func(r float64) float64 { return r - radius }, 1}
}

// outward is the circle round which metal ends.
func outward(breaks, near string, hole, radius float64) edge {
	return edge{breaks, near, false, hole, func(r float64) float64 { return radius - r }, 1}
}

// neighbour is the edge of the next screw's hole.
func (b bench) neighbour(hole float64) edge {
	chord := 2 * math.Sin(math.Pi/float64(b.screws.Count))
	return edge{"mount.breaks-next", "mount.near-next", true, hole, func(r float64) float64 { return chord*r - hole }, chord}
}

// breaksHole is what is said of screws that run into another hole, and
// breaksHoleInside where it is inside their circle that it lies.
const (
	breaksHole       = "mount.breaks-hole"
	breaksHoleInside = "mount.breaks-hole-inside"
)

// openings are a wheel's windows and other holes; between two holes the least of
// metal must stay, as there must between any two that a wheel has.
func (b bench) openings(s Seat, hole float64) []edge {
	var windows, holes []opening
	for _, w := range s.Windows {
		if w.Len() > 0 {
			windows = append(windows, windowOf(w))
		}
	}
	for _, h := range s.Holes {
		off := func(p geometry.Point) float64 { return p.Dist(h.At) - h.Diameter/2 }
		holes = append(holes, opening{h.At, h.Diameter / 2, off})
	}
	var all []edge
	if len(windows) > 0 {
		all = append(all, edge{"mount.breaks-window", "mount.near-window", false, hole, b.worst(windows), 1})
	}
	if len(holes) > 0 {
		all = append(all, edge{breaksHole, "mount.near-hole", false, hole + geometry.LeastLength, b.worst(holes), 1})
	}
	return all
}

// opening is one opening in a wheel, and a circle that it lies in.
type opening struct {
	centre geometry.Point
	radius float64
	off    func(geometry.Point) float64 // of a point from its edge, negative within
}

func windowOf(w geometry.Outline) opening {
	box := w.Bounds()
	off := func(p geometry.Point) float64 { return -w.Margin(p) }
	return opening{box.Min.Toward(box.Max, 0.5), box.Min.Dist(box.Max) / 2, off}
}

// worst returns the least that any screw is off any of the openings; one that
// lies in a circle farther off than what is found already is not asked.
func (b bench) worst(openings []opening) func(float64) float64 {
	ways := b.ways()
	return func(r float64) float64 {
		least := math.Inf(1)
		for _, w := range ways {
			p := w.Times(r)
			for _, o := range openings {
				if p.Dist(o.centre)-o.radius < least {
					least = min(least, o.off(p))
				}
			}
		}
		return least
	}
}
