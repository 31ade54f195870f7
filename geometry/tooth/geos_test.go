//go:build geos

package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/twpayne/go-geos"

	"tipline/geometry"
)

// agreed is how far, in mm, a flank may lie from what GEOS leaves of a blank out
// of which the turning pinion has been cut.
const agreed = 0.002

// positions is in how many places of its turn the pinion is cut out.
const positions = 700

func polygon(corners []geometry.Point) *geos.Geom {
	ring := make([][]float64, 0, len(corners)+1)
	for _, p := range corners {
		ring = append(ring, []float64{p.X, p.Y})
	}
	return geos.NewPolygon([][][]float64{append(ring, ring[0])})
}

// ring returns the edge of what is left as corners, and as lines to measure from.
func ring(t *testing.T, left *geos.Geom) ([]geometry.Point, *geos.Geom) {
	t.Helper()
	require.Equal(t, geos.TypeIDPolygon, left.TypeID())
	edge := left.ExteriorRing()
	var corners []geometry.Point
	for _, c := range edge.CoordSeq().ToCoords() {
		corners = append(corners, geometry.Point{X: c[0], Y: c[1]})
	}
	return corners, edge
}

func largestPart(g *geos.Geom) *geos.Geom {
	most := g.Geometry(0)
	for i := range g.NumGeometries() {
		if part := g.Geometry(i); part.Area() > most.Area() {
			most = part
		}
	}
	return most
}

func from(edge *geos.Geom, p geometry.Point) float64 {
	return edge.Distance(geos.NewPoint([]float64{p.X, p.Y}))
}

// sector returns a blank's part between two radii and within half of 12 o'clock.
func sector(inner, outer float64, half geometry.Angle) *geos.Geom {
	var corners []geometry.Point
	const chords = 4000
	for i := range chords + 1 {
		corners = append(corners, geometry.Polar(outer, math.Pi/2+half-2*half*geometry.Angle(i)/chords))
	}
	for i := range chords + 1 {
		corners = append(corners, geometry.Polar(inner, math.Pi/2-half+2*half*geometry.Angle(i)/chords))
	}
	return polygon(corners)
}

// A trundle, turned past the line of centres in small steps with the wheel held
// anywhere in its play, is cut out of a blank. The space that GEOS leaves
// has the flanks that are drawn, from where a tooth begins to drive to its tip.
func TestDriversFlankIsWhatGEOSLeavesOfABlank(t *testing.T) {
	for _, d := range drivers() {
		if d.Count < 12 {
			continue // a trundle there sweeps more than the blank of one space
		}
		g := driving(t, d)
		pitch := geometry.FullTurn / geometry.Angle(d.Count)
		var swept []*geos.Geom
		holds := 1 + int(math.Ceil(2*d.SidePlay()/d.TrundleDiameter())) // no metal stands between two
		for k := range holds + 1 {
			m := meshOf(d, (2*float64(k)/float64(holds)-1)*d.SidePlay()/2)
			for i := range positions {
				turn := 1.1 * float64(g.Ends) * (2*float64(i)/(positions-1) - 1)
				c := m.trundleAt(0, turn).Rotate(-pitch / 2)
				circle, err := geometry.Circle(c, m.trundle, "")
				require.NoError(t, err)
				swept = append(swept, polygon(circle.Flatten(1e-4*m.trundle)))
			}
		}
		blank := sector(d.RootRadius()/2, g.Wheel.TipRadius, pitch/2)
		left := largestPart(blank.Difference(geos.NewCollection(geos.TypeIDGeometryCollection, swept).UnaryUnion()))
		corners, edge := ring(t, left)

		flank := leftFlank(g)
		begins := flank[0].From.Norm()
		for _, s := range flank {
			for k := range 9 {
				p := s.At(float64(k) / 8).Rotate(-pitch / 2)
				require.Less(t, from(edge, p), agreed, "%+v left at %v", d, p)
				require.Less(t, from(edge, p.Mirror()), agreed, "%+v right at %v", d, p)
			}
		}
		// And back: what GEOS leaves of either side lies on the space that is drawn.
		space, checked := g.Wheel.Space.Rotate(pitch/2), 0
		for _, p := range corners {
			if r := p.Norm(); r < begins+agreed || r > g.Wheel.TipRadius-agreed || math.Abs(float64(p.Direction()-math.Pi/2)) > float64(pitch)*0.499 {
				continue
			}
			q, _ := space.Nearest(p)
			require.Less(t, q.Dist(p), agreed, "%+v at %v", d, p)
			checked++
		}
		require.Greater(t, checked, 50, "%+v", d)
	}
}

// The theoretical pinion has radial leaves half a pitch wide that end at its pitch
// circle. Turned in small steps by the ratio of the counts and cut out of a blank,
// it leaves a tooth whose faces are the epicycloid that the theoretical addendum is
// worked out from, to its point.
func TestTheoreticalToothIsWhatGEOSLeavesOfABlank(t *testing.T) {
	for _, c := range []Cycloidal{{80, 1, 8}, {72, 0.8, 8}, {60, 0.6, 6}, {96, 0.5, 12}, {30, 2, 10}, {120, 1, 16}} {
		count, leaves := float64(c.Count), float64(c.Leaves)
		wheel, pinion := c.PitchRadius(), c.Module*leaves/2
		half := geometry.Angle(math.Pi / (2 * leaves))
		leaf := []geometry.Point{geometry.Polar(pinion/10, -math.Pi/2-half), geometry.Polar(pinion/10, half-math.Pi/2)}
		const chords = 200
		for i := range chords + 1 {
			leaf = append(leaf, geometry.Polar(pinion, half-math.Pi/2-2*half*geometry.Angle(i)/chords))
		}
		var swept []*geos.Geom
		last := 1.3 * rolledToTip(count, leaves) / 2 * leaves / count // of the wheel's turn
		for _, next := range []float64{0.5, -0.5} {                   // the leaves on either side of the tooth
			for i := range positions {
				turn := last * (2*float64(i)/(positions-1) - 1)
				var at []geometry.Point
				on := geometry.Angle(turn*count/leaves + next*2*math.Pi/leaves)
				for _, p := range leaf {
					q := p.Rotate(on).Add(geometry.Point{Y: wheel + pinion})
					at = append(at, q.Rotate(geometry.Angle(turn)))
				}
				swept = append(swept, polygon(at))
			}
		}
		tip := wheel + c.TheoreticalAddendum()*c.Module
		blank := sector(wheel-0.2*c.Module, tip+0.1*c.Module, math.Pi/geometry.Angle(count))
		left := largestPart(blank.Difference(geos.NewCollection(geos.TypeIDGeometryCollection, swept).UnaryUnion()))
		corners, edge := ring(t, left)

		highest := 0.0
		for _, p := range corners {
			highest = math.Max(highest, p.Norm())
		}
		require.InDelta(t, tip, highest, agreed, "%+v", c)
		worst := 0.0
		for k := range 201 {
			rolled := rolledToTip(count, leaves) * float64(k) / 200
			r := wheel + c.Module*height(count/2, leaves/4, rolled)
			at := math.Pi/2 - math.Pi/(2*count) + round(count/2, leaves/4, rolled)
			p := geometry.Polar(r, geometry.Angle(at))
			worst = math.Max(worst, math.Max(from(edge, p), from(edge, p.Mirror())))
		}
		require.Less(t, worst, agreed, "%+v", c)
	}
}
