//go:build geos

package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/twpayne/go-geos"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// quarters is into how many chords GEOS cuts a quarter circle.
const quarters = 64

// coarse is the flattening tolerance as a share of the wheel's root radius; GEOS'
// own chords, at quarters, are off by 7.5e-5 of their radius, which no fillet or
// allowance here lets come to more than as much of the root radius.
const coarse = 2e-5

// polygon returns corners as a polygon of GEOS.
func polygon(corners []geometry.Point) *geos.Geom {
	ring := make([][]float64, 0, len(corners)+1)
	for _, p := range corners {
		ring = append(ring, []float64{p.X, p.Y})
	}
	return geos.NewPolygon([][][]float64{append(ring, ring[0])})
}

func flat(o geometry.Outline, tolerance float64) *geos.Geom { return polygon(o.Flatten(tolerance)) }

// Windows and saw lines of random crossings are valid polygons of the areas that the
// closed forms say, lie apart by the arm's width, and the saw line is what GEOS'
// own buffer of the window's polygon is.
func TestWindowsAndSawLinesAgreeWithGEOS(t *testing.T) {
	r := trial.Rand(t, 52)
	for i := range trial.Count(10_000) {
		b, s := someCrossing(r)
		l, err := Lay(b, s)
		if err != nil {
			continue
		}
		tolerance := coarse * b.RootRadius
		before := flat(l.Windows[s.Arms-1].Outline, tolerance)
		for j, w := range l.Windows {
			g := flat(w.Outline, tolerance)
			require.GreaterOrEqual(t, g.Distance(before), thinnest(l)-2*tolerance, "case %d window %d: %+v %+v", i, j, b, s)
			before = g
			if j > 0 && w.Area == l.Windows[j-1].Area {
				continue // the same window turned
			}
			require.True(t, g.IsValid(), "case %d window %d: %+v %+v", i, j, b, s)
			require.InDelta(t, g.Area(), w.Area, w.Outline.Length()*tolerance, "case %d window %d: %+v %+v", i, j, b, s)
			sawAgrees(t, w, g, s.Allowance, tolerance, "case %d window %d: %+v %+v", i, j, b, s)
		}
	}
}

// thinnest returns the least width of an arm between its sides: where straight ones
// leave the hub's circle, a little inside the radius at which the width at the hub is
// asked for, or at the rim. Swept ones go on a little, narrowing, beyond where they are
// asked for at the rim, which they meet aslant; measured square to themselves they are
// narrower than square to the centre line by the cosine of their lean.
func thinnest(l Layout) float64 {
	s := l.Spec
	if s.Style == Waisted {
		return narrowest(l.HubRadius, l.RimRadius, s).Width
	}
	leaves := math.Sqrt(max(0, l.HubRadius*l.HubRadius-s.ArmAtHub*s.ArmAtHub/4))
	taper := (s.ArmAtRim - s.ArmAtHub) / (l.RimRadius - l.HubRadius)
	least := min(s.ArmAtRim, s.ArmAtHub+min(0, taper*(leaves-l.HubRadius)))
	if s.Style == Swept {
		c := centreOf(l.HubRadius, l.RimRadius, s)
		aslant := math.Abs(c.atRim.Y / c.atRim.X)
		least -= math.Abs(taper) * max(s.ArmAtHub, s.ArmAtRim) * (1 + aslant)
		least *= math.Cos(math.Atan(taper/2)) * max(0, 1-math.Abs(taper))
	}
	return max(0, least)
}

func sawAgrees(t *testing.T, w Window, g *geos.Geom, allowance, tolerance float64, about ...any) {
	t.Helper()
	if allowance == 0 {
		require.Empty(t, w.SawLine, about...)
		return
	}
	inset := g.Buffer(-allowance, quarters)
	area := 0.0
	all := geos.NewEmptyPolygon()
	for _, line := range w.SawLine {
		saw := flat(line, tolerance)
		require.True(t, saw.IsValid(), about...)
		require.Greater(t, line.Area(), 0.0, about...)
		area += line.Area()
		all = all.Union(saw)
	}
	// GEOS straightens what it shrinks by up to a hundredth of the distance
	slack := w.Outline.Length() * (2*tolerance + 1e-3*allowance)
	require.InDelta(t, inset.Area(), area, slack, about...)
	require.Less(t, inset.SymDifference(all).Area(), slack, about...)
}

// bench builds all of a crossing's windows another way altogether, from polygons:
// the arms as trapezoids taken from a disc, and each end's corners rounded by
// shrinking and growing again by the fillet's radius; within the circle cut the
// hub's end, outside it the rim's.
func bench(l Layout, cut float64) *geos.Geom {
	far := 3 * l.RimRadius
	arms := geos.NewEmptyPolygon()
	for _, a := range l.Arms {
		arms = arms.Union(polygon(trapezoid(l, far, geometry.Clock(a.Angle))))
	}
	atRim := opened(round(l.RimRadius, l.Spec.FilletAtRim).Difference(arms), l.Spec.FilletAtRim)
	atHub := opened(round(far, l.Spec.FilletAtHub).Difference(round(l.HubRadius, l.Spec.FilletAtHub)).Difference(arms), l.Spec.FilletAtHub)
	return atRim.Difference(round(cut, 0)).Union(atHub.Intersection(round(cut, 0)))
}

// trapezoid returns an arm, its sides drawn on inwards to the wheel's centre or to
// where they meet, and outwards as far as that or until they meet.
func trapezoid(l Layout, far float64, at geometry.Angle) []geometry.Point {
	half := func(x float64) float64 {
		share := (x - l.HubRadius) / (l.RimRadius - l.HubRadius)
		return (l.Spec.ArmAtHub + share*(l.Spec.ArmAtRim-l.Spec.ArmAtHub)) / 2
	}
	from, to := 0.0, far
	if taper := half(1) - half(0); taper != 0 {
		meet := -half(0) / taper
		if half(0) < 0 {
			from = meet
		}
		if half(far) < 0 {
			to = meet
		}
	}
	ring := []geometry.Point{{X: from, Y: -max(half(from), 0)}, {X: to, Y: -max(half(to), 0)}}
	if half(to) > same {
		ring = append(ring, geometry.Point{X: to, Y: half(to)})
	}
	if half(from) > same {
		ring = append(ring, geometry.Point{X: from, Y: half(from)})
	}
	for i := range ring {
		ring[i] = ring[i].Rotate(at)
	}
	return ring
}

// round returns a circle about the wheel's centre as a polygon of up to 360 corners,
// each side off by 4e-5 of its radius, and of fewer where they would come closer
// together than a fortieth of the fillet: GEOS 3.11 shrinks a denser ring too far.
func round(radius, fillet float64) *geos.Geom {
	corners := 360.0
	if fillet > 0 {
		corners = math.Ceil(min(corners, max(24, 40*2*math.Pi*radius/fillet)))
	}
	ring := make([]geometry.Point, int(corners))
	for i := range ring {
		ring[i] = geometry.Polar(radius, geometry.Angle(2*math.Pi*(float64(i)+0.5)/corners))
	}
	return polygon(ring)
}

func opened(g *geos.Geom, radius float64) *geos.Geom {
	if radius == 0 {
		return g
	}
	return g.Buffer(-radius, quarters).Buffer(radius, quarters)
}

// cutOf returns a radius between where the fillets at the hub and those at the rim
// touch the arms' sides, close to the rim's: further in, discs of the rim fillet's
// size may find no room. False where they meet.
func cutOf(l Layout) (float64, bool) {
	inner, outer := 0.0, math.Inf(1)
	for _, w := range l.Windows {
		found := false
		for i := range w.Outline.Len() {
			if s := w.Outline.Segment(i); s.Quantity == ofArmAtRim {
				found = true
				inner = max(inner, min(s.From.Norm(), s.To.Norm()))
				outer = min(outer, max(s.From.Norm(), s.To.Norm()))
			}
		}
		if !found {
			return 0, false
		}
	}
	return outer - (outer-inner)/50, inner < outer
}

func TestWindowsAreTheDiscLessTheArmsWithTheirCornersRounded(t *testing.T) {
	r := trial.Rand(t, 53)
	compared := 0
	for i := range trial.Count(1000) {
		b, s := someCrossing(r)
		s.Style, s.OuterRadius = Straight, 0
		l, err := Lay(b, s)
		if err != nil {
			continue
		}
		cut, ok := cutOf(l)
		if !ok {
			continue
		}
		compared++
		tolerance := coarse * b.RootRadius
		ours, length := geos.NewEmptyPolygon(), 0.0
		for _, w := range l.Windows {
			ours, length = ours.Union(flat(w.Outline, tolerance)), length+w.Outline.Length()
		}
		other := bench(l, cut)
		off := ours.SymDifference(other).Area()
		// GEOS straightens what it shrinks and grows by up to a hundredth of the distance
		slack := 1e-4*b.RootRadius + 4e-3*max(s.FilletAtRim, s.FilletAtHub)
		require.Less(t, off, length*slack, "case %d: %+v %+v", i, b, s)
	}
	require.NotZero(t, compared)
}
