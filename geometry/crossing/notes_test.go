package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// noted returns the layout's note of that code, nil where there is none.
func noted(l Layout, code string) *geometry.Limit {
	for _, n := range l.Notes {
		if n.Code == code {
			return n
		}
	}
	return nil
}

func TestTheRegulatorsCrossingNeedsNoNote(t *testing.T) {
	b, s := regulator()
	require.Empty(t, laid(t, b, s).Notes)
}

// The start hole's edge touches the saw line at the rim, on the window's axis.
func TestTheStartHoleTouchesTheSawLineAtTheRim(t *testing.T) {
	b, s := regulator()
	l := laid(t, b, s)
	for j, w := range l.Windows {
		require.InDelta(t, l.RimRadius-s.Allowance-s.StartHole/2, w.Start.Norm(), 1e-9)
		require.InDelta(t, 0, float64((w.Start.Direction() - l.axis(j)).Normal()), 1e-12)
		require.InDelta(t, s.StartHole/2, w.Start.Dist(w.StartHole.Vertex(0).Point), 1e-12)
		near, _ := w.Outline.Nearest(w.Start)
		require.InDelta(t, s.StartHole/2+s.Allowance, near.Dist(w.Start), 1e-9)
	}
}

// A hole that the arms, wider at the rim than at the hub, do not let up to the rim goes in until it
// leaves the allowance all round; the largest that fits does, a larger does not.
func TestAStartHoleGoesInAsFarAsItMust(t *testing.T) {
	b, s := regulator()
	s.ArmAtRim, s.ArmAtHub, s.StartHole = 26, 2, 3
	l := laid(t, b, s)
	w := l.Windows[0]
	near, _ := w.Outline.Nearest(w.Start)
	require.InDelta(t, 1.8, near.Dist(w.Start), 1e-8)
	require.Less(t, w.Start.Norm(), l.RimRadius-1.8-1e-3)
	s.StartHole = 22
	l = laid(t, b, s)
	n := noted(l, "crossing.start-hole-too-large")
	require.NotNil(t, n)
	require.Zero(t, l.Windows[0].StartHole.Len())
	s.StartHole = n.Max - 1e-6
	require.NotZero(t, laid(t, b, s).Windows[0].StartHole.Len())
	s.StartHole = n.Max + 1e-6
	require.Zero(t, laid(t, b, s).Windows[0].StartHole.Len())
}

func TestWhatWillGoWrongIsNoted(t *testing.T) {
	english := words.English()
	for _, c := range []struct {
		name string
		ask  func(*Spec)
		of   geometry.Quantity
		code string
	}{
		{"blade cannot turn at the rim", func(s *Spec) { s.FilletAtRim = 0.2 }, ofFilletAtRim, "crossing.fillet-tighter-than-blade"},
		{"blade cannot turn at the hub", func(s *Spec) { s.FilletAtHub = 0 }, ofFilletAtHub, "crossing.fillet-tighter-than-blade"},
		{"nothing left to saw", func(s *Spec) { s.Allowance = 9 }, ofAllowance, "crossing.saw-line-vanishes"},
		{"no room for any hole", func(s *Spec) { s.Allowance = 9 }, ofStartHole, "crossing.no-start-hole"},
		{"hole too large", func(s *Spec) { s.StartHole = 20 }, ofStartHole, "crossing.start-hole-too-large"},
		{"blade too coarse", func(s *Spec) { s.BladePitch = 0.9 }, ofBlade, "crossing.blade-too-coarse"},
		{"thinner beyond the waist", func(s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 1.6, 12 }, ofWaistAt, "crossing.waist-narrower-further-out"},
		{"thinner before the waist", func(s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 1.6, 22 }, ofWaistAt, "crossing.waist-narrower-further-in"},
		{"arms meet", func(s *Spec) { s.ArmAtHub = 9 }, ofArmAtHub, "crossing.arms-meet-before-hub"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, s := regulator()
			c.ask(&s)
			n := noted(laid(t, b, s), c.code)
			require.NotNil(t, n)
			require.Equal(t, c.of, n.Quantity)
			require.True(t, english.Has(c.code))
		})
	}
}

// Where the saw line vanishes the note says the greatest allowance that leaves one:
// a hair less does, a hair more does not.
func TestTheGreatestAllowanceLeavesASawLine(t *testing.T) {
	b, s := regulator()
	s.Allowance = 9
	most := noted(laid(t, b, s), "crossing.saw-line-vanishes").Max
	s.Allowance = most - 1e-6
	require.Len(t, laid(t, b, s).Windows[0].SawLine, 1)
	s.Allowance = most + 1e-6
	require.Empty(t, laid(t, b, s).Windows[0].SawLine)
}

// Arms of the width noted just reach the hub: there their sides meet on its circle.
func TestArmsOfTheNotedWidthReachTheHub(t *testing.T) {
	b, s := regulator()
	s.ArmAtHub, s.FilletAtHub = 9, 0
	s.ArmAtHub = noted(laid(t, b, s), "crossing.arms-meet-before-hub").Max
	l := laid(t, b, s)
	require.Nil(t, noted(l, "crossing.arms-meet-before-hub"))
	inner := math.Inf(1)
	for _, v := range l.Windows[0].Outline.Vertices() {
		inner = min(inner, v.Norm())
	}
	require.InDelta(t, l.HubRadius, inner, 1e-6)
}

// Where the note says the waist would be the narrowest place it is.
func TestAtTheNotedPlaceTheWaistIsNarrowest(t *testing.T) {
	b, s := regulator()
	for _, at := range []float64{12, 22} {
		s.Style, s.Waist, s.WaistAt = Waisted, 1.6, at
		l := laid(t, b, s)
		require.Less(t, l.Narrowest.Width, 1.599)
		n := l.Notes[0]
		s.WaistAt = n.Min
		if n.Value > n.Max {
			s.WaistAt = n.Max
		}
		l = laid(t, b, s)
		require.Empty(t, l.Notes)
		require.InDelta(t, 1.6, l.Narrowest.Width, 1e-9)
		require.InDelta(t, s.WaistAt, l.Narrowest.Radius, 1e-6)
		require.InDelta(t, 1.6*1.6, l.Narrowest.Area, 1e-8)
	}
}
