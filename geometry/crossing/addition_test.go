package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// Holes weigh what the formulae for discs say, πd²/4 and by the parallel axis theorem
// πd⁴/32 + πd²/4·r² (worked.csv has the annulus' m(R₁² + R₂²)/2, of which a disc is the
// case R₁ = 0), and hang the wheel to the side away from them.
func TestHolesAreWeighed(t *testing.T) {
	b, s := regulator()
	plain := laid(t, b, s)
	s.Additions = []Addition{{Kind: HoleKind, Radius: 5, Angle: geometry.Degrees(90), Diameter: 1.2}}
	s.Screws = []Hole{{4.8, geometry.Degrees(200), 1}, {4.8, geometry.Degrees(20), 1}}
	l := laid(t, b, s)
	area := math.Pi / 4 * (1.2*1.2 + 2)
	require.InDelta(t, plain.Area-area, l.Area, 1e-9)
	weight := 8490e-6 * 1.6
	require.InDelta(t, plain.Mass-weight*area, l.Mass, 1e-9)
	polar := math.Pi/32*math.Pow(1.2, 4) + math.Pi/4*1.44*25 + 2*(math.Pi/32+math.Pi/4*4.8*4.8)
	require.InDelta(t, plain.Inertia-weight*polar, l.Inertia, 1e-9)
	require.InDelta(t, weight*math.Pi/4*1.44*5, l.Unbalance, 1e-9)
	require.InDelta(t, 270, l.Heavy.Degrees(), 1e-9)
	require.Equal(t, plain.RemovedShare, l.RemovedShare)
	require.Equal(t, plain.Windows, l.Windows)
	solid, err := Solid(b, s)
	require.NoError(t, err)
	require.Equal(t, l.Uncrossed, Figures{solid.Area, solid.Mass, solid.Inertia})
}

// The hole that is told balances the wheel: drilled as well, nothing of the unbalance
// is left, and its middle keeps one and a half diameters from every edge.
func TestTheBalancingHoleBalances(t *testing.T) {
	b, s := regulator()
	for _, at := range []float64{0, 45, 100, 250} {
		s.Additions = []Addition{{Kind: HoleKind, Radius: 5, Angle: geometry.Degrees(at), Diameter: 1}}
		l := laid(t, b, s)
		require.NotNil(t, l.Balance, "%g", at)
		require.GreaterOrEqual(t, l.metal().edge(l.Balance.Centre()), 1.5*l.Balance.Diameter)
		drilled := s
		drilled.Screws = []Hole{*l.Balance}
		again := laid(t, b, drilled)
		require.Less(t, again.Unbalance, 1e-9*l.Unbalance+1e-9, "%g", at)
		require.Nil(t, again.Balance)
	}
	s.Additions, b.Count = nil, 71 // a window narrower by a tooth is more than rim and hub can give
	l := laid(t, b, s)
	require.Nil(t, l.Balance)
	require.NotNil(t, noted(l, "crossing.no-balance-hole"))
}

func TestAHoleMustFindMetal(t *testing.T) {
	english := words.English()
	hole := func(radius, degrees, diameter float64) Addition {
		return Addition{Kind: HoleKind, Radius: radius, Angle: geometry.Degrees(degrees), Diameter: diameter}
	}
	for _, c := range []struct {
		name string
		add  []Addition
		of   geometry.Quantity
		code string
	}{
		{"in a window", []Addition{hole(20, 30, 1)}, "additions[0].radius", "crossing.addition-too-far-in"},
		{"in a window, nearer the hub", []Addition{hole(10, 30, 1)}, "additions[0].radius", "crossing.addition-too-far-out"},
		{"in the bore", []Addition{hole(1, 0, 0.5)}, "additions[0].radius", "crossing.addition-too-far-in"},
		{"beyond the teeth", []Addition{hole(40, 0, 0.5)}, "additions[0].radius", "crossing.addition-too-far-out"},
		{"wider than the arm", []Addition{hole(15, 0, 4)}, "additions[0].diameter", "crossing.addition-too-large"},
		{"too wide anywhere", []Addition{hole(20, 30, 8)}, "additions[0].radius", "crossing.addition-no-room"},
		{"into its own twins", []Addition{{Kind: HoleKind, Radius: 5, Diameter: 1, Repeat: 40}}, "additions[0].diameter", "crossing.addition-too-large"},
		{"into another", []Addition{hole(5, 0, 1), hole(5, 8, 1)}, "additions[1].diameter", "crossing.addition-meets-hole"},
		{"onto another, nearer the hub's edge", []Addition{hole(5, 0, 1), hole(5.2, 0, 1)}, "additions[1].radius", "crossing.addition-meets-hole-inside"},
		{"onto another, nearer the bore", []Addition{hole(6, 0, 1), hole(5.8, 0, 1)}, "additions[1].radius", "crossing.addition-meets-hole-outside"},
		{"onto one that takes all there is", []Addition{hole(5, 30, 1.8), hole(26.9, 30, 1.8), hole(5, 30, 1.8)}, "additions[2].radius", "crossing.addition-meets-hole-anywhere"},
		{"no size", []Addition{hole(5, 0, 1), hole(5, 90, 0)}, "additions[1].diameter", "crossing.addition-diameter"},
		{"less than nothing from the centre", []Addition{{Kind: NoteKind, Radius: -1}}, "additions[0].radius", "crossing.addition-radius-negative"},
		{"to less than nothing", []Addition{{Kind: LineKind, ToRadius: -1}}, "additions[0].to_radius", "crossing.addition-radius-negative"},
		{"too often", []Addition{{Kind: NoteKind, Repeat: 1000}}, "additions[0].repeat", "crossing.addition-repeat"},
		{"no such thing", []Addition{{Kind: "slot"}}, "additions[0].kind", "crossing.addition-kind-unknown"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, s := regulator()
			s.Additions = c.add
			_, err := Lay(b, s)
			var l *geometry.Limit
			require.ErrorAs(t, err, &l)
			require.Equal(t, c.of, l.Quantity, "%v", l)
			require.Equal(t, c.code, l.Code, "%v", l)
			require.True(t, english.Has(c.code))
		})
	}
	b, s := regulator()
	s.Additions = []Addition{hole(5, 0, 1.9), {Kind: CircleKind, Diameter: 99}, {Kind: NoteKind, Radius: 20, Text: "this side"}}
	require.NotNil(t, noted(laid(t, b, s), "crossing.addition-near-edge"))
}

// What a refused hole's limit says would do does, and a micrometre beyond does not.
func TestWhatARefusedHolesLimitSaysDoes(t *testing.T) {
	r := trial.Rand(t, 58)
	b, s := regulator()
	refused := 0
	for range trial.Count(5_000) {
		a := Addition{Kind: HoleKind, Radius: 32 * r.Float64(), Angle: geometry.Angle(7 * r.Float64()), Diameter: 0.1 + 3*r.Float64(), Repeat: r.IntN(4)}
		lays := func(a Addition) *geometry.Limit {
			s.Additions = []Addition{a}
			_, err := Lay(b, s)
			if err == nil {
				return nil
			}
			var l *geometry.Limit
			require.ErrorAs(t, err, &l)
			return l
		}
		l := lays(a)
		if l == nil || l.Code == "crossing.addition-no-room" {
			continue
		}
		refused++
		would, beyond := advice(l)
		field := &a.Radius
		if l.Quantity == "additions[0].diameter" {
			field = &a.Diameter
		}
		*field = would
		require.Nil(t, lays(a), "%+v after %v", a, l)
		*field = beyond
		require.NotNil(t, lays(a), "%+v after %v", a, l)
	}
	require.NotZero(t, refused)
}
