package template

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/render"
)

func TestATickAtEveryTip(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			d, err := Crossing(w, metric)
			require.NoError(t, err)
			ticks := itemsOn(d, render.LayerCentreLines, "teeth.count")
			require.Len(t, ticks, 1)
			require.Len(t, ticks[0].Chains, w.Teeth.Count)
			for i, c := range ticks[0].Chains {
				from, to := c.Segment(0).From, c.Segment(0).To
				require.InDelta(t, 0, float64((from.Direction() - w.Teeth.Tip(i)).Normal()), 1e-12)
				require.InDelta(t, 0, from.Cross(to)/to.Norm(), 1e-9, "a tick is radial")
				require.Greater(t, from.Norm(), w.Teeth.TipRadius)
			}
		})
	}
}

func TestTheCentreIsLeftOpen(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			d, err := Crossing(w, metric)
			require.NoError(t, err)
			for _, it := range d.Items {
				for _, c := range it.Chains {
					for i := range c.Len() {
						at, _ := c.Segment(i).Nearest(geometry.Point{})
						require.GreaterOrEqual(t, at.Norm(), punchGap-1e-9, "%s %s", it.Layer, it.Quantity)
					}
				}
				if it.Text != nil {
					require.False(t, it.Text.Bounds().Contains(geometry.Point{}))
				}
			}
		})
	}
}

func TestArmLinesRunThroughTheCentreToTheirTips(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			d, err := Crossing(w, metric)
			require.NoError(t, err)
			lines := itemsOn(d, render.LayerCentreLines, "crossing.arms")
			require.GreaterOrEqual(t, len(lines), w.Crossing.Spec.Arms)
			for j, arm := range w.Crossing.Arms {
				s := lines[j].Chains[0].Segment(0)
				require.Greater(t, s.To.Norm(), w.Teeth.TipRadius+5)
				require.InDelta(t, 0, s.From.Cross(s.To)/s.To.Norm(), 1e-9, "through the dead centre")
				on := w.Teeth.Tip(arm.Tip) - arm.Deviation
				require.InDelta(t, 0, float64((s.To.Direction() - on).Normal()), 1e-9, "on tip %d", arm.Tip)
			}
		})
	}
}

func TestNumbersCountTipsClockwise(t *testing.T) {
	w := trainWheel(t, 72, 6)
	d, err := Crossing(w, metric)
	require.NoError(t, err)
	at := map[int]geometry.Point{}
	for _, text := range textsOf(d) {
		n, err := strconv.Atoi(text.String)
		require.NoError(t, err)
		at[n] = text.At
	}
	for _, tip := range []int{0, 10, 12, 20, 24, 30, 36, 40, 48, 50, 60} {
		require.Contains(t, at, tip)
		require.InDelta(t, 0, float64((at[tip].Direction() - w.Teeth.Tip(tip)).Normal()), 1e-9, "tip %d", tip)
	}
	require.Positive(t, at[10].X, "tip 10 of 72 stands right of 12 o'clock")
}

func TestNumberStep(t *testing.T) {
	for _, row := range []struct {
		name  string
		count int
		tip   float64
		step  int
	}{
		{"a train wheel: every tenth", 72, 30, 10},
		{"few teeth: every tenth", 12, 5, 10},
		{"fine teeth: rounder, so that numbers stand apart", 360, 30, 20},
		{"as many as there may be", 2000, 30, 100},
	} {
		t.Run(row.name, func(t *testing.T) {
			require.Equal(t, row.step, numberStep(&tooth.Wheel{Count: row.count, TipRadius: row.tip}))
		})
	}
}

func TestCrossingLayers(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	d, err := Crossing(w, metric)
	require.NoError(t, err)
	teeth := itemsOn(d, render.LayerTeeth, "teeth")
	require.Len(t, teeth, 1)
	require.Len(t, teeth[0].Outlines, 1, "the wheel is one closed outline")
	require.Equal(t, render.Brass, teeth[0].Fill)
	waste := 0
	for _, it := range itemsOn(d, render.LayerWindows, "crossing") {
		if it.Fill == render.Waste {
			waste++
			require.Equal(t, render.Visible, it.Pen)
			require.Len(t, it.Outlines, 1)
		}
	}
	require.Equal(t, 5, waste)
	saw := itemsOn(d, render.LayerSawLine, "crossing.allowance")
	require.Len(t, saw, 5)
	for i, it := range saw {
		require.Equal(t, render.Hidden, it.Pen)
		require.InDelta(t, 0.3, distance(w.Crossing.Windows[i].Outline, it.Outlines[0]), 1e-6)
	}
	require.NotEmpty(t, itemsOn(d, render.LayerStartHoles, "crossing.start_hole"))
	bore := itemsOn(d, render.LayerBore, "bore")
	require.InDelta(t, 2.5, bore[0].Outlines[0].Vertex(0).Norm(), 1e-12)
	require.Equal(t, 1.0, d.Scale)
}

func distance(a, b geometry.Outline) float64 {
	d, _, _ := a.Distance(b)
	return d
}

func TestAWheelKnownByMeasurementShowsItsRoots(t *testing.T) {
	teeth, err := tooth.Measured{Count: 24, TipRadius: 20, RootRadius: 18}.Wheel()
	require.NoError(t, err)
	d, err := Crossing(Wheel{ID: "m", Name: "Measured", Teeth: &teeth}, metric)
	require.NoError(t, err)
	roots := itemsOn(d, render.LayerPitchCircle, "teeth.root_diameter")
	require.Len(t, roots, 1)
	require.InDelta(t, 18, roots[0].Outlines[0].Vertex(0).Norm(), 1e-12)
	require.NotEmpty(t, itemsOn(d, render.LayerBore, "bore"), "the centre is marked even without a bore")
}

func TestCrossingNotes(t *testing.T) {
	n := CrossingNotes(trainWheel(t, 72, 6), metric)
	var legend []string
	for _, m := range n.Legend {
		legend = append(legend, m.Text)
	}
	require.Equal(t, []string{
		"hatched: waste", "dashed: saw line, 0.30 mm inside", "start hole, 0.80 mm", "numbers: tips, counted clockwise",
	}, legend)
	require.Equal(t, "72", n.Figures[1].Value)
	require.NotEmpty(t, n.Caution)
}
