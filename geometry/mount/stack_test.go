package mount

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// pair is a large crossed wheel and a smaller one to go on top of it.
func pair() []Seat {
	large, small := crossed(6, 20, 60, 6), crossed(6, 16, 26, 5)
	large.Tip, small.Tip = 64, 30
	return []Seat{large, small}
}

func TestReferenceTipsStandInLine(t *testing.T) {
	wheels := pair()
	for _, tips := range [][]int{nil, {0, 0}, {7}, {71, 13}, {5, 59}} {
		s, err := Stack(wheels, tips, Collet{}, Screws{Count: 3, Thread: thread(t, "M1"), Circle: 12}, 0)
		require.NoError(t, err)
		for i, w := range wheels {
			tip := 0
			if i < len(tips) {
				tip = tips[i]
			}
			stands := geometry.Angle(2*math.Pi*float64(tip)/float64(w.Teeth)) + s.Turns[i]
			require.InDelta(t, 0, float64(stands.Normal()), 1e-12, "%v", tips)
		}
	}
}

// A place on a wheel, turned with the wheel, is the place in the stack.
func TestHolesLieOnEachWheel(t *testing.T) {
	wheels := pair()
	s, err := Stack(wheels, []int{10, 3}, Collet{}, Screws{Count: 4, Thread: thread(t, "M1"), Circle: 12}, 0)
	require.NoError(t, err)
	for i := range wheels {
		for j, p := range s.OnWheel[i] {
			require.InDelta(t, 0, p.At.Dist(geometry.Polar(6, geometry.Clock(p.Angle))), 1e-9)
			turned := p.At.Rotate(-s.Turns[i])
			require.InDelta(t, 0, turned.Dist(s.Mounting.Places[j].At), 1e-9)
		}
	}
}

// Wheels of 64 and 30 across their tips: 0.05 at 15 is 1/300 rad, 0.1067 at 32.
func TestMisplacementGrowsWithTheRadius(t *testing.T) {
	wheels := pair()
	for _, order := range [][]Seat{wheels, {wheels[1], wheels[0]}} {
		s, err := Stack(order, nil, Collet{}, Screws{Count: 3, Thread: thread(t, "M1"), Circle: 12}, 0.05)
		require.NoError(t, err)
		require.Equal(t, 30.0, order[s.Smaller].Tip)
		require.Equal(t, 64.0, order[s.Larger].Tip)
		require.InDelta(t, 1.0/300, float64(s.Twist), 1e-15)
		require.InDelta(t, 0.05*32/15, s.Error, 1e-12)
	}
}

func TestHolesAreCommonToAll(t *testing.T) {
	wheels := pair()
	screws := Screws{Count: 3, Thread: thread(t, "M2"), Circle: 17, Start: at(36)} // 36° is between arms of the second alone
	_, err := Stack(wheels, nil, Collet{}, screws, 0)
	l := limitOf(t, err)
	require.Equal(t, "mount.breaks-window", l.Code)
	bounds(t, math.Inf(-1), 16-2.2, l) // the smaller hub and the clearance drill
	screws.Circle = 13
	s, err := Stack(wheels, nil, Collet{}, screws, 0)
	require.NoError(t, err)
	require.Equal(t, 4.0, s.Mounting.Depth)
	require.NotNil(t, noteOf(s.Notes, "mount.near-window"))
	wheels[0].Thickness, wheels[1].Thickness = 9, 9
	deep, err := Stack(wheels, nil, Collet{}, screws, 0)
	require.NoError(t, err)
	require.NotNil(t, noteOf(deep.Notes, "mount.deep-hole"))
}

// A hole that a wheel has already turns with its wheel.
func TestHolesOfAWheelTurnWithIt(t *testing.T) {
	wheels, tips := []Seat{plain(), plain()}, []int{10, 3}
	screws := Screws{Count: 3, Thread: thread(t, "M2"), Circle: 16, Start: at(5)}
	s, err := Stack(wheels, tips, Collet{}, screws, 0)
	require.NoError(t, err)
	wheels[1].Holes = []Hole{{At: s.OnWheel[1][0].At, Diameter: 1}}
	_, err = Stack(wheels, tips, Collet{}, screws, 0)
	require.Equal(t, "mount.breaks-hole", limitOf(t, err).Code)
}

func TestMarksTellOrderAndTurn(t *testing.T) {
	s, err := Stack(append(pair(), plain()), nil, Collet{}, Screws{Count: 3, Thread: thread(t, "M1"), Circle: 12}, 0)
	require.NoError(t, err)
	require.Equal(t, []Mark{{Part: -1, Dots: 1}, {Part: 0, Dots: 1}, {Part: 1, Dots: 2}, {Part: 2, Dots: 3}}, s.Marks)
}

func TestStackThatCannotBe(t *testing.T) {
	good := Screws{Count: 3, Thread: thread(t, "M1"), Circle: 12}
	narrow := pair()
	narrow[1].Bore = 5
	for _, row := range []struct {
		name         string
		wheels       []Seat
		tips         []int
		collet       Collet
		misplacement float64
		quantity     geometry.Quantity
		max          float64
	}{
		{"one wheel", pair()[:1], nil, Collet{}, 0, "wheels", math.Inf(1)},
		{"no wheel", nil, nil, Collet{}, 0, "wheels", math.Inf(1)},
		{"a tip too many", pair(), []int{0, 0, 0}, Collet{}, 0, "tips", 2},
		{"no such tip", pair(), []int{0, 60}, Collet{}, 0, "tips[1]", 59},
		{"a tip below nothing", pair(), []int{-1}, Collet{}, 0, "tips[0]", 71},
		{"misplaced backwards", pair(), nil, Collet{}, -0.1, "misplacement", 15},
		{"misplaced to nowhere", pair(), nil, Collet{}, math.NaN(), "misplacement", 15},
		{"register for one wheel only", narrow, nil, Collet{Register: 6}, 0, "mount.collet.register", 5},
		{"no wheel to screw", []Seat{{}, plain()}, nil, Collet{}, 0, "teeth.root_diameter", geometry.MostLength},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := Stack(row.wheels, row.tips, row.collet, good, row.misplacement)
			l := limitOf(t, err)
			require.Equal(t, row.quantity, l.Quantity)
			require.Equal(t, row.max, l.Max)
		})
	}
}

// Two of the same wheel in line take the holes that one takes, or none.
func TestStackOfLikeWheelsTakesTheSameHoles(t *testing.T) {
	random := trial.Rand(t, 3)
	for range trial.Count(2000) {
		s, c, screws := some(random)
		alone, err := Fit(s, c, screws)
		both, stackErr := Stack([]Seat{s, s}, []int{0, 0}, c, screws, 0.01)
		require.Equal(t, err == nil, stackErr == nil, "%+v %+v %+v", s, c, screws)
		require.Equal(t, alone.Places, both.Mounting.Places)
		require.Equal(t, alone.Edge, both.Mounting.Edge)
	}
}

func BenchmarkFit(b *testing.B) {
	seat := crossed(6, 20, 60, 6)
	screws := Screws{Count: 6, Thread: thread(b, "BA 10"), Circle: 13}
	for b.Loop() {
		if _, err := Fit(seat, Collet{Register: 6, Flange: 18}, screws); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkRefuse(b *testing.B) {
	seat := crossed(6, 20, 60, 6)
	screws := Screws{Count: 24, Thread: thread(b, "BA 0"), Circle: 13}
	for b.Loop() {
		if _, err := Fit(seat, Collet{}, screws); err == nil {
			b.Fatal("fits")
		}
	}
}
