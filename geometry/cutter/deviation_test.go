package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// strip is a piece of an edge as points close together.
type strip struct {
	pts   []geometry.Point
	floor bool
}

// strips returns every piece of an edge as points, moved up by lift.
func strips(s sweep, lift float64, steps int, floor func(geometry.Segment) bool) []strip {
	var list []strip
	for _, g := range s {
		n := steps
		if g.IsLine() {
			n = 1
		}
		var pts []geometry.Point
		for i := range n + 1 {
			pts = append(pts, g.At(float64(i)/float64(n)).Add(geometry.Point{Y: lift}))
		}
		list = append(list, strip{pts, floor(g)})
	}
	return list
}

// offFrom returns the distance of a point from strips, chord by chord, and whether
// a floor is as near as any flank.
func offFrom(list []strip, p geometry.Point) (d float64, floor bool) {
	var least [2]float64 // from flanks, from floors
	least[0], least[1] = math.Inf(1), math.Inf(1)
	for _, s := range list {
		of := 0
		if s.floor {
			of = 1
		}
		for i := 1; i < len(s.pts); i++ {
			a, way := s.pts[i-1], s.pts[i].Sub(s.pts[i-1])
			t := math.Max(0, math.Min(1, p.Sub(a).Dot(way)/way.Dot(way)))
			least[of] = math.Min(least[of], p.Dist(a.Add(way.Times(t))))
		}
	}
	return math.Min(least[0], least[1]), least[1] <= least[0]+1e-9
}

// hollowOf is how far at most the chords lie off the arcs of an edge.
func hollowOf(s sweep, steps int) float64 {
	most := 0.0
	for _, g := range s {
		if a, ok := g.Arc(); ok {
			most = math.Max(most, a.Radius*(1-math.Cos(float64(a.Sweep)/float64(2*steps))))
		}
	}
	return most
}

func never(geometry.Segment) bool { return false }

// worstOf goes along what one edge leaves, place by place, and returns the
// greatest distance from the other's flanks.
func worstOf(along sweep, lift float64, floor func(geometry.Segment) bool, from []strip) float64 {
	worst := 0.0
	for _, g := range along {
		for k := range 201 {
			d, onFloor := offFrom(from, g.At(float64(k)/200).Add(geometry.Point{Y: lift}))
			if !floor(g) && !onFloor {
				worst = math.Max(worst, d)
			}
		}
	}
	return worst
}

// The greatest deviation is what distances of points from chords say, both ways,
// and each one told along the flank is the distance there, on the side where the
// bit's edge, looked at from below, has been or not.
func TestDeviationAgainstDistances(t *testing.T) {
	const steps = 250
	eachBit(t, 75, 300, func(say string, c Cut, corners []Corner, g Ground) {
		wanted, left := strips(c.edge(), 0, steps, c.floor), strips(g.Cut.edge(), g.Lift, steps, never)
		worst := math.Max(worstOf(c.tipToTip(c.Height()), 0, c.floor, left),
			worstOf(g.Cut.tipToTip(g.Cut.Height()), g.Lift, never, wanted))
		slack := 1e-6*c.TipRadius + hollowOf(c.edge(), steps) + hollowOf(g.Cut.edge(), steps)
		require.GreaterOrEqual(t, math.Abs(g.Worst.Off), worst-slack, say)
		// It is a distance between the two edges, from one of them to the other.
		fromWanted, _ := offFrom(wanted, g.Worst.At)
		fromLeft, _ := offFrom(left, g.Worst.At)
		require.InDelta(t, 0, math.Min(fromWanted, fromLeft), slack, say)
		require.InDelta(t, math.Abs(g.Worst.Off), math.Max(fromWanted, fromLeft), slack, say)

		pts := onward(beside(corners, steps), 8*c.TipRadius)
		for _, d := range g.Along {
			off, _ := offFrom(left, d.At)
			require.InDelta(t, off, math.Abs(d.Off), slack, say)
			over := d.At.Y - g.Lift - lowestPoint(pts, d.At.X)
			if math.Abs(over) > 1e-3*c.TipRadius && off > 1e-4*c.TipRadius {
				require.Equal(t, over > 0, d.Off < 0, "over by %g at %v, off %g: %s", over, d.At, d.Off, say)
			}
		}
	})
}
