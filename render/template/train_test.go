package template

import (
	"fmt"
	"math"
	"math/big"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/depthing"
	"tipline/render"
)

// goingTrain is the train of an eight-day clock, its last arbor turning so many
// times an hour.
func goingTrain(t testing.TB) Train {
	t.Helper()
	beat, err := depthing.Beats(big.NewRat(1, 1), big.NewRat(60, 1), 30)
	require.NoError(t, err)
	return Train{ID: "going", Ratio: big.NewRat(720, 1), Reverse: true, PerHour: big.NewRat(60, 1), Beat: &beat, Arbors: []Arbor{
		{Name: "Great wheel", Driver: Toothed{"Great wheel", 96, 38.4, false}, Centres: 41.6, Turns: big.NewRat(1, 1)},
		{Name: "centre-arbor", Driven: Toothed{"Centre pinion", 8, 3.2, true}, Driver: Toothed{"Centre wheel", 64, 22.4, false}, Centres: 25.2, Turns: big.NewRat(12, 1)},
		{Name: "third-arbor", Driven: Toothed{"Third pinion", 8, 2.8, true}, Driver: Toothed{"Third wheel", 60, 18, false}, Centres: 20.4, Turns: big.NewRat(96, 1)},
		{Name: "Escape wheel", Driven: Toothed{"Escape pinion", 8, 2.4, true}, Driver: Toothed{"Escape wheel", 30, 22, false}, Turns: big.NewRat(720, 1)},
	}}
}

// Pitch circles are in proportion, and neighbours in mesh touch.
func TestPitchCirclesOfATrainTouch(t *testing.T) {
	d, err := TrainView(goingTrain(t), metric)
	require.NoError(t, err)
	wheels, large := circlesOn(t, d, render.LayerPitchCircle)
	pinions, small := circlesOn(t, d, render.LayerTeeth)
	require.Len(t, wheels, 4)
	require.Len(t, pinions, 3)
	for i, want := range []float64{38.4, 22.4, 18, 22} {
		require.InDelta(t, want*d.Scale, large[i], 1e-9)
	}
	for i := range pinions {
		require.InDelta(t, large[i]+small[i], wheels[i].Dist(pinions[i]), 1e-9, "mesh %d", i)
		require.Equal(t, wheels[i+1], pinions[i], "on one arbor")
		require.Zero(t, pinions[i].Y, "in line")
	}
	left, right := wheels[0].X-large[0], wheels[3].X+large[3]
	require.LessOrEqual(t, right-left, trainWide+1e-9)
}

func TestATrainSaysWhatItComesTo(t *testing.T) {
	d, err := TrainView(goingTrain(t), metric)
	require.NoError(t, err)
	for _, text := range []string{
		"96 / 8 = 12", "60 / 8 = 7.5", "96/8 × 64/8 × 60/8 = 720 : 1, the other way round",
		"turns an hour: 1/12", "turns an hour: 1", "turns an hour: 8", "turns an hour: 60", "Centre pinion, 8", "30 teeth",
		"3600 beats an hour, 1 s each; pendulum 993.62 mm (39.119 in)",
	} {
		require.Contains(t, said(d), text)
	}
	card, err := TrainCard(goingTrain(t), inches)
	require.NoError(t, err)
	for _, text := range []string{"720 : 1", "3600", "39.119 in (993.62 mm)"} {
		require.Contains(t, said(card), text)
	}
	unknown := goingTrain(t)
	unknown.PerHour, unknown.Beat, unknown.Reverse = nil, nil, false
	d, err = TrainView(unknown, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), "turns: 720")
	require.Contains(t, said(d), "96/8 × 64/8 × 60/8 = 720 : 1, the same way round")
	for _, none := range []Train{{}, {Arbors: []Arbor{{Name: "alone"}}}} {
		_, err = TrainView(none, metric)
		require.ErrorIs(t, err, ErrNothing)
		_, err = TrainCard(none, metric)
		require.ErrorIs(t, err, ErrNothing)
	}
}

func TestRandomTrainsAreDrawnClear(t *testing.T) {
	random := rand.New(rand.NewPCG(19, 23))
	for i := range 60 {
		train := Train{ID: "random", Ratio: big.NewRat(1, 1)}
		turns := big.NewRat(1, 1)
		for k := range 2 + random.IntN(5) {
			a := Arbor{Name: fmt.Sprintf("arbor-%d", k), Turns: new(big.Rat).Set(turns)}
			if k > 0 {
				last := &train.Arbors[k-1]
				leaves := 6 + random.IntN(20)
				a.Driven = Toothed{"Some pinion", leaves, last.Driver.Radius * float64(leaves) / float64(last.Driver.Count), true}
				last.Centres = last.Driver.Radius + a.Driven.Radius
			}
			count := 15 + random.IntN(150)
			a.Driver = Toothed{"Some wheel", count, (0.1 + random.Float64()) * float64(count) / 2, false}
			turns.Mul(turns, big.NewRat(int64(count), 8))
			train.Arbors = append(train.Arbors, a)
		}
		for _, draw := range []func(Train, Style) (*render.Drawing, error){TrainView, TrainCard} {
			d, err := draw(train, metric)
			require.NoError(t, err)
			requireClear(t, d, "seed (19, 23), case %d", i)
			require.NotContains(t, strings.Join(append(said(d), d.Title, d.Description), " "), "‹")
		}
	}
}

func TestMovedClear(t *testing.T) {
	for _, row := range []struct{ places, widths, want []float64 }{
		{[]float64{0, 50, 100}, []float64{10, 10, 10}, []float64{0, 50, 100}},
		{[]float64{0, 2}, []float64{10, 10}, []float64{-4, 6}},
		{[]float64{5}, []float64{10}, []float64{5}},
		{nil, nil, []float64{}},
	} {
		got := movedClear(row.places, row.widths)
		require.Equal(t, row.want, got)
		for i := 1; i < len(got); i++ {
			require.GreaterOrEqual(t, got[i]-got[i-1], (row.widths[i]+row.widths[i-1])/2)
		}
	}
}

// Where a view of a pair stands between two steps, it stands between their places.
func TestPlacesBetweenSteps(t *testing.T) {
	p := meshedPair(t, 80, 8, false, 0)
	n := len(p.Turn.Steps)
	for i := range n {
		s := p.Turn.Steps[i]
		at := p.place(float64(i) / float64(n))
		require.InDelta(t, float64(s.Driver), float64(at.driver), 1e-12)
		require.InDelta(t, float64(s.Follower), float64(at.follower), 1e-12)
		require.InDelta(t, 0, s.At.Dist(at.at), 1e-9)
	}
	end := p.place(1)
	require.InDelta(t, 2*math.Pi/80, float64(end.driver), 1e-12)
	require.InDelta(t, float64(p.Turn.Steps[0].Follower)-2*math.Pi/8, float64(end.follower), 1e-12)
	require.Equal(t, p.Turn.Steps[0].Tooth+1, end.tooth)
	require.InDelta(t, p.Driver.PitchRadius, p.pitchPoint().Dist(geometry.Point{}), 1e-9)
}
