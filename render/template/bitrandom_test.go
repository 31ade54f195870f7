package template

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Whatever bit can be measured on whatever form can be built is drawn: clear, with
// finite lines, at both sides and on every card.
func TestRandomBitsAreDrawnClear(t *testing.T) {
	random := rand.New(rand.NewPCG(23, 29))
	between := func(low, high float64) float64 { return low + (high-low)*random.Float64() }
	drawn := 0
	for i := range 50 {
		p := randomForm(random, i%2 == 0)
		cut, err := p.Cut()
		if err != nil {
			continue
		}
		teeth, err := tooth.Pointed(cut, tooth.Clockwise)
		require.NoError(t, err)
		w := Wheel{ID: "random", Name: "Random wheel", Hand: tooth.Clockwise, Teeth: &teeth, Cut: &cut, Rake: geometry.Degrees(between(-5, 15))}
		relief, err := cut.Relieve(geometry.Degrees(between(3, 15)), between(2, 8), between(10, 40))
		require.NoError(t, err)
		w.Relief, w.WheelEdge = &relief, between(0, 3)
		corners := cut.Form.Corners()
		for k := 1; k < len(corners); k++ {
			corners[k].X += between(-0.05, 0.05)
			corners[k].Y += between(-0.03, 0.03)
		}
		edge, err := cutter.NewEdge(corners)
		if err != nil {
			continue
		}
		ground, err := cut.Ground(edge)
		if err != nil {
			continue
		}
		w.Ground = &ground
		drawn++
		for name, s := range map[string]Style{"mm": metric, "in": inches} {
			for title, d := range cutterDrawings(t, w, s) {
				requireClear(t, d, "seed (23, 29), case %d, %s in %s: %+v", i, title, name, p)
			}
		}
		for _, h := range CutterHandles(w) {
			_, err := h.Value(h.At)
			require.NoError(t, err, "case %d, %s: %+v", i, h.Quantity, p)
		}
	}
	require.Greater(t, drawn, 8)
}

// cutterDrawings draws all there is of a cutter, by name.
func cutterDrawings(t testing.TB, w Wheel, s Style) map[string]*render.Drawing {
	t.Helper()
	drawings := map[string]*render.Drawing{}
	for name, draw := range map[string]func() (*render.Drawing, error){
		"view":           func() (*render.Drawing, error) { return CutterView(w, s) },
		"rake face":      func() (*render.Drawing, error) { return Grinding(w, s, 10) },
		"clearance face": func() (*render.Drawing, error) { return GrindingSide(w, s, 10, ClearanceFace) },
		"full size":      func() (*render.Drawing, error) { return GrindingSide(w, s, 1, ClearanceFace) },
		"setting":        func() (*render.Drawing, error) { return SettingCard(w, s) },
		"depth":          func() (*render.Drawing, error) { return DepthCard(w, s) },
	} {
		d, err := draw()
		require.NoError(t, err, name)
		drawings[name] = d
	}
	return drawings
}
