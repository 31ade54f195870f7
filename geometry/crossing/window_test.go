package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// laid lays a crossing out that must be possible.
func laid(t *testing.T, b Blank, s Spec) Layout {
	t.Helper()
	l, err := Lay(b, s)
	require.NoError(t, err)
	return l
}

// fine is a flattening tolerance for measuring outlines, in mm.
const fine = 1e-3

// Every window of every crossing that can be laid out is a simple outline, runs
// anticlockwise, lies between hub and rim, is tangent all round where it is
// filleted, and leaves each arm nowhere thinner than asked.
func TestEveryWindowIsSound(t *testing.T) {
	r := trial.Rand(t, 52)
	built := 0
	for i := range trial.Count(100_000) {
		b, s := someCrossing(r)
		l, err := Lay(b, s)
		if err != nil {
			continue
		}
		built++
		require.Len(t, l.Windows, s.Arms)
		require.Len(t, l.Arms, s.Arms)
		for j, w := range l.Windows {
			if j > 0 && w.Area == l.Windows[j-1].Area {
				continue // the same window turned
			}
			soundWindow(t, l, w, "case %d window %d: %+v %+v", i, j, b, s)
			armWidths(t, l, j, "case %d arm %d: %+v %+v", i, j, b, s)
		}
	}
	require.Greater(t, 2*built, trial.Count(100_000), "most crossings can be laid out")
}

func soundWindow(t *testing.T, l Layout, w Window, about string, args ...any) {
	t.Helper()
	say := append([]any{about}, args...)
	require.Greater(t, w.Area, 0.0, say...)
	require.InDelta(t, w.Area, w.Outline.Area(), 1e-9*w.Area+1e-9, say...)
	require.True(t, w.Outline.Simple(), say...)
	inner, outer := math.Inf(1), 0.0
	for _, p := range w.Outline.Flatten(fine) {
		inner, outer = min(inner, p.Norm()), max(outer, p.Norm())
	}
	require.LessOrEqual(t, outer, l.RimRadius+1e-9, say...)
	require.GreaterOrEqual(t, inner, l.HubRadius-1e-9, say...)
	for i := range w.Outline.Len() {
		v := w.Outline.Vertex(i)
		require.NotEmpty(t, v.Quantity, say...)
		require.GreaterOrEqual(t, v.Norm(), l.HubRadius-1e-9, say...)
		tangentAt(t, l.Spec, w.Outline, i, say...)
	}
}

// tangentAt checks that two pieces run on into one another where one is a fillet.
// A piece of a few micrometres has its direction from few digits.
func tangentAt(t *testing.T, s Spec, o geometry.Outline, i int, say ...any) {
	t.Helper()
	before, after := o.Segment(i-1), o.Segment(i)
	for _, q := range []geometry.Quantity{before.Quantity, after.Quantity} {
		if q == ofFilletAtRim || q == ofFilletAtHub {
			turn := before.Tangent(1).Cross(after.Tangent(0))
			require.InDelta(t, 0, turn, 1e-7+1e-9/min(before.Length(), after.Length()), say...)
		}
	}
	if a, ok := after.Arc(); ok {
		want := map[geometry.Quantity]float64{ofFilletAtRim: s.FilletAtRim, ofFilletAtHub: s.FilletAtHub}[after.Quantity]
		if want > 0 && after.Length() > 1e-3 {
			require.InEpsilon(t, want, a.Radius, 1e-6, say...)
		}
	}
}

// armWidths measures an arm across, at places between hub and rim, on the outlines
// of the windows beside it: each window's distance from the arm's centre line,
// square to it, must be half the width asked for there or more.
func armWidths(t *testing.T, l Layout, j int, about string, args ...any) {
	t.Helper()
	turn := -geometry.Clock(l.Arms[j].Angle)
	k := len(l.Windows)
	for side, w := range map[float64]Window{-1: l.Windows[j], 1: l.Windows[(j+k-1)%k]} {
		least := math.Inf(1)
		for _, p := range w.Outline.Rotate(turn).Flatten(fine) {
			if share, off := besideCentre(l, p); share >= 0 && share <= 1 {
				least = min(least, 2*side*off-askedWidth(l, share))
			}
		}
		require.GreaterOrEqual(t, least, -1e-9-2*leftOut(l), append([]any{about}, args...)...)
	}
}

// leftOut is how far a side may stand back for being taken as straight, or for the
// digits that a distance from the middle of a large circle has.
func leftOut(l Layout) float64 {
	right, left := armSides(l.HubRadius, l.RimRadius, l.Spec)
	switch least := min(math.Abs(right.bend), math.Abs(left.bend)); {
	case l.Spec.Style == Straight:
		return 0
	case least == 0:
		return flatRise
	default:
		return 1e-15 / least
	}
}

// besideCentre returns at which share of an arm's centre line a place lies, outside
// 0 to 1 beyond its ends, and how far to the left of it; the arm's rim end stands on
// the x axis. A swept arm's centre line has its middle on the line square to the
// radius at the hub end, as far from there as from the rim end.
func besideCentre(l Layout, p geometry.Point) (share, off float64) {
	hub := geometry.Polar(l.HubRadius, l.Spec.Sweep)
	way := hub.Sub(geometry.Point{X: l.RimRadius})
	square := hub.Left().Times(1 / l.HubRadius)
	if l.Spec.Style != Swept || math.Abs(square.Dot(way)) < 1e-5 {
		if l.Spec.Style == Swept {
			p = p.Rotate(-l.Spec.Sweep / 2)
		}
		return (p.X - l.HubRadius) / (l.RimRadius - l.HubRadius), p.Y
	}
	middle := hub.Add(square.Times(-way.Dot(way) / 2 / square.Dot(way)))
	whole := hub.Sub(middle).Angle(geometry.Point{X: l.RimRadius}.Sub(middle))
	share = float64(hub.Sub(middle).Angle(p.Sub(middle)) / whole)
	off = p.Dist(middle) - hub.Dist(middle)
	if whole > 0 {
		off = -off
	}
	return share, off
}

// askedWidth returns the width an arm is asked to have: linear along it, and of a
// waisted one that of the circles through the three points asked for.
func askedWidth(l Layout, share float64) float64 {
	s := l.Spec
	taper := s.ArmAtHub + share*(s.ArmAtRim-s.ArmAtHub)
	if s.Style != Waisted {
		return taper
	}
	length := l.RimRadius - l.HubRadius
	at := (s.waistAt(l.HubRadius, l.RimRadius) - l.HubRadius) / length
	c, ok := circumcentre(geometry.Point{Y: s.ArmAtHub / 2}, geometry.Point{X: at * length, Y: s.Waist / 2}, geometry.Point{X: length, Y: s.ArmAtRim / 2})
	if !ok {
		return taper
	}
	x := share * length
	return 2 * (c.Y - math.Sqrt(c.X*c.X+(c.Y-s.ArmAtHub/2)*(c.Y-s.ArmAtHub/2)-(x-c.X)*(x-c.X)))
}

// circumcentre returns the middle of the circle through three points; false where
// they lie nearly in line.
func circumcentre(a, b, c geometry.Point) (geometry.Point, bool) {
	u, v := b.Sub(a), c.Sub(a)
	twice := 2 * u.Cross(v)
	if u.Norm()*v.Norm()*b.Dist(c) > 1e8*math.Abs(twice) {
		return geometry.Point{}, false
	}
	uu, vv := u.Dot(u), v.Dot(v)
	return a.Add(geometry.Point{X: v.Y*uu - u.Y*vv, Y: u.X*vv - v.X*uu}.Times(1 / twice)), true
}

// kinds counts a window's pieces by what made them.
func kinds(o geometry.Outline) map[geometry.Quantity]int {
	n := map[geometry.Quantity]int{}
	for i := range o.Len() {
		n[o.Segment(i).Quantity]++
	}
	return n
}

func TestAWindowHasFourCornersOrAnApex(t *testing.T) {
	for _, c := range []struct {
		name string
		ask  func(*Spec)
		want map[geometry.Quantity]int
	}{
		{"four fillets", func(s *Spec) {}, map[geometry.Quantity]int{ofRim: 1, ofFilletAtRim: 2, ofArmAtRim: 2, ofFilletAtHub: 2, ofHub: 1}},
		{"no fillets", func(s *Spec) { s.FilletAtRim, s.FilletAtHub = 0, 0 }, map[geometry.Quantity]int{ofRim: 1, ofArmAtRim: 2, ofHub: 1}},
		{
			"one arc where hub fillets overlap", func(s *Spec) { s.FilletAtHub = 5 },
			map[geometry.Quantity]int{ofRim: 1, ofFilletAtRim: 2, ofArmAtRim: 2, ofFilletAtHub: 1},
		},
		{"a point where arms meet before the hub", func(s *Spec) { s.FilletAtHub, s.ArmAtHub = 0, 9 }, map[geometry.Quantity]int{ofRim: 1, ofFilletAtRim: 2, ofArmAtRim: 2}},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, s := regulator()
			c.ask(&s)
			require.Equal(t, c.want, kinds(laid(t, b, s).Windows[0].Outline))
		})
	}
}

// An apex arc lies on the window's axis, its radius away from both sides and
// outside the hub.
func TestTheApexArcTouchesBothSides(t *testing.T) {
	b, s := regulator()
	s.FilletAtHub = 5
	l := laid(t, b, s)
	o := l.Windows[0].Outline
	for i := range o.Len() {
		if a, ok := o.Segment(i).Arc(); ok && o.Segment(i).Quantity == ofFilletAtHub {
			require.InDelta(t, 0, float64((a.Centre.Direction() - l.axis(0)).Normal()), 1e-12)
			require.InDelta(t, 5, a.Radius, 1e-12)
			require.Greater(t, a.Centre.Norm()-5, l.HubRadius)
			for _, side := range []geometry.Segment{o.Segment(i - 1), o.Segment(i + 1)} {
				d := side.To.Sub(side.From)
				require.InDelta(t, 5, math.Abs(d.Cross(a.Centre.Sub(side.From)))/d.Norm(), 1e-12)
			}
			return
		}
	}
	require.Fail(t, "no apex arc")
}

// With neither fillets nor taper a window's area is what integrating its width over
// the radius gives: at radius r an arm of width w takes 2·asin(w/2r) of the circle.
func TestAWindowsAreaIsItsWidthOverTheRadius(t *testing.T) {
	b, s := regulator()
	s.FilletAtRim, s.FilletAtHub, s.ArmAtHub = 0, 0, s.ArmAtRim
	l := laid(t, b, s)
	area := 0.0
	const n = 100_000
	h := (l.RimRadius - l.HubRadius) / n
	for i := range n {
		r := l.HubRadius + h*(float64(i)+0.5)
		area += h * r * (math.Pi/3 - 2*math.Asin(s.ArmAtRim/2/r))
	}
	require.InEpsilon(t, area, l.Windows[0].Area, 1e-9)
}

// The arms stand alike, so a mirror in any arm's centre line changes its two
// windows over, and a turn by one arm moves every window on.
func TestEqualWindowsChangePlaces(t *testing.T) {
	b, s := regulator()
	l := laid(t, b, s)
	for j, w := range l.Windows {
		next := l.Windows[(j+1)%len(l.Windows)]
		requireSame(t, w.Outline.Rotate(-geometry.FullTurn/6), next.Outline)
		up := geometry.Clock(0) - geometry.Clock(l.Arms[(j+1)%6].Angle) // brings the arm between them to 12 o'clock
		requireSame(t, w.Outline.Rotate(up).Mirror().Reverse(), next.Outline.Rotate(up))
	}
}

// requireSame checks that two outlines have the same corners, wherever they start.
func requireSame(t *testing.T, a, b geometry.Outline) {
	t.Helper()
	require.Equal(t, a.Len(), b.Len())
	first := -1
	for i := range b.Len() {
		if b.Vertex(i).Dist(a.Vertex(0).Point) < 1e-9 {
			first = i
		}
	}
	require.GreaterOrEqual(t, first, 0, "no corner in common")
	for i := range a.Len() {
		va, vb := a.Vertex(i), b.Vertex(first+i)
		require.InDelta(t, 0, va.Dist(vb.Point), 1e-9)
		require.InDelta(t, va.Bulge, vb.Bulge, 1e-9)
		require.Equal(t, va.Quantity, vb.Quantity)
	}
}

// A crossing twice the size has windows twice the size.
func TestACrossingScales(t *testing.T) {
	b, s := regulator()
	base := laid(t, b, s)
	big, large := b, s
	for _, l := range []*float64{
		&big.TipRadius, &big.RootRadius, &big.Bore, &large.Rim, &large.Hub, &large.ArmAtRim,
		&large.ArmAtHub, &large.FilletAtRim, &large.FilletAtHub, &large.Allowance, &large.StartHole,
	} {
		*l *= 2
	}
	big.Outline = b.Outline.Scale(2)
	l := laid(t, big, large)
	for j := range l.Windows {
		requireSame(t, base.Windows[j].Outline.Scale(2), l.Windows[j].Outline)
	}
	require.InEpsilon(t, 4*base.Area, l.Area, 1e-12)
	require.InEpsilon(t, 16*base.Inertia, l.Inertia, 1e-12)
	require.InEpsilon(t, base.RemovedShare, l.RemovedShare, 1e-12)
}
