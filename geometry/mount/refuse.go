package mount

import (
	"math"

	"tipline/assets/tables"
	"tipline/geometry"
)

// refuse returns why the holes cannot be drilled; nil where they can.
func (b bench) refuse(edges []edge) *geometry.Limit {
	radius := b.screws.Circle / 2
	if room(edges, hole, radius) >= -same {
		return nil
	}
	worst := edges[0]
	for _, e := range edges[1:] {
		if e.slack(radius, e.hole) < worst.slack(radius, worst.hole) {
			worst = e
		}
	}
	down, fewer := nearest(edges, hole, radius, 0)
	up, more := nearest(edges, hole, radius, max(radius, b.most()))
	value := b.screws.Circle
	switch {
	case more && worst.breaks == breaksHole && (!fewer || up-radius < radius-down):
		return geometry.AtLeast(ofCircle, value, 2*up, breaksHoleInside)
	case more && worst.inner:
		return geometry.AtLeast(ofCircle, value, 2*up, worst.breaks)
	case fewer && !worst.inner:
		return geometry.AtMost(ofCircle, value, 2*down, worst.breaks)
	case fewer:
		return geometry.AtMost(ofCircle, value, 2*down, "mount.circle-too-large")
	case more:
		return geometry.AtLeast(ofCircle, value, 2*up, "mount.circle-too-small")
	}
	return b.noCircle()
}

// most returns the radius beyond which no screw can stand.
func (b bench) most() float64 {
	most := math.Inf(1)
	for _, s := range b.seats {
		most = min(most, s.Root/2)
	}
	return most
}

// noCircle is the limit of screws that no circle has room for: fewer of them, or
// the largest thread of the same system, would do.
func (b bench) noCircle() *geometry.Limit {
	fewer := b
	for fewer.screws.Count--; fewer.screws.Count >= 1; fewer.screws.Count-- {
		if fewer.hasCircle() {
			return geometry.AtMost(ofScrews, float64(b.screws.Count), float64(fewer.screws.Count), "mount.too-many-screws")
		}
	}
	finest, thinner := 0.0, b
	for _, t := range tables.Threads() {
		if t.System != b.screws.Thread.System || t.Major <= finest || t.Major >= b.screws.Thread.Major {
			continue
		}
		thinner.screws.Thread, thinner.clear = t, clearance(t)
		if thinner.hasCircle() {
			finest = t.Major
		}
	}
	if finest > 0 {
		return geometry.AtMost(ofThread, b.screws.Thread.Major, finest, "mount.thread-too-large")
	}
	return geometry.Refused(ofCircle, b.screws.Circle, "mount.no-room")
}

// hasCircle reports whether there is a circle that the screws could stand on.
func (b bench) hasCircle() bool {
	_, ok := nearest(b.edges(), hole, 0, b.most())
	return ok
}
