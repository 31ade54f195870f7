package desk

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

// laid lays the rule on places of the present drawing, each snapped to.
func laid(d *Desk, at ...geometry.Point) screen.View {
	v := screen.View{Scale: 20}
	for _, p := range at {
		d.LayRule(d.SnapTo(v, v.ToPixel(p)))
	}
	return v
}

func values(list []Reading) map[string]string {
	all := map[string]string{}
	for _, r := range list {
		all[r.Label] = r.Value
		if r.Other != "" {
			all[r.Label] += " | " + r.Other
		}
	}
	return all
}

// The great wheel of the sample: arms on tips 0, 14, …, a rim of 4 mm and a bore of 8 mm.
func TestTheRuleReadsWhatTheWheelIs(t *testing.T) {
	d, _ := opened(t)
	w := d.Result().Wheel("great")
	tip := func(i int) geometry.Point { return geometry.Polar(w.Teeth.TipRadius, w.Teeth.Tip(i)) }
	middle := geometry.Clock(geometry.Degrees(30))
	d.TakeRule(true)
	require.True(t, d.Measuring())
	require.Empty(t, d.Handles(), "nothing is dragged while it is measured")
	list, note := d.Readings(nil)
	require.Empty(t, list)
	require.NotEmpty(t, note)

	v := laid(d, tip(14), geometry.Point{}, tip(0))
	got, _ := d.Readings(nil)
	require.Equal(t, map[string]string{
		"distance": "43.712 mm | 1.7209 in", "across": "0.000 mm | 0.0000 in", "up": "43.712 mm | 1.7209 in",
		"off level": "90°", "angle between": "60°",
	}, values(got))
	require.False(t, d.RuleOpen())

	laid(d, geometry.Polar(w.Crossing.RimRadius, middle+0.2))
	require.Len(t, d.Ruled(), 1, "a fourth place begins anew")
	got, _ = d.Readings(nil)
	require.Equal(t, d.Style().Units.Fine(w.Crossing.RimRadius), got[0].Value)
	require.Equal(t, d.Style().Units.Fine(2*w.Crossing.RimRadius), got[1].Value)

	on := d.SnapTo(v, v.ToPixel(geometry.Polar(w.Teeth.RootRadius, w.Teeth.Tip(0))))
	got, _ = d.Readings(&on)
	require.Equal(t, "distance", got[0].Label, "where the pointer is counts too")
	require.Len(t, d.Ruled(), 1)
	d.TakeRule(false)
	require.False(t, d.Measuring())
	require.NotEmpty(t, d.Handles())
}

func TestTheRuleReadsInTheJobsUnit(t *testing.T) {
	d, _ := opened(t)
	d.Type("", "units", "in")
	d.TakeRule(true)
	laid(d, geometry.Point{X: 4}, geometry.Point{})
	got, _ := d.Readings(nil)
	require.Equal(t, Reading{"distance", "0.1575 in", "4.000 mm"}, got[0])
}

func TestTheScaleBarIsSaidInAsFewFigures(t *testing.T) {
	d, _ := opened(t)
	for length, want := range map[float64]string{20: "20 mm", 0.5: "0.5 mm", 0.0002: "0.0002 mm"} {
		require.Equal(t, want, d.BarLine(length))
	}
}

// On an enlarged drawing lengths are those of the work; where it is not to scale there are
// none, and on paper they are the paper's.
func TestTheRuleKnowsTheDrawingsScale(t *testing.T) {
	d, _ := opened(t)
	d.Choose("escape")
	d.Go(Cutter)
	drawing, _ := d.Drawing()
	require.Greater(t, drawing.Scale, 1.0)
	d.TakeRule(true)
	d.LayRule(screen.Snap{})
	d.LayRule(screen.Snap{At: geometry.Point{X: 3, Y: 4}})
	got, _ := d.Readings(nil)
	require.Equal(t, d.Style().Units.Fine(5/drawing.Scale), got[0].Value)
	d.Go(Dividing)
	require.False(t, d.Measuring(), "another step's drawing is not measured")
	d.TakeRule(true)
	require.False(t, d.ToScale())
	d.LayRule(screen.Snap{})
	d.LayRule(screen.Snap{At: geometry.Point{X: 3, Y: 4}})
	got, note := d.Readings(nil)
	require.Len(t, got, 1)
	require.Equal(t, d.Style().Units.Angle(geometry.Angle(math.Atan2(4, 3))), got[0].Value)
	require.NotEmpty(t, note)
	d.Go(Paper)
	d.TakeRule(true)
	d.LayRule(screen.Snap{})
	d.LayRule(screen.Snap{At: geometry.Point{X: 3, Y: 4}})
	got, note = d.Readings(nil)
	require.Equal(t, "5.000 mm", got[0].Value)
	require.NotEmpty(t, note)
}

// What was picked on a drawing is forgotten once it is another.
func TestTheRuleIsLaidAnewOnAnotherDrawing(t *testing.T) {
	d, _ := opened(t)
	d.TakeRule(true)
	laid(d, geometry.Point{}, geometry.Point{X: 4})
	require.Len(t, d.Ruled(), 2)
	d.Type("great", "crossing.rim", "3 mm")
	require.Empty(t, d.Ruled())
	require.True(t, d.Measuring())
	laid(d, geometry.Point{})
	require.Len(t, d.Ruled(), 1)
}

func TestEveryLayerHasAName(t *testing.T) {
	d, _ := opened(t)
	for _, l := range append(render.Layers(), render.LayerPhotograph) {
		require.True(t, d.Words().Has("layer."+string(l)), l)
	}
}

// A layer that is hidden at a step is not drawn, found or snapped to there, on any part,
// until it is shown again.
func TestLayersAreHiddenAtTheirStep(t *testing.T) {
	d, _ := opened(t)
	whole, _ := d.Drawing()
	same, _ := d.Seen()
	require.Same(t, whole, same)
	has := func(layer string) bool {
		seen, _ := d.Seen()
		for i := range seen.Items {
			if string(seen.Items[i].Layer) == layer {
				return true
			}
		}
		return false
	}
	for _, v := range d.Veils() {
		require.True(t, has(string(v.Layer)))
		require.False(t, v.Hidden)
		require.NotContains(t, v.Name, "layer.")
		d.HideLayer(v.Layer, true)
		require.False(t, has(string(v.Layer)), v.Name)
		once, _ := d.Seen()
		again, _ := d.Seen()
		require.Same(t, once, again)
		d.HideLayer(v.Layer, false)
		require.True(t, has(string(v.Layer)))
	}
	d.HideLayer("windows", true)
	d.Turn(1)
	require.Equal(t, Crossing, d.Step())
	require.False(t, has("windows"))
	d.Go(Blank)
	for _, v := range d.Veils() {
		require.False(t, v.Hidden)
	}
	d.Go(Paper)
	require.Empty(t, d.Veils(), "pages are shown as they are printed")
	d.Go(Crossing)
	require.False(t, has("windows"))
	require.True(t, d.Saved() && !d.CanUndo(), "what is hidden is no part of the job")
}
