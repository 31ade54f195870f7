package template

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
	"tipline/render"
)

// leafPinion is a pinion of cut leaves with its cutter and dividing.
func leafPinion(t testing.TB, leaves int, module float64) Wheel {
	t.Helper()
	p := tooth.Pinion{Leaves: leaves, Module: module, Ratio: 7.5}
	teeth, err := p.Wheel()
	require.NoError(t, err)
	cut, err := p.SpaceForm(6)
	require.NoError(t, err)
	answer, err := dividing.Head{Ratio: 60}.Divide(leaves, teeth.TipRadius)
	require.NoError(t, err)
	relief := relieved(t, cut)
	return Wheel{ID: "pinion", Name: "Pinion", Bore: teeth.RootRadius / 2, Thickness: 6, Teeth: &teeth, Cut: &cut, Relief: &relief, Dividing: &answer}
}

func TestPinionViewIsTheLeavesEnlarged(t *testing.T) {
	for leaves, scale := range map[int]float64{6: 10, 8: 10, 12: 10, 40: 2} {
		w := leafPinion(t, leaves, 0.6)
		d, err := PinionView(w, metric)
		require.NoError(t, err)
		require.Equal(t, scale, d.Scale, "%d leaves", leaves)
		drawn := itemsOn(d, render.LayerTeeth, "leaves")
		require.Len(t, drawn, 1)
		require.Len(t, drawn[0].Outlines, 1, "one closed outline")
		require.InDelta(t, scale*scale*w.Teeth.Outline.Area(), drawn[0].Outlines[0].Area(), 1e-6)
		_, radii := circlesOn(t, d, render.LayerPitchCircle)
		require.InDeltaSlice(t, []float64{scale * w.Teeth.TipRadius, scale * 0.3 * float64(leaves), scale * w.Teeth.RootRadius}, radii, 1e-9)
		require.Contains(t, said(d), "pitch Ø "+metric.Units.Fine(0.6*float64(leaves)))
	}
	_, err := PinionView(trainWheel(t, 60, 5), metric)
	require.ErrorIs(t, err, ErrNothing)
	_, err = PinionView(Wheel{ID: "bare"}, metric)
	require.ErrorIs(t, err, ErrNothing)
}

func TestCardsSpeakOfLeavesAndTrundles(t *testing.T) {
	for part, want := range map[string]struct {
		w    Wheel
		says []string
	}{
		"pinion":  {leafPinion(t, 8, 0.6), []string{"8 leaves, ratio 60 : 1", "Face to the length of the leaves", "6.00 mm"}},
		"lantern": {lanternWheel(t, 8, 0.6), []string{"8 trundles, ratio 60 : 1", "Shrouds, two alike: turn to", "6.06 mm", "0.630 mm"}},
		"wheel":   {trainWheel(t, 60, 5), []string{"60 teeth, ratio 60 : 1", "Face to thickness"}},
	} {
		t.Run(part, func(t *testing.T) {
			blank, err := BlankCard(want.w, metric)
			require.NoError(t, err)
			divided, err := DividingCard(want.w, metric)
			require.NoError(t, err)
			all := strings.Join(append(said(blank), said(divided)...), " ")
			for _, text := range want.says {
				require.Contains(t, all, text)
			}
		})
	}
}

func TestPinionSheetsStandClear(t *testing.T) {
	for _, leaves := range []int{6, 7, 8, 10, 12, 15, 20, 40} {
		for _, module := range []float64{0.3, 0.6, 1.1} {
			w := leafPinion(t, leaves, module)
			for unit, s := range map[string]Style{"mm": metric, "in": inches} {
				for name, draw := range map[string]func(Wheel, Style) (*render.Drawing, error){
					"view": PinionView, "blank": BlankCard, "dividing": DividingCard,
					"grinding": func(w Wheel, s Style) (*render.Drawing, error) { return Grinding(w, s, 10) },
				} {
					d, err := draw(w, s)
					require.NoError(t, err)
					requireClear(t, d, "%s of %d leaves of module %v in %s", name, leaves, module, unit)
				}
			}
		}
	}
}

// The form of a driver of a lantern pinion is drawn like any other.
func TestLanternDriversFormIsDrawn(t *testing.T) {
	for _, leaves := range []int{6, 8, 10, 12} {
		d := tooth.LanternDriver{Count: 60, Module: 0.6, Leaves: leaves}
		teeth, err := d.Wheel()
		require.NoError(t, err)
		cut, err := cutter.Space(teeth.Space, 60, teeth.TipRadius, 6)
		require.NoError(t, err)
		relief := relieved(t, cut)
		w := Wheel{ID: "driver", Hand: "clockwise", Teeth: &teeth, Cut: &cut, Relief: &relief}
		for _, scale := range []float64{1, 10, 20} {
			sheet, err := Grinding(w, metric, scale)
			require.NoError(t, err)
			requireClear(t, sheet, "%d trundles at %v", leaves, scale)
		}
	}
}
