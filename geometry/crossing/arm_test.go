package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Tips are jN/k rounded, halves up, counted by hand.
func TestArmsStandOnTheNearestTips(t *testing.T) {
	for _, c := range []struct {
		name  string
		teeth int
		arms  int
		tips  []int
	}{
		{"six in 72", 72, 6, []int{0, 12, 24, 36, 48, 60}},
		{"five in 77", 77, 5, []int{0, 15, 31, 46, 62}},
		{"six in 75, halves up", 75, 6, []int{0, 13, 25, 38, 50, 63}},
		{"four in 6, halves up", 6, 4, []int{0, 2, 3, 5}},
		{"three in 4", 4, 3, []int{0, 1, 3}},
		{"twelve in 12", 12, 12, []int{0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11}},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, placing := range []Placing{OnTips, Equal} {
				arms := placed(c.teeth, Spec{Arms: c.arms, Placing: placing})
				require.Len(t, arms, c.arms)
				for j, a := range arms {
					require.Equal(t, c.tips[j], a.Tip)
				}
			}
		})
	}
}

func TestArmsOnTipsLieOnTipsAndEqualArmsSayHowFarOff(t *testing.T) {
	for teeth := 3; teeth <= 400; teeth++ {
		for k := FewestArms; k <= min(MostArms, teeth); k++ {
			on := placed(teeth, Spec{Arms: k, Placing: OnTips})
			even := placed(teeth, Spec{Arms: k, Placing: Equal})
			pitch := 2 * math.Pi / float64(teeth)
			for j := range k {
				require.Zero(t, on[j].Deviation)
				require.InDelta(t, pitch*float64(on[j].Tip), float64(on[j].Angle), 1e-12)
				require.InDelta(t, 2*math.Pi*float64(j)/float64(k), float64(even[j].Angle), 1e-12)
				off := (even[j].Angle - on[j].Angle - even[j].Deviation).Normal()
				require.InDelta(t, 0, float64(off), 1e-12)
				require.LessOrEqual(t, math.Abs(float64(even[j].Deviation)), pitch/2*(1+1e-12))
				if teeth%k == 0 {
					require.Zero(t, even[j].Deviation)
				}
				if j > 0 {
					require.Greater(t, on[j].Tip, on[j-1].Tip, "%d arms on %d teeth", k, teeth)
				}
			}
		}
	}
}

func TestDividesSuggestsTheNearestCounts(t *testing.T) {
	for _, c := range []struct {
		arms, teeth int
		counts      []int
	}{
		{6, 72, nil},
		{7, 60, []int{6, 10}},
		{5, 77, []int{7}},
		{5, 84, []int{4, 6}},
		{6, 71, nil},
		{4, 75, []int{3, 5}},
		{12, 75, []int{5}},
		{13, 72, []int{12}},
		{2, 75, []int{3}},
	} {
		require.Equal(t, c.counts, Divides(c.arms, c.teeth), "%d arms, %d teeth", c.arms, c.teeth)
	}
}

// An inscribed hexagon's side is the circle's radius (Euclid IV.15), and a square's
// is √2 of it.
func TestDividersStepRoundTheTips(t *testing.T) {
	b, s := regulator()
	for arms, want := range map[int]float64{6: 30, 4: 30 * math.Sqrt2} {
		s.Arms = arms
		l, err := Lay(b, s)
		require.NoError(t, err)
		for _, w := range l.Windows {
			require.InDelta(t, want, w.Chord, 1e-12)
		}
	}
	b.Count, s.Arms = 75, 6
	l, err := Lay(b, s)
	require.NoError(t, err)
	for j, w := range l.Windows {
		tip := func(j int) geometry.Point {
			return geometry.Polar(30, geometry.Clock(l.Arms[j%6].Angle))
		}
		require.InDelta(t, tip(j).Dist(tip(j+1)), w.Chord, 1e-12)
	}
}
