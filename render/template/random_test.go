package template

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Whatever form can be built is drawn, with finite lines and lettering that stands
// clear, at the scales it may be printed in.
func TestRandomFormsAreDrawnClear(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 11))
	drawn := 0
	for i := range 400 {
		p := randomForm(random, i%2 == 0)
		cut, err := p.Cut()
		if err != nil {
			continue
		}
		hand := []string{tooth.Clockwise, tooth.Anticlockwise}[random.IntN(2)]
		teeth, err := tooth.Pointed(cut, hand)
		require.NoError(t, err)
		w := Wheel{ID: "random", Name: "Random wheel", Hand: hand, Teeth: &teeth, Cut: &cut}
		for _, scale := range []float64{1, 5, 10, 20} {
			d, err := Grinding(w, metric, scale)
			require.NoError(t, err)
			requireClear(t, d, "seed (7, 11), case %d at %v: %+v", i, scale, p)
		}
		view, err := CutterView(w, inches)
		require.NoError(t, err)
		requireClear(t, view, "seed (7, 11), case %d: %+v", i, p)
		drawn++
	}
	require.Greater(t, drawn, 40)
}

func requireClear(t *testing.T, d *render.Drawing, message string, args ...any) {
	t.Helper()
	b := d.Bounds()
	require.False(t, math.IsNaN(b.Width()+b.Height()) || math.IsInf(b.Width()+b.Height(), 0), message, args)
	texts := textsOf(d)
	for i, a := range texts {
		for _, c := range texts[i+1:] {
			if a.Bounds().Grow(-0.05).Touches(c.Bounds().Grow(-0.05)) {
				t.Errorf("%q stands on %q", a.String, c.String)
				t.Fatalf(message, args...)
			}
		}
	}
}

func TestRandomTrainWheelsAreDrawnClear(t *testing.T) {
	random := rand.New(rand.NewPCG(13, 17))
	drawn := 0
	for i := range 150 {
		count, module := 12+random.IntN(150), 0.3+2*random.Float64()
		teeth, err := tooth.Cycloidal{Count: count, Module: module, Leaves: 6 + random.IntN(8)}.Wheel()
		if err != nil {
			continue
		}
		cut, err := cutter.Space(teeth.Space, count, teeth.TipRadius, []float64{0, 4, 8, 12}[random.IntN(4)])
		if err != nil {
			continue
		}
		relief := relieved(t, cut)
		w := Wheel{ID: "random", Name: "Random wheel", Hand: "clockwise", Bore: 1, Teeth: &teeth, Cut: &cut, Relief: &relief}
		for _, scale := range []float64{1, 5, 10, 20} {
			d, err := Grinding(w, inches, scale)
			require.NoError(t, err)
			requireClear(t, d, "seed (13, 17), case %d at %v: %d teeth, module %v", i, scale, count, module)
		}
		for name, draw := range map[string]func(Wheel, Style) (*render.Drawing, error){"cutter": CutterView, "crossing": Crossing, "setting": SettingCard} {
			d, err := draw(w, metric)
			require.NoError(t, err)
			requireClear(t, d, "seed (13, 17), case %d, %s: %d teeth, module %v", i, name, count, module)
		}
		drawn++
	}
	require.Greater(t, drawn, 40)
}

// randomForm draws a pointed form at random; not every one can be built.
func randomForm(random *rand.Rand, straight bool) cutter.Pointed {
	between := func(low, high float64) float64 { return low + (high-low)*random.Float64() }
	return cutter.Pointed{
		Count: 12 + random.IntN(60), TipRadius: between(5, 40), Undercut: geometry.Degrees(between(0, 20)),
		FrontRelief: geometry.Degrees(between(0, 10)), Floor: between(0.1, 1), FloorSlope: geometry.Degrees(between(0, 25)),
		BackRadius: between(1, 15), Straight: straight, BackAngle: geometry.Degrees(between(15, 55)),
		Land: between(0.05, 0.4), StockWidth: between(3, 10), Solve: cutter.RootDiameter,
	}
}
