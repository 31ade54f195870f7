package mount

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/geometry"
)

// plain is a wheel without a crossing.
func plain() Seat {
	return Seat{Bore: 6, Root: 50, Tip: 54, Teeth: 60, Thickness: 1.5}
}

func thread(t testing.TB, name string) tables.Thread {
	found, ok := tables.ThreadNamed(name)
	require.True(t, ok, name)
	return found
}

func at(a float64) *geometry.Angle {
	angle := geometry.Degrees(a)
	return &angle
}

func TestScrewsStandRoundTheCircle(t *testing.T) {
	m, err := Fit(plain(), Collet{}, Screws{Count: 4, Thread: thread(t, "M1.6"), Circle: 14, Start: at(-30)})
	require.NoError(t, err)
	for i, want := range []float64{330, 60, 150, 240} {
		require.InDelta(t, want, m.Places[i].Angle.Degrees(), 1e-9)
		require.InDelta(t, 7*math.Sin(want*math.Pi/180), m.Places[i].At.X, 1e-9)
		require.InDelta(t, 7*math.Cos(want*math.Pi/180), m.Places[i].At.Y, 1e-9)
	}
	require.InDelta(t, m.Places[0].At.Dist(m.Places[1].At), m.Chord, 1e-9)
	require.InDelta(t, 4, m.Edge, 1e-9, "screw's centre to the bore")
	require.Empty(t, m.Notes)
	require.Equal(t, 1.5, m.Depth)
}

func TestScrewsStartBetweenArms(t *testing.T) {
	s := plain()
	for j := range 5 {
		s.Arms = append(s.Arms, geometry.Degrees(float64(72*j)))
	}
	m, err := Fit(s, Collet{}, Screws{Count: 5, Thread: thread(t, "M1.6"), Circle: 14})
	require.NoError(t, err)
	require.InDelta(t, 36, m.Places[0].Angle.Degrees(), 1e-9)
	require.Empty(t, m.Notes)
	bare, err := Fit(plain(), Collet{}, Screws{Count: 3, Thread: thread(t, "M1.6"), Circle: 14})
	require.NoError(t, err)
	require.Zero(t, bare.Places[0].Angle)
}

// Arms on tips that they do not divide leave unequal windows: screws that start midway
// between two of them may stand lopsided, and are told the nearest place in which wheel
// and screws are their own mirror image.
func TestScrewsBetweenUnequalArmsAreToldTheWheelsSymmetry(t *testing.T) {
	for _, row := range []struct {
		teeth int
		tips  []int
		count int
		want  float64 // degrees
		lone  bool    // no axis
	}{
		{72, []int{0, 14, 29, 43, 58}, 5, 36, false},
		{70, []int{0, 18, 35, 53}, 4, 18 * 180.0 / 70, false},
		{72, []int{0, 12, 24, 36, 48, 60}, 3, 30, false},
		{71, []int{0, 24, 47}, 3, 60, false},
		{40, []int{0, 3, 8, 20}, 2, 13.5, true},
	} {
		s := plain()
		for _, tip := range row.tips {
			s.Arms = append(s.Arms, geometry.FullTurn*geometry.Angle(tip)/geometry.Angle(row.teeth))
		}
		m, err := Fit(s, Collet{}, Screws{Count: row.count, Thread: thread(t, "M1.6"), Circle: 14})
		require.NoError(t, err)
		middle := s.Arms[1].Degrees() / 2
		require.InDelta(t, middle, m.Places[0].Angle.Degrees(), 1e-9)
		if l := noteOf(m.Notes, "mount.start-lopsided"); math.Abs(row.want-middle) > 1e-9 {
			require.NotNil(t, l, "%+v", row)
			require.InDelta(t, row.want, geometry.Angle(l.Min).Degrees(), 1e-9)
		} else {
			require.Nil(t, l, "%+v", row)
		}
		require.Equal(t, row.lone, noteOf(m.Notes, "mount.arms-without-symmetry") != nil)
	}
}
